#include "core/hand/free_hand.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

using namespace fb;

namespace free_hand_test {

namespace {

const HandSize kSize{Cm{18.0}, Cm{1.7}, 0.60, 0.57, 0.95, 0.05, 0.44};
const FreeHand kHand{Side::Left, {3.0, -2.0}, Degrees{150.0}, Degrees{30.0}};

}  // namespace

TEST(FreeHandTest, APoseLaidFreelyLiesAsItDidBefore)
{
    const HandPose laid = laidHand(kSize, {0.0, 0.0}, {-9.0, 6.0}, Degrees{40});
    const HandPose again = poseOf(freeHandOf(laid, kSize), kSize);
    EXPECT_EQ(again.hand, laid.hand);
    EXPECT_LT(distance(again.wrist, laid.wrist), 1e-9);
    EXPECT_LT(distance(again.fork, laid.fork), 1e-9);
    EXPECT_LT(distance(again.indexTip, laid.indexTip), 1e-9);
    EXPECT_LT(distance(again.middleTip, laid.middleTip), 1e-9);
}

TEST(FreeHandTest, TheOtherHandsMiddleFingerOpensToTheOtherSide)
{
    const HandPose left = poseOf(kHand, kSize);
    const HandPose right = poseOf(swapped(kHand), kSize);
    EXPECT_EQ(right.hand, Side::Right);
    EXPECT_EQ(right.indexTip, left.indexTip);
    const Point axis = left.indexTip - left.fork;
    EXPECT_GT(cross(axis, left.middleTip - left.fork), 0.0);
    EXPECT_LT(cross(axis, right.middleTip - right.fork), 0.0);
    EXPECT_EQ(swapped(swapped(kHand)), kHand);
}

TEST(FreeHandTest, SlidingMovesEveryPointAlike)
{
    const HandPose before = poseOf(kHand, kSize);
    const HandPose after = poseOf(slid(kHand, kHand.palm + Point{2.0, 5.0}), kSize);
    EXPECT_LT(distance(after.wrist - before.wrist, {2.0, 5.0}), 1e-12);
    EXPECT_LT(distance(after.middleTip - before.middleTip, {2.0, 5.0}), 1e-12);
}

TEST(FreeHandTest, TurningKeepsThePalmAndPointsTheIndexFinger)
{
    const Point wanted{-8.0, 4.0};
    const FreeHand turned = turnedTo(kHand, kSize, wanted);
    EXPECT_EQ(turned.palm, kHand.palm);
    const Point way = poseOf(turned, kSize).indexTip - turned.palm;
    EXPECT_NEAR(cross(way, wanted - turned.palm), 0.0, 1e-9);
    EXPECT_GT(dot(way, wanted - turned.palm), 0.0);
    EXPECT_EQ(turnedTo(kHand, kSize, kHand.palm), kHand);
}

TEST(FreeHandTest, FingersOpenNoFartherThanJointsLetThem)
{
    for (const FreeHand& hand : {kHand, swapped(kHand)}) {
        const HandPose pose = poseOf(hand, kSize);
        const Point axis = pose.indexTip - pose.fork;
        const double side = hand.hand == Side::Left ? 1.0 : -1.0;
        const Point square = Point{-axis.y, axis.x} * side;
        EXPECT_DOUBLE_EQ(openedTo(hand, kSize, pose.fork + square).opening.value(), kMostOpening);
        EXPECT_DOUBLE_EQ(openedTo(hand, kSize, pose.fork + axis).opening.value(), kClosedOpening);
        EXPECT_DOUBLE_EQ(openedTo(hand, kSize, pose.fork - square).opening.value(), kClosedOpening);
        EXPECT_EQ(openedTo(hand, kSize, pose.fork), hand);
        EXPECT_NEAR(openedTo(hand, kSize, pose.middleTip).opening.value(), hand.opening.value(), 1e-9);
    }
}

TEST(FreeHandTest, FingerWidthsOutsideHumanRangeAreRefused)
{
    EXPECT_TRUE(checkedFingerWidth(Cm{1.2}));
    EXPECT_TRUE(checkedFingerWidth(Cm{2.5}));
    for (const double width : {1.19, 2.51, -1.0, std::numeric_limits<double>::quiet_NaN()}) {
        const auto checked = checkedFingerWidth(Cm{width});
        ASSERT_FALSE(checked) << width;
        EXPECT_EQ(checked.error().problem, Problem::FingerWidthOutOfRange);
        EXPECT_EQ(checked.error().low, 1.2);
        EXPECT_EQ(checked.error().high, 2.5);
    }
}

}  // namespace free_hand_test
