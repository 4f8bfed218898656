// The whole sequence, graded: landmarks found, construction built, mark set; and the first thing
// that went wrong, which the rest follows from.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/grade/build_grade.h"
#include "core/grade/flag_grade.h"
#include "core/grade/grade.h"

namespace fb {

// The first cause: a landmark, a step of the build, or the mark.
struct Cause {
    enum class Part { Landmark, Build, Mark };
    Part part{};
    Landmark landmark{};  // Part::Landmark
    FlagVerdict verdict{};
    BuildStep step{};  // Part::Build
    Slip slip{};

    friend bool operator==(const Cause&, const Cause&) = default;
};

struct ByHandGrade {
    std::vector<FlagGrade> flags;
    std::vector<BuildStepGrade> steps;
    bool landmarksFound = false;
    bool builtRight = false;   // no slip in any step, whether it counts or not
    bool markedRight = false;  // on target or acceptable
    // On target although landmarks or construction were not right.
    bool luckyMark = false;
    std::optional<Cause> first;  // none: flawless; a slip that is only noted is no cause
    double points = 0.0;         // of the policy's three weights
};

// `mark`: as gradeMark gives it for the same target. Whether the construction counts or is only noted is
// the policy's (hands_on.build_counts).
[[nodiscard]] ByHandGrade gradeByHand(const Target& target, const Policy& policy, std::span<const Flag> flags,
                                      const Build& build, const Grade& mark);

}  // namespace fb
