#include "core/grade/by_hand_grade.h"

#include <gtest/gtest.h>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace by_hand_grade_test {

namespace {

struct Given {
    Target target;
    Build build;
    std::vector<Flag> flags;
    Point mark;
};

Given flawless()
{
    Target target = locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 165, 64),
                           Convention::VentroglutealHand, View::HipSide)
                        .value();
    std::vector<Flag> flags;
    for (const Landmark asked : askedLandmarks(target.convention)) {
        const auto points = placeOf(target, asked)->points;
        flags.push_back({asked, points[points.size() / 2]});
    }
    Build build = flawlessBuild(target, Builder::from(test::defaultPolicy()));
    const Point mark = target.ideal;
    return {std::move(target), std::move(build), std::move(flags), mark};
}

ByHandGrade graded(const Given& given, const Policy& policy = test::defaultPolicy())
{
    const Grade mark = gradeMark(given.target, policy, given.mark, MarkedLimb::Pelvis);
    return gradeByHand(given.target, policy, given.flags, given.build, mark);
}

}  // namespace

TEST(ByHandGradeTest, AFlawlessRequestEarnsEveryPointAndHasNoCause)
{
    const ByHandGrade grade = graded(flawless());
    EXPECT_TRUE(grade.landmarksFound);
    EXPECT_TRUE(grade.builtRight);
    EXPECT_TRUE(grade.markedRight);
    EXPECT_FALSE(grade.luckyMark);
    EXPECT_FALSE(grade.first);
    EXPECT_DOUBLE_EQ(grade.points, 3.0);
}

TEST(ByHandGradeTest, ALuckyMarkWithTheWrongHandIsSeenForWhatItIs)
{
    Given given = flawless();
    given.build.hand = swapped(*given.build.hand);
    const ByHandGrade grade = graded(given);
    EXPECT_TRUE(grade.markedRight);
    EXPECT_FALSE(grade.builtRight);
    EXPECT_TRUE(grade.luckyMark);
    ASSERT_TRUE(grade.first);
    EXPECT_EQ(grade.first->part, Cause::Part::Build);
    EXPECT_EQ(grade.first->slip, Slip::WrongHand);
    EXPECT_DOUBLE_EQ(grade.points, 1.0 + 0.75 + 1.0);
}

TEST(ByHandGradeTest, WhatComesFirstInTheSequenceIsTheCause)
{
    Given given = flawless();
    given.build.hand->opening = Degrees{12.0};
    given.mark = given.mark + Point{9.0, 0.0};
    given.flags.erase(given.flags.begin());
    ByHandGrade grade = graded(given);
    ASSERT_TRUE(grade.first);
    EXPECT_EQ(grade.first->part, Cause::Part::Landmark);
    EXPECT_EQ(grade.first->landmark, Landmark::GreaterTrochanter);
    EXPECT_EQ(grade.first->verdict, FlagVerdict::Missing);
    given.flags = flawless().flags;
    grade = graded(given);
    EXPECT_EQ(grade.first->part, Cause::Part::Build);
    EXPECT_EQ(grade.first->slip, Slip::FingersClosed);
    given.build = flawless().build;
    grade = graded(given);
    EXPECT_EQ(grade.first->part, Cause::Part::Mark);
}

TEST(ByHandGradeTest, ANearFlagEarnsHalfAndIsNoCause)
{
    Given given = flawless();
    given.flags[0].at = given.flags[0].at + Point{1.5, 0.0};
    const ByHandGrade grade = graded(given);
    EXPECT_EQ(grade.flags[0].verdict, FlagVerdict::Near);
    EXPECT_TRUE(grade.landmarksFound);
    EXPECT_FALSE(grade.first);
    EXPECT_NEAR(grade.points, 3.0 - 0.5 / 3.0, 1e-12);
}

TEST(ByHandGradeTest, AConstructionThatIsOnlyNotedIsNoCauseAndCostsNoPoint)
{
    Given given = flawless();
    given.build.hand = swapped(*given.build.hand);
    const ByHandGrade grade = graded(given, test::defaultPolicy().with(PolicyKey::BuildCounts, 0.0));
    EXPECT_FALSE(grade.builtRight);
    EXPECT_FALSE(grade.first);
    EXPECT_FALSE(grade.luckyMark);
    EXPECT_DOUBLE_EQ(grade.points, 2.0);
}

}  // namespace by_hand_grade_test
