#include "app/checkoff/missed_list.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/words/check_off_words.h"
#include "tests/support/manikin_sample.h"

namespace missed_list_test {

namespace {

using namespace fb;
using namespace fb::test;

QStringList linesOf(const MissedList& list)
{
    QStringList lines;
    for (const QLabel* line : list.findChildren<QLabel*>("missedStep"))
        lines << line->text();
    return lines;
}

TEST(MissedListTest, ListsWhatWasNotDoneOrOnlyWhenPromptedAndEveryRemark)
{
    CheckOffState state = manikinState();
    state.open->sheet.sheet.steps = {{ProcedureStep::Identify, true},
                                     {ProcedureStep::Allergies, false},
                                     {ProcedureStep::Explain, false},
                                     {ProcedureStep::Document, false}};
    observe(state, ProcedureStep::Identify, Seen::NotDone, 1.0);
    observe(state, ProcedureStep::Allergies, Seen::Prompted, 2.0);
    observe(state, ProcedureStep::Explain, Seen::Done, 3.0, "calm and clear");
    observe(state, ProcedureStep::Document, Seen::Done, 4.0);
    MissedList list;
    list.setScheme(dressed());
    list.showState(state);
    const QStringList lines = linesOf(list);
    ASSERT_EQ(lines.size(), 3);
    EXPECT_TRUE(lines[0].contains(QLatin1String("critical")));
    EXPECT_TRUE(lines[0].endsWith(seenName(Seen::NotDone)));
    EXPECT_TRUE(lines[1].endsWith(seenName(Seen::Prompted)));
    EXPECT_TRUE(lines[2].endsWith(QLatin1String("calm and clear")));
    EXPECT_TRUE(list.findChild<QLabel*>("noneMissed")->isHidden());
}

TEST(MissedListTest, WithoutAWordAStepWasNotDone)
{
    CheckOffState state = manikinState();
    state.open->sheet.sheet.steps = {{ProcedureStep::Identify, true}};
    state.result.decision.outcome = Outcome::FailCritical;
    MissedList list;
    list.showState(state);
    ASSERT_EQ(linesOf(list).size(), 1);
    EXPECT_TRUE(linesOf(list)[0].endsWith(seenName(Seen::NotDone)));
}

TEST(MissedListTest, WhatWasNotReachedIsNotHeldAgainstAnybody)
{
    CheckOffState state = manikinState();
    state.open->sheet.sheet.steps = {{ProcedureStep::Identify, true}, {ProcedureStep::Document, true}};
    state.result.decision.outcome = Outcome::NoShow;
    MissedList nobody;
    nobody.showState(state);
    EXPECT_TRUE(linesOf(nobody).isEmpty());
    EXPECT_TRUE(nobody.isHidden());
    state.result.decision.outcome = Outcome::StoppedSafety;
    observe(state, ProcedureStep::Identify, Seen::NotDone, 1.0);
    MissedList stopped;
    stopped.showState(state);
    ASSERT_EQ(linesOf(stopped).size(), 1);
    EXPECT_TRUE(linesOf(stopped)[0].startsWith(stepName(ProcedureStep::Identify)));
}

TEST(MissedListTest, SaysThatNothingWasMissedAndHidesWithoutSteps)
{
    CheckOffState state = manikinState();
    state.open->sheet.sheet.steps = {{ProcedureStep::Identify, true}};
    observe(state, ProcedureStep::Identify, Seen::Done, 1.0);
    MissedList list;
    list.showState(state);
    EXPECT_FALSE(list.findChild<QLabel*>("noneMissed")->isHidden());
    state.open->sheet.sheet.steps.clear();
    list.showState(state);
    EXPECT_TRUE(list.isHidden());
}

}  // namespace

}  // namespace missed_list_test
