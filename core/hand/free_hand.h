// A learner's hand as it is laid on a hip: which hand, where its palm, how it is turned, how far
// index and middle finger are opened. It never bends as a hand cannot.
#pragma once

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/basics/units.h"
#include "core/geometry/point.h"
#include "core/hand/hand_pose.h"

namespace fb {

// Index and middle finger closed, and opened as far as joints let them: degrees; lab's choice.
inline constexpr double kClosedOpening = 11.0;

struct FreeHand {
    Side hand{};
    Point palm;       // the palm's middle, viewer's frame, cm
    Degrees turn;     // of the way from wrist to index fingertip, counter-clockwise from +x
    Degrees opening;  // between index and middle finger, kClosedOpening to kMostOpening

    friend bool operator==(const FreeHand&, const FreeHand&) = default;
};

// The hand's own points. Its middle finger opens away from the thumb: for a left hand seen from
// behind counter-clockwise from the index finger, for a right hand clockwise.
[[nodiscard]] HandPose poseOf(const FreeHand& hand, const HandSize& size);

// The free hand that lies as a pose does.
[[nodiscard]] FreeHand freeHandOf(const HandPose& pose, const HandSize& size);

// Dragging by a place: the palm slides, the index fingertip turns the hand about its palm, the
// middle fingertip opens the fingers within the joints' limits.
[[nodiscard]] FreeHand slid(FreeHand hand, Point palm);
[[nodiscard]] FreeHand turnedTo(FreeHand hand, const HandSize& size, Point indexTip);
[[nodiscard]] FreeHand openedTo(FreeHand hand, const HandSize& size, Point middleTip);
// The other hand in the same place: the thumb goes to the other side.
[[nodiscard]] FreeHand swapped(FreeHand hand);

// Finger widths outside 1.2 to 2.5 cm are a fault: FingerWidthOutOfRange.
[[nodiscard]] Result<Cm> checkedFingerWidth(Cm width);

}  // namespace fb
