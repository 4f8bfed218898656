#include "core/geometry/disc.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

using namespace fb;

namespace disc_test {

namespace {

Polygon square() { return Polygon::rectangle(-2.0, 2.0, -2.0, 2.0); }

// A quarter of the circle's chords: what a disc with its centre on a corner takes away.
double cornerArea(double radius)
{
    return kDiscCorners / 4.0 * 0.5 * radius * radius * std::sin(2.0 * std::numbers::pi / kDiscCorners);
}

}  // namespace

TEST(DiscTest, APolygonOfADiscHasItsCornersOnTheCircle)
{
    const Polygon polygon = discPolygon({{1.0, -2.0}, 3.0});
    ASSERT_EQ(polygon.corners().size(), static_cast<std::size_t>(kDiscCorners));
    for (const Point p : polygon.corners())
        EXPECT_NEAR(distance(p, {1.0, -2.0}), 3.0, 1e-12);
    EXPECT_NEAR(polygon.area(), std::numbers::pi * 9.0, 0.05);
}

TEST(DiscTest, ACornerIsBittenOff)
{
    const auto left = without(square(), {{2.0, 2.0}, 1.0});
    ASSERT_TRUE(left);
    EXPECT_NEAR(left->area(), 16.0 - cornerArea(1.0), 1e-9);
    EXPECT_FALSE(left->contains({1.9, 1.9}));
    EXPECT_TRUE(left->contains({-1.9, 1.9}));
}

TEST(DiscTest, OfTwoPiecesTheLargerStays)
{
    // A disc across a bar, nearer to its right end.
    const Polygon bar = Polygon::rectangle(-4.0, 4.0, -0.5, 0.5);
    const auto left = without(bar, {{2.0, 0.0}, 1.0});
    ASSERT_TRUE(left);
    EXPECT_TRUE(left->contains({-3.0, 0.0}));
    EXPECT_FALSE(left->contains({3.5, 0.0}));
}

TEST(DiscTest, ADiscElsewhereChangesNothing)
{
    EXPECT_EQ(without(square(), {{9.0, 0.0}, 1.0}), square());
    EXPECT_EQ(without(square(), {{0.0, 0.0}, 0.5}), square());
}

TEST(DiscTest, ADiscOverAllOfItLeavesNothing) { EXPECT_FALSE(without(square(), {{0.5, 0.0}, 9.0})); }

TEST(DiscTest, NoPointOfTheRestLiesDeepInTheDisc)
{
    for (int i = 0; i < 60; ++i) {
        const Disc disc{{3.0 * std::cos(0.1 * i), 2.5 * std::sin(0.17 * i)}, 0.6 + 0.02 * i};
        const auto left = without(square(), disc);
        ASSERT_TRUE(left) << i;
        // A chord lies no deeper in its circle than this.
        const double sagitta = disc.radius * (1.0 - std::cos(std::numbers::pi / kDiscCorners));
        for (const Point p : left->corners()) {
            EXPECT_GE(distance(p, disc.centre), disc.radius - sagitta - 1e-9) << i;
            EXPECT_LE(square().signedDistance(p), 1e-9) << i;
        }
    }
}

TEST(DiscTest, CornersOnTheCircleAreDecidedByWhatLiesBetween)
{
    const Polygon box = Polygon::rectangle(0.0, 4.0, 0.0, 4.0);
    const auto corner = without(box, {{0.0, 0.0}, 4.0});
    ASSERT_TRUE(corner);
    EXPECT_NEAR(corner->area(), 16.0 - cornerArea(4.0), 1e-9);
    EXPECT_FALSE(without(box, {{4.0, 4.0}, std::sqrt(32.0)}));
    EXPECT_FALSE(without(box, {{2.0, 2.0}, std::sqrt(8.0)}));
    // Touched from outside, nothing is taken.
    EXPECT_NEAR(without(box, {{-1.0, 2.0}, 1.0})->area(), 16.0, 1e-9);
}

}  // namespace disc_test
