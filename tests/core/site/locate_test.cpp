#include "core/site/locate.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/core_atlas.h"
#include "tests/support/polygon_text.h"

using namespace fb;
using test::adult;
using test::atlas;
using test::defaultPolicy;

namespace {

Target target(const Patient& patient, Convention convention = Convention::DeltoidStrip,
              View view = View::ShoulderSide)
{
    return locate(atlas(), defaultPolicy(), patient, convention, view).value();
}

}  // namespace

TEST(LocateTest, ASmallWomanAndALargeManEachGetTheirOwnTarget)
{
    const Target woman = target(adult(Sex::Female, 150, 45));
    const Target man = target(adult(Sex::Male, 195, 130));
    EXPECT_LT(woman.armLength, man.armLength);
    EXPECT_GT(woman.ideal.y, man.ideal.y);
    EXPECT_LT(woman.region.area(), man.region.area());
    EXPECT_NEAR(woman.ideal.x, 0.0, 1e-9);
}

TEST(LocateTest, LandmarksAndLevelsCarryTheirPublicNames)
{
    const Target t = target(adult(Sex::Female, 163, 71));
    for (const char* name : {"acromion", "acromion_front", "acromion_back", "axilla_front", "axilla_back",
                             "deltoid_tuberosity", "lateral_epicondyle"})
        EXPECT_TRUE(t.landmarks.contains(name)) << name;
    EXPECT_LT(length(t.landmarks.at("acromion")), 1e-9);
    for (const char* name : {"acromion", "axilla", "mid_arm", "radiale"})
        EXPECT_TRUE(t.levels.contains(name)) << name;
    EXPECT_NEAR(t.levels.at("axilla"), -t.axillaDepth.value(), 0.15);
}

TEST(LocateTest, LeftIsTheMirrorOfRight)
{
    for (const Convention convention : kConventions) {
        for (const View view : kViews) {
            const Target right = target(adult(Sex::Female, 163, 71, Side::Right), convention, view);
            const Target left = target(adult(Sex::Female, 163, 71, Side::Left), convention, view);
            EXPECT_EQ(left.ideal, mirrored(right.ideal));
            EXPECT_NEAR(left.region.area(), right.region.area(), 1e-9);
            for (const auto& [name, p] : right.landmarks)
                EXPECT_EQ(left.landmarks.at(name), mirrored(p)) << name;
        }
    }
}

TEST(LocateTest, TheThreeQuarterViewShowsTheSameSkin)
{
    const Patient patient = adult(Sex::Male, 172, 70);
    const Target side = target(patient);
    const Target quarter = target(patient, Convention::DeltoidStrip, View::ShoulderThreeQuarter);
    EXPECT_EQ(quarter.idealSkin, side.idealSkin);
    // Seen from half-way to the front, the mid-lateral line lies to the left of the limb's axis.
    EXPECT_LT(quarter.ideal.x, 2.0);
    EXPECT_NEAR(quarter.ideal.y, side.ideal.y, 0.5);
    EXPECT_LT(quarter.region.area(), side.region.area());
}

TEST(LocateTest, OtherConventionsLieOnTheSameBody)
{
    const auto others = otherConventions(atlas(), defaultPolicy(), adult(Sex::Male, 172, 70),
                                         Convention::DeltoidStrip, View::ShoulderSide);
    ASSERT_EQ(others.size(), kConventions.size() - 1);
    for (const OtherConvention& other : others) {
        EXPECT_NE(other.convention, Convention::DeltoidStrip);
        EXPECT_EQ(other.ideal, target(adult(Sex::Male, 172, 70), other.convention).ideal);
    }
}
