#include "core/hand/laid_fingers.h"

#include <algorithm>
#include <cmath>

namespace fb {

namespace laid_detail {

// The last two joints of a finger, in finger widths: what lies on the arm.
constexpr double kLaidLength = 3.0;

Point alongOf(const LaidFingers& fingers)
{
    return {std::cos(toRadians(fingers.turn)), std::sin(toRadians(fingers.turn))};
}

// Toward the fingertips.
Point tipWard(const LaidFingers& fingers)
{
    return alongOf(fingers) * (fingers.hand == Side::Left ? -1.0 : 1.0);
}

}  // namespace laid_detail

using namespace laid_detail;

Point downOf(const LaidFingers& fingers)
{
    const Point along = alongOf(fingers);
    return {along.y, -along.x};
}

Point lowerEdge(const LaidFingers& fingers, Cm fingerWidth)
{
    return fingers.top + downOf(fingers) * (fingers.count * fingerWidth.value());
}

std::array<Point, 2> edgeLine(const LaidFingers& fingers, Cm fingerWidth, int edge)
{
    const Point middle = fingers.top + downOf(fingers) * (edge * fingerWidth.value());
    const Point half = alongOf(fingers) * (kLaidLength / 2.0 * fingerWidth.value());
    return {middle - half, middle + half};
}

Point turnGrip(const LaidFingers& fingers, Cm fingerWidth)
{
    const Point middle = lerp(fingers.top, lowerEdge(fingers, fingerWidth), 0.5);
    return middle + tipWard(fingers) * (kLaidLength / 2.0 * fingerWidth.value());
}

LaidFingers slid(LaidFingers fingers, Point top)
{
    fingers.top = top;
    return fingers;
}

LaidFingers turnedTo(LaidFingers fingers, Cm fingerWidth, Point grip)
{
    // Turned about the middle of the upper edge, which stays where it was laid.
    const Point now = turnGrip(fingers, fingerWidth) - fingers.top;
    const Point wanted = grip - fingers.top;
    if (length(wanted) <= fingerWidth.value() / 2.0)
        return fingers;
    const Degrees by = fromRadians(std::atan2(cross(now, wanted), dot(now, wanted)));
    fingers.turn = Degrees{std::clamp((fingers.turn + by).value(), -kMostFingerTurn, kMostFingerTurn)};
    return fingers;
}

}  // namespace fb
