#include "core/build/laying.h"

#include <gtest/gtest.h>

#include <limits>

#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace fb::test::laying_test {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

Target target(Convention convention, Side side = Side::Right)
{
    const View view = askedViews(siteOf(convention)).front();
    return locate(atlas(), defaultPolicy(), adult(Sex::Female, 165, 64, side), convention, view).value();
}

Builder builder() { return Builder::from(defaultPolicy()); }

TEST(LayingTest, AHandComesFromBesideTheHipAndEndsAsAFlawlessLearnerLaysIt)
{
    for (const Side side : kSides) {
        const Target hip = target(Convention::VentroglutealHand, side);
        const Build laid = flawlessBuild(hip, builder());
        const Build beside = withHand(emptyBuild(hip), hip, builder(), handFor(side));
        HandPose start = poseOf(*beside.hand, builder().hand);
        HandPose end = poseOf(*laid.hand, builder().hand);
        start.pin = end.pin = hip.hand->pin;
        EXPECT_EQ(*handOnItsWay(hip, builder(), 0.0), start);
        EXPECT_EQ(*handOnItsWay(hip, builder(), 1.0), end);
        EXPECT_LT(distance(end.indexTip, hip.hand->indexTip), 1e-9);
        EXPECT_LT(distance(end.middleTip, hip.hand->middleTip), 1e-9);
    }
}

TEST(LayingTest, HalfWayThePalmIsHalfWayAndTheFingersAreHalfOpen)
{
    const Target hip = target(Convention::VentroglutealHand);
    const FreeHand from = freeHandOf(*handOnItsWay(hip, builder(), 0.0), builder().hand);
    const FreeHand to = freeHandOf(*handOnItsWay(hip, builder(), 1.0), builder().hand);
    const FreeHand half = freeHandOf(*handOnItsWay(hip, builder(), 0.5), builder().hand);
    EXPECT_LT(distance(half.palm, lerp(from.palm, to.palm, 0.5)), 1e-9);
    EXPECT_NEAR(half.opening.value(), (from.opening + to.opening).value() / 2.0, 1e-9);
    EXPECT_GT(half.opening.value(), kClosedOpening);
}

TEST(LayingTest, AHandTurnsTheShortWay)
{
    // From pointing to the head, a half turn, to a spine in front of it and a little behind the level: over
    // the half turn and not all the way round.
    Target hip = target(Convention::VentroglutealHand);
    hip.hand = laidHand(builder().hand, {0.0, 0.0}, {-12.0, -3.0}, Degrees{40.0});
    for (int i = 0; i <= 16; ++i) {
        const HandPose pose = *handOnItsWay(hip, builder(), i / 16.0);
        EXPECT_LT(pose.indexTip.x, pose.wrist.x - 10.0) << "still points to the head at " << i;
    }
}

TEST(LayingTest, WhatIsNoShareIsHeldToTheWay)
{
    const Target hip = target(Convention::VentroglutealHand);
    EXPECT_EQ(handOnItsWay(hip, builder(), -2.0), handOnItsWay(hip, builder(), 0.0));
    EXPECT_EQ(handOnItsWay(hip, builder(), kNan), handOnItsWay(hip, builder(), 0.0));
    EXPECT_EQ(handOnItsWay(hip, builder(), 2.0), handOnItsWay(hip, builder(), 1.0));
    const Target arm = target(Convention::DeltoidFingers);
    EXPECT_EQ(fingersOnTheirWay(arm, builder(), 9.0), fingersOnTheirWay(arm, builder(), 1.0));
    EXPECT_EQ(fingersOnTheirWay(arm, builder(), kNan), fingersOnTheirWay(arm, builder(), 0.0));
}

TEST(LayingTest, FingersSlideUpTheArmToTheAcromion)
{
    for (const Side side : kSides) {
        const Target arm = target(Convention::DeltoidFingers, side);
        EXPECT_EQ(fingersOnTheirWay(arm, builder(), 1.0), flawlessBuild(arm, builder()).fingers);
        const LaidFingers start = *fingersOnTheirWay(arm, builder(), 0.0);
        EXPECT_LT(start.top.y, arm.region.bounds().low.y - 2.0) << "well below the site";
        const LaidFingers half = *fingersOnTheirWay(arm, builder(), 0.5);
        EXPECT_NEAR(half.top.y, start.top.y / 2.0, 1e-9);
        EXPECT_EQ(half.count, fingersOnTheirWay(arm, builder(), 1.0)->count);
    }
}

TEST(LayingTest, OnlyTheConventionsThatLayAHandOrFingersHaveThem)
{
    for (const Convention convention : kConventions) {
        const BuildKind kind = buildKindOf(convention);
        const Target one = target(convention);
        EXPECT_EQ(handOnItsWay(one, builder(), 0.5).has_value(), kind == BuildKind::HandOnHip);
        EXPECT_EQ(fingersOnTheirWay(one, builder(), 0.5).has_value(), kind == BuildKind::FingersAndTriangle);
    }
    const Target behind = locate(atlas(), defaultPolicy(), adult(Sex::Female, 165, 64),
                                 Convention::VentroglutealHand, View::HipBehind)
                              .value();
    EXPECT_FALSE(handOnItsWay(behind, builder(), 1.0)) << "seen edge-on, no hand is laid";
}

TEST(LayingTest, ALineGrowsFromItsFirstPointByItsLength)
{
    const Step line{StepCode::FeelCrest, FigureKind::Line, {{0, 0}, {4, 0}, {4, 4}, {10, 4}}};  // 14 cm
    EXPECT_EQ(grown(line, 0.0).points, (std::vector<Point>{{0, 0}, {0, 0}}));
    EXPECT_EQ(grown(line, 3.0 / 14).points, (std::vector<Point>{{0, 0}, {3, 0}}));
    EXPECT_EQ(grown(line, 0.5).points, (std::vector<Point>{{0, 0}, {4, 0}, {4, 3}}));
    EXPECT_EQ(grown(line, 1.0).points, line.points);
    EXPECT_EQ(grown(line, 0.5).code, StepCode::FeelCrest);
    EXPECT_EQ(grown(line, -1.0).points, grown(line, 0.0).points);
    EXPECT_EQ(grown(line, kNan).points, grown(line, 0.0).points);
}

TEST(LayingTest, AClosedFigureGrowsRoundItsEdgeAndClosesAtTheEnd)
{
    const Step square{StepCode::Region, FigureKind::Closed, {{0, 0}, {2, 0}, {2, 2}, {0, 2}}};
    const Step most = grown(square, 0.875);
    EXPECT_EQ(most.kind, FigureKind::Line);
    EXPECT_EQ(most.points, (std::vector<Point>{{0, 0}, {2, 0}, {2, 2}, {0, 2}, {0, 1}}))
        << "the last side runs home";
    EXPECT_EQ(grown(square, 1.0).kind, FigureKind::Closed);
    EXPECT_EQ(grown(square, 1.0).points, square.points);
}

TEST(LayingTest, WhatHasNoLengthStaysAsItIs)
{
    const Step point{StepCode::FeelSpine, FigureKind::Point, {{3, 4}}};
    EXPECT_EQ(grown(point, 0.2).points, point.points);
    EXPECT_EQ(grown(point, 0.2).kind, FigureKind::Point);
    const Step empty{StepCode::FeelCrest, FigureKind::Line, {}};
    EXPECT_TRUE(grown(empty, 0.5).points.empty());
    const Step still{StepCode::BackLine, FigureKind::Line, {{1, 1}, {1, 1}}};
    EXPECT_EQ(grown(still, 0.5).points, still.points);
}

}  // namespace fb::test::laying_test
