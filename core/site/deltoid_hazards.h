// What a needle can hit about the deltoid: strikes first, in the order they are asked.
#pragma once

#include <vector>

#include "core/policy/policy.h"
#include "core/site/arm.h"
#include "core/site/hazard.h"

namespace fb {

// Bone, then the strikes (above the taught band; below armpit level; low on the back of the
// arm), then the near structures (lower edge of the bursa; axillary nerve in front, behind).
// Skin polygons reach across the whole plane where a strike does; plane polygons stop at the
// visible edges of the arm and at the acromion. On an arm whose armpit level lies above the nerve's least
// distance the back of the arm is no strike of its own: it lies below armpit level already.
[[nodiscard]] std::vector<Hazard> deltoidHazards(const Policy& policy, const Arm& arm);

}  // namespace fb
