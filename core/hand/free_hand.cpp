#include "core/hand/free_hand.h"

#include <algorithm>
#include <cmath>

namespace fb {

namespace free_hand_detail {

// Limits of sense for a human finger, not clinical numbers.
constexpr double kNarrowest = 1.2;
constexpr double kWidest = 2.5;

Point unitAt(Degrees turn) { return {std::cos(toRadians(turn)), std::sin(toRadians(turn))}; }

Degrees turnOfWay(Point way) { return fromRadians(std::atan2(way.y, way.x)); }

// From wrist crease to the palm's middle, along the hand.
double palmMiddle(const HandSize& size) { return size.palm().value() / 2.0; }

// Which way the middle finger opens from the index finger.
double opensBy(Side hand) { return hand == Side::Left ? 1.0 : -1.0; }

}  // namespace free_hand_detail

using namespace free_hand_detail;

HandPose poseOf(const FreeHand& hand, const HandSize& size)
{
    const double length = size.length.value();
    const Point axis = unitAt(hand.turn);
    HandPose pose;
    pose.hand = hand.hand;
    pose.length = size.length;
    pose.opening = hand.opening;
    pose.wrist = hand.palm - axis * palmMiddle(size);
    pose.fork = pose.wrist + axis * (size.forkShare * length);
    pose.indexTip = pose.wrist + axis * (size.indexShare * length);
    const Point middle = unitAt(hand.turn + opensBy(hand.hand) * hand.opening);
    pose.middleTip = pose.fork + middle * ((1.0 - size.forkShare) * length);
    return pose;
}

FreeHand freeHandOf(const HandPose& pose, const HandSize& size)
{
    const Point way = pose.indexTip - pose.wrist;
    const Point axis = way * (1.0 / length(way));
    return {pose.hand, pose.wrist + axis * palmMiddle(size), turnOfWay(way), pose.opening};
}

FreeHand slid(FreeHand hand, Point palm)
{
    hand.palm = palm;
    return hand;
}

FreeHand turnedTo(FreeHand hand, const HandSize& size, Point indexTip)
{
    // A finger on the palm itself points nowhere.
    if (distance(indexTip, hand.palm) > size.fingerWidth.value() / 2.0)
        hand.turn = turnOfWay(indexTip - hand.palm);
    return hand;
}

FreeHand openedTo(FreeHand hand, const HandSize& size, Point middleTip)
{
    const HandPose pose = poseOf(hand, size);
    const Point axis = unitAt(hand.turn);
    const Point way = middleTip - pose.fork;
    if (length(way) <= size.fingerWidth.value() / 2.0)
        return hand;
    const double angle = fromRadians(std::atan2(cross(axis, way), dot(axis, way))).value();
    hand.opening = Degrees{std::clamp(opensBy(hand.hand) * angle, kClosedOpening, kMostOpening)};
    return hand;
}

FreeHand swapped(FreeHand hand)
{
    hand.hand = opposite(hand.hand);
    return hand;
}

Result<Cm> checkedFingerWidth(Cm width)
{
    if (!(width.value() >= kNarrowest && width.value() <= kWidest))
        return fault(Problem::FingerWidthOutOfRange, {}, {}, kNarrowest, kWidest);
    return width;
}

}  // namespace fb
