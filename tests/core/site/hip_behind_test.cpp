#include "core/site/hip_behind.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace hip_behind_test {

namespace {

Target behind(const Patient& patient, Convention convention = Convention::VentroglutealHand)
{
    return locate(test::atlas(), test::defaultPolicy(), patient, convention, View::HipBehind).value();
}

const Hazard& hazard(const Target& target, HazardCode code)
{
    return *std::ranges::find(target.hazards, code, &Hazard::code);
}

}  // namespace

TEST(HipBehindTest, TheTaughtSiteIsSeenEdgeOnAtItsOwnHeight)
{
    for (const double weight : {52.0, 70.0, 130.0}) {
        const Patient patient = test::adult(Sex::Female, 165, weight);
        const Target side = locate(test::atlas(), test::defaultPolicy(), patient,
                                   Convention::VentroglutealHand, View::HipSide)
                                .value();
        const Target seen = behind(patient);
        EXPECT_NEAR(seen.ideal.y, side.idealSkin.y, 1e-9);
        EXPECT_NEAR(seen.region.bounds().high.y, side.regionSkin.bounds().high.y, 1e-9);
        EXPECT_EQ(seen.idealSkin, side.idealSkin);
        // Farther out than the posterior spine is from the midline, on the outer side of the body.
        EXPECT_GT(seen.ideal.x, seen.landmarks.at("psis").x + 5.0);
    }
}

TEST(HipBehindTest, TheSciaticNerveLiesBelowTheLineAndTheDorsoglutealTerritoryAboveIt)
{
    const Target seen = behind(test::adult(Sex::Male, 178, 80));
    const Point spine = seen.landmarks.at("psis");
    const Point middle = spine * 0.5;  // of the line to the trochanter, which is the origin
    const Polygon& above = hazard(seen, HazardCode::Dorsogluteal).plane;
    const Polygon& below = hazard(seen, HazardCode::SciaticNerve).plane;
    EXPECT_TRUE(above.contains(middle + Point{0.0, 2.0}));
    EXPECT_FALSE(above.contains(middle - Point{0.0, 2.0}));
    EXPECT_TRUE(below.contains(middle - Point{0.0, 2.0}));
    EXPECT_FALSE(below.contains(middle + Point{0.0, 2.0}));
    EXPECT_TRUE(below.contains(seen.landmarks.at("ischial_tuberosity")));
}

TEST(HipBehindTest, TheFigureIsTheLineFromPosteriorSpineToTrochanter)
{
    const Target seen = behind(test::adult(Sex::Male, 178, 80));
    const auto line = std::ranges::find(seen.construction, StepCode::BackLine, &Step::code);
    ASSERT_NE(line, seen.construction.end());
    EXPECT_LT(distance(line->points.front(), seen.landmarks.at("psis")), 1e-9);
    EXPECT_LT(length(line->points.back()), 1e-9);
}

}  // namespace hip_behind_test
