// A simple closed polygon, valid from birth: at least three finite corners and an area
// above 1e-9 cm2. Corners are kept in counter-clockwise order (y up), the closing edge is
// implied.
//
// The edge is a decision: a point on the border counts as inside.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/geometry/point.h"

namespace fb {

struct Bounds {
    Point low;
    Point high;
};

class Polygon {
public:
    // nullopt when the corners do not make a polygon. Clockwise input is turned round.
    [[nodiscard]] static std::optional<Polygon> make(std::vector<Point> corners);
    // Axis-parallel rectangle; left < right and bottom < top are the caller's duty.
    [[nodiscard]] static Polygon rectangle(double left, double right, double bottom, double top);

    [[nodiscard]] const std::vector<Point>& corners() const { return m_corners; }
    [[nodiscard]] double area() const;  // cm2, positive
    [[nodiscard]] Point centroid() const;
    [[nodiscard]] Bounds bounds() const { return m_bounds; }

    // Inside or within 1e-9 cm of the border.
    [[nodiscard]] bool contains(Point p) const;
    // Distance to the border in cm, negative inside, zero on it.
    [[nodiscard]] double signedDistance(Point p) const;
    // The border point nearest to p.
    [[nodiscard]] Point nearestBorderPoint(Point p) const;
    // Mirrored in x = 0; mirroring twice gives the same polygon.
    [[nodiscard]] Polygon mirrored() const;

    friend bool operator==(const Polygon& a, const Polygon& b) { return a.m_corners == b.m_corners; }

private:
    explicit Polygon(std::vector<Point> corners);

    std::vector<Point> m_corners;
    Bounds m_bounds;
};

inline constexpr double kBorderTolerance = 1e-9;  // cm

// Signed area of a ring, positive when counter-clockwise (y up).
[[nodiscard]] double signedArea(std::span<const Point> ring);

// The box about some points; at least one.
[[nodiscard]] Bounds boundsOf(std::span<const Point> points);

}  // namespace fb
