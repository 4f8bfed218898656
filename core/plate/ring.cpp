#include "core/plate/ring.h"

#include <algorithm>
#include <cmath>

namespace fb {

namespace ring_detail {

// A curve lies within the hull of its handles: above, below or wholly to the left of a point none
// of its chords is met by the ray to the right.
bool cannotCross(const Cubic& curve, Point end, Point p)
{
    constexpr double kSlack = 1e-9;  // cm
    const auto y = std::minmax({curve.a.y, curve.b.y, curve.c.y, curve.d.y, end.y});
    const double right = std::max({curve.a.x, curve.b.x, curve.c.x, curve.d.x, end.x});
    return p.y < y.first - kSlack || p.y > y.second + kSlack || p.x > right + kSlack;
}

}  // namespace ring_detail

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
    constexpr int kChords = 8;
    bool inside = false;
    const auto cross = [&](Point a, Point b) {
        if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
            inside = !inside;
    };
    for (const Ring& ring : rings) {
        const std::size_t pieces = pieceCount(ring);
        for (std::size_t i = 0; i < pieces; ++i) {
            const Cubic curve = piece(ring, i);
            const Point end = ring.closed && i + 1 == pieces ? ring.points.front() : curve.d;
            if (ring_detail::cannotCross(curve, end, p))
                continue;
            Point a = curve.a;
            for (int k = 1; k < kChords; ++k) {
                const Point b = curve.at(static_cast<double>(k) / kChords);
                cross(a, b);
                a = b;
            }
            cross(a, end);
        }
        if (!ring.closed && pieces > 0)
            cross(ring.points.back(), ring.points.front());
    }
    return inside;
}

}  // namespace fb
