// Outlines of the small signs a scene is painted with, in the painter's units (+y down).
#pragma once

#include <QLineF>
#include <QPainterPath>
#include <QPolygonF>

namespace fb {

// A figure from corner to corner: as it is, and back to its first corner.
[[nodiscard]] QPainterPath openPath(const QPolygonF& outline);
[[nodiscard]] QPainterPath closedPath(const QPolygonF& outline);
// `r` is half of a sign's breadth.
[[nodiscard]] QPainterPath lozengeAt(QPointF at, double r);
[[nodiscard]] QPainterPath squareAt(QPointF at, double r);
// A ring of radius r, crossed by two lines that reach `out` from the middle.
[[nodiscard]] QPainterPath crossedRingAt(QPointF at, double r, double out);

// From just beyond the line's start to just short of its end, `spare` at either; both empty for a
// line too short to carry a head.
struct ArrowPaths {
    QPainterPath shaft, head;
};
[[nodiscard]] ArrowPaths arrowAlong(QLineF line, double spare, double headLength);

}  // namespace fb
