#include "core/body/round_limb.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/geometry/ellipse_arc.h"

namespace fb {

namespace round_detail {

constexpr double kQuarter = std::numbers::pi / 2.0;

// Where a coordinate lies on its half axis, and how far past the axis' end it is.
struct Held {
    double inside = 0.0;
    double past = 0.0;
};

Held held(double value, double low, double high)
{
    const double inside = std::clamp(value, low, high);
    return {inside, value - inside};
}

}  // namespace round_detail

using namespace round_detail;

RoundLimb::RoundLimb(LimbMap side, Point sideJoint, LimbMap front, Point frontJoint)
    : m_side(std::move(side)),
      m_front(std::move(front)),
      m_sideJoint(sideJoint),
      m_frontJoint(frontJoint)
{
}

RoundLimb::HalfAxes RoundLimb::axesAt(double y) const
{
    const EdgeRow side = m_side.patientEdges(-y - m_sideJoint.x);
    const EdgeRow front = m_front.patientEdges(-y - m_frontJoint.x);
    return {side[3], -side[0], -front[0], front[3]};
}

double RoundLimb::arcAt(const HalfAxes& axes, double turn)
{
    if (turn <= 0.0)
        return -ellipseArc(axes.back, axes.outer, -turn);
    const double quarter = ellipseArc(axes.front, axes.outer, std::min(turn, kQuarter));
    if (turn <= kQuarter)
        return quarter;
    return quarter + ellipseArc(axes.front, axes.inner, kQuarter) -
           ellipseArc(axes.front, axes.inner, 2.0 * kQuarter - turn);
}

double RoundLimb::turnAt(const HalfAxes& axes, double arc) const
{
    if (arc <= 0.0)
        return -ellipseTurn(axes.back, axes.outer, -arc);
    const double quarter = arcAt(axes, kQuarter);
    if (arc <= quarter)
        return ellipseTurn(axes.front, axes.outer, arc);
    const double inner = ellipseArc(axes.front, axes.inner, kQuarter);
    return 2.0 * kQuarter - ellipseTurn(axes.front, axes.inner, std::max(0.0, inner - (arc - quarter)));
}

double RoundLimb::turnOf(Point skin) const { return turnAt(axesAt(skin.y), skin.x); }

double RoundLimb::arcOf(double turn, double y) const { return arcAt(axesAt(y), turn); }

Point RoundLimb::toSkin(LimbSight sight, Point frame) const
{
    const double y = -frame.x;
    const HalfAxes axes = axesAt(y);
    if (sight == LimbSight::FromSide) {
        const Held u = held(frame.y - m_sideJoint.y, -axes.back, axes.front);
        const double turn = std::asin(u.inside / (u.inside >= 0.0 ? axes.front : axes.back));
        return {arcAt(axes, turn) + u.past, y};
    }
    const Held u = held(frame.y - m_frontJoint.y, -axes.outer, axes.inner);
    const double turn = u.inside <= 0.0 ? std::acos(std::min(1.0, -u.inside / axes.outer))
                                        : kQuarter + std::asin(u.inside / axes.inner);
    return {arcAt(axes, turn) + u.past, y};
}

Point RoundLimb::toFrame(LimbSight sight, Point skin) const
{
    const HalfAxes axes = axesAt(skin.y);
    const double low = sight == LimbSight::FromSide ? -kQuarter : 0.0;
    const double high = low + 2.0 * kQuarter;
    const double arcLow = arcAt(axes, low);
    const double arcHigh = arcAt(axes, high);
    const Held arc = held(skin.x, arcLow, arcHigh);
    const Point at = shown(sight, turnAt(axes, arc.inside), skin.y);
    return {at.x, at.y + arc.past};
}

Point RoundLimb::shown(LimbSight sight, double turn, double y) const
{
    const HalfAxes axes = axesAt(y);
    if (sight == LimbSight::FromSide) {
        const double seen = std::clamp(turn, -kQuarter, kQuarter);
        return {-y, m_sideJoint.y + (seen >= 0.0 ? axes.front : axes.back) * std::sin(seen)};
    }
    const double seen = std::clamp(turn, 0.0, 2.0 * kQuarter);
    return {-y, m_frontJoint.y - (seen <= kQuarter ? axes.outer : axes.inner) * std::cos(seen)};
}

bool RoundLimb::sees(LimbSight sight, double turn) const
{
    const double low = sight == LimbSight::FromSide ? -kQuarter : 0.0;
    return turn >= low && turn <= low + 2.0 * kQuarter;
}

}  // namespace fb
