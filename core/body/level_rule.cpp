#include "core/body/level_rule.h"

#include <algorithm>
#include <array>
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

bool isThigh(std::string_view limb) { return limb.starts_with("thigh"); }

// Breadth of a limb's bones: the pelvis and the thigh grow with the stature.
double boneOf(std::string_view limb, const Pair& bodies)
{
    if (limb == "pelvis" || limb == "leg" || isThigh(limb))
        return bodies.ratio(&BodyMeasures::boneStature);
    return bone(bodies);
}

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

// Waist above, hip below, and half-way at the crest and its spines.
SkinMove pelvisSkin(std::string_view level, double azimuth, const Pair& bodies)
{
    const double waist = bodies.seen(&BodyMeasures::waistBreadth, &BodyMeasures::waistDepth, azimuth);
    const double hip = bodies.seen(&BodyMeasures::hipBreadth, &BodyMeasures::buttockDepth, azimuth);
    if (level == "waist")
        return {waist};
    if (level == "crest" || level == "asis" || level == "psis")
        return {(waist + hip) / 2.0};
    return {hip};
}

SkinMove thighSkin(std::string_view level, const Pair& bodies)
{
    const double upper = bodies.ratio(&BodyMeasures::thighDepth);
    const double lower = bodies.ratio(&BodyMeasures::lowerThighDepth);
    if (level.starts_with("mid-thigh"))
        return {(upper + lower) / 2.0};
    if (level == "lower-thigh" || level == "epicondyle")
        return {lower};
    return {upper};
}

SkinMove legSkin(std::string_view level, const Pair& bodies)
{
    return {bodies.ratio(level == "knee" ? &BodyMeasures::lowerThighDepth : &BodyMeasures::calfDepth)};
}

SkinMove skinMove(std::string_view limb, std::string_view level, double azimuth, const Pair& bodies)
{
    if (limb == "arm")
        return armSkin(level, bodies);
    if (limb == "forearm")
        return forearmSkin(level, bodies);
    if (limb == "pelvis")
        return pelvisSkin(level, azimuth, bodies);
    if (isThigh(limb))
        return thighSkin(level, bodies);
    if (limb == "leg")
        return legSkin(level, bodies);
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

// Heights above and below the hip joint's centre; the joint itself stays.
double pelvisAlong(std::string_view level, double drawn, const Pair& bodies)
{
    const auto aboveJoint = [&](Cm BodyMeasures::*aboveTrochanter) {
        const auto height = [&](const BodyMeasures& body) {
            return (body.*aboveTrochanter - body.hipCentreAboveTrochanter).value();
        };
        return height(bodies.patient) / height(bodies.reference);
    };
    if (level == "asis" || level == "psis")
        return drawn * aboveJoint(&BodyMeasures::spineAboveTrochanter);
    if (level == "crest" || level == "waist")
        return drawn * aboveJoint(&BodyMeasures::crestAboveTrochanter);
    return drawn * bodies.ratio(&BodyMeasures::boneStature);
}

// From the trochanter down the thigh has its own length.
double thighAlong(double drawn, const Pair& bodies)
{
    const double trochanter = bodies.reference.hipCentreAboveTrochanter.value();
    return bodies.patient.hipCentreAboveTrochanter.value() +
           (drawn - trochanter) * bodies.ratio(&BodyMeasures::thighLength);
}

double along(std::string_view limb, std::string_view level, double drawn, const Pair& bodies)
{
    if (limb == "pelvis")
        return pelvisAlong(level, drawn, bodies);
    if (isThigh(limb))
        return thighAlong(drawn, bodies);
    if (limb == "leg")
        return drawn * bodies.ratio(&BodyMeasures::thighLength);
    if (limb == "arm")
        return armAlong(level, drawn, bodies);
    if (limb == "forearm")
        return drawn * bodies.ratio(&BodyMeasures::forearmLength);
    return trunkAlong(level, drawn, bodies);
}

// However lean a body is, its skin keeps this share of the flesh that is drawn over the bone.
constexpr double kLeastFlesh = 0.25;

EdgeRow fleshed(EdgeRow edges, double drawnBack, double drawnFront)
{
    edges[0] = std::min(edges[0], edges[1] - kLeastFlesh * drawnBack);
    edges[3] = std::max(edges[3], edges[2] + kLeastFlesh * drawnFront);
    return edges;
}

// What carries flesh; every other measure is bone, or a height.
constexpr std::array kUpperFlesh{&BodyMeasures::midArmDepth, &BodyMeasures::forearmDepth,
                                 &BodyMeasures::neckDepth,   &BodyMeasures::shoulderBreadth,
                                 &BodyMeasures::chestDepth,  &BodyMeasures::chestBreadth,
                                 &BodyMeasures::waistDepth,  &BodyMeasures::waistBreadth};
constexpr std::array kLowerFlesh{&BodyMeasures::hipBreadth, &BodyMeasures::buttockDepth,
                                 &BodyMeasures::thighDepth, &BodyMeasures::lowerThighDepth,
                                 &BodyMeasures::calfDepth};

// Of a gain in breadth, muscle takes this share: a number of the drawing, not a clinical one.
constexpr double kMuscleShare = 0.35;

}  // namespace level_detail

BodyMeasures skeletonOf(const BodyMeasures& reference, const BodyMeasures& patient)
{
    const double boneRatio = patient.boneSize / reference.boneSize;
    BodyMeasures skeleton = patient;
    skeleton.axillaDepth = reference.axillaDepth * (patient.armLength / reference.armLength);
    for (Cm BodyMeasures::*flesh : level_detail::kUpperFlesh)
        skeleton.*flesh = reference.*flesh * boneRatio;
    skeleton.armFat = reference.armFat;
    const double tall = patient.boneStature / reference.boneStature;
    for (Cm BodyMeasures::*flesh : level_detail::kLowerFlesh)
        skeleton.*flesh = reference.*flesh * tall;
    return skeleton;
}

BodyMeasures muscleOf(const BodyMeasures& reference, const BodyMeasures& patient)
{
    const BodyMeasures skeleton = skeletonOf(reference, patient);
    BodyMeasures muscle = patient;
    const auto gain = [&](Cm BodyMeasures::*flesh) {
        const Cm over = patient.*flesh - skeleton.*flesh;
        if (over > Cm{})
            muscle.*flesh = skeleton.*flesh + over * level_detail::kMuscleShare;
    };
    std::ranges::for_each(level_detail::kUpperFlesh, gain);
    std::ranges::for_each(level_detail::kLowerFlesh, gain);
    muscle.armFat = std::min(patient.armFat, reference.armFat);
    return muscle;
}

std::vector<LevelRow> patientLevels(const Limb& limb, Degrees azimuth, const BodyMeasures& reference,
                                    const BodyMeasures& patient)
{
    using namespace level_detail;
    const Pair bodies{reference, patient};
    const double boneRatio = boneOf(limb.name, bodies);
    std::vector<LevelRow> rows;
    for (const Level& level : limb.levels) {
        const SkinMove skin = skinMove(limb.name, level.name, azimuth.value(), bodies);
        LevelRow row;
        row.along = along(limb.name, level.name, level.along.value(), bodies);
        row.edges = spread(
            fleshed({level.skinBack.value() * skin.ratio - skin.added, level.boneBack.value() * boneRatio,
                     level.boneFront.value() * boneRatio, level.skinFront.value() * skin.ratio + skin.added},
                    (level.boneBack - level.skinBack).value() * boneRatio,
                    (level.skinFront - level.boneFront).value() * boneRatio));
        if (!rows.empty())
            row.along = std::max(row.along, rows.back().along + kLeastGap);
        rows.push_back(row);
    }
    return rows;
}

}  // namespace fb
