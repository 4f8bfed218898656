#include "app/scene/sign_paths.h"

namespace fb {

QPainterPath openPath(const QPolygonF& outline)
{
    QPainterPath path;
    path.addPolygon(outline);
    return path;
}

QPainterPath closedPath(const QPolygonF& outline)
{
    QPainterPath path = openPath(outline);
    path.closeSubpath();
    return path;
}

QPainterPath lozengeAt(QPointF at, double r)
{
    return closedPath(
        QPolygonF{at - QPointF(0, r), at + QPointF(r, 0), at + QPointF(0, r), at - QPointF(r, 0)});
}

QPainterPath squareAt(QPointF at, double r)
{
    QPainterPath path;
    path.addRect(QRectF(at - QPointF(r, r), at + QPointF(r, r)));
    return path;
}

QPainterPath crossedRingAt(QPointF at, double r, double out)
{
    QPainterPath path;
    path.addEllipse(at, r, r);
    path.moveTo(at - QPointF(out, 0));
    path.lineTo(at + QPointF(out, 0));
    path.moveTo(at - QPointF(0, out));
    path.lineTo(at + QPointF(0, out));
    return path;
}

ArrowPaths arrowAlong(QLineF line, double spare, double headLength)
{
    constexpr double kLeastSpares = 2.6;
    if (line.length() < kLeastSpares * spare)
        return {};
    line.setLength(line.length() - spare);
    const QLineF unit = line.unitVector();
    const QPointF along(unit.dx(), unit.dy());
    const QPointF across(-along.y(), along.x());
    const QPointF tip = line.p2();
    ArrowPaths arrow;
    arrow.shaft.moveTo(line.p1() + along * spare);
    arrow.shaft.lineTo(tip - along * headLength * 0.7);
    arrow.head.moveTo(tip);
    arrow.head.lineTo(tip - along * headLength + across * headLength * 0.34);
    arrow.head.lineTo(tip - along * headLength * 0.72);
    arrow.head.lineTo(tip - along * headLength - across * headLength * 0.34);
    arrow.head.closeSubpath();
    return arrow;
}

}  // namespace fb
