// The hand a nurse lays on a hip to find the ventrogluteal site: palm over the trochanter,
// index fingertip on the anterior superior iliac spine, middle finger opened back.
//
// Lengths are shares of the hand's length, from the wrist crease to the tip of the middle
// finger; the shares stand in the policy. Points are cm in the frame of whoever asks.
#pragma once

#include <string_view>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/basics/units.h"
#include "core/geometry/point.h"

namespace fb {

struct HandSize {
    Cm length;  // wrist crease to middle fingertip
    Cm fingerWidth;
    double palmShare = 0.0;   // wrist crease to the root of the middle finger
    double forkShare = 0.0;   // wrist crease to where index and middle finger part
    double indexShare = 0.0;  // wrist crease to the index fingertip
    double heelShare = 0.0;   // wrist crease to the nearest place of the palm that still feels
    double breadthShare = 0.0;

    [[nodiscard]] Cm palm() const { return length * palmShare; }
    [[nodiscard]] Cm breadth() const { return length * breadthShare; }
};

// Hands outside 13 to 24 cm are a fault: HandLengthOutOfRange.
[[nodiscard]] Result<Cm> checkedHandLength(Cm length);

// What holds the hand in place.
enum class Pin {
    Spine,  // the index fingertip lies on the spine, the palm where that puts it
    Palm    // the hand is too small for both: its heel stays on the trochanter, the index points
};

struct HandPose {
    Side hand{};  // left or right hand
    Pin pin{};
    Point wrist;  // middle of the wrist crease
    Point fork;   // where index and middle finger part
    Point indexTip;
    Point middleTip;
    Cm length;
    Degrees opening;  // between index and middle finger

    friend bool operator==(const HandPose&, const HandPose&) = default;
};

// The left hand for a right hip, the right hand for a left one.
[[nodiscard]] constexpr Side handFor(Side hip) { return opposite(hip); }

// Joint limits of the gap between index and middle finger.
inline constexpr double kLeastOpening = 25.0;  // degrees; lab's choice
inline constexpr double kMostOpening = 45.0;

// The hand on a right hip (head to the left, front up: the middle finger opens
// counter-clockwise from the index). The opening is held to the joint limits. `pinned` lays the
// hand by that pin whatever its size; without it, by the spine unless the trochanter would then
// lie beyond the heel of the hand.
[[nodiscard]] HandPose laidHand(const HandSize& size, Point trochanter, Point spine, Degrees opening);
[[nodiscard]] HandPose laidHand(const HandSize& size, Point trochanter, Point spine, Degrees opening,
                                Pin pinned);

[[nodiscard]] HandPose mirrored(const HandPose& pose);

[[nodiscard]] std::string_view wordOf(Pin pin);

}  // namespace fb
