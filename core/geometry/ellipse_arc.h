// The length of skin around a round limb, whose cross-section is taken as quarter ellipses.
#pragma once

namespace fb {

// Arc length, in the unit of the half axes, from the end of the lateral half axis toward the
// end of the front (or back) half axis, up to the point whose projection on the front half
// axis is front * sin(turn). turn in radians from -pi/2 to pi/2; the sign carries over.
// Accuracy: 1e-7 of the length for half axes within a factor of two of each other.
[[nodiscard]] double ellipseArc(double front, double lateral, double turn);

// Inverse: the turn (radians) at which the arc has this length; beyond a quarter turn it is
// held at +-pi/2. ellipseArc(f, l, ellipseTurn(f, l, s)) == s to 1e-9.
[[nodiscard]] double ellipseTurn(double front, double lateral, double arc);

}  // namespace fb
