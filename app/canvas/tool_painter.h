// What the tools have on a plate, painted: what is laid on the body under the scene; handles and the
// press over it.
#pragma once

#include <QRectF>

#include "app/canvas/plate_painter.h"

class QPainter;

namespace fb {

void paintLaid(QPainter& painter, const PlateFace& face);
void paintToolsOver(QPainter& painter, const PlateFace& face);

// All of it that moves under a hand, pixels: flags are not of it, as their names move others.
[[nodiscard]] QRectF toolsBox(const PlateFace& face);
// The ring of the press, pixels; empty without one.
[[nodiscard]] QRectF pressedBox(const PlateFace& face);

}  // namespace fb
