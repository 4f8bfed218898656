#include "core/geometry/clip.h"

#include <utility>

namespace fb {

std::optional<Polygon> clipped(const Polygon& polygon, const HalfPlane& keep)
{
    const auto excess = [&keep](Point p) { return dot(keep.normal, p) - keep.offset; };
    std::vector<Point> kept;
    Point a = polygon.corners().back();
    double ea = excess(a);
    for (const Point b : polygon.corners()) {
        const double eb = excess(b);
        if ((ea > 0.0) != (eb > 0.0))
            kept.push_back(lerp(a, b, ea / (ea - eb)));
        if (eb <= 0.0)
            kept.push_back(b);
        a = b;
        ea = eb;
    }
    return Polygon::make(std::move(kept));
}

}  // namespace fb
