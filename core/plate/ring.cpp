#include "core/plate/ring.h"

#include <cmath>

namespace fb {

std::size_t pieceCount(const Ring& ring) { return ring.points.size() < 4 ? 0 : (ring.points.size() - 1) / 3; }

Cubic piece(const Ring& ring, std::size_t index)
{
    const std::size_t i = 3 * index;
    return {ring.points[i], ring.points[i + 1], ring.points[i + 2], ring.points[i + 3]};
}

Ring cut(const Ring& ring, double longest)
{
    Ring result{{ring.points.front()}, ring.closed};
    for (std::size_t i = 0; i < pieceCount(ring); ++i) {
        Cubic rest = piece(ring, i);
        const int parts = std::max(1, static_cast<int>(std::ceil(rest.span() / longest)));
        for (int left = parts; left > 1; --left) {
            const auto [head, tail] = rest.split(1.0 / left);
            result.points.insert(result.points.end(), {head.b, head.c, head.d});
            rest = tail;
        }
        result.points.insert(result.points.end(), {rest.b, rest.c, rest.d});
    }
    return result;
}

std::vector<Point> flattened(const Ring& ring, int perPiece)
{
    std::vector<Point> points;
    for (std::size_t i = 0; i < pieceCount(ring); ++i) {
        const Cubic curve = piece(ring, i);
        for (int k = 0; k < perPiece; ++k)
            points.push_back(curve.at(static_cast<double>(k) / perPiece));
    }
    if (!ring.closed)
        points.push_back(ring.points.back());
    return points;
}

bool covers(const std::vector<Ring>& rings, Point p)
{
    bool inside = false;
    for (const Ring& ring : rings) {
        const std::vector<Point> outline = flattened(ring);
        Point a = outline.back();
        for (const Point b : outline) {
            if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
                inside = !inside;
            a = b;
        }
    }
    return inside;
}

}  // namespace fb
