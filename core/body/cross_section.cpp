#include "core/body/cross_section.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/geometry/ellipse_arc.h"

namespace fb {

namespace cross_detail {
constexpr double kQuarterTurn = std::numbers::pi / 2.0;
}

CrossSection::CrossSection(LimbMap limb, Point joint, double lateralShare)
    : m_limb(std::move(limb)),
      m_joint(joint),
      m_lateralShare(lateralShare)
{
}

CrossSection::HalfAxes CrossSection::axesAt(double y) const
{
    const EdgeRow edges = m_limb.patientEdges(m_joint.y - y);
    const double front = edges[3];
    const double back = -edges[0];
    return {front, back, m_lateralShare * (front + back) / 2.0};
}

Point CrossSection::toSkin(Point frame) const
{
    const HalfAxes axes = axesAt(frame.y);
    const double x = frame.x - m_joint.x;
    const double half = x >= 0.0 ? axes.front : axes.back;
    const double inside = std::clamp(x, -half, half);
    const double turn = std::asin(inside / half);
    return {ellipseArc(half, axes.lateral, turn) + (x - inside), frame.y};
}

Point CrossSection::toFrame(Point skin) const
{
    const HalfAxes axes = axesAt(skin.y);
    const double half = skin.x >= 0.0 ? axes.front : axes.back;
    const double turn = ellipseTurn(half, axes.lateral, skin.x);
    double x = half * std::sin(turn);
    if (std::abs(turn) >= cross_detail::kQuarterTurn)
        x += skin.x - ellipseArc(half, axes.lateral, turn);
    return {m_joint.x + x, skin.y};
}

double CrossSection::quarterArc(double y, bool front) const
{
    const HalfAxes axes = axesAt(y);
    return ellipseArc(front ? axes.front : axes.back, axes.lateral, cross_detail::kQuarterTurn);
}

double CrossSection::turnOf(Point skin) const
{
    const HalfAxes axes = axesAt(skin.y);
    return ellipseTurn(skin.x >= 0.0 ? axes.front : axes.back, axes.lateral, skin.x);
}

double CrossSection::turnAt(Point frame) const
{
    const HalfAxes axes = axesAt(frame.y);
    const double x = frame.x - m_joint.x;
    return std::asin(std::clamp(x / (x >= 0.0 ? axes.front : axes.back), -1.0, 1.0));
}

double CrossSection::seenAt(double turn, double y, Point sight) const
{
    const HalfAxes axes = axesAt(y);
    const double lateral = axes.lateral * std::cos(turn);
    const double forward = (turn >= 0.0 ? axes.front : axes.back) * std::sin(turn);
    return forward * sight.y - lateral * sight.x;
}

}  // namespace fb
