#include "core/site/deltoid_hazards.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fb {

namespace hazards_detail {

constexpr double kFar = 200.0;  // cm: past anything that can be marked
constexpr int kRows = 5;        // points along the arm's edge

// A band of the arm between two heights and two skin distances, cut at the visible edges.
std::vector<Point> bandOf(const Arm& arm, double left, double right, double bottom, double top)
{
    constexpr double kEdge = std::numbers::pi / 2.0;
    const auto turn = [&arm](double s, double y) {
        return std::abs(s) >= kFar ? std::copysign(kEdge, s) : arm.section.turnOf({s, y});
    };
    std::vector<Point> corners;
    for (int i = 0; i <= kRows; ++i) {
        const double y = bottom + (top - bottom) * i / kRows;
        corners.push_back(arm.showTurn(turn(left, y), y));
    }
    for (int i = kRows; i >= 0; --i) {
        const double y = bottom + (top - bottom) * i / kRows;
        corners.push_back(arm.showTurn(turn(right, y), y));
    }
    return corners;
}

void addBand(std::vector<Hazard>& hazards, const Arm& arm, HazardCode code, HazardKind kind, double left,
             double right, double bottom, double top)
{
    const double visibleBottom = std::max(bottom, arm.bottom);
    const double visibleTop = std::min(top, arm.acromion.y);
    if (visibleBottom >= visibleTop)
        return;
    if (auto plane = Polygon::make(bandOf(arm, left, right, visibleBottom, visibleTop)))
        hazards.push_back({code, kind, Polygon::rectangle(left, right, bottom, top), *std::move(plane)});
}

Polygon skinOf(const Arm& arm)
{
    std::vector<Point> corners = arm.acromionBone.corners();
    for (Point& p : corners)
        p = arm.section.toSkin(p);
    return Polygon::make(std::move(corners)).value_or(arm.acromionBone);
}

Polygon shown(const Arm& arm, const Polygon& polygon)
{
    std::vector<Point> corners = polygon.corners();
    for (Point& p : corners)
        p = arm.show(p);
    return Polygon::make(std::move(corners)).value_or(polygon);
}

}  // namespace hazards_detail

std::vector<Hazard> deltoidHazards(const Policy& policy, const Arm& arm)
{
    using namespace hazards_detail;
    using enum PolicyKey;
    const double length = arm.armLength;
    const double scale = length / policy.value(DeltoidReferenceArm);
    const double behind = -policy.value(DeltoidStripHalfWidth) * scale;

    std::vector<Hazard> hazards;
    hazards.push_back({HazardCode::Acromion, HazardKind::Bone, skinOf(arm), shown(arm, arm.acromionBone)});
    addBand(hazards, arm, HazardCode::JointAndBursa, HazardKind::Strike, -kFar, kFar,
            -policy.value(JointShare) * length, kFar);
    addBand(hazards, arm, HazardCode::BelowArmpit, HazardKind::Strike, -kFar, kFar, -kFar, -arm.axillaDepth);
    // Below armpit level everything is struck already; what is left of the back lies above it.
    addBand(hazards, arm, HazardCode::RadialNerveBehind, HazardKind::Strike, -kFar, behind, -arm.axillaDepth,
            -policy.value(RadialBack) * scale);
    addBand(hazards, arm, HazardCode::BursaEdge, HazardKind::Near, -kFar, kFar,
            -policy.value(BursaEdge) * scale, 0.0);
    addBand(hazards, arm, HazardCode::AxillaryNerveFront, HazardKind::Near, 0.0, kFar,
            -policy.value(NerveFrontHigh) * length, -policy.value(NerveFrontLow) * length);
    addBand(hazards, arm, HazardCode::AxillaryNerveBack, HazardKind::Near, -kFar, 0.0,
            -policy.value(NerveBackHigh) * length, -policy.value(NerveBackLow) * length);
    return hazards;
}

}  // namespace fb
