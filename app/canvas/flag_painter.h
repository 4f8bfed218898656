// Flags a learner planted: a pennant on a pin, its foot where it was planted. The name is one more
// label of the scene, tied to the foot.
#pragma once

#include <QRectF>

#include "app/canvas/plate_tool.h"
#include "app/look/palette.h"
#include "app/scene/scene.h"

class QPainter;

namespace fb {

// The flags' feet as landmarks of a scene, named as the learner named them.
[[nodiscard]] Scene flagScene(const QVector<FlagLook>& flags);

// Pin and pennant of a flag with its foot there, pixels. The pennant flies inward where it would leave
// the paper, and hangs under its foot at the upper edge.
[[nodiscard]] QRectF flagBox(QPointF foot, const QRectF& paper, double textScale);

void paintFlag(QPainter& painter, QPointF foot, const QRectF& paper, const Scheme& scheme, double textScale);

}  // namespace fb
