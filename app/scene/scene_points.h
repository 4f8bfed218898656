// Core's places and figures as a scene has them.
#pragma once

#include <QPointF>
#include <QVector>
#include <vector>

#include "app/scene/scene.h"
#include "core/site/construction.h"

namespace fb {

[[nodiscard]] inline QPointF toScene(Point p) { return {p.x, p.y}; }

[[nodiscard]] inline QVector<QPointF> toScene(const std::vector<Point>& points)
{
    QVector<QPointF> made;
    made.reserve(static_cast<qsizetype>(points.size()));
    for (const Point p : points)
        made.push_back(toScene(p));
    return made;
}

[[nodiscard]] inline Figure figureOf(FigureKind kind)
{
    switch (kind) {
    case FigureKind::Point: return Figure::Point;
    case FigureKind::Line: return Figure::Line;
    case FigureKind::Closed: return Figure::Closed;
    }
    return Figure::Line;
}

}  // namespace fb
