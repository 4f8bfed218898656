#include "core/site/locate.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/plate/ring.h"
#include "core/site/deltoid.h"

namespace fb {

namespace locate_detail {

constexpr std::string_view kLandmark = "landmark.";

// "landmark.acromion.lateral" to "acromion", every other to its own words with underscores.
std::string publicName(std::string_view id)
{
    if (id == kFirstLandmark)
        return "acromion";
    std::string name(id.substr(kLandmark.size()));
    std::ranges::replace_if(
        name, [](char c) { return c == '.' || c == '-'; }, '_');
    return name;
}

// Landmarks are bone, but for the folds of the armpit.
Point placed(const BodyMap& map, std::string_view id, const NamedPoint& point)
{
    constexpr std::string_view kFold = "landmark.axilla.";
    return id.starts_with(kFold) ? map.toPatient(point.limb, point.at)
                                 : map.boneToPatient(point.limb, point.at);
}

Point frameOf(const Plate& plate, const BodyMap& map, std::string_view id)
{
    return placed(map, id, plate.points.find(id)->second);
}

Polygon boneOf(const Plate& plate, const BodyMap& map, std::string_view id)
{
    const NamedPath& area = plate.areas.find(id)->second;
    std::vector<Point> corners = flattened(area.ring, 2);
    for (Point& p : corners)
        p = map.boneToPatient(area.limb, p);
    const Polygon none = Polygon::rectangle(-0.1, 0.1, 0.0, 0.1);
    return Polygon::make(std::move(corners)).value_or(none);
}

int armOf(const Plate& plate) { return plate.limbNamed("arm"); }

Arm armFrom(const Plate& side, const BodyMap& map, const BodyMeasures& body, double lateralShare)
{
    const int limb = armOf(side);
    const Point joint = map.limbFrame(limb).joint;
    const auto& levels = map.limbMap(limb).patientLevels();
    return Arm{frameOf(side, map, kFirstLandmark),
               frameOf(side, map, "landmark.acromion.front"),
               frameOf(side, map, "landmark.acromion.back"),
               frameOf(side, map, "landmark.deltoid-tuberosity"),
               boneOf(side, map, "area.bone.acromion"),
               body.armLength.value(),
               body.axillaDepth.value(),
               joint.y - levels.back().along,
               CrossSection(map.limbMap(limb), joint, lateralShare),
               {}};
}

Result<BodyMeasures> referenceMeasures(const Plate& plate, const Proportions& proportions)
{
    return Patient::make(plate.reference.ageYears, plate.reference.sex, plate.reference.stature,
                         plate.reference.weight, Side::Right)
        .map([&](const Patient& reference) { return measured(proportions, reference); });
}

void nameLandmarks(Target& target, const Plate& plate, const BodyMap& map)
{
    const auto out = [&](Point p) { return target.side == Side::Left ? mirrored(p) : p; };
    for (const auto& [id, point] : plate.points) {
        if (id.starts_with(kLandmark))
            target.landmarks[publicName(id)] = out(placed(map, id, point));
    }
    const int limb = armOf(plate);
    const auto& rows = map.limbMap(limb).patientLevels();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        std::string name = plate.limbs[static_cast<std::size_t>(limb)].levels[i].name;
        std::ranges::replace(name, '-', '_');
        target.levels[name] = map.limbFrame(limb).joint.y - rows[i].along;
    }
}

Result<BodyMap> mapWith(const Plate& plate, const Proportions& proportions, const BodyMeasures& body)
{
    return referenceMeasures(plate, proportions).and_then([&](const BodyMeasures& reference) {
        return BodyMap::make(plate, reference, body);
    });
}

}  // namespace locate_detail

using namespace locate_detail;

Result<BodyMap> bodyMap(const Atlas& atlas, View view, const Patient& patient)
{
    return mapWith(atlas.plate(view), *atlas.proportions, measured(*atlas.proportions, patient));
}

Result<Target> locate(const Atlas& atlas, const Policy& policy, const Patient& patient, Convention convention,
                      View view)
{
    const BodyMeasures body = measured(*atlas.proportions, patient);
    const auto side = mapWith(*atlas.side, *atlas.proportions, body);
    if (!side)
        return tl::unexpected(side.error());
    Arm arm = armFrom(*atlas.side, *side, body, policy.value(PolicyKey::LimbLateralShare));
    const bool left = patient.side() == Side::Left;

    std::optional<BodyMap> other;
    if (view != View::ShoulderSide) {
        auto map = mapWith(atlas.plate(view), *atlas.proportions, body);
        if (!map)
            return tl::unexpected(map.error());
        other = std::move(*map);
    }
    const BodyMap& shown = other ? *other : *side;
    // A view straight from the side shows no depth: its cosine is nothing, not 6e-17.
    const double azimuth = atlas.plate(view).azimuth.value() * std::numbers::pi / 180.0;
    const Point sight{view == View::ShoulderSide ? 0.0 : std::cos(azimuth), std::sin(azimuth)};
    const Point joint = shown.limbFrame(armOf(atlas.plate(view))).joint;
    const double sideJoint = side->limbFrame(armOf(*atlas.side)).joint.y;
    arm.showTurn = [&, left](double turn, double y) {
        const Point p{joint.x + arm.section.seenAt(turn, y, sight), joint.y + y - sideJoint};
        return left ? mirrored(p) : p;
    };

    Target target = deltoidTarget(convention, policy, arm);
    target.view = view;
    target.side = patient.side();
    nameLandmarks(target, atlas.plate(view), shown);
    return target;
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
