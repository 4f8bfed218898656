#include "core/body/surface.h"

#include <gtest/gtest.h>

#include "tests/support/limb_by_hand.h"

using namespace fb;

namespace surface_test {

TEST(SurfaceTest, TheHipIsItsOwnPlaneTurnedToTheHead)
{
    const Surface hip{HipPlane{}};
    EXPECT_FALSE(hip.isSkin());
    // Toward the head is to the viewer's left, toward the front is up.
    EXPECT_EQ(hip.toSkin({-8.0, 3.0}), (Point{3.0, 8.0}));
    EXPECT_EQ(hip.toFrame(hip.toSkin({-8.0, 3.0})), (Point{-8.0, 3.0}));
    EXPECT_EQ(hip.arm(), nullptr);
    EXPECT_EQ(hip.thigh(), nullptr);
}

TEST(SurfaceTest, AThighIsSkinOfTheViewItIsSeenIn)
{
    const RoundLimb limb = test::roundLimb(9.0, 7.0, 8.0, 6.0);
    const Surface side{ThighSurface{limb, LimbSight::FromSide}};
    const Surface front{ThighSurface{limb, LimbSight::FromFront}};
    ASSERT_NE(side.thigh(), nullptr);
    EXPECT_TRUE(side.isSkin());
    const Point frame{12.0, 2.0};
    EXPECT_EQ(side.toSkin(frame), limb.toSkin(LimbSight::FromSide, frame));
    EXPECT_EQ(front.toSkin(frame), limb.toSkin(LimbSight::FromFront, frame));
    EXPECT_NE(side.toSkin(frame), front.toSkin(frame));
}

TEST(SurfaceTest, AnArmIsItsCrossSection)
{
    const CrossSection section(test::plainLimb(4.0, 5.0), {0.0, 0.0}, 0.92);
    const Surface arm{section};
    ASSERT_NE(arm.arm(), nullptr);
    EXPECT_TRUE(arm.isSkin());
    EXPECT_EQ(arm.toSkin({1.5, -12.0}), section.toSkin({1.5, -12.0}));
    EXPECT_EQ(arm.toFrame({1.5, -12.0}), section.toFrame({1.5, -12.0}));
}

}  // namespace surface_test
