#include "core/grade/grade.h"

#include <algorithm>
#include <array>

#include "core/body/moved_ink.h"

namespace fb {

namespace grade_detail {

constexpr double kNoteReach = 2.0;  // cm: a near structure farther away than this is not told of

struct Overshoot {
    Direction direction = Direction::None;
    double amount = 0.0;
};

// How far outside the region, the greater of along and across.
Overshoot overshoot(const Bounds& region, Point skin)
{
    const std::array<Overshoot, 4> ways{{{Direction::High, skin.y - region.high.y},
                                         {Direction::Low, region.low.y - skin.y},
                                         {Direction::Forward, skin.x - region.high.x},
                                         {Direction::Back, region.low.x - skin.x}}};
    const Overshoot most = *std::ranges::max_element(ways, {}, &Overshoot::amount);
    return most.amount > kBorderTolerance ? most : Overshoot{};
}

const Hazard* struckBy(const Target& target, Point skin, bool inside)
{
    const auto strikes = [&](const Hazard& hazard) {
        const bool asked = hazard.kind == HazardKind::Bone || (hazard.kind == HazardKind::Strike && !inside);
        return asked && hazard.skin.contains(skin);
    };
    const auto it = std::ranges::find_if(target.hazards, strikes);
    return it == target.hazards.end() ? nullptr : &*it;
}

bool lies(const Target& target, HazardCode code, Point skin)
{
    return std::ranges::any_of(target.hazards,
                               [&](const Hazard& h) { return h.code == code && h.skin.contains(skin); });
}

Tissue armTissue(const Target& target, Point skin, Direction direction, const Hazard* strike)
{
    if (strike && strike->code == HazardCode::Acromion)
        return Tissue::AcromionBone;
    if (direction == Direction::None)
        return Tissue::ThickMuscle;
    if (strike && strike->code == HazardCode::JointAndBursa)
        return Tissue::SubacromialBursa;
    if (strike)
        return Tissue::RadialNerve;
    if (direction == Direction::Back || lies(target, HazardCode::AxillaryNerveFront, skin) ||
        lies(target, HazardCode::AxillaryNerveBack, skin))
        return Tissue::AxillaryNerve;
    if (lies(target, HazardCode::BursaEdge, skin))
        return Tissue::SubacromialBursa;
    return Tissue::ThinMuscle;
}

Tissue tissueAt(const Target& target, Point skin, Direction direction, const Hazard* strike, MarkedLimb limb)
{
    const bool bone = strike && strike->kind == HazardKind::Bone;
    if (limb == MarkedLimb::Arm || bone || direction == Direction::None)
        return armTissue(target, skin, direction, strike);
    return limb == MarkedLimb::Trunk ? Tissue::Trunk : Tissue::Forearm;
}

// Inside the region: the nearest near structure, with its clearance along the skin.
void addNote(Reason& reason, const Target& target, Point skin)
{
    double best = kNoteReach;
    for (const Hazard& hazard : target.hazards) {
        if (hazard.kind != HazardKind::Near)
            continue;
        const double away = std::max(0.0, hazard.skin.signedDistance(skin));
        if (away < best) {
            best = away;
            reason.note = hazard.code;
            reason.clearance = Cm{rounded6(away)};
        }
    }
}

Verdict verdictOf(const Policy& policy, const Target& target, double outside, const Hazard* strike)
{
    if (strike)
        return Verdict::Unsafe;
    if (outside <= 0.0)
        return Verdict::OnTarget;
    const double margin = policy.value(PolicyKey::AcceptableMargin) * target.scale;
    return outside <= margin + kBorderTolerance ? Verdict::Acceptable : Verdict::OffTarget;
}

double pointsOf(const Policy& policy, Verdict verdict)
{
    switch (verdict) {
    case Verdict::OnTarget: return policy.value(PolicyKey::PointsOnTarget);
    case Verdict::Acceptable: return policy.value(PolicyKey::PointsAcceptable);
    case Verdict::OffTarget: return policy.value(PolicyKey::PointsOffTarget);
    case Verdict::Unsafe: return 0.0;
    }
    return 0.0;
}

}  // namespace grade_detail

using namespace grade_detail;

Grade gradeMark(const Target& target, const Policy& policy, Point viewer, MarkedLimb limb)
{
    const Point skin = target.toSkin(viewer);
    const double outside = target.regionSkin.signedDistance(skin);
    const bool inside = outside <= 0.0;
    const Hazard* strike = struckBy(target, skin, inside);
    const Overshoot way = inside ? Overshoot{} : overshoot(target.regionSkin.bounds(), skin);

    Grade grade;
    grade.inside = inside;
    grade.verdict = verdictOf(policy, target, outside, strike);
    grade.distanceToBorder = Cm{rounded6(outside)};
    grade.offDistal = Cm{rounded6(target.idealSkin.y - skin.y)};
    grade.offAnterior = Cm{rounded6(skin.x - target.idealSkin.x)};
    grade.distanceToIdeal = Cm{rounded6(distance(skin, target.idealSkin))};
    if (strike)
        grade.hazard = strike->code;
    grade.reason.direction = way.direction;
    grade.reason.amount = Cm{rounded6(way.amount)};
    grade.reason.tissue = tissueAt(target, skin, way.direction, strike, limb);
    if (inside)
        addNote(grade.reason, target, skin);
    grade.points = pointsOf(policy, grade.verdict);
    return grade;
}

Result<MarkedLimb> markedLimb(const Plate& plate, const BodyMap& map, Side side, Point viewer)
{
    if (!plate.markable)
        return fault(Problem::ViewShowOnly, {}, std::string(wordOf(plate.view)));
    const int limb = isFinite(viewer) ? limbAt(plate, map, side, viewer) : -1;
    if (limb < 0)
        return fault(Problem::MarkOutsideBody);
    const std::string& name = plate.limbs[static_cast<std::size_t>(limb)].name;
    return name == "arm" ? MarkedLimb::Arm : name == "forearm" ? MarkedLimb::Forearm : MarkedLimb::Trunk;
}

std::string_view wordOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::OnTarget: return "on_target";
    case Verdict::Acceptable: return "acceptable";
    case Verdict::OffTarget: return "off_target";
    case Verdict::Unsafe: return "unsafe";
    }
    return {};
}

std::string_view wordOf(Direction direction)
{
    switch (direction) {
    case Direction::None: return "none";
    case Direction::High: return "high";
    case Direction::Low: return "low";
    case Direction::Forward: return "forward";
    case Direction::Back: return "back";
    }
    return {};
}

std::string_view wordOf(Tissue tissue)
{
    switch (tissue) {
    case Tissue::ThickMuscle: return "thick_muscle";
    case Tissue::AcromionBone: return "acromion";
    case Tissue::SubacromialBursa: return "subacromial_bursa";
    case Tissue::AxillaryNerve: return "axillary_nerve";
    case Tissue::RadialNerve: return "radial_nerve";
    case Tissue::ThinMuscle: return "thin_muscle";
    case Tissue::Trunk: return "trunk";
    case Tissue::Forearm: return "forearm";
    }
    return {};
}

}  // namespace fb
