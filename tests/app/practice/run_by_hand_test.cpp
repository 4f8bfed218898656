#include "app/practice/run_by_hand.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/words/by_hand_words.h"
#include "tests/support/hand_learner.h"

namespace run_by_hand_test {

namespace {

using namespace fb;
using namespace fb::test;

ByHandGrade gradeWith(Slip slip)
{
    ByHandGrade grade;
    grade.first = Cause{Cause::Part::Build, {}, {}, BuildStep::Palm, slip};
    return grade;
}

TEST(RunByHandTest, TheMostFrequentCauseComesFirst)
{
    const std::vector grades{gradeWith(Slip::PalmOff), gradeWith(Slip::WrongHand), gradeWith(Slip::WrongHand),
                             ByHandGrade{}};
    const auto causes = commonCauses(grades, 3);
    ASSERT_EQ(causes.size(), 2U) << "a flawless request has no cause";
    EXPECT_EQ(causes[0].cause.slip, Slip::WrongHand);
    EXPECT_EQ(causes[0].times, 2);
    EXPECT_EQ(causes[1].times, 1);
    EXPECT_EQ(commonCauses(grades, 1).size(), 1U);
}

TEST(RunByHandTest, CountsThePartsOfARun)
{
    HandRun hand(Convention::DeltoidHalfway, 2);
    hand.learner.plant();
    hand.learner.build();
    hand.learner.grade();
    hand.run.presenter.next();
    hand.learner.plant(1);
    hand.learner.build();
    hand.learner.grade();
    hand.run.presenter.next();
    ASSERT_EQ(hand.state().foundByHand.size(), 2U);
    RunByHand table;
    table.showState(hand.state());
    EXPECT_FALSE(table.isHidden());
    EXPECT_TRUE(table.findChild<QLabel*>("runLandmarksCount")->text().startsWith(QLatin1Char('1')));
    EXPECT_TRUE(table.findChild<QLabel*>("runBuildsCount")->text().startsWith(QLatin1Char('2')));
    EXPECT_FALSE(table.findChild<QLabel*>("causes")->text().isEmpty());
}

TEST(RunByHandTest, IsHiddenInARunOfMarks)
{
    SampleRun marks(1);
    marks.gradeAt({});
    marks.presenter.next();
    RunByHand table;
    table.showState(marks.state());
    EXPECT_TRUE(table.isHidden());
}

}  // namespace

}  // namespace run_by_hand_test
