#include "core/site/hip.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/point.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace hip_test {

// What locate() measures on a plate obeys what the rules of the hip take for granted.
TEST(HipTest, OnThePlateTheCrestRunsFromTheSpineOverTheTopToTheBackSpine)
{
    const Target hip = locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Male, 172, 70),
                              Convention::VentroglutealHand, View::HipSide)
                           .value();
    const auto crest = std::ranges::find(hip.construction, StepCode::FeelCrest, &Step::code);
    ASSERT_NE(crest, hip.construction.end());
    EXPECT_LT(distance(crest->points.front(), hip.landmarks.at("asis")), 0.15);
    EXPECT_LT(distance(crest->points.back(), hip.landmarks.at("psis")), 0.15);
    double top = 0.0;
    for (const Point p : crest->points)
        top = std::min(top, p.x);
    EXPECT_NEAR(top, hip.landmarks.at("iliac_crest").x, 0.3);
    // The tubercle lies on it.
    double nearest = 1e9;
    for (const Point p : crest->points)
        nearest = std::min(nearest, distance(p, hip.landmarks.at("iliac_tubercle")));
    EXPECT_LT(nearest, 0.8);
}

TEST(HipTest, TheCrestIsOneDomeButForAShallowDent)
{
    // Clearance from the crest is kept by whole lines through its segments: where the crest dents,
    // more is kept than asked, so the dent must be shallow.
    const Target hip = locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Male, 172, 70),
                              Convention::VentroglutealHand, View::HipSide)
                           .value();
    const auto crest = std::ranges::find(hip.construction, StepCode::FeelCrest, &Step::code);
    ASSERT_NE(crest, hip.construction.end());
    const auto& line = crest->points;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Point along = line[i + 1] - line[i];
        for (const Point p : line)
            EXPECT_GT(cross(along, p - line[i]) / length(along), -0.5)
                << "segment " << i << " from " << line[i].x << ", " << line[i].y << " against " << p.x << ", "
                << p.y;
    }
}

}  // namespace hip_test
