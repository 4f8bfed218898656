// A place on one patient that goes along when the body changes: the limb it lies on and where on the plate.
//
// Law: on the body it was made of, the place comes back to within 1e-3 cm.
#pragma once

#include <optional>

#include "core/basics/enums.h"
#include "core/body/body_map.h"
#include "core/geometry/point.h"

namespace fb {

struct Anchor {
    int limb = 0;
    Point plate;  // right-sided frame of the plate, cm

    friend bool operator==(const Anchor&, const Anchor&) = default;
};

// nullopt off the body: such a place stays where it is.
[[nodiscard]] std::optional<Anchor> anchorOf(const Plate& plate, const BodyMap& map, Side side, Point viewer);
[[nodiscard]] Point placeOf(const Anchor& anchor, const BodyMap& map, Side side);

}  // namespace fb
