#include "core/site/deltoid_hazards.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/arm_by_hand.h"
#include "tests/support/core_atlas.h"

using namespace fb;
using test::armByHand;
using test::defaultPolicy;

namespace deltoid_hazards_test {

namespace {

bool lies(const std::vector<Hazard>& hazards, HazardCode code, Point skin)
{
    const auto it = std::ranges::find(hazards, code, &Hazard::code);
    return it != hazards.end() && it->skin.contains(skin);
}

}  // namespace

TEST(DeltoidHazardsTest, BoneComesFirstThenStrikesThenWhatIsNear)
{
    const auto hazards = deltoidHazards(defaultPolicy(), armByHand(30.4, 10.0));
    ASSERT_EQ(hazards.size(), 7U);
    EXPECT_EQ(hazards.front().kind, HazardKind::Bone);
    EXPECT_TRUE(std::ranges::is_sorted(hazards, {}, &Hazard::kind));
}

TEST(DeltoidHazardsTest, StrikesReachAcrossThePlane)
{
    const auto hazards = deltoidHazards(defaultPolicy(), armByHand(30.4, 10.0));
    EXPECT_TRUE(lies(hazards, HazardCode::JointAndBursa, {0, -3.0}));
    EXPECT_FALSE(lies(hazards, HazardCode::JointAndBursa, {0, -3.1}));
    EXPECT_TRUE(lies(hazards, HazardCode::JointAndBursa, {30, 5}));
    EXPECT_TRUE(lies(hazards, HazardCode::BelowArmpit, {0, -10.0}));
    EXPECT_FALSE(lies(hazards, HazardCode::BelowArmpit, {0, -9.9}));
    EXPECT_TRUE(lies(hazards, HazardCode::Acromion, {0, 0.4}));
}

TEST(DeltoidHazardsTest, TheRadialNerveLiesLowOnTheBack)
{
    const auto hazards = deltoidHazards(defaultPolicy(), armByHand(30.4, 12.0));
    EXPECT_FALSE(lies(hazards, HazardCode::RadialNerveBehind, {-2, -9.6}));
    EXPECT_TRUE(lies(hazards, HazardCode::RadialNerveBehind, {-2, -9.7}));
    EXPECT_FALSE(lies(hazards, HazardCode::RadialNerveBehind, {-1, -9.8}));
    EXPECT_FALSE(lies(hazards, HazardCode::RadialNerveBehind, {2, -9.8}));
}

TEST(DeltoidHazardsTest, TheBackOfTheArmIsNoStrikeOfItsOwnBelowArmpitLevel)
{
    const auto hazards = deltoidHazards(defaultPolicy(), armByHand(30.4, 9.0));
    EXPECT_FALSE(lies(hazards, HazardCode::RadialNerveBehind, {-2, -9.8}));
    EXPECT_TRUE(lies(hazards, HazardCode::BelowArmpit, {-2, -9.8}));
}

TEST(DeltoidHazardsTest, WhatIsPaintedStaysOnTheArm)
{
    for (const Hazard& hazard : deltoidHazards(defaultPolicy(), armByHand(30.4, 10.0))) {
        const Bounds b = hazard.plane.bounds();
        EXPECT_GE(b.low.x, -5.6);
        EXPECT_LE(b.high.x, 5.6);
        EXPECT_GE(b.low.y, -32.5);
        EXPECT_LE(b.high.y, 2.1);
    }
}

}  // namespace deltoid_hazards_test
