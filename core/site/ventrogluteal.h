// The ventrogluteal site: the triangle between two fingers of a hand laid on the hip, or a
// disc about the crossing of three medians; both kept clear of bone.
//
// Everything is right-sided, in the frame of the hip's side view. Skin coordinates are the
// plane's own, turned so that s points to the front and y to the head.
#pragma once

#include <optional>

#include "core/basics/enums.h"
#include "core/hand/hand_pose.h"
#include "core/policy/policy.h"
#include "core/site/hip.h"
#include "core/site/target.h"

namespace fb {

[[nodiscard]] HandSize handSize(const Policy& policy);

// Where the medians of trochanter, iliac tubercle and spine cross: their mean.
[[nodiscard]] constexpr Point mediansCrossing(Point trochanter, Point tubercle, Point spine)
{
    return (trochanter + tubercle + spine) * (1.0 / 3.0);
}

// What is left of a polygon kept the margins away from crest, spine and trochanter; nullopt
// when nothing is. Clearance from the crest is kept from its dome, without its dents.
[[nodiscard]] std::optional<Polygon> clearOfBone(const Policy& policy, const Hip& hip,
                                                 const Polygon& polygon);

// The triangle fork, index tip, middle tip, less half a finger's width along either finger.
[[nodiscard]] std::optional<Polygon> betweenFingers(const HandPose& pose, Cm fingerWidth);

// The target; view, side, landmarks and levels are filled in by locate(). A hand that leaves no
// region clear of bone (far too large or small for the hip) leaves the medians' disc.
[[nodiscard]] Target ventroglutealTarget(Convention convention, const Policy& policy, const Hip& hip);

// The place in the plane's skin coordinates of a point of the frame.
[[nodiscard]] constexpr Point planeSkin(Point frame) { return {frame.y, -frame.x}; }

}  // namespace fb
