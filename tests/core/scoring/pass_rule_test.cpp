#include "core/scoring/pass_rule.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace fb;

namespace pass_rule_test {

namespace {

// Nothing against it.
ScoredCheckOff flawless()
{
    ScoredCheckOff scored;
    scored.earned = 35.0;
    scored.possible = 35.0;
    scored.cutPercent = 80.0;
    return scored;
}

ScoredCheckOff scoring(double earned, double possible, double cut)
{
    ScoredCheckOff scored;
    scored.earned = earned;
    scored.possible = possible;
    scored.cutPercent = cut;
    return scored;
}

}  // namespace

TEST(PassRuleTest, FlawlessPasses)
{
    const Decision decision = decide(flawless());
    EXPECT_EQ(decision.outcome, Outcome::Pass);
    EXPECT_EQ(decision.percent, 100.0);
    EXPECT_TRUE(decision.alsoTrue.empty());
}

// Pass only if every critical step is done, no mark is unsafe, no hard breach of order, the score reaches
// the cut, time is kept and nobody stopped it. All 256 combinations.
TEST(PassRuleTest, EveryCombinationOfReasonsHasTheFirstAsItsOutcome)
{
    using enum Outcome;
    for (int bits = 0; bits < 256; ++bits) {
        const auto is = [bits](int bit) { return (bits >> bit & 1) != 0; };
        ScoredCheckOff scored = flawless();
        scored.voided = is(0);
        scored.noShow = is(1);
        scored.safetyStop = is(2);
        scored.criticalMissed = is(3) ? 1 : 0;
        scored.hardBreaches = is(4) ? 1 : 0;
        scored.unsafeMarks = is(5) ? 1 : 0;
        scored.timeKept = !is(6);
        scored.earned = is(7) ? 27.9 : 28.0;
        std::vector<Outcome> reasons;
        if (is(2))
            reasons.push_back(StoppedSafety);
        if (is(3) || is(4) || is(5))
            reasons.push_back(FailCritical);
        if (is(6))
            reasons.push_back(FailTime);
        if (is(7))
            reasons.push_back(FailScore);
        Outcome outcome = reasons.empty() ? Pass : reasons.front();
        if (!reasons.empty())
            reasons.erase(reasons.begin());
        if (is(0) || is(1)) {
            outcome = is(0) ? VoidTechnical : NoShow;
            reasons.clear();
        }
        const Decision decision = decide(scored);
        EXPECT_EQ(decision.outcome, outcome) << bits;
        EXPECT_EQ(decision.alsoTrue, reasons) << bits;
    }
}

TEST(PassRuleTest, AHighScoreNeverBuysBackACriticalStep)
{
    for (int ScoredCheckOff::*reason :
         {&ScoredCheckOff::criticalMissed, &ScoredCheckOff::hardBreaches, &ScoredCheckOff::unsafeMarks}) {
        ScoredCheckOff scored = flawless();
        scored.*reason = 3;
        EXPECT_EQ(decide(scored).outcome, Outcome::FailCritical);
        EXPECT_EQ(decide(scored).percent, 100.0);
    }
}

TEST(PassRuleTest, TheBorderOfTheCutIsPassed)
{
    EXPECT_EQ(decide(scoring(28.0, 35.0, 80.0)).outcome, Outcome::Pass);
    EXPECT_EQ(decide(scoring(27.99, 35.0, 80.0)).outcome, Outcome::FailScore);
    EXPECT_EQ(decide(scoring(35.0, 35.0, 100.0)).outcome, Outcome::Pass);
    EXPECT_EQ(decide(scoring(34.999, 35.0, 100.0)).outcome, Outcome::FailScore);
    EXPECT_EQ(decide(scoring(0.0, 35.0, 0.0)).outcome, Outcome::Pass);
}

TEST(PassRuleTest, PartsAddedUpReachTheBorderTheyStandOn)
{
    int belowByRounding = 0;
    for (int parts = 1; parts <= 400; ++parts) {
        double earned = 0.0;
        for (int i = 0; i < parts; ++i)
            earned += 0.1;
        const ScoredCheckOff scored = scoring(earned, parts / 8.0, 80.0);
        belowByRounding += decide(scored).percent < 80.0 ? 1 : 0;
        EXPECT_EQ(decide(scored).outcome, Outcome::Pass) << parts;
    }
    EXPECT_GT(belowByRounding, 0) << "or this says nothing";
}

TEST(PassRuleTest, WhereNothingWasPossibleNothingIsReached)
{
    EXPECT_EQ(decide(scoring(0.0, 0.0, 80.0)).percent, 0.0);
    EXPECT_EQ(decide(scoring(0.0, 0.0, 80.0)).outcome, Outcome::FailScore);
}

TEST(PassRuleTest, AVoidStillTellsItsScore)
{
    ScoredCheckOff scored = scoring(7.0, 28.0, 80.0);
    scored.voided = true;
    EXPECT_EQ(decide(scored).percent, 25.0);
}

TEST(PassRuleTest, EveryWordLeadsBack)
{
    for (int i = 0; i < kOutcomeCount; ++i)
        EXPECT_EQ(outcomeFrom(wordOf(static_cast<Outcome>(i))), static_cast<Outcome>(i));
    EXPECT_EQ(wordOf(Outcome::VoidTechnical), "void_technical");
    EXPECT_EQ(wordOf(Outcome::NoShow), "no_show");
    EXPECT_EQ(wordOf(Outcome::StoppedSafety), "stopped_safety");
    EXPECT_EQ(wordOf(Outcome::FailCritical), "fail_critical");
    EXPECT_EQ(wordOf(Outcome::FailTime), "fail_time");
    EXPECT_EQ(wordOf(Outcome::FailScore), "fail_score");
    EXPECT_EQ(wordOf(Outcome::Pass), "pass");
    EXPECT_FALSE(outcomeFrom("Pass"));
    EXPECT_FALSE(outcomeFrom(""));
}

}  // namespace pass_rule_test
