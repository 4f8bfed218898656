// Codes of core in the user's language: names and whole sentences, never glued from pieces.
// Every enumerator has words; numbers come from the policy or the target, shown as the
// user's locale writes them.
#pragma once

#include <QString>
#include <string_view>

#include "core/basics/enums.h"
#include "core/policy/policy.h"
#include "core/session/request.h"
#include "core/site/construction.h"
#include "core/site/hazard.h"
#include "core/site/target.h"

namespace fb {

[[nodiscard]] QString siteName(Site site);
[[nodiscard]] QString sexName(Sex sex);
[[nodiscard]] QString sideName(Side side);
[[nodiscard]] QString viewName(View view);
[[nodiscard]] QString layerName(Layer layer);
[[nodiscard]] QString helpLevelName(HelpLevel level);
[[nodiscard]] QString hazardName(HazardCode code);
[[nodiscard]] QString stepName(StepCode code);
// How the patient sits or lies in a view, with what is bared.
[[nodiscard]] QString postureText(View view);
// "Mark the deltoid site, left arm"
[[nodiscard]] QString requestText(Site site, Side side);
// The key as in Target::landmarks; empty for a key that has no name.
[[nodiscard]] QString landmarkName(std::string_view key);

[[nodiscard]] QString conventionName(Convention convention);
// The rule with its numbers, those of this arm included.
[[nodiscard]] QString conventionRule(Convention convention, const Policy& policy, const Target& target);
// Where those numbers come from, one source a line, as the policy file states it.
[[nodiscard]] QString conventionSource(Convention convention, const Policy& policy);

// The caution that is always in sight.
[[nodiscard]] QString cautionSentence();

// One decimal, with the unit; never a negative zero.
[[nodiscard]] QString cmText(double cm);

}  // namespace fb
