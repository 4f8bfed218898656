#include "app/lecture/pen_stroke.h"

#include <algorithm>

namespace fb {

namespace pen_stroke_detail {

Point pointOf(QPointF cm) { return {cm.x(), cm.y()}; }

double distanceToSegment(Point from, Point to, Point at)
{
    const Point along = to - from;
    const double square = dot(along, along);
    const double share = square > 0.0 ? std::clamp(dot(at - from, along) / square, 0.0, 1.0) : 0.0;
    return distance(lerp(from, to, share), at);
}

}  // namespace pen_stroke_detail

int bindPoints(PenStroke& stroke, const LectureBody& body, int most)
{
    const auto whole = static_cast<std::size_t>(stroke.points.size());
    int bound = 0;
    for (; bound < most && stroke.anchors.size() < whole; ++bound) {
        const QPointF cm = stroke.points[static_cast<qsizetype>(stroke.anchors.size())];
        stroke.anchors.push_back(
            anchorOf(*body.plate, *body.map, body.ask.patient.side(), pen_stroke_detail::pointOf(cm)));
    }
    return bound;
}

QVector<QPointF> pointsOn(const PenStroke& stroke, const LectureBody& body)
{
    QVector<QPointF> points = stroke.points;
    const std::size_t count = std::min(stroke.anchors.size(), static_cast<std::size_t>(points.size()));
    for (std::size_t i = 0; i < count; ++i) {
        if (!stroke.anchors[i])
            continue;
        const Point place = placeOf(*stroke.anchors[i], *body.map, body.ask.patient.side());
        points[static_cast<qsizetype>(i)] = {place.x, place.y};
    }
    return points;
}

bool isTouched(const PenStroke& stroke, const LectureBody& body, QPointF cm, double radiusCm)
{
    using namespace pen_stroke_detail;
    const QVector<QPointF> points = pointsOn(stroke, body);
    const Point at = pointOf(cm);
    // A stroke of one point is a dot.
    if (points.size() == 1)
        return distance(pointOf(points.front()), at) <= radiusCm;
    for (qsizetype i = 1; i < points.size(); ++i) {
        if (distanceToSegment(pointOf(points[i - 1]), pointOf(points[i]), at) <= radiusCm)
            return true;
    }
    return false;
}

}  // namespace fb
