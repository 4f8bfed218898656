#include "core/session/attempt.h"

#include <utility>

namespace fb {

Attempt markedAttempt(const Target& target, const Policy& policy, const Request& request, Point mark,
                      MarkedLimb limb)
{
    Grade grade = gradeMark(target, policy, mark, limb);
    const Point off{grade.offAnterior.value() / target.scale, grade.offDistal.value() / target.scale};
    const auto& finding = request.finding;
    const bool missed = finding && rulesOut(*finding, request.site, request.patient.side());
    if (missed) {
        grade.verdict = Verdict::Unsafe;
        grade.points = 0.0;
    }
    return {request, std::nullopt, mark, grade, off, std::nullopt, missed};
}

Attempt foundByHand(Attempt attempt, const Target& target, const Policy& policy, std::vector<Flag> flags,
                    Build build)
{
    attempt.byHand = gradeByHand(target, policy, flags, build, attempt.grade);
    attempt.flags = std::move(flags);
    attempt.build = std::move(build);
    if (!attempt.missedFinding)
        attempt.grade.points = attempt.byHand->points;
    return attempt;
}

Attempt refusedAttempt(const Policy& policy, const Request& request, FindingCode reason, double weight)
{
    const RefusalOutcome outcome = refused(request.finding, request.site, request.patient.side(), reason);
    Grade grade;
    switch (outcome) {
    case RefusalOutcome::RightReason:
        grade.verdict = Verdict::OnTarget;
        grade.points = policy.value(PolicyKey::PointsRefusedRight) * weight;
        break;
    case RefusalOutcome::WrongReason:
        grade.verdict = Verdict::Acceptable;
        grade.points = policy.value(PolicyKey::PointsRefusedWrongReason) * weight;
        break;
    case RefusalOutcome::NothingRulesOut: grade.verdict = Verdict::OffTarget; break;
    }
    return {request, std::nullopt, {}, grade, {}, Refusal{reason, outcome}, false};
}

}  // namespace fb
