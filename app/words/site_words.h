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
// "Mark the deltoid site, left arm", "Mark the ventrogluteal site, right hip"
[[nodiscard]] QString requestText(Site site, Side side);
// The same where the site is to be found by hand before it is marked.
[[nodiscard]] QString findingRequestText(Site site, Side side);
// The key as in Target::landmarks; empty for a key that has no name.
[[nodiscard]] QString landmarkName(std::string_view key);

[[nodiscard]] QString conventionName(Convention convention);
// The rule with its numbers, those of this body included.
[[nodiscard]] QString conventionRule(Convention convention, const Policy& policy, const Target& target);
// Where a number of the policy comes from: what ships is said in the user's language, what a
// lab wrote as it wrote it.
[[nodiscard]] QString policySource(const Policy& policy, PolicyKey key);
// Where a convention's numbers come from, one source a line.
[[nodiscard]] QString conventionSource(Convention convention, const Policy& policy);

// Whether a target's centimetres run along the skin or straight across the picture.
[[nodiscard]] QString measureNote(const Target& target);

// The caution that is always in sight.
[[nodiscard]] QString cautionSentence();

// One decimal, with the unit; never a negative zero.
[[nodiscard]] QString cmText(double cm);

}  // namespace fb
