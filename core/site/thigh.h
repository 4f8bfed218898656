// Everything the rules of the thigh need of one body, measured on the moved plates of its two
// views and nowhere else.
#pragma once

#include <numbers>
#include <vector>

#include "core/body/round_limb.h"
#include "core/geometry/polygon.h"
#include "core/site/hazard.h"

namespace fb {

struct BonePlace {
    HazardCode code{};
    Polygon frame;  // as the view draws it
};

struct Thigh {
    RoundLimb limb;
    LimbSight sight{};
    double length = 0.0;  // trochanter to lateral epicondyle, cm
    double scale = 1.0;   // stature over the reference stature
    // In the frame of the view: origin at the trochanter, +x toward the knee.
    Point condyle, spine, patella;
    std::vector<BonePlace> bones;

    // Down the thigh, 0 at the trochanter and 1 at the epicondyle, to the skin's y and back.
    [[nodiscard]] double yOf(double along) const { return -along * length; }
    // Degrees from the front line (the outer line is 90) to a turn from the outer line, radians.
    [[nodiscard]] static double turnOf(double degrees) { return (90.0 - degrees) * std::numbers::pi / 180.0; }
    [[nodiscard]] Point skinAt(double degrees, double along) const
    {
        return {limb.arcOf(turnOf(degrees), yOf(along)), yOf(along)};
    }
    [[nodiscard]] Point shownAt(double degrees, double along) const
    {
        return limb.shown(sight, turnOf(degrees), yOf(along));
    }
};

}  // namespace fb
