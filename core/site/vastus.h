// The vastus lateralis site: two conventions on the outer side of the thigh.
//
// A region runs between two heights along the thigh and two angles round it (degrees from the
// front line, the outer line being 90), laid out on the skin.
#pragma once

#include "core/basics/enums.h"
#include "core/policy/policy.h"
#include "core/site/target.h"
#include "core/site/thigh.h"

namespace fb {

// Shares of the thigh's length below the trochanter.
struct VastusBand {
    double top = 0.0;
    double bottom = 0.0;
    double ideal = 0.0;
};

// The thirds as the policy states them; handbreadths by the hand's own breadth, kept clear of
// the joints at either end.
[[nodiscard]] VastusBand vastusBand(Convention convention, const Policy& policy, double thighLength);

// The target in the view of thigh.sight, right-sided; view, side, landmarks and levels are
// filled in by locate().
[[nodiscard]] Target vastusTarget(Convention convention, const Policy& policy, const Thigh& thigh);

// Bone of the view first, then strikes (joint ends, femoral vessels inside the front line,
// sciatic side behind the outer line), then the near band of the rectus femoris.
[[nodiscard]] std::vector<Hazard> vastusHazards(const Policy& policy, const Thigh& thigh);

}  // namespace fb
