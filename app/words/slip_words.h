// A construction's grade in words: the name of each step, what is wrong with it by how much, and
// what that alone would have done.
#pragma once

#include <QString>

#include "core/grade/build_grade.h"
#include "core/grade/flag_grade.h"
#include "core/site/target.h"

namespace fb {

[[nodiscard]] QString buildStepName(BuildStep step);
// "3.1 cm too low" on an arm, "3.1 cm too far toward the foot" on a hip, "too near the knee" on a
// thigh; aslant both ways, front or back first: "3.9 cm too far back and too high"; "3.1 cm away" without a
// direction.
[[nodiscard]] QString awayText(Site site, Ways ways, Cm amount);
// What is wrong with a step: "Palm: 3.1 cm too low."; of a right one "Right.".
[[nodiscard]] QString slipSentence(const BuildStepGrade& step, const Target& target);
// What the slip alone would have done, harm included; where core gives no effect, what it does in
// general. Empty for a step without a slip.
[[nodiscard]] QString effectSentence(const BuildStepGrade& step, const Target& target);

}  // namespace fb
