#include "core/site/vastus.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/grade/grade.h"
#include "tests/support/core_atlas.h"
#include "tests/support/limb_by_hand.h"

using namespace fb;
using test::defaultPolicy;

namespace vastus_test {

namespace {

Thigh thigh(LimbSight sight = LimbSight::FromSide, double length = 40.0)
{
    return {test::roundLimb(8.0, 8.0, 8.0, 8.0),
            sight,
            length,
            1.0,
            {length, 0.0},
            {-9.0, 5.0},
            {length, 6.0},
            {}};
}

Grade graded(const Thigh& on, double degrees, double along, Convention convention = Convention::VastusThirds)
{
    const Target target = vastusTarget(convention, defaultPolicy(), on);
    return gradeMark(target, defaultPolicy(), target.surface.toFrame(on.skinAt(degrees, along)),
                     MarkedLimb::Thigh);
}

bool hasStep(const Target& target, StepCode code)
{
    return std::ranges::any_of(target.construction, [&](const Step& s) { return s.code == code; });
}

}  // namespace

TEST(VastusTest, TheMiddleThirdIsTheRegionInBothViews)
{
    for (const LimbSight sight : {LimbSight::FromSide, LimbSight::FromFront}) {
        EXPECT_EQ(graded(thigh(sight), 60.0, 0.5).verdict, Verdict::OnTarget);
        EXPECT_NEAR(graded(thigh(sight), 60.0, 0.5).distanceToIdeal.value(), 0.0, 1e-5);
        EXPECT_EQ(graded(thigh(sight), 60.0, 0.35).verdict, Verdict::OnTarget);
        EXPECT_EQ(graded(thigh(sight), 60.0, 0.30).reason.direction, Direction::High);
        EXPECT_EQ(graded(thigh(sight), 60.0, 0.70).reason.direction, Direction::Low);
    }
}

TEST(VastusTest, WhatLiesAsideIsNamed)
{
    const Grade rectus = graded(thigh(LimbSight::FromFront), 12.0, 0.5);
    EXPECT_EQ(rectus.reason.direction, Direction::Forward);
    EXPECT_EQ(rectus.reason.tissue, Tissue::RectusFemoris);
    EXPECT_EQ(rectus.verdict, Verdict::OffTarget);
    const Grade vessels = graded(thigh(LimbSight::FromFront), -30.0, 0.5);
    EXPECT_EQ(vessels.verdict, Verdict::Unsafe);
    EXPECT_EQ(vessels.hazard, HazardCode::FemoralVessels);
    EXPECT_EQ(vessels.reason.tissue, Tissue::FemoralVessels);
    const Grade behind = graded(thigh(), 100.0, 0.5);
    EXPECT_EQ(behind.verdict, Verdict::OffTarget);
    EXPECT_EQ(behind.reason.tissue, Tissue::Hamstrings);
    const Grade sciatic = graded(thigh(), 130.0, 0.5);
    EXPECT_EQ(sciatic.verdict, Verdict::Unsafe);
    EXPECT_EQ(sciatic.hazard, HazardCode::SciaticBehindThigh);
    EXPECT_EQ(graded(thigh(), 60.0, 0.05).hazard, HazardCode::HipEnd);
    EXPECT_EQ(graded(thigh(), 60.0, 0.95).hazard, HazardCode::KneeEnd);
}

TEST(VastusTest, HandbreadthsAreTheHandsOwnAndClearOfTheJoints)
{
    const VastusBand usual = vastusBand(Convention::VastusHandbreadths, defaultPolicy(), 40.0);
    EXPECT_NEAR(usual.top * 40.0, 18.1 * 0.44, 1e-9);
    EXPECT_NEAR(usual.bottom, 1.0 - usual.top, 1e-12);
    const VastusBand small =
        vastusBand(Convention::VastusHandbreadths, defaultPolicy().with(PolicyKey::HandLength, 13.0), 60.0);
    EXPECT_EQ(small.top, defaultPolicy().value(PolicyKey::ThighEnds));
    const VastusBand large =
        vastusBand(Convention::VastusHandbreadths, defaultPolicy().with(PolicyKey::HandLength, 24.0), 25.0);
    EXPECT_LT(large.top, large.ideal);
}

TEST(VastusTest, TheFigureIsTheConventionsOwn)
{
    const Target thirds = vastusTarget(Convention::VastusThirds, defaultPolicy(), thigh());
    EXPECT_EQ(thirds.construction.front().code, StepCode::FeelTrochanter);
    EXPECT_EQ(thirds.construction.back().code, StepCode::IdealPoint);
    EXPECT_TRUE(hasStep(thirds, StepCode::UpperThird));
    EXPECT_FALSE(hasStep(thirds, StepCode::HandBelowHip));
    const Target hands = vastusTarget(Convention::VastusHandbreadths, defaultPolicy(), thigh());
    EXPECT_TRUE(hasStep(hands, StepCode::HandBelowHip));
    EXPECT_TRUE(hasStep(hands, StepCode::HandAboveKnee));
    EXPECT_FALSE(hasStep(hands, StepCode::UpperThird));
}

TEST(VastusTest, ALongerThighHasALongerRegion)
{
    const auto tall = [](double length) {
        const Bounds box =
            vastusTarget(Convention::VastusThirds, defaultPolicy(), thigh(LimbSight::FromSide, length))
                .regionSkin.bounds();
        return box.high.y - box.low.y;
    };
    EXPECT_NEAR(tall(40.0), 40.0 / 3.0, 1e-9);
    EXPECT_NEAR(tall(33.0), 11.0, 1e-9);
}

}  // namespace vastus_test
