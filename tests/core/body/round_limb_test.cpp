#include "core/body/round_limb.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/limb_by_hand.h"

using namespace fb;
using test::roundLimb;

namespace round_limb_test {

namespace {

constexpr double kQuarter = std::numbers::pi / 2.0;

}  // namespace

TEST(RoundLimbTest, OnACircleTheSkinIsTheAngleTimesTheRadius)
{
    const RoundLimb limb = roundLimb(8.0, 8.0, 8.0, 8.0);
    for (const double turn : {-kQuarter, -0.7, 0.0, 0.4, kQuarter, 2.0, 2.0 * kQuarter}) {
        EXPECT_NEAR(limb.arcOf(turn, -20.0), 8.0 * turn, 1e-6);
        EXPECT_NEAR(limb.turnOf({8.0 * turn, -20.0}), turn, 1e-6);
    }
}

TEST(RoundLimbTest, ZeroIsTheOuterLineInBothViews)
{
    const RoundLimb limb = roundLimb(9.0, 7.0, 8.0, 6.0);
    EXPECT_EQ(limb.toSkin(LimbSight::FromSide, {20.0, 0.0}), (Point{0.0, -20.0}));
    EXPECT_NEAR(limb.toSkin(LimbSight::FromFront, {20.0, -8.0}).x, 0.0, 1e-9);
}

TEST(RoundLimbTest, BothViewsAgreeAboutTheSkinTheyBothSee)
{
    const RoundLimb limb = roundLimb(9.0, 7.0, 8.0, 6.0);
    for (const double turn : {0.1, 0.5, 1.0, 1.5}) {
        const Point side = limb.shown(LimbSight::FromSide, turn, -15.0);
        const Point front = limb.shown(LimbSight::FromFront, turn, -15.0);
        EXPECT_NEAR(side.y, 9.0 * std::sin(turn), 1e-12);
        EXPECT_NEAR(front.y, -8.0 * std::cos(turn), 1e-12);
        EXPECT_NEAR(limb.toSkin(LimbSight::FromSide, side).x, limb.toSkin(LimbSight::FromFront, front).x,
                    1e-7);
    }
}

TEST(RoundLimbTest, TheWayBackIsTheWayThere)
{
    const RoundLimb limb = roundLimb(9.0, 7.0, 8.0, 6.0);
    for (const LimbSight sight : {LimbSight::FromSide, LimbSight::FromFront}) {
        for (double y = -9.0; y <= 9.0; y += 0.37) {
            const Point frame{17.0, y};
            const Point back = limb.toFrame(sight, limb.toSkin(sight, frame));
            EXPECT_NEAR(back.x, frame.x, 1e-9);
            EXPECT_NEAR(back.y, frame.y, 1e-6) << "y " << y;
        }
    }
}

TEST(RoundLimbTest, SkinRisesTowardTheFrontAndInward)
{
    const RoundLimb limb = roundLimb(9.0, 7.0, 8.0, 6.0);
    for (const LimbSight sight : {LimbSight::FromSide, LimbSight::FromFront}) {
        double before = limb.toSkin(sight, {10.0, -12.0}).x;
        for (double y = -11.8; y < 12.0; y += 0.2) {
            const double s = limb.toSkin(sight, {10.0, y}).x;
            EXPECT_GT(s, before);
            before = s;
        }
    }
}

TEST(RoundLimbTest, EachViewSeesItsHalf)
{
    const RoundLimb limb = roundLimb(9.0, 7.0, 8.0, 6.0);
    EXPECT_TRUE(limb.sees(LimbSight::FromSide, -1.0));
    EXPECT_FALSE(limb.sees(LimbSight::FromSide, 2.0));
    EXPECT_TRUE(limb.sees(LimbSight::FromFront, 2.0));
    EXPECT_FALSE(limb.sees(LimbSight::FromFront, -1.0));
    // What lies out of sight is laid on the edge before it.
    EXPECT_EQ(limb.shown(LimbSight::FromFront, -1.0, -10.0), limb.shown(LimbSight::FromFront, 0.0, -10.0));
}

}  // namespace round_limb_test
