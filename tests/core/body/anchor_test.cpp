#include "core/body/anchor.h"

#include <gtest/gtest.h>

#include <limits>

#include "core/body/moved_ink.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace fb::test::anchor_test {

constexpr double kReturns = 1e-3;  // cm

BodyMap mapOf(View view, double weight, Side side = Side::Right)
{
    return bodyMap(atlas(), view, adult(Sex::Female, 165, weight, side)).value();
}

Point idealOf(Convention convention, View view, double weight, Side side = Side::Right)
{
    return locate(atlas(), defaultPolicy(), adult(Sex::Female, 165, weight, side), convention, view)
        .value()
        .ideal;
}

TEST(AnchorTest, OnItsOwnBodyThePlaceComesBack)
{
    for (const Side side : kSides) {
        const BodyMap map = mapOf(View::ThighSide, 88, side);
        const Point place = idealOf(Convention::VastusThirds, View::ThighSide, 88, side);
        const auto anchor = anchorOf(plateOf(View::ThighSide), map, side, place);
        ASSERT_TRUE(anchor);
        EXPECT_EQ(anchor->limb, plateOf(View::ThighSide).limbNamed("thigh"));
        EXPECT_LT(distance(placeOf(*anchor, map, side), place), kReturns);
    }
}

TEST(AnchorTest, TheTopmostLimbCarriesIt)
{
    const Plate& plate = sidePlate();
    const BodyMap map = mapOf(View::ShoulderSide, 65);
    const auto onArm = anchorOf(plate, map, Side::Right, {0.0, -8.0});
    ASSERT_TRUE(onArm);
    EXPECT_EQ(onArm->limb, plate.limbNamed("arm"));
}

TEST(AnchorTest, OnAHeavierBodyAPlaceOnTheSkinsEdgeGoesOutWithTheSkin)
{
    const Plate& plate = plateOf(View::ThighSide);
    const BodyMap lean = mapOf(View::ThighSide, 50);
    const BodyMap heavy = mapOf(View::ThighSide, 130);
    const Point middle = idealOf(Convention::VastusThirds, View::ThighSide, 50);
    Point edge = middle;
    while (limbAt(plate, lean, Side::Right, edge + Point{0.0, 0.05}) >= 0)
        edge.y += 0.05;
    const auto anchor = anchorOf(plate, lean, Side::Right, edge);
    ASSERT_TRUE(anchor);
    const Point moved = placeOf(*anchor, heavy, Side::Right);
    EXPECT_GT(moved.y, edge.y + 1.0);
    EXPECT_NEAR(moved.x, edge.x, 1e-6) << "along the thigh nothing moves with weight";
    EXPECT_GE(limbAt(plate, heavy, Side::Right, moved), 0);
    EXPECT_LT(limbAt(plate, heavy, Side::Right, moved + Point{0.0, 0.2}), 0) << "still at the edge";
}

TEST(AnchorTest, ALeftBodysPlaceIsTheMirrorOfARightOnes)
{
    const Plate& plate = plateOf(View::HipSide);
    const BodyMap map = mapOf(View::HipSide, 65);
    const Point place{-6.0, 2.0};
    const auto right = anchorOf(plate, map, Side::Right, place);
    const auto left = anchorOf(plate, map, Side::Left, mirrored(place));
    ASSERT_TRUE(right && left);
    EXPECT_EQ(*right, *left) << "an anchor knows no side";
    EXPECT_EQ(placeOf(*left, map, Side::Left), mirrored(placeOf(*left, map, Side::Right)));
}

TEST(AnchorTest, OffTheBodyNothingIsAnchored)
{
    constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
    constexpr double kInfinite = std::numeric_limits<double>::infinity();
    const BodyMap map = mapOf(View::HipSide, 65);
    for (const Point off : {Point{0.0, 500.0}, Point{1e9, -1e9}, Point{kNan, 0.0}, Point{0.0, kInfinite}})
        EXPECT_FALSE(anchorOf(plateOf(View::HipSide), map, Side::Right, off)) << off.x << ", " << off.y;
}

}  // namespace fb::test::anchor_test
