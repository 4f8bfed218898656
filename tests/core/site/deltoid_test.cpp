#include "core/site/deltoid.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/arm_by_hand.h"
#include "tests/support/core_atlas.h"

using namespace fb;
using test::armByHand;
using test::defaultPolicy;

namespace deltoid_test {

namespace {

bool hasStep(const Target& target, StepCode code)
{
    return std::ranges::any_of(target.construction, [&](const Step& s) { return s.code == code; });
}

}  // namespace

TEST(DeltoidTest, EveryConventionStartsAtTheAcromionAndEndsAtItsPoint)
{
    for (const Convention convention : conventionsOf(Site::Deltoid)) {
        const Target target = deltoidTarget(convention, defaultPolicy(), armByHand(30.4, 10.0));
        ASSERT_GE(target.construction.size(), 4U);
        EXPECT_EQ(target.construction.front().code, StepCode::FeelAcromion);
        EXPECT_EQ(target.construction.back().code, StepCode::IdealPoint);
        EXPECT_EQ(target.construction.back().points.front(), target.ideal);
        EXPECT_TRUE(hasStep(target, StepCode::Region));
        EXPECT_TRUE(hasStep(target, StepCode::ArmpitLevel));
        EXPECT_TRUE(target.region.contains(target.ideal));
    }
}

TEST(DeltoidTest, TheFigureIsTheConventionsOwn)
{
    const auto target = [](Convention c) { return deltoidTarget(c, defaultPolicy(), armByHand(30.4, 10.0)); };
    EXPECT_TRUE(hasStep(target(Convention::DeltoidStrip), StepCode::Triangle));
    EXPECT_TRUE(hasStep(target(Convention::DeltoidCentroid), StepCode::Triangle));
    EXPECT_FALSE(hasStep(target(Convention::DeltoidTwoInches), StepCode::Triangle));
    EXPECT_TRUE(hasStep(target(Convention::DeltoidHalfway), StepCode::FeelTuberosity));
    const Target fingers = target(Convention::DeltoidFingers);
    EXPECT_EQ(std::ranges::count(fingers.construction, StepCode::LayFingers, &Step::code), 3);
}

TEST(DeltoidTest, FingersAreTheLearnersOwnAndNeverScaled)
{
    const DeltoidBand small = deltoidBand(Convention::DeltoidFingers, defaultPolicy(), 26.0);
    const DeltoidBand large = deltoidBand(Convention::DeltoidFingers, defaultPolicy(), 38.0);
    EXPECT_EQ(small.top, large.top);
    const Policy thick = defaultPolicy().with(PolicyKey::DeltoidFingerWidth, 2.2);
    EXPECT_NEAR(deltoidBand(Convention::DeltoidFingers, thick, 30.4).bottom, 6.6, 1e-12);
}

TEST(DeltoidTest, TheBandIsCutAtArmpitLevel)
{
    // Clinical check C02: armpit level at 4.6 cm makes 4.8 cm too low.
    const DeltoidBand band =
        heldBand(deltoidBand(Convention::DeltoidStrip, defaultPolicy(), 30.4), defaultPolicy(), 30.4, 4.6);
    EXPECT_EQ(band.bottom, 4.6);
    EXPECT_LE(band.ideal, 4.1 + 1e-12);
    EXPECT_GE(band.ideal, band.top);
}

TEST(DeltoidTest, NoBandReachesAboveTheStrikeLine)
{
    for (const Convention convention : conventionsOf(Site::Deltoid)) {
        for (const double arm : {22.0, 30.4, 40.0}) {
            const DeltoidBand band =
                heldBand(deltoidBand(convention, defaultPolicy(), arm), defaultPolicy(), arm, 0.31 * arm);
            EXPECT_GE(band.top, 0.10 * arm - 1e-12) << wordOf(convention);
            EXPECT_GT(band.ideal, band.top) << wordOf(convention);
            EXPECT_LT(band.ideal, band.bottom) << wordOf(convention);
            EXPECT_LE(band.bottom, 0.31 * arm + 1e-12) << wordOf(convention);
        }
    }
}

TEST(DeltoidTest, SkinAndPlaneRegionsTellTheSameStory)
{
    const Target target = deltoidTarget(Convention::DeltoidStrip, defaultPolicy(), armByHand(30.4, 10.0));
    for (double x = -3; x <= 3; x += 0.1) {
        for (double y = -6; y <= -2; y += 0.1) {
            const double away = target.regionSkin.signedDistance(target.surface.toSkin({x, y}));
            if (std::abs(away) > 0.01) {
                EXPECT_EQ(target.region.contains({x, y}), away < 0.0) << x << ',' << y;
            }
        }
    }
}

}  // namespace deltoid_test
