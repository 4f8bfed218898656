#include "core/build/arm_build.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace arm_build_test {

namespace {

Target arm(Convention convention, double finger = 1.7)
{
    const Policy policy = test::defaultPolicy().with(PolicyKey::DeltoidFingerWidth, finger);
    return locate(test::atlas(), policy, test::adult(Sex::Female, 165, 64), convention, View::ShoulderSide)
        .value();
}

Builder fingersOf(double width)
{
    Builder builder = Builder::from(test::defaultPolicy());
    builder.hand.fingerWidth = Cm{width};
    return builder;
}

}  // namespace

// Three fingers of 2.2 cm are 6.6 cm, beyond 5.1: two of them are laid.
TEST(ArmBuildTest, WideFingersAreLaidTwoAtATimeAndSlimOnesThree)
{
    const Target strip = arm(Convention::DeltoidStrip);
    EXPECT_TRUE(countFits(strip, fingersOf(2.2), 2));
    EXPECT_FALSE(countFits(strip, fingersOf(2.2), 3));
    EXPECT_EQ(flawlessOnArm(strip, fingersOf(2.2)).fingers->count, 2);
    EXPECT_FALSE(countFits(strip, fingersOf(1.3), 2));
    EXPECT_TRUE(countFits(strip, fingersOf(1.3), 3));
    EXPECT_EQ(flawlessOnArm(strip, fingersOf(1.3)).fingers->count, 3);
}

TEST(ArmBuildTest, WhereNeitherCountEndsInTheBandTheNearerOneFits)
{
    // A band that lies far down: three fingers come nearer.
    const Target halfway = arm(Convention::DeltoidHalfway);
    EXPECT_FALSE(countFits(halfway, fingersOf(1.7), 2));
    EXPECT_TRUE(countFits(halfway, fingersOf(1.7), 3));
}

TEST(ArmBuildTest, FingersLaidLowPutTheSiteAsMuchLower)
{
    const Target target = arm(Convention::DeltoidStrip);
    const Builder builder = fingersOf(1.7);
    Build build = flawlessOnArm(target, builder);
    build.fingers->top = build.fingers->top + Point{0.0, -2.0};
    EXPECT_NEAR(siteByArm(build, target, builder).y, target.ideal.y - 2.0, 1e-6);
}

TEST(ArmBuildTest, AnApexTooFarBackPutsTheSiteBackButNotLower)
{
    const Target target = arm(Convention::DeltoidStrip);
    const Builder builder = fingersOf(1.7);
    Build build = flawlessOnArm(target, builder);
    const Point apex = *build.point(Handle::Apex);
    const Point skin = target.toSkin(apex);
    build.point(Handle::Apex) = target.toViewer({skin.x - 3.0, skin.y});
    const Point site = target.toSkin(siteByArm(build, target, builder));
    const double share = target.idealSkin.y / skin.y;
    EXPECT_NEAR(site.y, target.idealSkin.y, 1e-6);
    EXPECT_NEAR(site.x, -3.0 * share, 1e-6);
}

TEST(ArmBuildTest, TheMiddleStaysOnItsLineWhateverIsMoved)
{
    const Target target = arm(Convention::DeltoidHalfway);
    const Builder builder = fingersOf(1.7);
    Build build = flawlessOnArm(target, builder);
    build = placedOnArm(build, builder, Handle::LineMiddle, {30.0, -6.0});
    build =
        placedOnArm(build, builder, Handle::LineBottom, *build.point(Handle::LineBottom) + Point{3.0, 1.0});
    const Point top = *build.point(Handle::LineTop);
    const Point way = *build.point(Handle::LineBottom) - top;
    EXPECT_NEAR(cross(way, *build.point(Handle::LineMiddle) - top), 0.0, 1e-9);
    EXPECT_GT(middleShare(build), 0.0);
    EXPECT_LT(middleShare(build), 1.0);
    build = placedOnArm(build, builder, Handle::LineMiddle, top + Point{0.0, 50.0});
    EXPECT_DOUBLE_EQ(middleShare(build), 0.0);
}

TEST(ArmBuildTest, FingersAreTakenByTheirMiddle)
{
    const Target target = arm(Convention::DeltoidStrip);
    const Builder builder = fingersOf(1.7);
    Build build = flawlessOnArm(target, builder);
    build = placedOnArm(build, builder, Handle::Fingers, {2.0, -7.0});
    const auto at = armHandleAt(build, builder, Handle::Fingers);
    ASSERT_TRUE(at);
    EXPECT_LT(distance(*at, {2.0, -7.0}), 1e-9);
    build = placedOnArm(build, builder, Handle::FingersTurn,
                        *armHandleAt(build, builder, Handle::FingersTurn) + Point{0.0, 1.0});
    EXPECT_NE(build.fingers->turn.value(), 0.0);
}

TEST(ArmBuildTest, TheTriangleIsDrawnOnceItsThreeCornersAreSet)
{
    const Target target = arm(Convention::DeltoidStrip);
    const Builder builder = fingersOf(1.7);
    Build build = flawlessOnArm(target, builder);
    const auto has = [&](StepCode code) {
        return std::ranges::count(armFigures(build, builder), code, &Step::code);
    };
    EXPECT_EQ(has(StepCode::Triangle), 1);
    EXPECT_EQ(has(StepCode::LayFingers), build.fingers->count + 1);
    build.point(Handle::Apex).reset();
    EXPECT_EQ(has(StepCode::Triangle), 0);
    EXPECT_EQ(has(StepCode::AcromionBase), 1);
}

}  // namespace arm_build_test
