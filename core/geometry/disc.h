// Discs: as polygons, and taken away from polygons.
#pragma once

#include <optional>

#include "core/geometry/polygon.h"

namespace fb {

struct Disc {
    Point centre;
    double radius = 0.0;  // cm, positive
};

inline constexpr int kDiscCorners = 72;  // of a full turn, on the circle

[[nodiscard]] Polygon discPolygon(const Disc& disc);

// What is left of a simple polygon outside the disc: the largest piece, its new border made of
// chords of the circle no longer than a full turn's over kDiscCorners. nullopt when nothing
// with an area is left. A disc that lies wholly inside the polygon is not cut out: the polygon
// comes back as it was (no region of ours has a hole).
[[nodiscard]] std::optional<Polygon> without(const Polygon& polygon, const Disc& disc);

}  // namespace fb
