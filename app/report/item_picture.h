// One item's plate on paper: this patient's drawing in grey, close about the target, and over it as lines
// the region, the ideal point and the student's mark.
#pragma once

#include <QImage>
#include <QRectF>
#include <optional>

#include "app/canvas/ink_painter.h"
#include "app/scene/scene.h"
#include "core/site/target.h"

namespace fb {

// What of the plate is shown: target and mark with room about them, of these proportions; cm, low corner
// first.
[[nodiscard]] QRectF itemArea(const Target& target, const std::optional<Point>& mark, double widthToHeight);

// The drawing alone, pale enough to be drawn over.
[[nodiscard]] QImage itemInk(const Picture& picture, const QRectF& area, QSize pixels);

// All of it, into that rectangle of the painter's units; ink as itemInk() made it.
void paintItem(QPainter& painter, const QRectF& at, const QImage& ink, const QRectF& area, const Scene& scene,
               const std::optional<Point>& mark);

// Black lines on white paper.
[[nodiscard]] Scheme paperScheme();

}  // namespace fb
