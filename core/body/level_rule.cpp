#include "core/body/level_rule.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace fb {

namespace level_detail {

// How one level's skin moves: outward in proportion, and by a depth of fat on either side.
struct SkinMove {
    double ratio = 1.0;
    double added = 0.0;  // cm
};

struct Pair {
    const BodyMeasures& reference;
    const BodyMeasures& patient;

    [[nodiscard]] double ratio(Cm BodyMeasures::*measure) const
    {
        return patient.*measure / (reference.*measure);
    }

    // A trunk is seen broad from the front and deep from the side; in between, as an ellipse is.
    [[nodiscard]] double seen(Cm BodyMeasures::*breadth, Cm BodyMeasures::*depth, double azimuth) const
    {
        const double turn = azimuth * std::numbers::pi / 180.0;
        const auto width = [&](const BodyMeasures& body) {
            return std::hypot((body.*breadth).value() * std::cos(turn),
                              (body.*depth).value() * std::sin(turn));
        };
        return width(patient) / width(reference);
    }
};

double bone(const Pair& bodies) { return bodies.patient.boneSize / bodies.reference.boneSize; }

// Over the shoulder there is bone, a cap of muscle that goes with the skeleton, and fat.
SkinMove overShoulder(const Pair& bodies)
{
    return {bone(bodies), toCm(bodies.patient.armFat).value() - toCm(bodies.reference.armFat).value()};
}

SkinMove armSkin(std::string_view level, const Pair& bodies)
{
    if (level == "shoulder-top" || level == "acromion")
        return overShoulder(bodies);
    if (level == "radiale" || level == "elbow-tip")
        return {bodies.ratio(&BodyMeasures::forearmDepth)};
    return {bodies.ratio(&BodyMeasures::midArmDepth)};
}

SkinMove forearmSkin(std::string_view level, const Pair& bodies)
{
    if (level == "wrist")
        return {bone(bodies)};
    return {bodies.ratio(&BodyMeasures::forearmDepth)};
}

SkinMove trunkSkin(std::string_view level, double azimuth, const Pair& bodies)
{
    if (level == "neck")
        return {bodies.ratio(&BodyMeasures::neckDepth)};
    // The girdle is as broad as the acromions are apart, and as deep as the chest behind them.
    if (level == "shoulder")
        return {bodies.seen(&BodyMeasures::shoulderBreadth, &BodyMeasures::chestDepth, azimuth)};
    if (level == "waist")
        return {bodies.seen(&BodyMeasures::waistBreadth, &BodyMeasures::waistDepth, azimuth)};
    return {bodies.seen(&BodyMeasures::chestBreadth, &BodyMeasures::chestDepth, azimuth)};
}

SkinMove skinMove(std::string_view limb, std::string_view level, double azimuth, const Pair& bodies)
{
    if (limb == "arm")
        return armSkin(level, bodies);
    if (limb == "forearm")
        return forearmSkin(level, bodies);
    return trunkSkin(level, azimuth, bodies);
}

double armAlong(std::string_view level, double drawn, const Pair& bodies)
{
    const double arm = bodies.patient.armLength.value();
    const double referenceArm = bodies.reference.armLength.value();
    if (level == "axilla")
        return drawn * (bodies.patient.axillaDepth / bodies.reference.axillaDepth);
    if (level == "shoulder-top")
        return drawn * bone(bodies) - overShoulder(bodies).added;
    if (level == "elbow-tip")
        return arm + (drawn - referenceArm) * bone(bodies);
    return drawn * arm / referenceArm;
}

double trunkAlong(std::string_view level, double drawn, const Pair& bodies)
{
    if (level == "neck")
        return drawn * bodies.ratio(&BodyMeasures::headAndNeck);
    return drawn * bodies.ratio(&BodyMeasures::acromionToWaist);
}

double along(std::string_view limb, std::string_view level, double drawn, const Pair& bodies)
{
    if (limb == "arm")
        return armAlong(level, drawn, bodies);
    if (limb == "forearm")
        return drawn * bodies.ratio(&BodyMeasures::forearmLength);
    return trunkAlong(level, drawn, bodies);
}

}  // namespace level_detail

BodyMeasures skeletonOf(const BodyMeasures& reference, const BodyMeasures& patient)
{
    const double boneRatio = patient.boneSize / reference.boneSize;
    BodyMeasures skeleton = patient;
    skeleton.axillaDepth = reference.axillaDepth * (patient.armLength / reference.armLength);
    for (Cm BodyMeasures::*flesh :
         {&BodyMeasures::midArmDepth, &BodyMeasures::forearmDepth, &BodyMeasures::neckDepth,
          &BodyMeasures::shoulderBreadth, &BodyMeasures::chestDepth, &BodyMeasures::chestBreadth,
          &BodyMeasures::waistDepth, &BodyMeasures::waistBreadth})
        skeleton.*flesh = reference.*flesh * boneRatio;
    skeleton.armFat = reference.armFat;
    return skeleton;
}

std::vector<LevelRow> patientLevels(const Limb& limb, Degrees azimuth, const BodyMeasures& reference,
                                    const BodyMeasures& patient)
{
    using namespace level_detail;
    const Pair bodies{reference, patient};
    const double boneRatio = bone(bodies);
    std::vector<LevelRow> rows;
    for (const Level& level : limb.levels) {
        const SkinMove skin = skinMove(limb.name, level.name, azimuth.value(), bodies);
        LevelRow row;
        row.along = along(limb.name, level.name, level.along.value(), bodies);
        row.edges =
            spread({level.skinBack.value() * skin.ratio - skin.added, level.boneBack.value() * boneRatio,
                    level.boneFront.value() * boneRatio, level.skinFront.value() * skin.ratio + skin.added});
        if (!rows.empty())
            row.along = std::max(row.along, rows.back().along + kLeastGap);
        rows.push_back(row);
    }
    return rows;
}

}  // namespace fb
