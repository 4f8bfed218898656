#include "core/geometry/monotone_curve.h"

#include <gtest/gtest.h>

#include <vector>

#include "core/basics/seed_stream.h"

using namespace fb;

namespace monotone_curve_test {

namespace {

MonotoneCurve curve(const std::vector<double>& x, const std::vector<double>& y)
{
    return MonotoneCurve::make(x, y).value();
}

}  // namespace

TEST(MonotoneCurveTest, RefusesKnotsThatDoNotRise)
{
    const std::vector<double> rising{0, 1, 2};
    EXPECT_FALSE(MonotoneCurve::make(rising, std::vector<double>{0, 1, 1}));
    EXPECT_FALSE(MonotoneCurve::make(std::vector<double>{0, 0, 1}, rising));
    EXPECT_FALSE(MonotoneCurve::make(std::vector<double>{0}, std::vector<double>{0}));
    EXPECT_FALSE(MonotoneCurve::make(rising, std::vector<double>{0, 1}));
    const std::vector<double> many{0, 1, 2, 3, 4, 5, 6, 7, 8};
    EXPECT_FALSE(MonotoneCurve::make(many, many));
}

TEST(MonotoneCurveTest, RunsThroughItsKnots)
{
    const std::vector<double> x{-3, -1, 0, 2, 7};
    const std::vector<double> y{-9, -2, 0, 0.5, 8};
    const MonotoneCurve c = curve(x, y);
    for (std::size_t i = 0; i < x.size(); ++i) {
        EXPECT_NEAR(c.at(x[i]), y[i], 1e-12);
        EXPECT_NEAR(c.inverse(y[i]), x[i], 1e-9);
    }
}

TEST(MonotoneCurveTest, KnotsEqualOnBothSidesGiveTheIdentity)
{
    const std::vector<double> x{-3, -1, 0, 2, 7};
    const MonotoneCurve c = curve(x, x);
    for (double v = -10; v < 12; v += 0.37)
        EXPECT_NEAR(c.at(v), v, 1e-12);
}

TEST(MonotoneCurveTest, GoesOnStraightBeyondTheEnds)
{
    const MonotoneCurve c = curve({0, 1, 3}, {0, 2, 3});
    EXPECT_DOUBLE_EQ(c.at(-1), -2.0);
    EXPECT_DOUBLE_EQ(c.at(5), 4.0);
    EXPECT_DOUBLE_EQ(c.slopeAt(9), 0.5);
}

TEST(MonotoneCurveTest, RisesEverywhereAndItsInverseLeadsBack)
{
    SeedStream stream(20261125);
    for (int round = 0; round < 2000; ++round) {
        std::vector<double> x{stream.between(-20, 0)};
        std::vector<double> y{stream.between(-20, 0)};
        for (int i = 1; i < 6; ++i) {
            x.push_back(x.back() + stream.between(0.2, 9.0));
            y.push_back(y.back() + stream.between(0.2, 9.0));
        }
        const MonotoneCurve c = curve(x, y);
        double before = c.at(x.front() - 5.0);
        for (int k = 1; k <= 60; ++k) {
            const double v = x.front() - 5.0 + (x.back() - x.front() + 10.0) * k / 60.0;
            const double now = c.at(v);
            ASSERT_GT(now, before) << "round " << round;
            ASSERT_GT(c.slopeAt(v), 0.0) << "round " << round;
            ASSERT_NEAR(c.inverse(now), v, 1e-9) << "round " << round;
            before = now;
        }
    }
}

}  // namespace monotone_curve_test
