// The arc of a quarter ellipse against Boost's incomplete elliptic integral of the second kind.
#include <gtest/gtest.h>

#include <boost/math/special_functions/ellint_2.hpp>
#include <cmath>
#include <numbers>

#include "core/geometry/ellipse_arc.h"
#include "tests/property/sampling.h"

namespace fb::test::ellipse_arc_oracle_test {

namespace ellipse_oracle_detail {

constexpr double kQuarter = std::numbers::pi / 2.0;

double boostArc(double front, double lateral, double turn)
{
    using boost::math::ellint_2;
    if (lateral <= front)
        return front * ellint_2(std::sqrt(1.0 - lateral * lateral / (front * front)), turn);
    const double k = std::sqrt(1.0 - front * front / (lateral * lateral));
    return lateral * (ellint_2(k, kQuarter) - ellint_2(k, kQuarter - turn));
}

}  // namespace ellipse_oracle_detail

TEST(EllipseArcAgainstBoost, AgreesToOnePartInTenMillionForLimbs)
{
    using namespace ellipse_oracle_detail;
    SeedStream stream(1);
    for (int i = 0; i < rounds(20'000); ++i) {
        const double front = stream.between(1.0, 15.0);
        const double lateral = front * stream.between(0.5, 2.0);
        const double turn = stream.between(0.0, kQuarter);
        const double expected = boostArc(front, lateral, turn);
        ASSERT_NEAR(ellipseArc(front, lateral, turn), expected, 1e-7 * expected)
            << "seed 1, " << front << " by " << lateral << " at " << turn;
        ASSERT_EQ(ellipseArc(front, lateral, -turn), -ellipseArc(front, lateral, turn));
    }
}

TEST(EllipseArcAgainstBoost, TurnGivesBackItsArc)
{
    using namespace ellipse_oracle_detail;
    SeedStream stream(2);
    for (int i = 0; i < rounds(20'000); ++i) {
        const double front = stream.between(1.0, 15.0);
        const double lateral = front * stream.between(0.5, 2.0);
        const double arc = ellipseArc(front, lateral, kQuarter) * stream.between(-1.0, 1.0);
        ASSERT_NEAR(ellipseArc(front, lateral, ellipseTurn(front, lateral, arc)), arc, 1e-9)
            << "seed 2, " << front << " by " << lateral << " at " << arc;
    }
}

TEST(EllipseArcAgainstBoost, CircleIsExactAndBeyondAQuarterIsHeld)
{
    using namespace ellipse_oracle_detail;
    EXPECT_NEAR(ellipseArc(5.0, 5.0, 0.7), 3.5, 1e-13);
    EXPECT_EQ(ellipseTurn(5.0, 4.6, 50.0), kQuarter);
    EXPECT_EQ(ellipseTurn(5.0, 4.6, -50.0), -kQuarter);
}

}  // namespace fb::test::ellipse_arc_oracle_test
