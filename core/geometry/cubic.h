// One cubic Bezier piece.
#pragma once

#include <utility>

#include "core/geometry/point.h"

namespace fb {

struct Cubic {
    Point a, b, c, d;  // start, two handles, end

    [[nodiscard]] Point at(double t) const
    {
        const double s = 1.0 - t;
        return a * (s * s * s) + b * (3.0 * s * s * t) + c * (3.0 * s * t * t) + d * (t * t * t);
    }

    // Length of the handle polygon: never shorter than the curve.
    [[nodiscard]] double span() const { return distance(a, b) + distance(b, c) + distance(c, d); }

    // The two parts, before and after t; together they are the same curve.
    [[nodiscard]] std::pair<Cubic, Cubic> split(double t) const
    {
        const Point ab = lerp(a, b, t);
        const Point bc = lerp(b, c, t);
        const Point cd = lerp(c, d, t);
        const Point abc = lerp(ab, bc, t);
        const Point bcd = lerp(bc, cd, t);
        const Point middle = lerp(abc, bcd, t);
        return {Cubic{a, ab, abc, middle}, Cubic{middle, bcd, cd, d}};
    }

    // A straight piece in the same clothes.
    [[nodiscard]] static Cubic line(Point from, Point to)
    {
        return {from, lerp(from, to, 1.0 / 3.0), lerp(from, to, 2.0 / 3.0), to};
    }
};

}  // namespace fb
