#include "core/scoring/pass_rule.h"

#include <algorithm>
#include <array>

namespace fb {

namespace pass_rule_detail {

constexpr std::array<std::string_view, kOutcomeCount> kOutcomeWords{
    "void_technical", "no_show", "stopped_safety", "fail_critical", "fail_time", "fail_score", "pass"};

// Far below the smallest share of a point, far above what adding up hundreds of parts can lose.
constexpr double kRounding = 1e-9;  // percent

double percentOf(const ScoredCheckOff& scored)
{
    return scored.possible > 0.0 ? 100.0 * scored.earned / scored.possible : 0.0;
}

bool isReasonToFail(Outcome reason, const ScoredCheckOff& scored)
{
    switch (reason) {
    case Outcome::StoppedSafety: return scored.safetyStop;
    case Outcome::FailCritical:
        return scored.criticalMissed > 0 || scored.hardBreaches > 0 || scored.unsafeMarks > 0;
    case Outcome::FailTime: return !scored.timeKept;
    case Outcome::FailScore: return percentOf(scored) + kRounding < scored.cutPercent;
    default: return false;
    }
}

}  // namespace pass_rule_detail

using namespace pass_rule_detail;

Decision decide(const ScoredCheckOff& scored)
{
    Decision decision{Outcome::Pass, {}, percentOf(scored)};
    if (scored.voided || scored.noShow) {
        decision.outcome = scored.voided ? Outcome::VoidTechnical : Outcome::NoShow;
        return decision;
    }
    for (const Outcome reason :
         {Outcome::StoppedSafety, Outcome::FailCritical, Outcome::FailTime, Outcome::FailScore}) {
        if (!isReasonToFail(reason, scored))
            continue;
        if (decision.outcome == Outcome::Pass)
            decision.outcome = reason;
        else
            decision.alsoTrue.push_back(reason);
    }
    return decision;
}

std::string_view wordOf(Outcome outcome) { return kOutcomeWords[static_cast<std::size_t>(outcome)]; }

std::optional<Outcome> outcomeFrom(std::string_view word)
{
    const auto found = std::ranges::find(kOutcomeWords, word);
    if (found == kOutcomeWords.end())
        return std::nullopt;
    return static_cast<Outcome>(found - kOutcomeWords.begin());
}

}  // namespace fb
