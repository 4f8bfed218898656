// The shipped plates, proportions and policy, read from the source tree once per test run.
#pragma once

#include <string>

#include "core/policy/policy.h"
#include "core/site/locate.h"

namespace fb::test {

// A file of the source tree; a missing one fails the test at once.
[[nodiscard]] std::string sourceFile(const std::string& path);

[[nodiscard]] const Plate& plateOf(View view);  // the open hand's too
[[nodiscard]] inline const Plate& sidePlate() { return plateOf(View::ShoulderSide); }
[[nodiscard]] inline const Plate& threeQuarterPlate() { return plateOf(View::ShoulderThreeQuarter); }
[[nodiscard]] const Proportions& proportions();
[[nodiscard]] const Policy& defaultPolicy();
[[nodiscard]] Atlas atlas();

// A mean adult of 35 years; invalid numbers fail the test at once.
[[nodiscard]] Patient adult(Sex sex, double statureCm, double weightKg, Side side = Side::Right,
                            double ageYears = 35.0);
// The weight of a body-mass index at a stature.
[[nodiscard]] double weightOf(double bodyMassIndex, double statureCm);

}  // namespace fb::test
