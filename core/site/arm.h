// Everything the deltoid rules need of one arm, measured on the moved plate and nowhere else.
#pragma once

#include <functional>

#include "core/basics/units.h"
#include "core/body/cross_section.h"
#include "core/geometry/polygon.h"

namespace fb {

struct Arm {
    // Plane points of the side view, right-sided frame, cm.
    Point acromion, acromionFront, acromionBack;
    Point tuberosity;
    Polygon acromionBone;
    double armLength = 0.0;    // cm
    double axillaDepth = 0.0;  // cm below the acromion
    double bottom = 0.0;       // y of the elbow's tip
    CrossSection section;
    // From a place `turn` radians round the limb at height y to the picture the viewer sees.
    std::function<Point(double turn, double y)> showTurn;

    // From skin coordinates, and from the side view's frame, to the picture.
    [[nodiscard]] Point showSkin(Point skin) const { return showTurn(section.turnOf(skin), skin.y); }
    [[nodiscard]] Point show(Point frame) const { return showTurn(section.turnAt(frame), frame.y); }
};

}  // namespace fb
