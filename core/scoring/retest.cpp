#include "core/scoring/retest.h"

#include <algorithm>
#include <array>

namespace fb {

namespace retest_detail {

constexpr std::array<std::string_view, kStandingCount> kStandingWords{
    "not_tried", "running", "passed", "remediation_due", "waiting", "may_retest", "out_of_attempts"};

bool usesAttempt(const PastAttempt& attempt, const RetestRule& rule)
{
    if (attempt.outcome == Outcome::NoShow)
        return rule.noShowCounts;
    return attempt.outcome != Outcome::VoidTechnical;
}

Standing afterFail(const PastAttempt& failed, const RetestRule& rule, Day earliest, Day today)
{
    if (rule.remediationFirst && !failed.remediationSigned)
        return Standing::RemediationDue;
    return today < earliest ? Standing::Waiting : Standing::MayRetest;
}

}  // namespace retest_detail

using namespace retest_detail;

WhereTheyStand standing(const RetestRule& rule, std::span<const PastAttempt> past, bool running, Day today)
{
    WhereTheyStand where{Standing::NotTried, 0, rule.attempts, {}, false};
    const PastAttempt* last = nullptr;
    for (const PastAttempt& attempt : past) {
        if (!usesAttempt(attempt, rule))
            continue;
        ++where.used;
        last = &attempt;
        if (attempt.outcome == Outcome::Pass)
            break;
    }
    const bool passed = last != nullptr && last->outcome == Outcome::Pass;
    where.needsSecondAssessor = rule.secondAssessorOnLast && !passed && where.used + 1 == rule.attempts;
    if (running) {
        where.standing = Standing::Running;
    } else if (passed) {
        where.standing = Standing::Passed;
    } else if (where.used >= rule.attempts) {
        where.standing = Standing::OutOfAttempts;
    } else if (last != nullptr) {
        where.earliest = last->on + std::chrono::days{rule.daysBetween};
        where.standing = afterFail(*last, rule, *where.earliest, today);
    }
    return where;
}

std::string_view wordOf(Standing standing) { return kStandingWords[static_cast<std::size_t>(standing)]; }

std::optional<Standing> standingFrom(std::string_view word)
{
    const auto found = std::ranges::find(kStandingWords, word);
    if (found == kStandingWords.end())
        return std::nullopt;
    return static_cast<Standing>(found - kStandingWords.begin());
}

}  // namespace fb
