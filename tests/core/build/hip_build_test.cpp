#include "core/build/hip_build.h"

#include <gtest/gtest.h>

#include <array>

#include "core/site/ventrogluteal.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace hip_build_test {

namespace {

Target hip(Convention convention, Side side = Side::Right)
{
    return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 165, 64, side), convention,
                  View::HipSide)
        .value();
}

const Builder& builder()
{
    static const Builder kBuilder = Builder::from(test::defaultPolicy());
    return kBuilder;
}

constexpr std::array kFeetOfHip{Handle::FootTrochanter, Handle::FootTubercle, Handle::FootSpine};

}  // namespace

TEST(HipBuildTest, TheFlawlessHandLiesAsTheTargetHasIt)
{
    for (const Side side : kSides) {
        const Target target = hip(Convention::VentroglutealHand, side);
        const HandPose pose = poseOf(*flawlessOnHip(target, builder()).hand, builder().hand);
        EXPECT_EQ(pose.hand, handFor(side));
        EXPECT_LT(distance(pose.indexTip, target.hand->indexTip), 1e-9);
        EXPECT_LT(distance(pose.middleTip, target.hand->middleTip), 1e-9);
    }
}

TEST(HipBuildTest, AHandThatSlidesTakesTheSiteWithIt)
{
    const Target target = hip(Convention::VentroglutealHand);
    Build build = flawlessOnHip(target, builder());
    const Point palm = *hipHandleAt(build, builder(), Handle::Palm);
    build = placedOnHip(build, builder(), Handle::Palm, palm + Point{3.0, -1.0});
    EXPECT_LT(distance(siteByHip(build, target, builder()), target.ideal + Point{3.0, -1.0}), 1e-9);
}

TEST(HipBuildTest, EveryTipIsTakenHoldOfWhereItLies)
{
    const Target target = hip(Convention::VentroglutealHand);
    const Build build = flawlessOnHip(target, builder());
    EXPECT_LT(distance(*hipHandleAt(build, builder(), Handle::IndexTip), target.hand->indexTip), 1e-9);
    EXPECT_LT(distance(*hipHandleAt(build, builder(), Handle::MiddleTip), target.hand->middleTip), 1e-9);
    const Build turned = placedOnHip(build, builder(), Handle::IndexTip, target.hand->wrist);
    EXPECT_EQ(turned.hand->palm, build.hand->palm);
    const Build closed = placedOnHip(build, builder(), Handle::MiddleTip, target.hand->indexTip);
    EXPECT_DOUBLE_EQ(closed.hand->opening.value(), kClosedOpening);
}

TEST(HipBuildTest, EachMedianEndsOnTheSideFacingItsCorner)
{
    for (const Handle foot : kFeetOfHip) {
        const MedianOf median = medianOf(foot);
        EXPECT_NE(median.corner, median.sideFrom);
        EXPECT_NE(median.corner, median.sideTo);
        EXPECT_NE(median.sideFrom, median.sideTo);
    }
    EXPECT_EQ(medianOf(Handle::FootSpine).corner, Handle::CornerSpine);
}

TEST(HipBuildTest, FlawlessMediansHalveTheirSidesAndCrossAtTheMeanOfTheCorners)
{
    const Target target = hip(Convention::VentroglutealMedians);
    const Build build = flawlessOnHip(target, builder());
    for (const Handle foot : kFeetOfHip)
        EXPECT_NEAR(footShare(build, foot), 0.5, 1e-12);
    const Point mean =
        mediansCrossing(*build.point(Handle::CornerTrochanter), *build.point(Handle::CornerTubercle),
                        *build.point(Handle::CornerSpine));
    // A corner moved by three moves the crossing by one.
    Build moved = build;
    moved = placedOnHip(moved, builder(), Handle::CornerSpine,
                        *build.point(Handle::CornerSpine) + Point{0.0, 3.0});
    for (const Handle foot : kFeetOfHip) {
        const MedianOf median = medianOf(foot);
        moved.point(foot) = lerp(*moved.point(median.sideFrom), *moved.point(median.sideTo), 0.5);
    }
    EXPECT_LT(distance(siteByHip(moved, target, builder()), target.ideal + Point{0.0, 1.0}), 1e-9);
    EXPECT_TRUE(isFinite(mean));
}

TEST(HipBuildTest, AFootStaysOnItsSideWhenACornerMoves)
{
    const Target target = hip(Convention::VentroglutealMedians);
    Build build = flawlessOnHip(target, builder());
    build = placedOnHip(build, builder(), Handle::FootTrochanter, {90.0, 90.0});
    build = placedOnHip(build, builder(), Handle::CornerTubercle,
                        *build.point(Handle::CornerTubercle) + Point{-2.0, 4.0});
    for (const Handle foot : kFeetOfHip) {
        const MedianOf median = medianOf(foot);
        const Point from = *build.point(median.sideFrom);
        const Point way = *build.point(median.sideTo) - from;
        EXPECT_NEAR(cross(way, *build.point(foot) - from), 0.0, 1e-9) << wordOf(foot);
        EXPECT_GE(footShare(build, foot), 0.0);
        EXPECT_LE(footShare(build, foot), 1.0);
    }
}

TEST(HipBuildTest, FiguresNameHandAndMedians)
{
    const Target medians = hip(Convention::VentroglutealMedians);
    EXPECT_EQ(hipFigures(flawlessOnHip(medians, builder()), builder()).size(), 4U);
    const Target hand = hip(Convention::VentroglutealHand);
    EXPECT_EQ(hipFigures(flawlessOnHip(hand, builder()), builder()).back().code, StepCode::FingerTriangle);
}

}  // namespace hip_build_test
