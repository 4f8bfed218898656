// One call from patient to target.
#pragma once

#include <array>
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
// A plate that is not needed may be null.
struct Atlas {
    std::array<const Plate*, kViews.size()> plates{};
    const Proportions* proportions = nullptr;

    [[nodiscard]] const Plate& plate(View view) const { return *plates[static_cast<std::size_t>(view)]; }
    [[nodiscard]] bool holds(View view) const { return plates[static_cast<std::size_t>(view)] != nullptr; }
};

// The plates a target shown in this view is computed from: the view's own, the one its site is
// asked in, and for a thigh both.
[[nodiscard]] std::vector<View> neededPlates(View view);

// The body map of this patient on the plate of a view.
[[nodiscard]] Result<BodyMap> bodyMap(const Atlas& atlas, View view, const Patient& patient);

// The target of a site by a convention, in a view of that site. In a show-only view region,
// ideal point and construction are those of the view that is asked, projected.
// ConventionOfAnotherSite when convention and view do not belong together.
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
