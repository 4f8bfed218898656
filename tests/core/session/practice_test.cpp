#include "core/session/practice.h"

#include <gtest/gtest.h>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace {

Practice practice(int length = 2, bool asksSide = true)
{
    return {test::atlas(), test::defaultPolicy(), {7, length, HelpLevel::Nothing, asksSide}};
}

Side other(Side side) { return side == Side::Left ? Side::Right : Side::Left; }

}  // namespace

TEST(PracticeTest, OneRunFromTheSideToTheSummary)
{
    Practice run = practice();
    for (int i = 0; i < 2; ++i) {
        ASSERT_EQ(run.phase(), Phase::PickingSide);
        EXPECT_TRUE(run.pickSide(run.request().patient.side()));
        ASSERT_EQ(run.phase(), Phase::Marking);
        ASSERT_TRUE(run.placeMark(run.target().ideal).value());
        EXPECT_TRUE(run.grade());
        ASSERT_EQ(run.phase(), Phase::Graded);
        ASSERT_NE(run.graded(), nullptr);
        EXPECT_EQ(run.graded()->grade.verdict, Verdict::OnTarget);
        EXPECT_EQ(run.graded()->sideRight, true);
        EXPECT_TRUE(run.next());
    }
    EXPECT_EQ(run.phase(), Phase::Summary);
    EXPECT_EQ(run.attempts().size(), 2U);
}

TEST(PracticeTest, AWrongSideIsRecordedAndMayBeTriedAgain)
{
    Practice run = practice(1);
    EXPECT_TRUE(run.pickSide(other(run.request().patient.side())));
    EXPECT_EQ(run.phase(), Phase::PickingSide);
    EXPECT_TRUE(run.pickedWrongSide());
    EXPECT_TRUE(run.pickSide(run.request().patient.side()));
    EXPECT_FALSE(run.pickedWrongSide());
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    EXPECT_TRUE(run.grade());
    EXPECT_EQ(run.graded()->sideRight, false);
}

TEST(PracticeTest, AMarkCanBeMovedAndWithdrawnUntilGraded)
{
    Practice run = practice(1, false);
    EXPECT_EQ(run.phase(), Phase::Marking);
    EXPECT_FALSE(run.grade());
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    ASSERT_TRUE(run.placeMark(run.target().ideal + Point{0.5, 0.0}).value());
    EXPECT_EQ(run.mark(), run.target().ideal + (Point{0.5, 0.0}));
    EXPECT_TRUE(run.withdrawMark());
    EXPECT_FALSE(run.mark());
    EXPECT_FALSE(run.withdrawMark());
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    EXPECT_TRUE(run.grade());
    EXPECT_FALSE(run.placeMark(run.target().ideal).value());
    EXPECT_FALSE(run.withdrawMark());
}

TEST(PracticeTest, AMarkOffTheBodyLeavesTheOldOne)
{
    Practice run = practice(1, false);
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    EXPECT_EQ(run.placeMark({500, 500}).error().problem, Problem::MarkOutsideBody);
    EXPECT_EQ(run.mark(), run.target().ideal);
}

TEST(PracticeTest, CallsOutOfTurnChangeNothing)
{
    Practice run = practice();
    EXPECT_FALSE(run.next());
    EXPECT_FALSE(run.grade());
    EXPECT_FALSE(run.placeMark({0, -5}).value());
    EXPECT_EQ(run.phase(), Phase::PickingSide);
    EXPECT_EQ(run.graded(), nullptr);
}

TEST(PracticeTest, RepeatingAsksTheSameAgain)
{
    Practice run = practice(1, false);
    const Patient first = run.request().patient;
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    run.grade();
    run.next();
    run.repeat();
    EXPECT_EQ(run.phase(), Phase::Marking);
    EXPECT_EQ(run.request().patient, first);
    EXPECT_TRUE(run.attempts().empty());
}

TEST(PracticeTest, ARunHasALengthWithinReason)
{
    EXPECT_TRUE(checkedSetup({1, 1, HelpLevel::Nothing, true}));
    EXPECT_TRUE(checkedSetup({1, 200, HelpLevel::Nothing, true}));
    EXPECT_EQ(checkedSetup({1, 0, HelpLevel::Nothing, true}).error().problem, Problem::RunLengthOutOfRange);
    EXPECT_EQ(checkedSetup({1, 201, HelpLevel::Nothing, true}).error().high, 200.0);
}
