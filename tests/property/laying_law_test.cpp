// Laws of what is laid and drawn while a demonstration builds a site, over thousands of bodies and hands: a
// hand on its way never bends as a hand cannot, fingers end as a flawless learner lays them, figures grow by
// their length.
#include <gtest/gtest.h>

#include <cmath>

#include "core/build/laying.h"
#include "tests/property/any_body.h"

namespace fb::test::laying_law_test {

namespace laying_law_detail {

constexpr double kStill = 1e-9;  // cm

Policy anyHand(SeedStream& stream)
{
    return defaultPolicy()
        .with(PolicyKey::DeltoidFingerWidth, stream.between(1.2, 2.5))
        .with(PolicyKey::HandLength, stream.between(14.0, 23.0));
}

double lengthOf(const std::vector<Point>& line)
{
    double sum = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i)
        sum += distance(line[i - 1], line[i]);
    return sum;
}

}  // namespace laying_law_detail

using namespace any_body;
using namespace laying_law_detail;

TEST(LayingLaw, AHandOnItsWayNeverBendsAsAHandCannot)
{
    constexpr int kPoses = 24;
    for (int number = 0; number < rounds(2'500); ++number) {
        SeedStream stream = streamOf(6, number);
        const Policy policy = anyHand(stream);
        const Builder builder = Builder::from(policy);
        const BodyValues body = anyBody(stream);
        const Side side = anySide(stream);
        const Shown one{Convention::VentroglutealHand, View::HipSide};
        const Target hip = targetIn(patientOf(body, side), one, policy);
        const double size = builder.hand.length.value();
        HandPose last = *handOnItsWay(hip, builder, 0.0);
        for (int i = 1; i <= kPoses; ++i) {
            const HandPose pose = *handOnItsWay(hip, builder, static_cast<double>(i) / kPoses);
            ASSERT_EQ(pose.hand, handFor(side));
            ASSERT_GE(pose.opening.value(), last.opening.value()) << "opens and never closes again";
            ASSERT_LE(pose.opening.value(), kMostOpening + kStill) << told(number, body, one);
            ASSERT_NEAR(distance(pose.wrist, pose.fork), builder.hand.forkShare * size, kStill);
            ASSERT_NEAR(distance(pose.fork, pose.middleTip), (1.0 - builder.hand.forkShare) * size, kStill);
            for (const auto point : {&HandPose::wrist, &HandPose::indexTip, &HandPose::middleTip})
                ASSERT_LT(distance(last.*point, pose.*point), 1.5) << told(number, body, one);
            last = pose;
        }
        HandPose laid = poseOf(*flawlessBuild(hip, builder).hand, builder.hand);
        laid.pin = hip.hand->pin;
        ASSERT_EQ(last, laid) << told(number, body, one);
        ASSERT_LT(distance(last.middleTip, hip.hand->middleTip), kStill) << told(number, body, one);
        ASSERT_LT(distance(last.wrist, hip.hand->wrist), kStill) << told(number, body, one);
        ASSERT_GE(last.opening.value(), kLeastOpening);
        ASSERT_GE(handOnItsWay(hip, builder, 0.0)->opening.value(), kClosedOpening);
    }
}

TEST(LayingLaw, FingersSlideUpAndEndAsAFlawlessLearnerLaysThem)
{
    for (int number = 0; number < rounds(2'000); ++number) {
        SeedStream stream = streamOf(7, number);
        const Policy policy = anyHand(stream);
        const Builder builder = Builder::from(policy);
        const BodyValues body = anyBody(stream);
        const View view = stream.below(2) == 0 ? View::ShoulderSide : View::ShoulderThreeQuarter;
        const Shown one{Convention::DeltoidFingers, view};
        const Target arm = targetIn(patientOf(body, anySide(stream)), one, policy);
        LaidFingers last = *fingersOnTheirWay(arm, builder, 0.0);
        for (int i = 1; i <= 16; ++i) {
            const LaidFingers fingers = *fingersOnTheirWay(arm, builder, i / 16.0);
            ASSERT_GT(fingers.top.y, last.top.y) << told(number, body, one);
            ASSERT_LT(distance(fingers.top, last.top), 1.5) << told(number, body, one);
            ASSERT_LE(std::abs(fingers.turn.value()), kMostFingerTurn);
            last = fingers;
        }
        ASSERT_EQ(last, *flawlessBuild(arm, builder).fingers) << told(number, body, one);
    }
}

TEST(LayingLaw, AFigureGrowsByItsLengthAndEndsWhole)
{
    for (int number = 0; number < rounds(2'000); ++number) {
        SeedStream stream = streamOf(8, number);
        const BodyValues body = anyBody(stream);
        const Shown one = inTurn(number);
        const double t = stream.unit();
        for (const Step& step : targetIn(patientOf(body, anySide(stream)), one).construction) {
            const Step whole = grown(step, 1.0);
            ASSERT_TRUE(whole.code == step.code && whole.kind == step.kind && whole.points == step.points);
            const Step some = grown(step, t);
            ASSERT_EQ(some.code, step.code);
            ASSERT_EQ(some.points.empty(), step.points.empty());
            if (step.kind == FigureKind::Point)
                continue;
            std::vector<Point> way = step.points;
            if (step.kind == FigureKind::Closed)
                way.push_back(way.front());
            ASSERT_EQ(some.kind, FigureKind::Line) << "closed only at the end";
            ASSERT_NEAR(lengthOf(some.points), t * lengthOf(way), 1e-9) << told(number, body, one);
            for (std::size_t i = 0; i + 1 < some.points.size(); ++i)
                ASSERT_EQ(some.points[i], way[i]) << told(number, body, one);
        }
    }
}

}  // namespace fb::test::laying_law_test
