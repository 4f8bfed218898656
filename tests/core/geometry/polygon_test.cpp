#include "core/geometry/polygon.h"

#include <gtest/gtest.h>

#include <limits>

#include "tests/support/polygon_text.h"

using namespace fb;
using fb::test::points;
using fb::test::polygon;

namespace polygon_test {

TEST(PolygonTest, RefusesWhatIsNoPolygon)
{
    EXPECT_FALSE(Polygon::make({}));
    EXPECT_FALSE(Polygon::make(points("0,0 1,0")));
    EXPECT_FALSE(Polygon::make(points("0,0 1,0 2,0")));
    EXPECT_FALSE(Polygon::make(points("0,0 0,0 1,1 1,1")));
    EXPECT_FALSE(Polygon::make({{0, 0}, {1, 0}, {std::numeric_limits<double>::quiet_NaN(), 1}}));
}

TEST(PolygonTest, RepeatedCornersAreLeftOut)
{
    EXPECT_EQ(polygon("0,0 4,0 4,0 4,3 0,0").corners().size(), 3U);
}

TEST(PolygonTest, ClockwiseInputIsTurnedRound)
{
    EXPECT_GT(polygon("0,0 0,4 4,4 4,0").area(), 0.0);
    EXPECT_EQ(polygon("0,0 0,4 4,4 4,0").area(), 16.0);
}

TEST(PolygonTest, BorderPointCountsAsInside)
{
    const Polygon square = polygon("0,0 10,0 10,10 0,10");
    for (const Point p : points("0,0 10,10 5,0 5,10 0,5 10,5")) {
        EXPECT_TRUE(square.contains(p)) << p.x << ',' << p.y;
        EXPECT_EQ(square.signedDistance(p), 0.0);
    }
    EXPECT_TRUE(square.contains({10.0 + 5e-10, 5}));
    EXPECT_FALSE(square.contains({10.0 + 2e-9, 5}));
}

TEST(PolygonTest, SignedDistanceIsNegativeInside)
{
    const Polygon square = polygon("0,0 10,0 10,10 0,10");
    EXPECT_DOUBLE_EQ(square.signedDistance({5, 4}), -4.0);
    EXPECT_DOUBLE_EQ(square.signedDistance({5, -3}), 3.0);
    EXPECT_DOUBLE_EQ(square.signedDistance({13, 14}), 5.0);
}

TEST(PolygonTest, ANotchIsOutside)
{
    const Polygon notched = polygon("0,0 10,0 10,10 5,2 0,10");
    EXPECT_FALSE(notched.contains({5, 6}));
    EXPECT_TRUE(notched.contains({5, 1}));
}

TEST(PolygonTest, CentroidOfATriangleLiesAThirdOfTheHeightFromItsBase)
{
    // Clinical check C05 (geometry): base at 0, apex at 11.43, centroid at 3.81.
    const Point c = polygon("-2.35,0 0,-11.43 2.35,0").centroid();
    EXPECT_NEAR(c.x, 0.0, 1e-12);
    EXPECT_NEAR(c.y, -3.81, 0.01);
}

TEST(PolygonTest, CentroidKeepsItsDigitsFarFromTheOrigin)
{
    const Point c = polygon("1000000,1000000 1000001,1000000 1000001,1000001 1000000,1000001").centroid();
    EXPECT_NEAR(c.x, 1000000.5, 1e-8);
    EXPECT_NEAR(c.y, 1000000.5, 1e-8);
}

TEST(PolygonTest, MirroringTwiceGivesTheSamePolygon)
{
    const Polygon p = polygon("1,0 4,0 4,3");
    EXPECT_EQ(p.mirrored().mirrored(), p);
    EXPECT_GT(p.mirrored().area(), 0.0);
    EXPECT_TRUE(p.mirrored().contains({-3.5, 1}));
}

TEST(PolygonTest, NearestBorderPointLiesOnTheBorder)
{
    const Polygon square = polygon("0,0 10,0 10,10 0,10");
    EXPECT_EQ(square.nearestBorderPoint({4, 1}), (Point{4, 0}));
    EXPECT_EQ(square.nearestBorderPoint({14, 14}), (Point{10, 10}));
}

TEST(PolygonTest, RectangleHasItsBounds)
{
    const Bounds b = Polygon::rectangle(-1, 2, -3, 4).bounds();
    EXPECT_EQ(b.low, (Point{-1, -3}));
    EXPECT_EQ(b.high, (Point{2, 4}));
}

}  // namespace polygon_test
