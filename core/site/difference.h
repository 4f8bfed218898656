// How the ideal points of two targets lie to each other: of two bodies at one site by one convention, or of
// two conventions on one body. Both are seen from the first landmark, the origin of either frame.
#pragma once

#include "core/site/target.h"

namespace fb {

struct TargetDifference {
    Cm apart;    // straight across the picture
    Cm lower;    // of the second from the first, down the limb (on the hip to the feet); negative: higher
    Cm forward;  // to the front, along the skin where the surface is round; negative: further back
};

// Both of one site, side and view.
[[nodiscard]] TargetDifference differenceOf(const Target& first, const Target& second);

}  // namespace fb
