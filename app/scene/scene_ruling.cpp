#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "app/scene/scene_painter.h"

namespace fb {

QVector<QLineF> ruled(const QPolygonF& polygon, double degrees, double spacing)
{
    QVector<QLineF> lines;
    if (polygon.size() < 3 || spacing <= 0.0)
        return lines;
    QTransform turn;
    turn.rotate(-degrees);
    const QPolygonF turned = turn.map(polygon);
    const QTransform back = turn.inverted();
    const QRectF bounds = turned.boundingRect();
    for (double y = (std::floor(bounds.top() / spacing) + 0.5) * spacing; y < bounds.bottom(); y += spacing) {
        QVector<double> cuts;
        for (qsizetype i = 0; i < turned.size(); ++i) {
            const QPointF a = turned[i];
            const QPointF b = turned[(i + 1) % turned.size()];
            if ((a.y() <= y) != (b.y() <= y))
                cuts.push_back(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
        }
        std::sort(cuts.begin(), cuts.end());
        for (qsizetype i = 0; i + 1 < cuts.size(); i += 2)
            lines.push_back(back.map(QLineF(cuts[i], y, cuts[i + 1], y)));
    }
    return lines;
}

}  // namespace fb
