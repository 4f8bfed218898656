#include "core/geometry/cubic.h"

#include <gtest/gtest.h>

using namespace fb;

namespace cubic_test {

TEST(CubicTest, PartsTogetherAreTheWhole)
{
    const Cubic whole{{0, 0}, {1, 3}, {4, 3}, {5, 0}};
    const auto [head, tail] = whole.split(0.3);
    for (double t = 0.0; t <= 1.0; t += 0.1) {
        EXPECT_LT(distance(head.at(t), whole.at(0.3 * t)), 1e-12);
        EXPECT_LT(distance(tail.at(t), whole.at(0.3 + 0.7 * t)), 1e-12);
    }
}

TEST(CubicTest, SpanIsNeverShorterThanTheCurve)
{
    const Cubic c{{0, 0}, {1, 3}, {4, 3}, {5, 0}};
    double travelled = 0.0;
    for (int i = 0; i < 100; ++i)
        travelled += distance(c.at(i / 100.0), c.at((i + 1) / 100.0));
    EXPECT_GE(c.span(), travelled);
}

TEST(CubicTest, ALineStaysStraight)
{
    const Cubic line = Cubic::line({1, 1}, {4, 7});
    EXPECT_LT(distance(line.at(0.5), {2.5, 4}), 1e-12);
    EXPECT_DOUBLE_EQ(line.span(), distance({1, 1}, {4, 7}));
}

}  // namespace cubic_test
