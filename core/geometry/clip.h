// Cutting a polygon along a straight line.
#pragma once

#include <optional>

#include "core/geometry/polygon.h"

namespace fb {

// The points q with dot(normal, q) <= offset are kept. The normal need not be of length 1.
struct HalfPlane {
    Point normal;
    double offset = 0.0;

    [[nodiscard]] static HalfPlane below(double y) { return {{0.0, 1.0}, y}; }
    [[nodiscard]] static HalfPlane above(double y) { return {{0.0, -1.0}, -y}; }
};

// The part of a convex polygon in the half-plane; nullopt when nothing with an area is
// left. For a polygon that is not convex the parts may be joined along the cutting line;
// area and containment off that line stay right.
[[nodiscard]] std::optional<Polygon> clipped(const Polygon& polygon, const HalfPlane& keep);

}  // namespace fb
