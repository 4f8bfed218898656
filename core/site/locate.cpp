#include "core/site/locate.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/site/deltoid.h"
#include "core/site/hip_behind.h"
#include "core/site/places.h"
#include "core/site/vastus.h"
#include "core/site/ventrogluteal.h"

namespace fb {

namespace locate_detail {

constexpr std::string_view kLandmark = "landmark.";

Result<BodyMeasures> referenceMeasures(const Plate& plate, const Proportions& proportions)
{
    return Patient::make(plate.reference.ageYears, plate.reference.sex, plate.reference.stature,
                         plate.reference.weight, Side::Right)
        .map([&](const Patient& reference) { return measured(proportions, reference); });
}

Result<BodyMap> mapWith(const Plate& plate, const Proportions& proportions, const BodyMeasures& body)
{
    return referenceMeasures(plate, proportions).and_then([&](const BodyMeasures& reference) {
        return BodyMap::make(plate, reference, body);
    });
}

// What every site's rule is given.
struct Ask {
    const Atlas& atlas;
    const Policy& policy;
    const Patient& patient;
    const BodyMeasures& body;
    Convention convention{};
    View view{};

    [[nodiscard]] Result<BodyMap> map(View of) const
    {
        return mapWith(atlas.plate(of), *atlas.proportions, body);
    }
    [[nodiscard]] bool left() const { return patient.side() == Side::Left; }
    [[nodiscard]] double scale() const
    {
        return patient.stature().value() / policy.value(PolicyKey::ReferenceStature);
    }
};

void nameLandmarks(Target& target, const Places& places)
{
    const auto out = [&](Point p) { return target.side == Side::Left ? mirrored(p) : p; };
    for (const auto& [id, point] : places.plate().points) {
        if (id.starts_with(kLandmark))
            target.landmarks[publicName(id)] = out(places.landmark(id));
    }
}

// Where a limb's levels cross its axis: how high on one that hangs, how far along on one that lies.
void nameLevels(Target& target, const Places& places, std::string_view limb)
{
    const int index = places.plate().limbNamed(limb);
    const LimbFrame& frame = places.map().limbFrame(index);
    const auto& rows = places.map().limbMap(index).patientLevels();
    const bool lies = std::abs(frame.axis.x) > std::abs(frame.axis.y);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        std::string name = places.plate().limbs[static_cast<std::size_t>(index)].levels[i].name;
        std::ranges::replace(name, '-', '_');
        const Point at = frame.toFrame({0.0, rows[i].along});
        const double x = target.side == Side::Left ? -at.x : at.x;
        target.levels[name] = lies ? x : at.y;
    }
}

// Everything of the picture, for a left side; skin values read alike on both.
void mirrorPicture(Target& target)
{
    target.region = target.region.mirrored();
    target.ideal = mirrored(target.ideal);
    for (Hazard& hazard : target.hazards)
        hazard.plane = hazard.plane.mirrored();
    for (Step& step : target.construction)
        std::ranges::transform(step.points, step.points.begin(), [](Point p) { return mirrored(p); });
    if (target.hand)
        target.hand = mirrored(*target.hand);
}

// A right-sided target of hip or thigh, as it leaves core.
Target finished(Target target, const Ask& ask, const Places& places)
{
    target.view = ask.view;
    target.side = ask.patient.side();
    if (ask.left())
        mirrorPicture(target);
    nameLandmarks(target, places);
    nameLevels(target, places, "pelvis");
    if (ask.view != View::HipSide)
        nameLevels(target, places, "thigh");
    const double trochanter = ask.body.trochanterHeight.value();
    target.heights = {{"greater_trochanter", trochanter},
                      {"asis", trochanter + ask.body.spineAboveTrochanter.value()},
                      {"iliac_crest", trochanter + ask.body.crestAboveTrochanter.value()},
                      {"lateral_femoral_epicondyle", trochanter - ask.body.thighLength.value()}};
    return target;
}

Arm armFrom(const Places& side, const BodyMeasures& body, double lateralShare)
{
    const int limb = side.plate().limbNamed("arm");
    const Point joint = side.map().limbFrame(limb).joint;
    const auto& levels = side.map().limbMap(limb).patientLevels();
    return Arm{side.landmark("landmark.acromion.lateral"),
               side.landmark("landmark.acromion.front"),
               side.landmark("landmark.acromion.back"),
               side.landmark("landmark.deltoid-tuberosity"),
               side.boneArea("area.bone.acromion"),
               body.armLength.value(),
               body.axillaDepth.value(),
               joint.y - levels.back().along,
               CrossSection(side.map().limbMap(limb), joint, lateralShare),
               {}};
}

Result<Target> locateDeltoid(const Ask& ask)
{
    const auto side = ask.map(View::ShoulderSide);
    if (!side)
        return tl::unexpected(side.error());
    const Places places(ask.atlas.plate(View::ShoulderSide), *side);
    Arm arm = armFrom(places, ask.body, ask.policy.value(PolicyKey::LimbLateralShare));
    std::optional<BodyMap> other;
    if (ask.view != View::ShoulderSide) {
        auto map = ask.map(ask.view);
        if (!map)
            return tl::unexpected(map.error());
        other = std::move(*map);
    }
    const Plate& plate = ask.atlas.plate(ask.view);
    const BodyMap& shown = other ? *other : *side;
    // A view straight from the side shows no depth: its cosine is nothing, not 6e-17.
    const double azimuth = plate.azimuth.value() * std::numbers::pi / 180.0;
    const Point sight{ask.view == View::ShoulderSide ? 0.0 : std::cos(azimuth), std::sin(azimuth)};
    const Point joint = shown.limbFrame(plate.limbNamed("arm")).joint;
    const double sideJoint = side->limbFrame(places.plate().limbNamed("arm")).joint.y;
    arm.showTurn = [&, left = ask.left()](double turn, double y) {
        const Point p{joint.x + arm.section.seenAt(turn, y, sight), joint.y + y - sideJoint};
        return left ? mirrored(p) : p;
    };
    Target target = deltoidTarget(ask.convention, ask.policy, arm);
    target.view = ask.view;
    target.side = ask.patient.side();
    const Places named(plate, shown);
    nameLandmarks(target, named);
    nameLevels(target, named, "arm");
    return target;
}

Result<Target> locateVastus(const Ask& ask)
{
    const auto side = ask.map(View::ThighSide);
    const auto front = ask.map(View::ThighFront);
    if (!side || !front)
        return tl::unexpected(!side ? side.error() : front.error());
    const bool fromSide = ask.view == View::ThighSide;
    const Places places(ask.atlas.plate(ask.view), fromSide ? *side : *front);
    const int sideLimb = ask.atlas.plate(View::ThighSide).limbNamed("thigh");
    const int frontLimb = ask.atlas.plate(View::ThighFront).limbNamed("thigh");
    const Thigh thigh{RoundLimb(side->limbMap(sideLimb), side->limbFrame(sideLimb).joint,
                                front->limbMap(frontLimb), front->limbFrame(frontLimb).joint),
                      fromSide ? LimbSight::FromSide : LimbSight::FromFront,
                      ask.body.thighLength.value(),
                      ask.scale(),
                      places.landmark("landmark.lateral-femoral-epicondyle"),
                      places.landmark("landmark.asis"),
                      places.landmark("landmark.patella"),
                      {{HazardCode::Trochanter, places.boneArea("area.bone.greater-trochanter")},
                       {HazardCode::Patella, places.boneArea("area.bone.patella")}}};
    return finished(vastusTarget(ask.convention, ask.policy, thigh), ask, places);
}

Hip hipFrom(const Places& side, double scale)
{
    const Places::Outline trunk = side.outline("pelvis", "waist", "fold");
    const Places::Outline thigh = side.outline("thigh", "trochanter", "mid-thigh");
    const std::vector<Point> crest = side.boneLine("line.iliac-crest");
    return Hip{side.landmark("landmark.greater-trochanter"),
               side.landmark("landmark.asis"),
               side.landmark("landmark.iliac-tubercle"),
               side.landmark("landmark.iliac-crest"),
               side.landmark("landmark.psis"),
               crest,
               domeOf(crest),
               side.boneArea("area.bone.greater-trochanter"),
               boundsOf(side.boneLine("line.superior-gluteal-nerve")),
               side.map().limbFrame(side.plate().limbNamed("thigh")).axis,
               trunk.front,
               trunk.back,
               thigh.front,
               thigh.back,
               scale};
}

Result<Target> locateVentrogluteal(const Ask& ask)
{
    const auto side = ask.map(View::HipSide);
    if (!side)
        return tl::unexpected(side.error());
    const Places places(ask.atlas.plate(View::HipSide), *side);
    const Hip hip = hipFrom(places, ask.scale());
    Target target = ventroglutealTarget(ask.convention, ask.policy, hip);
    if (ask.view == View::HipSide)
        return finished(std::move(target), ask, places);
    const auto behind = ask.map(View::HipBehind);
    if (!behind)
        return tl::unexpected(behind.error());
    const Places shown(ask.atlas.plate(View::HipBehind), *behind);
    return finished(hipBehindTarget(target, hip, shown), ask, shown);
}

}  // namespace locate_detail

using namespace locate_detail;

std::vector<View> neededPlates(View view)
{
    std::vector<View> needed{view};
    const auto add = [&](View other) {
        if (std::ranges::find(needed, other) == needed.end())
            needed.push_back(other);
    };
    for (const View asked : askedViews(siteOf(view)))
        add(asked);
    return needed;
}

Result<BodyMap> bodyMap(const Atlas& atlas, View view, const Patient& patient)
{
    return mapWith(atlas.plate(view), *atlas.proportions, measured(*atlas.proportions, patient));
}

Result<Target> locate(const Atlas& atlas, const Policy& policy, const Patient& patient, Convention convention,
                      View view)
{
    if (siteOf(convention) != siteOf(view))
        return fault(Problem::ConventionOfAnotherSite, std::string(wordOf(siteOf(view))),
                     std::string(wordOf(convention)));
    const BodyMeasures body = measured(*atlas.proportions, patient);
    const Ask ask{atlas, policy, patient, body, convention, view};
    switch (siteOf(view)) {
    case Site::Deltoid: return locateDeltoid(ask);
    case Site::VastusLateralis: return locateVastus(ask);
    case Site::Ventrogluteal: return locateVentrogluteal(ask);
    }
    return fault(Problem::SiteUnknown);
}

std::vector<OtherConvention> otherConventions(const Atlas& atlas, const Policy& policy,
                                              const Patient& patient, Convention chosen, View view)
{
    std::vector<OtherConvention> others;
    for (const Convention convention : kConventions) {
        if (convention == chosen || siteOf(convention) != siteOf(chosen))
            continue;
        if (const auto target = locate(atlas, policy, patient, convention, view))
            others.push_back({convention, target->ideal});
    }
    return others;
}

}  // namespace fb
