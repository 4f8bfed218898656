// Handles of what a learner builds: four small shapes that are told apart without colour. The current
// one is larger and full, and stands between corner brackets while keys go to it; the current one and the
// one under the pointer show their names.
#pragma once

#include <QRectF>
#include <QTransform>
#include <QVector>

#include "app/canvas/plate_tool.h"
#include "app/look/palette.h"

class QPainter;

namespace fb {

// Handles as they lie on a sheet.
struct HandlesPlace {
    QTransform cmToWidget;
    QRectF paper;  // which their names do not leave
    double textScale = 1.0;
    int current = -1;
    int hovered = -1;
    bool focused = false;
    Qt::LayoutDirection direction = Qt::LeftToRight;
};

// The nearest handle within reach of a place, pixels; the later of two that are as near, as it is
// painted over the other. -1: none.
[[nodiscard]] int nearestHandle(const QVector<HandleLook>& handles, const QTransform& cmToWidget, QPointF at,
                                double reach);

// A handle without its name, pixels, brackets included.
[[nodiscard]] QRectF handleBox(QPointF at, double textScale);
// All that is painted of the handles, names included.
[[nodiscard]] QRectF handlesBox(const QVector<HandleLook>& handles, const HandlesPlace& place);

void paintHandles(QPainter& painter, const QVector<HandleLook>& handles, const HandlesPlace& place,
                  const Scheme& scheme);

}  // namespace fb
