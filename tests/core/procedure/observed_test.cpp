#include "core/procedure/observed.h"

#include <gtest/gtest.h>

#include "tests/support/seen_steps.h"

using namespace fb;
using namespace fb::test;

namespace observed_test {

namespace {

using enum ProcedureStep;
using Lines = std::vector<std::string>;

ProcedureGrade judged(const StepList& sheet, const std::vector<Observation>& seen, const Protocol& protocol = {})
{
    return judge(sheetOf(sheet), protocol, seen, std::nullopt, 0.5);
}

Observation at(ProcedureStep step, double seconds, Seen seen = Seen::Done) { return {step, seen, seconds}; }

// From injecting to withdrawing so many seconds, of a sheet of these three steps under the Z-track.
ProcedureGrade heldFor(double began, double ended, std::optional<double> held = {},
                       std::optional<double> heldAtLeast = {})
{
    const StepList sheet{Inject, Wait, Withdraw};
    const std::vector seen{at(Inject, began), at(Wait, (began + ended) / 2), at(Withdraw, ended)};
    return judge(sheetOf(sheet), {}, seen, held, 0.5, heldAtLeast);
}

}  // namespace

TEST(ObservedTest, AnEmptySheetIsNothingPossible)
{
    const ProcedureGrade grade = judged({}, {});
    EXPECT_TRUE(grade.breaches.empty());
    EXPECT_EQ(grade.possible, 0.0);
    EXPECT_EQ(grade.earned, 0.0);
    EXPECT_FALSE(grade.isUnsafe());
}

TEST(ObservedTest, DoneEarnsAPointPromptedItsShareAndNotDoneNothing)
{
    const StepList sheet{ReadOrder, LabelCheck, Explain, Evaluate};
    const std::vector seen{at(ReadOrder, 1), at(LabelCheck, 2, Seen::Prompted),
                           at(Explain, 3, Seen::NotDone)};
    const auto grade = judge(sheetOf(sheet), {}, seen, {}, 0.25);
    EXPECT_EQ(grade.earned, 1.25);
    EXPECT_EQ(grade.possible, 4.0) << "evaluate has no observation and is not done";
}

TEST(ObservedTest, WhatDoesNotBelongIsNeitherPossibleNorEarned)
{
    const StepList sheet{ReadOrder, CleanSkin, Wait, Aspirate, Recap};
    const std::vector seen{at(ReadOrder, 1), at(CleanSkin, 2), at(Wait, 3), at(Aspirate, 4), at(Evaluate, 5)};
    const Protocol bare{false, false, false, false};
    const auto grade = judge(sheetOf(sheet, true), bare, seen, {}, 0.5);
    EXPECT_EQ(grade.possible, 1.0);
    EXPECT_EQ(grade.earned, 1.0) << "evaluate is not on the sheet";
    EXPECT_TRUE(grade.missedCritical.empty());
}

TEST(ObservedTest, ACriticalStepCountsAsMissedWhenPrompted)
{
    const std::vector<SheetStep> sheet{{Document, true}, {Explain, true}, {Assess, true}, {Evaluate, false}};
    const std::vector seen{at(Explain, 1), at(Assess, 2, Seen::Prompted)};
    const auto grade = judge(sheet, {}, seen, {}, 0.5);
    EXPECT_EQ(grade.missedCritical, (StepList{Assess, Document})) << "in the order of teaching";
    EXPECT_EQ(grade.earned, 1.5);
}

TEST(ObservedTest, ACriticalStepThatOnlyCostItsMarkIsNotMissed)
{
    const std::vector<SheetStep> sheet{{GlovesOn, false}, {Insert, true}};
    const auto grade = judge(sheet, {}, doneInOrder({Insert, GlovesOn}), {}, 0.5);
    EXPECT_EQ(told(grade.breaches), (Lines{"P10 soft gloves_on before insert"}));
    EXPECT_TRUE(grade.missedCritical.empty());
    EXPECT_EQ(grade.earned, 1.0) << "the needle's, not the gloves'";
    EXPECT_FALSE(grade.isUnsafe());
}

TEST(ObservedTest, TwoSoftBreachesOfOneStepCostItsPointOnce)
{
    const auto grade =
        judged({GlovesOn, PreparedLabel, Insert}, doneInOrder({Insert, GlovesOn, PreparedLabel}));
    EXPECT_EQ(grade.breaches.size(), 2U);
    EXPECT_EQ(grade.earned, 2.0);
}

TEST(ObservedTest, AHardBreachIsUnsafeAndLeavesThePoints)
{
    const auto grade = judged({Identify, Insert}, doneInOrder({Insert, Identify}));
    EXPECT_TRUE(grade.isUnsafe());
    EXPECT_EQ(grade.earned, 2.0);
    ASSERT_EQ(grade.breaches.size(), 1U);
    EXPECT_EQ(grade.breaches.front(), (Breach{1, ConstraintKind::Before, Severity::Hard, Identify, Insert}));
}

TEST(ObservedTest, UnsafeOrdersAreNamed)
{
    const StepList sheet = ofProtocol(everyStep(), {});
    const auto unsafe = [&sheet](const StepList& order) {
        const auto grade = judged(sheet, doneInOrder(order));
        EXPECT_TRUE(grade.isUnsafe());
        return told(grade.breaches);
    };
    StepList unidentified = sheet;
    std::erase(unidentified, Identify);
    EXPECT_EQ(unsafe(unidentified), (Lines{"P1 hard identify before insert"}));
    StepList recordedFirst = sheet;
    std::erase(recordedFirst, Document);
    recordedFirst.insert(std::ranges::find(recordedFirst, Insert), Document);
    EXPECT_EQ(unsafe(recordedFirst), (Lines{"P18 hard inject before document"}));
    StepList recapped = sheet;
    recapped.insert(std::ranges::find(recapped, Sharps), Recap);
    EXPECT_EQ(unsafe(recapped), (Lines{"P15 hard insert never then recap"}));
    EXPECT_TRUE(judged(sheet, doneInOrder(sheet)).breaches.empty());
}

TEST(ObservedTest, AStepLeftOutBreaksWhatWaitedForIt)
{
    for (const auto& seen :
         {std::vector{at(Insert, 1)}, std::vector{at(Insert, 1), at(Identify, 0, Seen::NotDone)}})
        EXPECT_EQ(told(judged({Identify, Insert}, seen).breaches), (Lines{"P1 hard identify before insert"}));
}

TEST(ObservedTest, WhatWasNeverReachedBreaksNothing)
{
    EXPECT_TRUE(judged({Identify, Insert}, {at(Identify, 1)}).breaches.empty());
    EXPECT_TRUE(judged({Identify, Insert}, {}).breaches.empty());
}

TEST(ObservedTest, AStepOffTheSheetIsNotMissedButIsJudgedWhereSeen)
{
    EXPECT_TRUE(judged({Insert}, {at(Insert, 1)}).breaches.empty());
    EXPECT_EQ(told(judged({Insert}, doneInOrder({Insert, Identify})).breaches),
              (Lines{"P1 hard identify before insert"}));
    EXPECT_EQ(told(judged({Identify}, doneInOrder({Insert, Identify})).breaches),
              (Lines{"P1 hard identify before insert"}));
}

TEST(ObservedTest, APromptedStepCountsAsSeen)
{
    EXPECT_TRUE(
        judged({Identify, Insert}, {at(Identify, 1, Seen::Prompted), at(Insert, 2)}).breaches.empty());
}

TEST(ObservedTest, TimeOrdersStepsAndTheListOnlyThoseOfOneMoment)
{
    const StepList sheet{Identify, Insert};
    EXPECT_TRUE(judged(sheet, {at(Insert, 2), at(Identify, 1)}).breaches.empty());
    EXPECT_TRUE(judged(sheet, {at(Identify, 5), at(Insert, 5)}).breaches.empty());
    EXPECT_EQ(judged(sheet, {at(Insert, 5), at(Identify, 5)}).breaches.size(), 1U);
}

TEST(ObservedTest, TheLastWordOfAStepCounts)
{
    const StepList sheet{Identify, Insert};
    EXPECT_EQ(judged(sheet, {at(Identify, 1), at(Insert, 2), at(Identify, 0, Seen::NotDone)}).breaches.size(),
              1U);
    EXPECT_TRUE(
        judged(sheet, {at(Identify, 0, Seen::NotDone), at(Insert, 2), at(Identify, 1)}).breaches.empty());
    EXPECT_EQ(judged(sheet, {at(Identify, 1), at(Insert, 2), at(Identify, 3)}).breaches.size(), 1U);
}

TEST(ObservedTest, HardBreachesComeFirstThenByConstraint)
{
    const StepList wrong{Document, Insert, GlovesOn, Identify, HandHygiene, Withdraw};
    EXPECT_EQ(told(judged({DrawUp, Inject}, doneInOrder(wrong)).breaches),
              (Lines{"P1 hard identify before insert", "P2 hard hand_hygiene before insert",
                     "P4 hard draw_up before insert", "P12 hard inject before withdraw",
                     "P18 hard inject before document", "P10 soft gloves_on before insert"}));
}

TEST(ObservedTest, SharpsAreNotLeftUndone)
{
    const Lines left{"P16 hard withdraw leaves sharps"};
    EXPECT_EQ(told(judged({Withdraw, Sharps}, {at(Withdraw, 1)}).breaches), left);
    EXPECT_EQ(told(judged({Withdraw, Sharps}, doneInOrder({Sharps, Withdraw})).breaches), left);
    EXPECT_TRUE(judged({Withdraw, Sharps}, {}).breaches.empty()) << "no needle was drawn out";
    EXPECT_TRUE(judged({Withdraw}, {at(Withdraw, 1)}).breaches.empty()) << "nobody watched for sharps";
}

TEST(ObservedTest, ACleanNeedleMayBeCapped)
{
    const Lines recapped{"P15 hard insert never then recap"};
    EXPECT_TRUE(judged({Insert}, doneInOrder({Recap, Insert})).breaches.empty());
    EXPECT_TRUE(judged({Insert}, doneInOrder({Recap})).breaches.empty()) << "it never went in";
    EXPECT_EQ(told(judged({Insert}, doneInOrder({Insert, Recap})).breaches), recapped);
    EXPECT_TRUE(judged({Insert}, {at(Insert, 1), at(Recap, 2, Seen::NotDone)}).breaches.empty());
}

TEST(ObservedTest, ARecapCountsWhereNobodyWatchesTheNeedle)
{
    const auto grade = judged({ReadOrder}, doneInOrder({ReadOrder, Recap}));
    EXPECT_EQ(told(grade.breaches), (Lines{"P15 hard insert never then recap"}));
    EXPECT_EQ(grade.possible, 1.0);
    EXPECT_TRUE(judged({ReadOrder, Recap}, {}).breaches.empty()) << "on a sheet it is no step to be done";
}

TEST(ObservedTest, NeighboursOfAStepNobodyWatchesForAreHeldToEachOther)
{
    EXPECT_EQ(told(judged({SelectSite, Insert}, doneInOrder({Insert, SelectSite})).breaches),
              (Lines{"P6 hard select_site before insert"}));
    EXPECT_EQ(told(judged({SelectSite, Insert}, {at(Insert, 1)}).breaches),
              (Lines{"P6 hard select_site before insert"}));
    EXPECT_EQ(told(judged({Insert, Pressure}, doneInOrder({Pressure, Insert})).breaches),
              (Lines{"P12 soft insert before pressure"}))
        << "across two, as softly as the softest";
    EXPECT_TRUE(judged({SelectSite, Insert}, doneInOrder({SelectSite, Insert})).breaches.empty());
}

TEST(ObservedTest, ALinkAcrossStandsWithItsOwnConstraint)
{
    EXPECT_EQ(
        told(judged({CleanSkin, CapOff, GlovesOn, Insert}, doneInOrder({CapOff, CleanSkin, Insert, GlovesOn}))
                 .breaches),
        (Lines{"P9 soft clean_skin before cap_off", "P10 soft gloves_on before insert"}));
}

TEST(ObservedTest, AWatchedStepBetweenSpeaksForItsNeighbours)
{
    EXPECT_EQ(told(judged({SelectSite, Landmarks, Insert}, {at(Insert, 1)}).breaches),
              (Lines{"P6 hard landmarks before insert"}));
}

TEST(ObservedTest, SecondsOnTheBorderAreKept)
{
    EXPECT_TRUE(heldFor(100.0, 110.0).breaches.empty());
    EXPECT_TRUE(heldFor(35.3, 45.3).breaches.empty()) << "less than 10 in the last bit";
    const auto grade = heldFor(100.0, 109.999);
    ASSERT_EQ(told(grade.breaches), (Lines{"P13 soft inject 10 s before withdraw"}));
    EXPECT_EQ(grade.breaches.front().seconds, 10.0);
    EXPECT_EQ(grade.breaches.front().was, 9.999);
    EXPECT_EQ(grade.earned, 2.0) << "withdrawing costs its point";
}

TEST(ObservedTest, TheStopwatchStandsForTheTimeBetween)
{
    EXPECT_TRUE(heldFor(100.0, 103.0, 10.0).breaches.empty());
    const auto grade = heldFor(100.0, 130.0, 4.0);
    ASSERT_EQ(grade.breaches.size(), 1U);
    EXPECT_EQ(grade.breaches.front().was, 4.0);
}

TEST(ObservedTest, TheStopwatchSaysNothingOfOtherTimes)
{
    const auto seen = doneInOrder({SwabStopper, DrawUp, CleanSkin, Insert});
    EXPECT_TRUE(
        judge(sheetOf({SwabStopper, DrawUp, CleanSkin, Insert}), {}, seen, 1.0, 0.5, 60.0).breaches.empty());
}

TEST(ObservedTest, TheLabMayAskForOtherSeconds)
{
    EXPECT_TRUE(heldFor(100.0, 106.0, {}, 6.0).breaches.empty());
    EXPECT_TRUE(heldFor(100.0, 100.0, {}, 0.0).breaches.empty());
    const auto grade = heldFor(100.0, 112.0, {}, 15.0);
    ASSERT_EQ(grade.breaches.size(), 1U);
    EXPECT_EQ(grade.breaches.front().seconds, 15.0);
}

TEST(ObservedTest, WithoutTheZTrackNothingIsHeld)
{
    const std::vector seen{at(Inject, 1), at(Withdraw, 2)};
    EXPECT_TRUE(judge(sheetOf({Inject, Withdraw}), {true, false}, seen, 1.0, 0.5).breaches.empty());
}

TEST(ObservedTest, SecondsOfStepsInTheWrongOrderAreNotSaidAsWell)
{
    const auto grade = judged({SwabStopper, DrawUp}, {at(DrawUp, 1), at(SwabStopper, 2)});
    EXPECT_EQ(told(grade.breaches), (Lines{"P3 hard swab_stopper before draw_up"}));
}

TEST(ObservedTest, EveryWordLeadsBack)
{
    for (int i = 0; i < kSeenCount; ++i)
        EXPECT_EQ(seenFrom(wordOf(static_cast<Seen>(i))), static_cast<Seen>(i));
    EXPECT_EQ(wordOf(Seen::Done), "done");
    EXPECT_EQ(wordOf(Seen::Prompted), "prompted");
    EXPECT_EQ(wordOf(Seen::NotDone), "not_done");
    EXPECT_FALSE(seenFrom("Done"));
    EXPECT_FALSE(seenFrom(""));
}

}  // namespace observed_test
