// The areas of a demonstration's plate: target regions, what a needle must not enter, what is near; and the
// signs of verdicts. Drawn as in practice (see scene/scene_painter.h), for walls of any fineness.
//
// Measured: a ruling of single lines takes 160 ms at 2160p, a brush that carries the ruling 6 ms.
#pragma once

#include <QTransform>

#include "app/look/palette.h"
#include "app/scene/scene.h"

class QPainter;

namespace fb {

// Whether paintAreas() paints a shape; paintScene() paints all others, over them.
[[nodiscard]] bool isArea(const SceneShape& shape);
// Whether paintVerdicts() does.
[[nodiscard]] bool isVerdict(const SceneShape& shape);

// The painter's lengths are pixels of the picture here, so that rulings fall on them; unit: as in
// lecture_painter_page.h.
void paintAreas(QPainter& painter, const Scene& scene, const Scheme& scheme, const QTransform& cmToPixels,
                double unit);
void paintVerdicts(QPainter& painter, const Scene& scene, const Scheme& scheme, const QTransform& cmToPixels,
                   double unit);

}  // namespace fb
