#include "core/scoring/retest.h"

#include <gtest/gtest.h>

#include <ostream>
#include <vector>

namespace retest_test {

namespace fb {

void PrintTo(const WhereTheyStand& where, std::ostream* out)
{
    *out << wordOf(where.standing) << ' ' << where.used << '/' << where.allowed;
    if (where.earliest)
        *out << " from day " << where.earliest->time_since_epoch().count();
    if (where.needsSecondAssessor)
        *out << ", second assessor";
}

}  // namespace fb

using namespace fb;

namespace {

using namespace std::chrono_literals;
using enum Outcome;

constexpr Day day(int year, unsigned month, unsigned ofMonth)
{
    return std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{ofMonth};
}

constexpr Day kMonday = day(2026, 11, 23);
constexpr Day kTuesday = day(2026, 11, 24);
constexpr Day kWednesday = day(2026, 11, 25);

PastAttempt open(Outcome outcome, Day on) { return {outcome, on, false}; }
PastAttempt remedied(Outcome outcome, Day on) { return {outcome, on, true}; }

WhereTheyStand after(const std::vector<PastAttempt>& past, Day today, const RetestRule& rule = {})
{
    return standing(rule, past, false, today);
}

}  // namespace

TEST(RetestTest, WhoNeverTriedHasAllAttempts)
{
    EXPECT_EQ(after({}, kMonday), (WhereTheyStand{Standing::NotTried, 0, 3, {}, false}));
}

TEST(RetestTest, APassEndsIt)
{
    EXPECT_EQ(after({open(Pass, kMonday)}, kMonday), (WhereTheyStand{Standing::Passed, 1, 3, {}, false}));
    EXPECT_EQ(after({remedied(FailTime, kMonday), open(Pass, kTuesday)}, kTuesday),
              (WhereTheyStand{Standing::Passed, 2, 3, {}, false}))
        << "and leaves no second assessor to ask for";
    EXPECT_EQ(after({open(Pass, kMonday), open(FailScore, kTuesday)}, kTuesday),
              (WhereTheyStand{Standing::Passed, 1, 3, {}, false}));
}

TEST(RetestTest, EveryWayToFailUsesAnAttemptAndAsksForRemediation)
{
    for (const Outcome outcome : {StoppedSafety, FailCritical, FailTime, FailScore})
        EXPECT_EQ(after({open(outcome, kMonday)}, kWednesday),
                  (WhereTheyStand{Standing::RemediationDue, 1, 3, kTuesday, false}))
            << wordOf(outcome);
}

// A handbook: each try on a different day.
TEST(RetestTest, NobodyRetestsOnTheSameDay)
{
    const std::vector past{remedied(FailScore, kMonday)};
    EXPECT_EQ(after(past, kMonday), (WhereTheyStand{Standing::Waiting, 1, 3, kTuesday, false}));
    EXPECT_EQ(after(past, kTuesday), (WhereTheyStand{Standing::MayRetest, 1, 3, kTuesday, false}));
    EXPECT_EQ(after(past, kWednesday), (WhereTheyStand{Standing::MayRetest, 1, 3, kTuesday, false}));
}

// Remediation is signed before the day matters.
TEST(RetestTest, RemediationComesBeforeWaiting)
{
    EXPECT_EQ(after({open(FailScore, kMonday)}, kMonday).standing, Standing::RemediationDue);
    EXPECT_EQ(after({open(FailScore, kMonday)}, day(2027, 6, 1)).standing, Standing::RemediationDue);
}

TEST(RetestTest, RemediationOfTheLastFailCounts)
{
    EXPECT_EQ(after({remedied(FailScore, kMonday), open(FailScore, kTuesday)}, kWednesday).standing,
              Standing::RemediationDue);
    EXPECT_EQ(after({open(FailScore, kMonday), remedied(FailScore, kTuesday)}, kWednesday).standing,
              Standing::MayRetest);
}

TEST(RetestTest, ALabMayDoWithoutRemediation)
{
    RetestRule rule;
    rule.remediationFirst = false;
    EXPECT_EQ(after({open(FailScore, kMonday)}, kMonday, rule).standing, Standing::Waiting);
    EXPECT_EQ(after({open(FailScore, kMonday)}, kTuesday, rule).standing, Standing::MayRetest);
}

// A handbook: three attempts, two instructors witness the third, failing it ends the course.
TEST(RetestTest, TheThirdOfThreeHasASecondAssessorAndIsTheLast)
{
    std::vector past{remedied(FailScore, kMonday), remedied(FailCritical, kTuesday)};
    EXPECT_EQ(after(past, kWednesday), (WhereTheyStand{Standing::MayRetest, 2, 3, kWednesday, true}));
    past.push_back(remedied(FailTime, kWednesday));
    EXPECT_EQ(after(past, day(2026, 12, 24)), (WhereTheyStand{Standing::OutOfAttempts, 3, 3, {}, false}));
}

TEST(RetestTest, TheSecondAssessorIsKnownBeforeTheLastAttemptIsDue)
{
    EXPECT_TRUE(
        after({remedied(FailScore, kMonday), open(FailScore, kTuesday)}, kTuesday).needsSecondAssessor);
    EXPECT_TRUE(
        after({remedied(FailScore, kMonday), remedied(FailScore, kTuesday)}, kTuesday).needsSecondAssessor);
}

TEST(RetestTest, ALabMayDoWithoutASecondAssessor)
{
    RetestRule rule;
    rule.secondAssessorOnLast = false;
    EXPECT_FALSE(after({remedied(FailScore, kMonday), remedied(FailScore, kTuesday)}, kWednesday, rule)
                     .needsSecondAssessor);
}

TEST(RetestTest, AnOnlyAttemptIsTheLast)
{
    RetestRule rule;
    rule.attempts = 1;
    EXPECT_EQ(after({}, kMonday, rule), (WhereTheyStand{Standing::NotTried, 0, 1, {}, true}));
    EXPECT_EQ(after({remedied(FailScore, kMonday)}, kTuesday, rule).standing, Standing::OutOfAttempts);
}

TEST(RetestTest, FewerAttemptsThanWereUsedAreOutOfAttempts)
{
    RetestRule rule;
    rule.attempts = 2;
    const std::vector past(3, remedied(FailScore, kMonday));
    EXPECT_EQ(after(past, kTuesday, rule), (WhereTheyStand{Standing::OutOfAttempts, 3, 2, {}, false}));
}

TEST(RetestTest, AVoidUsesUpNoAttemptAndAsksForNothing)
{
    EXPECT_EQ(after({open(VoidTechnical, kMonday)}, kMonday),
              (WhereTheyStand{Standing::NotTried, 0, 3, {}, false}));
    EXPECT_EQ(after({remedied(FailScore, kMonday), open(VoidTechnical, kTuesday)}, kTuesday),
              (WhereTheyStand{Standing::MayRetest, 1, 3, kTuesday, false}))
        << "the day is that of the fail";
    const std::vector past(9, open(VoidTechnical, kMonday));
    EXPECT_EQ(after(past, kMonday).used, 0);
}

// A handbook: a missed appointment is a failed test; others leave it out. A switch.
TEST(RetestTest, ANoShowCountsOnlyWhereTheLabSaysSo)
{
    RetestRule rule;
    EXPECT_EQ(after({open(NoShow, kMonday)}, kMonday, rule),
              (WhereTheyStand{Standing::NotTried, 0, 3, {}, false}));
    rule.noShowCounts = true;
    EXPECT_EQ(after({open(NoShow, kMonday)}, kMonday, rule),
              (WhereTheyStand{Standing::RemediationDue, 1, 3, kTuesday, false}));
    EXPECT_EQ(
        after({remedied(NoShow, kMonday), remedied(NoShow, kMonday), open(NoShow, kMonday)}, kTuesday, rule)
            .standing,
        Standing::OutOfAttempts);
}

TEST(RetestTest, RunningGoesBeforeAllOthers)
{
    EXPECT_EQ(standing({}, {}, true, kMonday), (WhereTheyStand{Standing::Running, 0, 3, {}, false}));
    const std::vector past{remedied(FailScore, kMonday), remedied(FailScore, kTuesday)};
    EXPECT_EQ(standing({}, past, true, kWednesday), (WhereTheyStand{Standing::Running, 2, 3, {}, true}));
    EXPECT_EQ(standing({}, std::vector{open(Pass, kMonday)}, true, kTuesday).standing, Standing::Running);
}

TEST(RetestTest, DaysAreThoseOfTheCalendar)
{
    RetestRule rule;
    const auto earliest = [&rule](Day failed, int days) {
        rule.daysBetween = days;
        return *after({remedied(FailScore, failed)}, failed, rule).earliest;
    };
    EXPECT_EQ(earliest(day(2026, 12, 31), 1), day(2027, 1, 1));
    EXPECT_EQ(earliest(day(2028, 2, 28), 1), day(2028, 2, 29));
    EXPECT_EQ(earliest(day(2027, 2, 28), 1), day(2027, 3, 1));
    EXPECT_EQ(earliest(day(2026, 10, 24), 2), day(2026, 10, 26)) << "over the night the clocks go back";
    EXPECT_EQ(earliest(kMonday, 14), day(2026, 12, 7));
    EXPECT_EQ(earliest(kMonday, 0), kMonday);
    EXPECT_EQ(after({remedied(FailScore, kMonday)}, kMonday, rule).standing, Standing::MayRetest)
        << "with no day between";
}

TEST(RetestTest, EveryWordLeadsBack)
{
    for (int i = 0; i < kStandingCount; ++i)
        EXPECT_EQ(standingFrom(wordOf(static_cast<Standing>(i))), static_cast<Standing>(i));
    EXPECT_EQ(wordOf(Standing::NotTried), "not_tried");
    EXPECT_EQ(wordOf(Standing::Running), "running");
    EXPECT_EQ(wordOf(Standing::Passed), "passed");
    EXPECT_EQ(wordOf(Standing::RemediationDue), "remediation_due");
    EXPECT_EQ(wordOf(Standing::Waiting), "waiting");
    EXPECT_EQ(wordOf(Standing::MayRetest), "may_retest");
    EXPECT_EQ(wordOf(Standing::OutOfAttempts), "out_of_attempts");
    EXPECT_FALSE(standingFrom("Passed"));
    EXPECT_FALSE(standingFrom(""));
}

}  // namespace retest_test
