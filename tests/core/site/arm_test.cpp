#include "core/site/arm.h"

#include <gtest/gtest.h>

#include "tests/support/arm_by_hand.h"

using namespace fb;

namespace arm_test {

TEST(ArmTest, WhatIsShownFromTheSideStaysWhereItIs)
{
    const Arm arm = test::armByHand(30.4, 10.0);
    for (const Point p : {Point{0, -4}, Point{2, -6}, Point{-3, -9}, Point{2.3, 0.2}})
        EXPECT_LT(distance(arm.show(p), p), 1e-9);
}

TEST(ArmTest, SkinRunsRoundTheLimb)
{
    const Arm arm = test::armByHand(30.4, 10.0);
    EXPECT_LT(arm.showSkin({3.0, -5.0}).x, 3.0);
    EXPECT_GT(arm.showSkin({3.0, -5.0}).x, 2.5);
}

}  // namespace arm_test
