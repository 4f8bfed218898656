#include "core/geometry/ellipse_arc.h"

#include <gtest/gtest.h>

#include <numbers>

using namespace fb;

namespace ellipse_arc_test {

constexpr double kQuarter = std::numbers::pi / 2.0;

TEST(EllipseArcTest, ACircleHasTheLengthOfItsAngle)
{
    EXPECT_NEAR(ellipseArc(5.0, 5.0, 0.7), 3.5, 1e-12);
    EXPECT_NEAR(ellipseArc(5.0, 5.0, -0.7), -3.5, 1e-12);
    EXPECT_EQ(ellipseArc(5.0, 4.6, 0.0), 0.0);
}

TEST(EllipseArcTest, TheTurnLeadsBackFromTheArc)
{
    for (const double lateral : {3.0, 4.6, 5.0, 7.5}) {
        for (double turn = -1.5; turn <= 1.5; turn += 0.1)
            EXPECT_NEAR(ellipseTurn(5.0, lateral, ellipseArc(5.0, lateral, turn)), turn, 1e-9);
    }
}

TEST(EllipseArcTest, BeyondAQuarterItIsHeld)
{
    EXPECT_EQ(ellipseTurn(5.0, 4.6, 100.0), kQuarter);
    EXPECT_EQ(ellipseTurn(5.0, 4.6, -100.0), -kQuarter);
}

}  // namespace ellipse_arc_test
