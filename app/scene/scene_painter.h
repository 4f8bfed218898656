// Paints a scene over a plate: each role in its own line, figure and word, so that it can be
// told without colour.
//
//   Region        fine ruling, firm outline          Strike   wide diagonal ruling, a word
//   Construction  dash and dot, thin                 Near     dotted edge, a name
//   Ideal         a small crossed ring               Arrow    a head, its length on a plaque
//   Landmark      a full dot, a name in italics      Other    a small open lozenge
//   Newest        a heavy line, a dot in a ring      Yours    a plain line between open squares
//   Field         a wide, light ruling
//
// Lengths are in the painter's own units (pixels of a screen); whoever paints a PDF scales the
// painter first. Labels keep to the paper and never overlap (see label_placement.h).
#pragma once

#include <QRectF>
#include <QTransform>
#include <QVector>

#include "app/scene/label_placement.h"
#include "app/scene/scene.h"

class QPainter;

namespace fb {

// The labels paintScene() paints, one for each shape that has one, in the scene's order.
[[nodiscard]] QVector<PlacedLabel> sceneLabels(const Scene& scene, const QTransform& cmToDevice,
                                               double textScale, const QRectF& paper,
                                               const QVector<QRectF>& taken = {},
                                               const LabelShyness& shyness = {});

// Where a leader leaves its label: at the side that looks at the anchor.
[[nodiscard]] QPointF leaderStart(const PlacedLabel& placed);

// paper: where labels may go, in the painter's units; empty: the painter's whole window.
// taken, shyness: see placeLabels().
void paintScene(QPainter& painter, const Scene& scene, const Scheme& scheme, const QTransform& cmToDevice,
                double textScale, const QRectF& paper = {}, const QVector<QRectF>& taken = {},
                const LabelShyness& shyness = {});

// Parallel lines across a polygon, `spacing` apart at `degrees` from the horizontal; none of them
// on the areas that lie over it.
[[nodiscard]] QVector<QLineF> ruled(const QPolygonF& polygon, double degrees, double spacing,
                                    const QVector<QPolygonF>& over = {});

}  // namespace fb
