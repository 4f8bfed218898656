// Skin coordinates of a limb whose front, back, outer and inner edges are all drawn: a thigh
// on its back, measured from the side and from the front.
//
// The limb lies along the picture's x, the foot to the viewer's right. Skin coordinates are
// (s, y): y = -x, so that y rises toward the hip; s is the length of skin round the limb from
// the outer (lateral) line, positive to the front. A turn is the angle round the limb: 0
// outer, a quarter turn front, a half turn inner, minus a quarter turn back (radians).
//
// The cross-section is four quarter ellipses between the edges. A view sees half of it; past
// the visible edge s goes on at the rate of the plane, so every point has an s.
// Laws: toFrame(view, toSkin(view, p)) == p within the edges; arcOf(turnOf(s)) == s.
#pragma once

#include "core/body/limb_map.h"
#include "core/geometry/point.h"

namespace fb {

enum class LimbSight { FromSide, FromFront };

class RoundLimb {
public:
    // Both maps measure along from their joint, and their frames share x; joints as they lie in
    // each view's frame.
    RoundLimb(LimbMap side, Point sideJoint, LimbMap front, Point frontJoint);

    [[nodiscard]] Point toSkin(LimbSight sight, Point frame) const;
    [[nodiscard]] Point toFrame(LimbSight sight, Point skin) const;

    [[nodiscard]] double turnOf(Point skin) const;  // held to -pi/2..pi
    [[nodiscard]] double arcOf(double turn, double y) const;
    // The picture's place of a turn; what lies out of sight is laid on the edge before it.
    [[nodiscard]] Point shown(LimbSight sight, double turn, double y) const;
    [[nodiscard]] bool sees(LimbSight sight, double turn) const;

private:
    struct HalfAxes {
        double front = 0.0, back = 0.0, outer = 0.0, inner = 0.0;
    };
    [[nodiscard]] HalfAxes axesAt(double y) const;
    [[nodiscard]] double turnAt(const HalfAxes& axes, double arc) const;
    [[nodiscard]] static double arcAt(const HalfAxes& axes, double turn);

    LimbMap m_side;
    LimbMap m_front;
    Point m_sideJoint;
    Point m_frontJoint;
};

}  // namespace fb
