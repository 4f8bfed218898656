#include "core/site/locate.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/core_atlas.h"
#include "tests/support/polygon_text.h"

using namespace fb;
using test::adult;
using test::atlas;
using test::defaultPolicy;

namespace locate_test {

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
    for (const View view : kViews) {
        for (const Convention convention : conventionsOf(siteOf(view))) {
            const Target right = target(adult(Sex::Female, 163, 71, Side::Right), convention, view);
            const Target left = target(adult(Sex::Female, 163, 71, Side::Left), convention, view);
            EXPECT_EQ(left.ideal, mirrored(right.ideal));
            EXPECT_NEAR(left.region.area(), right.region.area(), 1e-9);
            for (const auto& [name, p] : right.landmarks)
                EXPECT_EQ(left.landmarks.at(name), mirrored(p)) << name;
        }
    }
}

TEST(LocateTest, AConventionOfAnotherSiteIsRefused)
{
    for (const View view : kViews) {
        for (const Convention convention : kConventions) {
            const auto found = locate(atlas(), defaultPolicy(), adult(Sex::Male, 172, 70), convention, view);
            if (siteOf(convention) == siteOf(view)) {
                EXPECT_TRUE(found) << wordOf(convention);
                continue;
            }
            ASSERT_FALSE(found) << wordOf(convention);
            EXPECT_EQ(found.error().problem, Problem::ConventionOfAnotherSite);
            EXPECT_EQ(found.error().what, wordOf(convention));
            EXPECT_EQ(found.error().where, wordOf(siteOf(view)));
        }
    }
}

TEST(LocateTest, OnlyTheNeededPlatesAreAsked)
{
    for (const View view : kViews) {
        Atlas needed;
        needed.proportions = atlas().proportions;
        for (const View plate : neededPlates(view))
            needed.plates[static_cast<std::size_t>(plate)] = &test::plateOf(plate);
        EXPECT_TRUE(needed.holds(view));
        const auto found = locate(needed, defaultPolicy(), adult(Sex::Male, 172, 70),
                                  conventionsOf(siteOf(view)).front(), view);
        EXPECT_TRUE(found) << wordOf(view);
    }
}

TEST(LocateTest, EverySiteTellsItsOwnLengthAlone)
{
    const Patient patient = adult(Sex::Female, 163, 71);
    const Target arm = target(patient);
    EXPECT_GT(arm.armLength.value(), 20.0);
    EXPECT_EQ(arm.thighLength, Cm{});
    EXPECT_TRUE(arm.heights.empty());
    const Target thigh = target(patient, Convention::VastusThirds, View::ThighFront);
    EXPECT_NEAR(thigh.thighLength.value(), thigh.landmarks.at("lateral_femoral_epicondyle").x, 0.3);
    EXPECT_EQ(thigh.asisToTrochanter, Cm{});
    const Target hip = target(patient, Convention::VentroglutealHand, View::HipSide);
    EXPECT_NEAR(hip.asisToTrochanter.value(), length(hip.landmarks.at("asis")), 1e-9);
    EXPECT_EQ(hip.armLength, Cm{});
    EXPECT_NEAR(hip.heights.at("greater_trochanter") - hip.heights.at("lateral_femoral_epicondyle"),
                thigh.thighLength.value(), 1e-9);
}

TEST(LocateTest, LevelsOfALyingLimbRunAlongIt)
{
    const Target thigh = target(adult(Sex::Male, 172, 70), Convention::VastusThirds, View::ThighSide);
    EXPECT_NEAR(thigh.levels.at("trochanter"), 0.0, 1e-6);
    EXPECT_NEAR(thigh.levels.at("epicondyle"), thigh.thighLength.value(), 0.3);
    EXPECT_LT(thigh.levels.at("asis"), 0.0);
    const Target left =
        target(adult(Sex::Male, 172, 70, Side::Left), Convention::VastusThirds, View::ThighSide);
    EXPECT_EQ(left.levels.at("epicondyle"), -thigh.levels.at("epicondyle"));
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
    ASSERT_EQ(others.size(), conventionsOf(Site::Deltoid).size() - 1);
    for (const OtherConvention& other : others) {
        EXPECT_NE(other.convention, Convention::DeltoidStrip);
        EXPECT_EQ(other.ideal, target(adult(Sex::Male, 172, 70), other.convention).ideal);
    }
}

}  // namespace locate_test
