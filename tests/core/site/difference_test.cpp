#include "core/site/difference.h"

#include <gtest/gtest.h>

#include "core/grade/grade.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace fb::test::difference_test {

Target target(Convention convention, View view, double weight = 65, Side side = Side::Right)
{
    return locate(atlas(), defaultPolicy(), adult(Sex::Female, 165, weight, side), convention, view).value();
}

TEST(DifferenceTest, ATargetDoesNotDifferFromItself)
{
    const Target one = target(Convention::VastusThirds, View::ThighSide);
    const TargetDifference none = differenceOf(one, one);
    EXPECT_EQ(none.apart, Cm{0.0});
    EXPECT_EQ(none.lower, Cm{0.0});
    EXPECT_EQ(none.forward, Cm{0.0});
}

TEST(DifferenceTest, TwoConventionsOnAnArmLieOneBelowTheOther)
{
    const Target strip = target(Convention::DeltoidStrip, View::ShoulderSide);
    const Target halfway = target(Convention::DeltoidHalfway, View::ShoulderSide);
    const TargetDifference down = differenceOf(strip, halfway);
    EXPECT_NEAR(down.lower.value(), strip.idealSkin.y - halfway.idealSkin.y, 1e-6);
    EXPECT_GT(down.lower.value(), 2.0);
    EXPECT_DOUBLE_EQ(down.forward.value(), 0.0);
    EXPECT_NEAR(down.apart.value(), down.lower.value(), 1e-6) << "an arm hangs straight in the picture";
    EXPECT_DOUBLE_EQ(differenceOf(halfway, strip).lower.value(), -down.lower.value()) << "negative: higher";
}

TEST(DifferenceTest, OnAHipForwardIsTowardTheFrontAndLowerTowardTheFeet)
{
    for (const Side side : kSides) {
        const Target first = target(Convention::VentroglutealHand, View::HipSide, 65, side);
        Target second = first;
        // The front is up; the feet are to the right of a right hip, to the left of a left one.
        second.ideal = second.ideal + Point{side == Side::Right ? 3.0 : -3.0, 4.0};
        second.idealSkin = second.toSkin(second.ideal);
        const TargetDifference way = differenceOf(first, second);
        EXPECT_NEAR(way.apart.value(), 5.0, 1e-6);
        EXPECT_NEAR(way.lower.value(), 3.0, 1e-6);
        EXPECT_NEAR(way.forward.value(), 4.0, 1e-6);
    }
}

TEST(DifferenceTest, OnAThighTheSkinIsLongerThanThePicture)
{
    const Target lean = target(Convention::VastusThirds, View::ThighSide, 50);
    const Target heavy = target(Convention::VastusThirds, View::ThighSide, 120);
    const TargetDifference way = differenceOf(lean, heavy);
    EXPECT_NEAR(way.lower.value(), 0.0, 1e-6) << "weight alone moves nothing along the bone";
    EXPECT_GT(way.forward.value(), 0.5) << "the same angle is a longer way round";
    EXPECT_GT(way.apart.value(), 0.5);
}

TEST(DifferenceTest, AMarkOnTheSecondsIdealPointIsOffByTheDifference)
{
    const Target hand = target(Convention::VentroglutealHand, View::HipSide);
    const Target medians = target(Convention::VentroglutealMedians, View::HipSide);
    const TargetDifference way = differenceOf(hand, medians);
    const Grade grade = gradeMark(hand, defaultPolicy(), medians.ideal, MarkedLimb::Pelvis);
    EXPECT_NEAR(way.lower.value(), grade.offDistal.value(), 2e-6);
    EXPECT_NEAR(way.forward.value(), grade.offAnterior.value(), 2e-6);
    EXPECT_NEAR(way.apart.value(), grade.distanceToIdeal.value(), 2e-6);
}

}  // namespace fb::test::difference_test
