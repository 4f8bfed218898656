// An answer from an attempt, and the attempt again from the answer.
#include "core/session/answer.h"

#include <algorithm>

namespace fb {

namespace answer_detail {

// What a flawless attempt earns. A construction that is only noted earns nothing, and so nothing is asked
// for it.
double fullPoints(const Attempt& attempt, const Policy& policy)
{
    using enum PolicyKey;
    if (!attempt.byHand)
        return policy.value(PointsOnTarget);
    const double build = policy.value(BuildCounts) > 0.5 ? policy.value(WeightBuild) : 0.0;
    return policy.value(WeightLandmarks) + build + policy.value(WeightMark);
}

// A refusal earns what the policy gives it against a mark, whatever the weight of the item.
double earned(const Attempt& attempt, const Policy& policy)
{
    if (!attempt.refusal)
        return attempt.grade.points;
    switch (attempt.refusal->outcome) {
    case RefusalOutcome::RightReason: return policy.value(PolicyKey::PointsRefusedRight);
    case RefusalOutcome::WrongReason: return policy.value(PolicyKey::PointsRefusedWrongReason);
    case RefusalOutcome::NothingRulesOut: break;
    }
    return 0.0;
}

void copyGrade(Answer& answer, const Grade& grade)
{
    answer.distanceToIdeal = grade.distanceToIdeal;
    answer.offDistal = grade.offDistal;
    answer.offAnterior = grade.offAnterior;
    answer.direction = grade.reason.direction;
    answer.hazard = grade.hazard;
}

}  // namespace answer_detail

Answer unanswered(int item, const Request& request, Convention convention)
{
    Answer answer{item, request, convention};
    answer.timeUp = true;
    return answer;
}

Answer answerOf(int item, const Attempt& attempt, Convention convention, const Policy& policy)
{
    Answer answer{item, attempt.request, convention};
    answer.verdict = attempt.grade.verdict;
    const double full = answer_detail::fullPoints(attempt, policy);
    if (full > 0.0)
        answer.points = std::clamp(answer_detail::earned(attempt, policy) / full, 0.0, 1.0);
    if (attempt.refusal) {
        answer.refusal = attempt.refusal->reason;
        return answer;
    }
    answer.mark = attempt.mark;
    answer_detail::copyGrade(answer, attempt.grade);
    answer.byHand = attempt.byHand.has_value();
    answer.flags = attempt.flags;
    answer.build = attempt.build;
    return answer;
}

Result<Attempt> regraded(const Answer& answer, const Atlas& atlas, const Policy& policy)
{
    const Request& request = answer.request;
    if (answer.refusal)
        return refusedAttempt(policy, request, *answer.refusal, 1.0);
    if (answer.timeUp || !answer.mark) {
        Attempt nothing{request, std::nullopt, {}, {}, {}};
        nothing.grade.verdict = Verdict::OffTarget;
        return nothing;
    }
    const auto target = locate(atlas, policy, request.patient, answer.convention, request.view);
    if (!target)
        return tl::unexpected(target.error());
    const auto map = bodyMap(atlas, request.view, request.patient);
    if (!map)
        return tl::unexpected(map.error());
    const auto limb = markedLimb(atlas.plate(request.view), *map, request.patient.side(), *answer.mark);
    if (!limb)
        return tl::unexpected(limb.error());
    Attempt attempt = markedAttempt(*target, policy, request, *answer.mark, *limb);
    if (answer.byHand && answer.build)
        return foundByHand(std::move(attempt), *target, policy, answer.flags, *answer.build);
    return attempt;
}

}  // namespace fb
