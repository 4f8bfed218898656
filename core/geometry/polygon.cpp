#include "core/geometry/polygon.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace fb {

namespace polygon_detail {

// The edge a-b has length: Polygon::make sees to that.
Point nearestOnSegment(Point a, Point b, Point p)
{
    const Point ab = b - a;
    return a + ab * std::clamp(dot(p - a, ab) / dot(ab, ab), 0.0, 1.0);
}

}  // namespace polygon_detail

double signedArea(std::span<const Point> ring)
{
    double twice = 0.0;
    for (std::size_t i = 0, n = ring.size(); i < n; ++i)
        twice += cross(ring[i], ring[(i + 1) % n]);
    return twice / 2.0;
}

Bounds boundsOf(std::span<const Point> points)
{
    Bounds box{points.front(), points.front()};
    for (const Point p : points) {
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    return box;
}

std::optional<Polygon> Polygon::make(std::vector<Point> corners)
{
    if (!std::ranges::all_of(corners, isFinite))
        return std::nullopt;
    // A repeated corner would make an edge of no length.
    corners.erase(std::unique(corners.begin(), corners.end()), corners.end());
    while (corners.size() > 1 && corners.front() == corners.back())
        corners.pop_back();
    if (corners.size() < 3)
        return std::nullopt;
    const double area = signedArea(corners);
    if (std::abs(area) < 1e-9)
        return std::nullopt;
    if (area < 0.0)
        std::ranges::reverse(corners);
    return Polygon(std::move(corners));
}

Polygon Polygon::rectangle(double left, double right, double bottom, double top)
{
    return Polygon({{left, bottom}, {right, bottom}, {right, top}, {left, top}});
}

Polygon::Polygon(std::vector<Point> corners) : m_corners(std::move(corners))
{
    m_bounds = boundsOf(m_corners);
}

double Polygon::area() const { return signedArea(m_corners); }

Point Polygon::centroid() const
{
    // Taken about the first corner, so that a small polygon far from the origin keeps its digits.
    const Point origin = m_corners.front();
    double twice = 0.0;
    Point sum;
    for (std::size_t i = 0, n = m_corners.size(); i < n; ++i) {
        const Point a = m_corners[i] - origin;
        const Point b = m_corners[(i + 1) % n] - origin;
        const double c = cross(a, b);
        twice += c;
        sum = sum + (a + b) * c;
    }
    return origin + sum * (1.0 / (3.0 * twice));
}

double Polygon::signedDistance(Point p) const
{
    double best = std::numeric_limits<double>::max();
    bool inside = false;
    Point a = m_corners.back();
    for (const Point b : m_corners) {
        const Point d = p - polygon_detail::nearestOnSegment(a, b, p);
        best = std::min(best, dot(d, d));
        if ((a.y > p.y) != (b.y > p.y)) {
            const bool left = cross(b - a, p - a) > 0.0;
            if (left == (b.y > a.y))
                inside = !inside;
        }
        a = b;
    }
    const double away = std::sqrt(best);
    if (away <= kBorderTolerance)
        return 0.0;
    return inside ? -away : away;
}

bool Polygon::contains(Point p) const
{
    const bool near = p.x >= m_bounds.low.x - kBorderTolerance && p.x <= m_bounds.high.x + kBorderTolerance &&
                      p.y >= m_bounds.low.y - kBorderTolerance && p.y <= m_bounds.high.y + kBorderTolerance;
    return near && signedDistance(p) <= 0.0;
}

Point Polygon::nearestBorderPoint(Point p) const
{
    Point best = m_corners.front();
    double bestDistance = std::numeric_limits<double>::max();
    Point a = m_corners.back();
    for (const Point b : m_corners) {
        const Point q = polygon_detail::nearestOnSegment(a, b, p);
        const double d = distance(p, q);
        if (d < bestDistance) {
            bestDistance = d;
            best = q;
        }
        a = b;
    }
    return best;
}

Polygon Polygon::mirrored() const
{
    std::vector<Point> corners;
    corners.reserve(m_corners.size());
    // The first corner stays first, so that mirroring twice restores the very same list.
    corners.push_back(fb::mirrored(m_corners.front()));
    for (std::size_t i = m_corners.size() - 1; i > 0; --i)
        corners.push_back(fb::mirrored(m_corners[i]));
    return Polygon(std::move(corners));
}

}  // namespace fb
