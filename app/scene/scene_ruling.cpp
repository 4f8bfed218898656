#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "app/scene/scene_painter.h"

namespace fb {

namespace ruling_detail {

// Where a level line enters and leaves a polygon, in pairs.
QVector<double> cutsOf(const QPolygonF& polygon, double y)
{
    QVector<double> cuts;
    for (qsizetype i = 0; i < polygon.size(); ++i) {
        const QPointF a = polygon[i];
        const QPointF b = polygon[(i + 1) % polygon.size()];
        if ((a.y() <= y) != (b.y() <= y))
            cuts.push_back(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
    }
    std::sort(cuts.begin(), cuts.end());
    return cuts;
}

// What is left of the stretches in `from` without those in `gone`; both in pairs.
QVector<double> without(const QVector<double>& from, const QVector<double>& gone)
{
    QVector<double> left;
    for (qsizetype i = 0; i + 1 < from.size(); i += 2) {
        double at = from[i];
        for (qsizetype k = 0; k + 1 < gone.size() && gone[k] < from[i + 1]; k += 2) {
            if (gone[k] > at)
                left += {at, gone[k]};
            at = std::max(at, gone[k + 1]);
        }
        if (at < from[i + 1])
            left += {at, from[i + 1]};
    }
    return left;
}

}  // namespace ruling_detail

QVector<QLineF> ruled(const QPolygonF& polygon, double degrees, double spacing,
                      const QVector<QPolygonF>& over)
{
    QVector<QLineF> lines;
    if (polygon.size() < 3 || spacing <= 0.0)
        return lines;
    QTransform turn;
    turn.rotate(-degrees);
    const QPolygonF turned = turn.map(polygon);
    QVector<QPolygonF> turnedOver;
    for (const QPolygonF& other : over)
        turnedOver.push_back(turn.map(other));
    const QTransform back = turn.inverted();
    const QRectF bounds = turned.boundingRect();
    for (double y = (std::floor(bounds.top() / spacing) + 0.5) * spacing; y < bounds.bottom(); y += spacing) {
        QVector<double> cuts = ruling_detail::cutsOf(turned, y);
        for (const QPolygonF& other : turnedOver)
            cuts = ruling_detail::without(cuts, ruling_detail::cutsOf(other, y));
        for (qsizetype i = 0; i + 1 < cuts.size(); i += 2)
            lines.push_back(back.map(QLineF(cuts[i], y, cuts[i + 1], y)));
    }
    return lines;
}

}  // namespace fb
