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

// How far outside a region without square corners: the greater part of the way from its border.
Overshoot fromBorder(const Polygon& region, Point skin)
{
    const Point way = skin - region.nearestBorderPoint(skin);
    const bool along = std::abs(way.y) >= std::abs(way.x);
    const double amount = std::abs(along ? way.y : way.x);
    if (amount <= kBorderTolerance)
        return {};
    if (along)
        return {way.y > 0.0 ? Direction::High : Direction::Low, amount};
    return {way.x > 0.0 ? Direction::Forward : Direction::Back, amount};
}

// How far outside a rectangle on the skin, the greater of along and across.
Overshoot fromBand(const Bounds& region, Point skin)
{
    const std::array<Overshoot, 4> ways{{{Direction::High, skin.y - region.high.y},
                                         {Direction::Low, region.low.y - skin.y},
                                         {Direction::Forward, skin.x - region.high.x},
                                         {Direction::Back, region.low.x - skin.x}}};
    const Overshoot most = *std::ranges::max_element(ways, {}, &Overshoot::amount);
    return most.amount > kBorderTolerance ? most : Overshoot{};
}

Overshoot overshoot(const Target& target, Point skin)
{
    return target.site == Site::Deltoid ? fromBand(target.regionSkin.bounds(), skin)
                                        : fromBorder(target.regionSkin, skin);
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

Tissue thighTissue(const Target& target, Point skin, Direction direction, const Hazard* strike)
{
    if (strike) {
        switch (strike->code) {
        case HazardCode::Trochanter: return Tissue::TrochanterBone;
        case HazardCode::Patella: return Tissue::PatellaBone;
        case HazardCode::HipEnd: return Tissue::HipRegion;
        case HazardCode::KneeEnd: return Tissue::KneeRegion;
        case HazardCode::FemoralVessels: return Tissue::FemoralVessels;
        default: return Tissue::SciaticNerve;
        }
    }
    if (direction == Direction::None)
        return Tissue::ThickMuscle;
    if (lies(target, HazardCode::RectusFemoris, skin))
        return Tissue::RectusFemoris;
    return direction == Direction::Back ? Tissue::Hamstrings : Tissue::ThinMuscle;
}

Tissue hipTissue(const Target& target, Point skin, Direction direction, const Hazard* strike)
{
    if (strike) {
        switch (strike->code) {
        case HazardCode::Trochanter: return Tissue::TrochanterBone;
        case HazardCode::CrestBone: return Tissue::CrestBone;
        case HazardCode::RoundTrochanter: return Tissue::TrochanterTendons;
        case HazardCode::AboveCrest: return Tissue::AbdominalWall;
        case HazardCode::Dorsogluteal: return Tissue::SuperiorGluteal;
        default: return Tissue::SciaticNerve;
        }
    }
    if (direction == Direction::None)
        return Tissue::ThickMuscle;
    return lies(target, HazardCode::FrontOfHipLine, skin) ? Tissue::FrontOfHip : Tissue::HipMuscle;
}

// Where a mark is on another limb than the one that is asked, that is the first thing to say.
std::optional<Tissue> otherLimb(Site site, MarkedLimb limb)
{
    switch (limb) {
    case MarkedLimb::Arm: return std::nullopt;
    case MarkedLimb::Forearm: return Tissue::Forearm;
    case MarkedLimb::Trunk: return Tissue::Trunk;
    case MarkedLimb::Pelvis:
        return site == Site::Ventrogluteal ? std::nullopt : std::optional(Tissue::Pelvis);
    case MarkedLimb::Thigh:
        return site == Site::Ventrogluteal ? std::optional(Tissue::ThighBelowHip) : std::nullopt;
    case MarkedLimb::Leg: return Tissue::Leg;
    }
    return std::nullopt;
}

Tissue siteTissue(const Target& target, Point skin, Direction direction, const Hazard* strike)
{
    switch (target.site) {
    case Site::Deltoid: return armTissue(target, skin, direction, strike);
    case Site::VastusLateralis: return thighTissue(target, skin, direction, strike);
    case Site::Ventrogluteal: return hipTissue(target, skin, direction, strike);
    }
    return Tissue::ThickMuscle;
}

Tissue tissueAt(const Target& target, Point skin, Direction direction, const Hazard* strike, MarkedLimb limb)
{
    const bool bone = strike && strike->kind == HazardKind::Bone;
    const auto other = otherLimb(target.site, limb);
    // A mark on the thigh of the hip's plate that strikes something is told by what it strikes.
    const bool told = strike && target.site == Site::Ventrogluteal;
    if (!other || bone || told || direction == Direction::None)
        return siteTissue(target, skin, direction, strike);
    return *other;
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
    const Overshoot way = inside ? Overshoot{} : overshoot(target, skin);

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
    static constexpr std::array<std::pair<std::string_view, MarkedLimb>, 6> kNames{
        {{"arm", MarkedLimb::Arm},
         {"forearm", MarkedLimb::Forearm},
         {"pelvis", MarkedLimb::Pelvis},
         {"thigh", MarkedLimb::Thigh},
         {"leg", MarkedLimb::Leg},
         {"trunk", MarkedLimb::Trunk}}};
    const std::string& name = plate.limbs[static_cast<std::size_t>(limb)].name;
    const auto it = std::ranges::find(kNames, name, [](const auto& pair) { return pair.first; });
    return it == kNames.end() ? MarkedLimb::Trunk : it->second;
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
    case Tissue::RectusFemoris: return "rectus_femoris";
    case Tissue::FemoralVessels: return "femoral_vessels";
    case Tissue::SciaticNerve: return "sciatic_nerve";
    case Tissue::HipRegion: return "hip_region";
    case Tissue::KneeRegion: return "knee_region";
    case Tissue::PatellaBone: return "patella";
    case Tissue::TrochanterBone: return "greater_trochanter";
    case Tissue::Hamstrings: return "hamstrings";
    case Tissue::TrochanterTendons: return "trochanter_tendons";
    case Tissue::CrestBone: return "iliac_crest";
    case Tissue::AbdominalWall: return "abdominal_wall";
    case Tissue::FrontOfHip: return "front_of_hip";
    case Tissue::SuperiorGluteal: return "superior_gluteal";
    case Tissue::HipMuscle: return "hip_muscle";
    case Tissue::ThighBelowHip: return "thigh_below_hip";
    case Tissue::Pelvis: return "pelvis";
    case Tissue::Leg: return "leg";
    }
    return {};
}

}  // namespace fb
