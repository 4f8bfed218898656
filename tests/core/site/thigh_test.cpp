#include "core/site/thigh.h"

#include <gtest/gtest.h>

#include <numbers>

#include "tests/support/limb_by_hand.h"

using namespace fb;

namespace thigh_test {

namespace {

Thigh thigh()
{
    return {test::roundLimb(8.0, 8.0, 8.0, 8.0),
            LimbSight::FromSide,
            40.0,
            1.0,
            {40.0, 0.0},
            {-9.0, 5.0},
            {40.0, 6.0},
            {}};
}

}  // namespace

TEST(ThighTest, HeightsAreSharesOfTheLengthBelowTheTrochanter)
{
    EXPECT_EQ(thigh().yOf(0.0), 0.0);
    EXPECT_EQ(thigh().yOf(0.5), -20.0);
    EXPECT_EQ(thigh().shownAt(90.0, 0.25).x, 10.0);
}

TEST(ThighTest, NinetyDegreesIsTheOuterLineAndZeroTheFront)
{
    EXPECT_NEAR(Thigh::turnOf(90.0), 0.0, 1e-15);
    EXPECT_NEAR(Thigh::turnOf(0.0), std::numbers::pi / 2.0, 1e-15);
    EXPECT_NEAR(thigh().skinAt(90.0, 0.5).x, 0.0, 1e-9);
    EXPECT_NEAR(thigh().skinAt(60.0, 0.5).x, 8.0 * std::numbers::pi / 6.0, 1e-6);
    EXPECT_NEAR(thigh().shownAt(0.0, 0.5).y, 8.0, 1e-9);
}

}  // namespace thigh_test
