#include "core/hand/hand_pose.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fb {

namespace hand_detail {

// Limits of sense for a human hand, not clinical numbers.
constexpr double kShortest = 13.0;
constexpr double kLongest = 24.0;

Point turned(Point direction, double radians)
{
    return {direction.x * std::cos(radians) - direction.y * std::sin(radians),
            direction.x * std::sin(radians) + direction.y * std::cos(radians)};
}

}  // namespace hand_detail

Result<Cm> checkedHandLength(Cm length)
{
    using namespace hand_detail;
    if (!(length.value() >= kShortest && length.value() <= kLongest))
        return fault(Problem::HandLengthOutOfRange, {}, {}, kShortest, kLongest);
    return length;
}

HandPose laidHand(const HandSize& size, Point trochanter, Point spine, Degrees opening)
{
    const double reach = size.length.value() * (size.indexShare - size.heelShare);
    const Pin pin = distance(trochanter, spine) > reach ? Pin::Palm : Pin::Spine;
    return laidHand(size, trochanter, spine, opening, pin);
}

HandPose laidHand(const HandSize& size, Point trochanter, Point spine, Degrees opening, Pin pinned)
{
    const double length = size.length.value();
    const Point axis = (spine - trochanter) * (1.0 / distance(trochanter, spine));
    HandPose pose;
    pose.hand = handFor(Side::Right);
    pose.pin = pinned;
    pose.length = size.length;
    pose.opening = Degrees{std::clamp(opening.value(), kLeastOpening, kMostOpening)};
    pose.wrist = pinned == Pin::Spine ? spine - axis * (size.indexShare * length)
                                      : trochanter - axis * (size.heelShare * length);
    pose.fork = pose.wrist + axis * (size.forkShare * length);
    pose.indexTip = pose.wrist + axis * (size.indexShare * length);
    const double gap = pose.opening.value() * std::numbers::pi / 180.0;
    pose.middleTip = pose.fork + hand_detail::turned(axis, gap) * ((1.0 - size.forkShare) * length);
    return pose;
}

HandPose mirrored(const HandPose& pose)
{
    HandPose other = pose;
    other.hand = opposite(pose.hand);
    for (Point HandPose::*point :
         {&HandPose::wrist, &HandPose::fork, &HandPose::indexTip, &HandPose::middleTip})
        other.*point = mirrored(pose.*point);
    return other;
}

std::string_view wordOf(Pin pin) { return pin == Pin::Spine ? "spine" : "palm"; }

}  // namespace fb
