#include "core/hand/laid_fingers.h"

#include <gtest/gtest.h>

using namespace fb;

namespace laid_fingers_test {

namespace {

constexpr Cm kWidth{1.6};
const LaidFingers kTwo{2, Side::Left, {1.0, -0.5}, Degrees{0.0}};

}  // namespace

TEST(LaidFingersTest, LevelFingersReachDownByTheirBreadths)
{
    EXPECT_LT(distance(lowerEdge(kTwo, kWidth), {1.0, -3.7}), 1e-12);
    LaidFingers three = kTwo;
    three.count = 3;
    EXPECT_LT(distance(lowerEdge(three, kWidth), {1.0, -5.3}), 1e-12);
}

TEST(LaidFingersTest, EveryEdgeIsLevelAndAsLongAsTheFirst)
{
    const auto first = edgeLine(kTwo, kWidth, 0);
    for (int edge = 0; edge <= 2; ++edge) {
        const auto line = edgeLine(kTwo, kWidth, edge);
        EXPECT_DOUBLE_EQ(line[0].y, line[1].y);
        EXPECT_NEAR(line[0].y, -0.5 - 1.6 * edge, 1e-12);
        EXPECT_NEAR(distance(line[0], line[1]), distance(first[0], first[1]), 1e-12);
    }
}

TEST(LaidFingersTest, ALeftHandPointsToTheLeft)
{
    LaidFingers right = kTwo;
    right.hand = Side::Right;
    EXPECT_LT(turnGrip(kTwo, kWidth).x, kTwo.top.x);
    EXPECT_GT(turnGrip(right, kWidth).x, kTwo.top.x);
}

TEST(LaidFingersTest, TurningKeepsTheMiddleOfTheUpperEdge)
{
    const Point wanted = kTwo.top + Point{-3.0, 0.0};
    const LaidFingers turned = turnedTo(kTwo, kWidth, wanted);
    EXPECT_EQ(turned.top, kTwo.top);
    EXPECT_NE(turned.turn.value(), 0.0);
    const Point grip = turnGrip(turned, kWidth) - turned.top;
    EXPECT_NEAR(cross(grip, wanted - turned.top), 0.0, 1e-9);
    EXPECT_NEAR(turnedTo(kTwo, kWidth, turnGrip(kTwo, kWidth)).turn.value(), 0.0, 1e-9);
}

TEST(LaidFingersTest, FingersTurnNoFartherThanAWristLetsThem)
{
    EXPECT_DOUBLE_EQ(turnedTo(kTwo, kWidth, kTwo.top + Point{3.0, -0.1}).turn.value(), kMostFingerTurn);
    LaidFingers right = kTwo;
    right.hand = Side::Right;
    EXPECT_DOUBLE_EQ(turnedTo(right, kWidth, right.top + Point{-3.0, -0.1}).turn.value(), -kMostFingerTurn);
    EXPECT_EQ(turnedTo(kTwo, kWidth, kTwo.top), kTwo);
}

TEST(LaidFingersTest, SlidingKeepsTheTurn)
{
    LaidFingers askew = kTwo;
    askew.turn = Degrees{20.0};
    EXPECT_EQ(slid(askew, {4.0, 4.0}).turn, askew.turn);
    EXPECT_EQ(slid(askew, {4.0, 4.0}).top, (Point{4.0, 4.0}));
    EXPECT_NEAR(length(downOf(askew)), 1.0, 1e-12);
    EXPECT_LT(downOf(askew).y, 0.0);
}

}  // namespace laid_fingers_test
