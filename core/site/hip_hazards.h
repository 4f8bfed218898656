// What a needle can hit about the hip: bone, then the strikes in the order the flags are asked
// (round the trochanter, above the crest, sciatic side, dorsogluteal), and what is near.
#pragma once

#include <vector>

#include "core/policy/policy.h"
#include "core/site/hazard.h"
#include "core/site/hip.h"

namespace fb {

// `behind` bounds the dorsogluteal territory in front: from the crest down to the trochanter.
[[nodiscard]] std::vector<Hazard> hipHazards(const Policy& policy, const Hip& hip,
                                             const std::vector<Point>& behind);

}  // namespace fb
