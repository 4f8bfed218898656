// What is shown by "Watch once": this patient's site, built as a learner with these measures builds it
// without a slip. Its steps are counted as watchScene() counts those of a target.
#pragma once

#include <optional>

#include "core/build/build.h"

namespace fb {

struct PracticeState;

// The target with the steps that are taught (core/build/laying.h) in place of its own construction.
[[nodiscard]] Target watchedTarget(const Target& target, const Builder& builder);

// The fingers that lie on the arm in the step that is shown, of the hand that does not write: from when they
// are laid until the region is told. nullopt: none, or nothing is shown.
[[nodiscard]] std::optional<LaidFingers> watchedFingers(const PracticeState& state);

}  // namespace fb
