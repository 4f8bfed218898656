// One call from patient to target.
#pragma once

#include <vector>

#include "core/basics/problem.h"
#include "core/body/body_map.h"
#include "core/body/patient.h"
#include "core/body/proportions.h"
#include "core/plate/plate.h"
#include "core/policy/policy.h"
#include "core/site/target.h"

namespace fb {

// The plates and tables a target is computed from; they outlive every Atlas that names them.
struct Atlas {
    const Plate* side = nullptr;          // shoulder-side: where the deltoid is asked
    const Plate* threeQuarter = nullptr;  // show only
    const Proportions* proportions = nullptr;

    [[nodiscard]] const Plate& plate(View view) const
    {
        return view == View::ShoulderSide ? *side : *threeQuarter;
    }
};

// The body map of this patient on the plate of a view.
[[nodiscard]] Result<BodyMap> bodyMap(const Atlas& atlas, View view, const Patient& patient);

// The target of a site by a convention, in a view. In a show-only view region, ideal point and
// construction are the side view's, laid round the limb and projected.
[[nodiscard]] Result<Target> locate(const Atlas& atlas, const Policy& policy, const Patient& patient,
                                    Convention convention, View view);

struct OtherConvention {
    Convention convention{};
    Point ideal;  // viewer's frame, cm
};

// The ideal points of every other convention of the same site on the same body.
[[nodiscard]] std::vector<OtherConvention> otherConventions(const Atlas& atlas, const Policy& policy,
                                                            const Patient& patient, Convention chosen,
                                                            View view);

}  // namespace fb
