#include "core/geometry/point.h"

#include <gtest/gtest.h>

#include <limits>

using namespace fb;

namespace point_test {

TEST(PointTest, VectorAlgebra)
{
    EXPECT_EQ((Point{1, 2} + Point{3, 4}), (Point{4, 6}));
    EXPECT_EQ((Point{1, 2} - Point{3, 4}), (Point{-2, -2}));
    EXPECT_EQ((Point{1, 2} * 2.0), (Point{2, 4}));
    EXPECT_EQ(dot({1, 2}, {3, 4}), 11.0);
    EXPECT_EQ(cross({1, 0}, {0, 1}), 1.0);
    EXPECT_EQ(distance({0, 0}, {3, 4}), 5.0);
    EXPECT_EQ(lerp({0, 0}, {2, 4}, 0.5), (Point{1, 2}));
}

TEST(PointTest, MirroringTwiceGivesTheSamePoint)
{
    EXPECT_EQ(mirrored({1.5, 2.0}), (Point{-1.5, 2.0}));
    EXPECT_EQ(mirrored(mirrored({1.5, 2.0})), (Point{1.5, 2.0}));
}

TEST(PointTest, AnythingNotFiniteIsSeen)
{
    EXPECT_TRUE(isFinite(Point{1, 2}));
    EXPECT_FALSE(isFinite(Point{std::numeric_limits<double>::infinity(), 0}));
    EXPECT_FALSE(isFinite(Point{0, std::numeric_limits<double>::quiet_NaN()}));
}

}  // namespace point_test
