// The drawn hand, laid as a pose says: the palm scaled and turned as a whole, every finger
// turned about its own joint.
#pragma once

#include "core/body/moved_ink.h"
#include "core/hand/hand_pose.h"
#include "core/hand/laid_fingers.h"
#include "core/plate/plate.h"

namespace fb {

// `art` is the plate of View::OpenHand: a left hand from behind, fingers up, drawn at a length of
// its own. The pose may be of either hand, in any frame. Pen strokes keep the weight they were
// drawn with times the hand's size over the drawing's.
[[nodiscard]] MovedInk posedHand(const Plate& art, const HandPose& pose);

// `art` is the plate of View::TwoFingers or View::ThreeFingers, as the count says: a left hand from
// behind, fingers up. Its joined fingers get the breadth of so many fingerbreadths.
[[nodiscard]] MovedInk posedFingers(const Plate& art, const LaidFingers& fingers, Cm fingerWidth);

}  // namespace fb
