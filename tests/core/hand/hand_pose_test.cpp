#include "core/hand/hand_pose.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

using namespace fb;

namespace hand_pose_test {

namespace {

constexpr Point kTrochanter{0.0, 0.0};
constexpr Point kSpine{-9.0, 6.0};

HandSize handOf(double length) { return {Cm{length}, Cm{1.7}, 0.60, 0.57, 0.95, 0.05, 0.44}; }

double degreesBetween(Point a, Point b)
{
    return std::atan2(cross(a, b), dot(a, b)) * 180.0 / std::numbers::pi;
}

}  // namespace

TEST(HandPoseTest, TheIndexFingertipLiesOnTheSpineAndThePalmOverTheTrochanter)
{
    const HandPose pose = laidHand(handOf(18.2), kTrochanter, kSpine, Degrees{40});
    EXPECT_EQ(pose.pin, Pin::Spine);
    EXPECT_LT(distance(pose.indexTip, kSpine), 1e-9);
    // The trochanter lies on the palm, between wrist crease and finger roots.
    EXPECT_LT(distance(pose.wrist, kTrochanter), 0.60 * 18.2);
    EXPECT_GT(distance(pose.wrist, kSpine), distance(kTrochanter, kSpine));
}

TEST(HandPoseTest, LengthsAreSharesOfTheHand)
{
    const HandPose pose = laidHand(handOf(20.0), kTrochanter, kSpine, Degrees{40});
    EXPECT_NEAR(distance(pose.wrist, pose.fork), 11.4, 1e-9);
    EXPECT_NEAR(distance(pose.wrist, pose.indexTip), 19.0, 1e-9);
    EXPECT_NEAR(distance(pose.fork, pose.middleTip), 8.6, 1e-9);
}

TEST(HandPoseTest, TheMiddleFingerOpensBackAsFarAsAHandCan)
{
    for (const auto& [asked, opened] : {std::pair{40.0, 40.0}, {10.0, 25.0}, {80.0, 45.0}}) {
        const HandPose pose = laidHand(handOf(18.0), kTrochanter, kSpine, Degrees{asked});
        EXPECT_EQ(pose.opening.value(), opened);
        EXPECT_NEAR(degreesBetween(pose.indexTip - pose.fork, pose.middleTip - pose.fork), opened, 1e-9);
        EXPECT_LT(pose.middleTip.y, pose.indexTip.y) << "back is down";
    }
}

TEST(HandPoseTest, ASmallHandKeepsTheTrochanterUnderItsHeelAndPointsAtTheSpine)
{
    const HandPose pose = laidHand(handOf(13.0), kTrochanter, {-10.0, 8.0}, Degrees{40});
    EXPECT_EQ(pose.pin, Pin::Palm);
    EXPECT_NEAR(distance(pose.wrist, kTrochanter), 0.05 * 13.0, 1e-9);
    EXPECT_NEAR(cross(pose.indexTip - pose.wrist, Point{-10.0, 8.0}), 0.0, 1e-9) << "points at the spine";
    EXPECT_GT(distance(pose.indexTip, {-10.0, 8.0}), 0.5) << "and does not reach it";
}

TEST(HandPoseTest, WhereThePinChangesTheHandDoesNotJump)
{
    const double reach = distance(kTrochanter, kSpine) / 0.90;
    const HandPose spine = laidHand(handOf(reach), kTrochanter, kSpine, Degrees{40}, Pin::Spine);
    const HandPose palm = laidHand(handOf(reach), kTrochanter, kSpine, Degrees{40}, Pin::Palm);
    EXPECT_LT(distance(spine.fork, palm.fork), 1e-9);
}

TEST(HandPoseTest, TheLeftHandFindsTheRightHip)
{
    EXPECT_EQ(handFor(Side::Right), Side::Left);
    EXPECT_EQ(handFor(Side::Left), Side::Right);
    const HandPose pose = laidHand(handOf(18.0), kTrochanter, kSpine, Degrees{40});
    EXPECT_EQ(pose.hand, Side::Left);
    EXPECT_EQ(mirrored(pose).hand, Side::Right);
    EXPECT_EQ(mirrored(pose).fork, mirrored(pose.fork));
    EXPECT_EQ(mirrored(mirrored(pose)), pose);
}

TEST(HandPoseTest, HandsOutsideThirteenToTwentyFourCentimetresAreRefused)
{
    for (const double good : {13.0, 18.2, 24.0})
        EXPECT_EQ(checkedHandLength(Cm{good})->value(), good);
    for (const double bad : {12.99, 24.01, -18.0, 0.0, std::numeric_limits<double>::quiet_NaN()}) {
        const auto refused = checkedHandLength(Cm{bad});
        ASSERT_FALSE(refused) << bad;
        EXPECT_EQ(refused.error().problem, Problem::HandLengthOutOfRange);
        EXPECT_EQ(refused.error().low, 13.0);
        EXPECT_EQ(refused.error().high, 24.0);
    }
}

TEST(HandPoseTest, PinsHaveWordsOfTheirOwn) { EXPECT_NE(wordOf(Pin::Spine), wordOf(Pin::Palm)); }

}  // namespace hand_pose_test
