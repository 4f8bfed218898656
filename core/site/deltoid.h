// The deltoid site: five conventions, one region each, with construction and hazards.
//
// Every region is a rectangle in skin coordinates about the mid-lateral line, kept between the
// upper strike line (joint and bursa) and armpit level. d is the distance below the
// acromion's lateral edge.
#pragma once

#include "core/basics/enums.h"
#include "core/policy/policy.h"
#include "core/site/arm.h"
#include "core/site/target.h"

namespace fb {

// Distances below the acromion, cm.
struct DeltoidBand {
    double top = 0.0;
    double bottom = 0.0;
    double ideal = 0.0;
    double halfWidth = 0.0;  // skin cm either side of the mid-lateral line
};

// The convention's band on an arm of this length, before and after it is held between the
// strike line and armpit level. The ideal point lies inside the held band.
[[nodiscard]] DeltoidBand deltoidBand(Convention convention, const Policy& policy, double armLength);
[[nodiscard]] DeltoidBand heldBand(DeltoidBand band, const Policy& policy, double armLength,
                                   double axillaDepth);

// The target; view, side, landmarks and levels are filled in by locate().
[[nodiscard]] Target deltoidTarget(Convention convention, const Policy& policy, const Arm& arm);

}  // namespace fb
