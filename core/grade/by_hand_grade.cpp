#include "core/grade/by_hand_grade.h"

#include <algorithm>

namespace fb {

namespace by_hand_detail {

constexpr double kNearShare = 0.5;  // of a landmark's part of the points

bool isWrong(const FlagGrade& grade)
{
    return grade.verdict != FlagVerdict::Found && grade.verdict != FlagVerdict::Near;
}

double flagShare(const std::vector<FlagGrade>& flags)
{
    double share = 0.0;
    for (const FlagGrade& grade : flags) {
        if (grade.verdict == FlagVerdict::Found)
            share += 1.0;
        if (grade.verdict == FlagVerdict::Near)
            share += kNearShare;
    }
    return share / static_cast<double>(flags.size());
}

double stepShare(const std::vector<BuildStepGrade>& steps)
{
    const auto right = std::ranges::count(steps, Slip::None, &BuildStepGrade::slip);
    return static_cast<double>(right) / static_cast<double>(steps.size());
}

// What comes first in the sequence is the cause; what follows from it comes after.
std::optional<Cause> firstCause(const ByHandGrade& grade, bool buildCounts)
{
    const auto flag = std::ranges::find_if(grade.flags, isWrong);
    if (flag != grade.flags.end())
        return Cause{Cause::Part::Landmark, flag->asked, flag->verdict, {}, {}};
    const auto slips = [](const BuildStepGrade& step) { return step.slip != Slip::None; };
    const auto step = std::ranges::find_if(grade.steps, slips);
    if (buildCounts && step != grade.steps.end())
        return Cause{Cause::Part::Build, {}, {}, step->step, step->slip};
    if (!grade.markedRight)
        return Cause{Cause::Part::Mark, {}, {}, {}, {}};
    return std::nullopt;
}

}  // namespace by_hand_detail

using namespace by_hand_detail;

ByHandGrade gradeByHand(const Target& target, const Policy& policy, std::span<const Flag> flags,
                        const Build& build, const Grade& mark)
{
    ByHandGrade grade;
    grade.flags = gradeFlags(target, policy, flags);
    grade.steps = gradeBuild(build, target, Builder::from(policy), policy);
    const bool buildCounts = policy.value(PolicyKey::BuildCounts) > 0.5;
    const bool noSlip =
        std::ranges::all_of(grade.steps, [](const BuildStepGrade& s) { return s.slip == Slip::None; });
    grade.landmarksFound = std::ranges::none_of(grade.flags, isWrong);
    grade.builtRight = noSlip;
    grade.markedRight = mark.verdict == Verdict::OnTarget || mark.verdict == Verdict::Acceptable;
    grade.first = firstCause(grade, buildCounts);
    grade.luckyMark = grade.markedRight && grade.first.has_value();
    grade.points = policy.value(PolicyKey::WeightLandmarks) * flagShare(grade.flags) +
                   (buildCounts ? policy.value(PolicyKey::WeightBuild) * stepShare(grade.steps) : 0.0) +
                   (grade.markedRight ? policy.value(PolicyKey::WeightMark) : 0.0);
    return grade;
}

}  // namespace fb
