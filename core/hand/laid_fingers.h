// Two or three fingers laid across an arm below the acromion, one under the other.
#pragma once

#include <array>

#include "core/basics/enums.h"
#include "core/basics/units.h"
#include "core/geometry/point.h"

namespace fb {

struct LaidFingers {
    int count = 2;           // 2 or 3
    Side hand = Side::Left;  // a left hand points to the viewer's left, index finger uppermost
    Point top;               // middle of the upper edge of the uppermost finger, viewer's frame, cm
    Degrees turn;            // of that edge, counter-clockwise from level; -60 to 60

    friend bool operator==(const LaidFingers&, const LaidFingers&) = default;
};

inline constexpr double kMostFingerTurn = 60.0;  // degrees either way

// Unit vector down the arm from the upper edge, square to the fingers.
[[nodiscard]] Point downOf(const LaidFingers& fingers);
// Middle of the lower edge of the lowest finger.
[[nodiscard]] Point lowerEdge(const LaidFingers& fingers, Cm fingerWidth);
// The lines between and beside the fingers, from the top one down: count + 1, each with two
// ends, as long as the last two joints of the finger.
[[nodiscard]] std::array<Point, 2> edgeLine(const LaidFingers& fingers, Cm fingerWidth, int edge);
// The fingertip end of the middle between upper and lower edge, by which the fingers are turned.
[[nodiscard]] Point turnGrip(const LaidFingers& fingers, Cm fingerWidth);

[[nodiscard]] LaidFingers slid(LaidFingers fingers, Point top);
[[nodiscard]] LaidFingers turnedTo(LaidFingers fingers, Cm fingerWidth, Point grip);

}  // namespace fb
