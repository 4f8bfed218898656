// What a site found by hand came to: the flags, the three parts, and what went wrong first.
#pragma once

#include <QString>

#include "core/grade/by_hand_grade.h"
#include "core/site/target.h"

namespace fb {

[[nodiscard]] QString flagVerdictName(FlagVerdict verdict);
// "Greater trochanter: found, 0.4 cm away."
[[nodiscard]] QString flagSentence(const FlagGrade& flag, Site site);

// "Landmarks found", "Built right", "Marked right"
[[nodiscard]] QString partHeading(Cause::Part part);
[[nodiscard]] bool isRight(const ByHandGrade& grade, Cause::Part part);
// "3 of 4", "all 6 steps", the verdict of the mark
[[nodiscard]] QString partVerdict(const ByHandGrade& grade, const Grade& mark, Cause::Part part);

// What went wrong first, or that nothing did.
[[nodiscard]] QString firstCauseSentence(const ByHandGrade& grade);
// Of one cause, in one sentence.
[[nodiscard]] QString causeSentence(const Cause& cause);
// "The point is right, but your hand would not have led you there."; empty unless it was lucky.
[[nodiscard]] QString luckySentence(const ByHandGrade& grade);
// That a slip in the construction is noted and not counted; empty where the policy counts it.
[[nodiscard]] QString notedOnlySentence(const Policy& policy);

}  // namespace fb
