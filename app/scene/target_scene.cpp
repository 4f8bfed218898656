#include "app/scene/target_scene.h"

#include <QPolygonF>
#include <algorithm>
#include <array>
#include <optional>
#include <span>

#include "app/scene/scene_points.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace target_scene_detail {

// What a hand feels in each view, from the head down. Levels that are not felt at a point are left
// out, and so is what a sheet covers.
std::span<const std::string_view> feltIn(View view)
{
    static constexpr std::array<std::string_view, 9> kShoulder{
        "clavicle_medial", "scapula_spine", "acromion_front",     "acromion",          "acromion_back",
        "axilla_front",    "axilla_back",   "deltoid_tuberosity", "lateral_epicondyle"};
    static constexpr std::array<std::string_view, 5> kHip{"iliac_crest", "iliac_tubercle", "asis", "psis",
                                                          "greater_trochanter"};
    static constexpr std::array<std::string_view, 4> kHipBehind{"iliac_crest", "psis", "greater_trochanter",
                                                                "coccyx"};
    static constexpr std::array<std::string_view, 4> kThigh{"asis", "greater_trochanter", "patella",
                                                            "lateral_femoral_epicondyle"};
    switch (view) {
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter: return kShoulder;
    case View::HipSide: return kHip;
    case View::HipBehind: return kHipBehind;
    case View::ThighFront:
    case View::ThighSide: return kThigh;
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: break;
    }
    return {};
}

// The landmark a step feels for, whose name stands by its point.
std::string_view feltBy(StepCode code)
{
    switch (code) {
    case StepCode::FeelTrochanter: return "greater_trochanter";
    case StepCode::FeelSpine: return "asis";
    case StepCode::FeelTubercle: return "iliac_tubercle";
    case StepCode::FeelBackSpine: return "psis";
    case StepCode::FeelCondyle: return "lateral_femoral_epicondyle";
    default: return {};
    }
}

inline constexpr double kLeastArrow = 0.05;  // cm: shorter is on the spot

void addHazard(Scene& scene, const Hazard& hazard)
{
    const Role role = hazard.kind == HazardKind::Near ? Role::Near : Role::Strike;
    scene.push_back({role, Figure::Closed, toScene(hazard.plane.corners()), hazardName(hazard.code), {}});
}

// Bones of hip and thigh stand in the drawing and among the landmarks: as areas they are shown where
// one was struck.
void addHazards(Scene& scene, const Target& target, std::optional<HazardCode> struck)
{
    for (const Hazard& hazard : target.hazards)
        if (target.site == Site::Deltoid || hazard.kind != HazardKind::Bone || struck == hazard.code)
            addHazard(scene, hazard);
}

// What a companion is opened for: the ends of a thigh are told in the view that is asked.
void addTerritories(Scene& scene, const Target& target)
{
    for (const Hazard& hazard : target.hazards)
        if (hazard.kind != HazardKind::Bone && hazard.code != HazardCode::HipEnd &&
            hazard.code != HazardCode::KneeEnd)
            addHazard(scene, hazard);
}

// The lines of a step that lays several side by side come in pairs of points.
void addStep(Scene& scene, const Step& step)
{
    const QVector<QPointF> points = toScene(step.points);
    if (step.code == StepCode::LayFingers && points.size() > 2) {
        for (qsizetype i = 0; i + 1 < points.size(); i += 2)
            scene.push_back(
                {Role::Construction, Figure::Line, {points[i], points[i + 1]}, {}, stepName(step.code)});
        return;
    }
    const std::string_view felt = feltBy(step.code);
    if (felt.empty())
        scene.push_back({Role::Construction, figureOf(step.kind), points, {}, stepName(step.code)});
    else
        scene.push_back({Role::Landmark, Figure::Point, points, landmarkName(felt), stepName(step.code)});
}

void addRegion(Scene& scene, const Target& target)
{
    scene.push_back(
        {Role::Region, Figure::Closed, toScene(target.region.corners()), {}, stepName(StepCode::Region)});
}

void addIdeal(Scene& scene, const Target& target)
{
    scene.push_back(
        {Role::Ideal, Figure::Point, {toScene(target.ideal)}, {}, stepName(StepCode::IdealPoint)});
}

// The few steps that a run's marks are read against.
bool framesARun(StepCode code)
{
    static constexpr std::array kCodes{
        StepCode::ArmpitLevel, StepCode::FeelAcromion, StepCode::FeelTrochanter, StepCode::FeelCondyle,
        StepCode::ThighLine,   StepCode::FeelSpine,    StepCode::FeelCrest};
    return std::ranges::find(kCodes, code) != kCodes.end();
}

}  // namespace target_scene_detail

Scene helpScene(const Target& target, HelpLevel help)
{
    Scene scene;
    if (help == HelpLevel::Nothing)
        return scene;
    for (const std::string_view key : target_scene_detail::feltIn(target.view)) {
        const auto found = target.landmarks.find(std::string(key));
        if (found == target.landmarks.end())
            continue;
        SceneShape shape{Role::Landmark, Figure::Point, {}, landmarkName(key), {}};
        if (help == HelpLevel::DrawnAndNamed)
            shape.points.push_back(toScene(found->second));
        scene.push_back(shape);
    }
    return scene;
}

Scene targetScene(const Target& target)
{
    using namespace target_scene_detail;
    Scene scene;
    addRegion(scene, target);
    for (const Step& step : target.construction)
        if (step.code != StepCode::Region && step.code != StepCode::IdealPoint && !step.points.empty())
            addStep(scene, step);
    addIdeal(scene, target);
    return scene;
}

Scene companionScene(const Target& target)
{
    using namespace target_scene_detail;
    if (target.site == Site::Deltoid)
        return targetScene(target);
    Scene scene;
    addTerritories(scene, target);
    addRegion(scene, target);
    for (const Step& step : target.construction)
        if (!feltBy(step.code).empty() || step.code == StepCode::BackLine)
            addStep(scene, step);
    addIdeal(scene, target);
    return scene;
}

Scene gradedScene(const Target& target, Point mark, const Grade& grade)
{
    using namespace target_scene_detail;
    Scene scene;
    addHazards(scene, target, grade.hazard);
    scene += targetScene(target);
    if (grade.distanceToIdeal.value() >= kLeastArrow)
        scene.push_back({Role::Arrow,
                         Figure::Line,
                         {toScene(mark), toScene(target.ideal)},
                         cmText(grade.distanceToIdeal.value()),
                         {}});
    return scene;
}

QRectF closeUpOf(const Target& target, Point mark)
{
    constexpr double kRoom = 8.0;  // cm
    QPolygonF seen{toScene(mark)};
    for (const Step& step : target.construction)
        for (const Point p : step.points)
            seen.push_back(toScene(p));
    return seen.boundingRect().adjusted(-kRoom, -kRoom, kRoom, kRoom);
}

Scene runScene(const Target& model, const Summary& summary)
{
    using namespace target_scene_detail;
    Scene scene;
    addRegion(scene, model);
    for (const Step& step : model.construction)
        if (framesARun(step.code))
            addStep(scene, step);
    addIdeal(scene, model);
    static constexpr std::array kRoles{Role::MarkOnTarget, Role::MarkAcceptable, Role::MarkOffTarget,
                                       Role::MarkUnsafe};
    for (std::size_t i = 0; i < summary.marks.size(); ++i) {
        const Point off = summary.marks[i];
        const Point skin = model.idealSkin + Point{off.x, -off.y} * model.scale;
        const Verdict verdict = summary.verdicts[i];
        scene.push_back({kRoles[static_cast<std::size_t>(verdict)],
                         Figure::Point,
                         {toScene(model.toViewer(skin))},
                         {},
                         verdictName(verdict)});
    }
    return scene;
}

Scene otherScene(Convention convention, QPointF ideal)
{
    return {{Role::Other, Figure::Point, {ideal}, conventionName(convention), {}}};
}

}  // namespace fb
