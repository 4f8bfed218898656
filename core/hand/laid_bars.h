// What a laid hand or laid fingers cover, as bars with round ends: a little wider than they are drawn, so
// that whoever has to keep clear of them, or to show all of them, need not read the drawing.
#pragma once

#include <vector>

#include "core/basics/units.h"
#include "core/geometry/point.h"
#include "core/hand/hand_pose.h"
#include "core/hand/laid_fingers.h"

namespace fb {

struct LaidBar {
    Point from, to;  // cm, in the frame of the pose
    Cm half;         // half its breadth, and the reach of its round ends
};

// Palm, thumb, index, middle, ring and little finger, in that order; the forearm is not among them. Law: what
// is drawn of them reaches nowhere more than 4 percent of the hand's length beyond its bars.
[[nodiscard]] std::vector<LaidBar> barsOf(const HandPose& pose);
// The laid fingers from the top one down, then the back of the hand.
[[nodiscard]] std::vector<LaidBar> barsOf(const LaidFingers& fingers, Cm fingerWidth);

}  // namespace fb
