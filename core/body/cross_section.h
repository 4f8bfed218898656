// Skin coordinates of a round limb that hangs straight down: (s, y) with s the length of
// skin from the mid-lateral line, positive toward the front, and y the height in the frame.
//
// The limb's cross-section is quarter ellipses: front and back half axes from the edges at
// that height, the lateral half axis a fixed share of their mean. Past the visible edge of
// the limb s goes on at the rate of the plane, so every point of the plane has an s.
// Laws: toFrame(toSkin(p)) == p within the edges; s rises with x; s(0, y) == 0.
#pragma once

#include "core/body/limb_map.h"
#include "core/geometry/point.h"

namespace fb {

class CrossSection {
public:
    // `limb` is copied; lateralShare as in the policy (0.6 to 1.4).
    CrossSection(LimbMap limb, Point joint, double lateralShare);

    [[nodiscard]] Point toSkin(Point frame) const;  // frame is the plate's right-sided frame
    [[nodiscard]] Point toFrame(Point skin) const;
    [[nodiscard]] double quarterArc(double y, bool front) const;  // mid-lateral line to the edge, cm
    // How far round the limb a skin point lies: radians from the mid-lateral line, held to a
    // quarter turn either way (the visible edges).
    [[nodiscard]] double turnOf(Point skin) const;
    // The same of a point of the frame: turnOf(toSkin(frame)).
    [[nodiscard]] double turnAt(Point frame) const;
    // A place `turn` radians round the limb at height y, seen at an azimuth (0 from the front,
    // 90 degrees from the lateral side): its x relative to the axis in the picture. `sight` is
    // the cosine and the sine of the azimuth.
    [[nodiscard]] double seenAt(double turn, double y, Point sight) const;

private:
    struct HalfAxes {
        double front = 0.0, back = 0.0, lateral = 0.0;
    };
    [[nodiscard]] HalfAxes axesAt(double y) const;

    LimbMap m_limb;
    Point m_joint;
    double m_lateralShare;
};

}  // namespace fb
