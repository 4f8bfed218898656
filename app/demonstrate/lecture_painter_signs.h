// What the speaker does over a demonstration's plate, painted: strokes of two pens that can be told without
// colour, the pointer, the spotlight, the magnifier. Lengths are units of the painter (see
// lecture_painter_page.h).
#pragma once

#include <QPolygonF>
#include <QRectF>

#include "app/demonstrate/lecture_face.h"

class QPainter;

namespace fb {

void paintStroke(QPainter& painter, const QPolygonF& line, PenInk ink, PenLine style, const Scheme& scheme);
// A ring with a dot.
void paintPointer(QPainter& painter, QPointF at, const Scheme& scheme);
// Dims all of the plate but a circle.
void paintSpotlight(QPainter& painter, QPointF at, const QRectF& plate, const Scheme& scheme);

// How far these reach: the pen's ink from its line, and from where the speaker points whatever tells of it.
[[nodiscard]] double penReach();
[[nodiscard]] double pointerReach(LectureTool tool, bool spotlight);

// The plate larger within a round lens about the pointer, drawn anew so that its lines stay fine.
// cmToUnits: of the pane; unit: pixels of the device to a unit. Nothing without a drawing.
struct LensPlace {
    QPointF at;
    QRectF plate;
    QTransform cmToUnits;
    double unit = 1.0;
};
void paintLens(QPainter& painter, const LectureFace& face, const LensPlace& place);

}  // namespace fb
