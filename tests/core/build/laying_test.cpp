#include "core/build/laying.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <set>

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

// Whatever a build of the convention is made of is also shown, and nothing is shown twice.
TEST(LayingTest, EverythingThatIsBuiltIsTaught)
{
    for (const Convention convention : kConventions) {
        const Target one = target(convention, Side::Left);
        const Steps taught = taughtSteps(one, builder());
        const auto shows = [&](StepCode code) { return std::ranges::count(taught, code, &Step::code) > 0; };
        for (const Step& figure : figuresOf(flawlessBuild(one, builder()), one, builder())) {
            // A handbreadth at either end is where a line across is laid.
            const bool byHands = convention == Convention::VastusHandbreadths &&
                                 (figure.code == StepCode::UpperThird || figure.code == StepCode::LowerThird);
            EXPECT_TRUE(byHands || shows(figure.code)) << wordOf(convention) << ": " << wordOf(figure.code);
        }
        for (const Step& step : one.construction)
            EXPECT_TRUE(shows(step.code)) << wordOf(convention) << ": " << wordOf(step.code);
        EXPECT_EQ(taught.back().code, StepCode::IdealPoint) << wordOf(convention);
        if (buildKindOf(convention) != BuildKind::FingersAndTriangle &&
            buildKindOf(convention) != BuildKind::HalvedLine) {
            EXPECT_TRUE(std::ranges::equal(taught, one.construction, {}, &Step::code, &Step::code));
            continue;
        }
        std::set<StepCode> codes;
        for (const Step& step : taught)
            EXPECT_TRUE(codes.insert(step.code).second) << wordOf(convention) << ": " << wordOf(step.code);
    }
}

TEST(LayingTest, FingersAreTaughtAfterTheAcromionIsFeltAndBeforeTheTriangle)
{
    const Target arm = target(Convention::DeltoidStrip);
    const Builder learner = Builder::from(defaultPolicy().with(PolicyKey::DeltoidFingerWidth, 2.2));
    const Steps taught = taughtSteps(arm, learner);
    ASSERT_EQ(taught[0].code, StepCode::FeelAcromion);
    ASSERT_EQ(taught[1].code, StepCode::LayFingers);
    EXPECT_EQ(taught[2].code, StepCode::AcromionBase);
    const LaidFingers laid = *flawlessBuild(arm, learner).fingers;
    ASSERT_EQ(taught[1].points.size(), 2 * static_cast<std::size_t>(laid.count + 1)) << "an edge, two points";
    EXPECT_NEAR(taught[1].points.front().y - taught[1].points.back().y, laid.count * 2.2, 1e-9)
        << "by the learner's own fingers";
}

}  // namespace fb::test::laying_test
