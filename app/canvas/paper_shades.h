// Shades that fade to nothing, on paper. Qt 6.4 writes a gradient with a varying opacity into a PDF as if it
// did not vary, so there such things are laid down as fine pictures; every line of text and every sign stays
// a line.
#pragma once

#include <QImage>
#include <QRectF>
#include <functional>

class QPainter;

namespace fb {

// Whether what this painter writes loses its fading.
[[nodiscard]] bool losesFading(const QPainter& painter);
// Dots of the painter's device to one of its units, as it is scaled at the moment.
[[nodiscard]] double dotsPerUnit(const QPainter& painter);

// What `paint` paints within a box, with nothing behind it. The painter it is given has the box's own units.
// Not finer than a few million dots allow.
[[nodiscard]] QImage pictureOf(const QRectF& box, double dotsPerUnit,
                               const std::function<void(QPainter&)>& paint);

}  // namespace fb
