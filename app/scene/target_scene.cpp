#include "app/scene/target_scene.h"

#include <QPolygonF>
#include <array>

#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace target_scene_detail {

// What a hand feels, from the neck down. Levels that are not felt at a point are left out.
inline constexpr std::array kAnatomicalOrder{"clavicle_medial", "scapula_spine",      "acromion_front",
                                             "acromion",        "acromion_back",      "axilla_front",
                                             "axilla_back",     "deltoid_tuberosity", "lateral_epicondyle"};

inline constexpr double kLeastArrow = 0.05;  // cm: shorter is on the spot

QPointF at(Point p) { return {p.x, p.y}; }

QVector<QPointF> at(const std::vector<Point>& points)
{
    QVector<QPointF> made;
    made.reserve(static_cast<qsizetype>(points.size()));
    for (const Point p : points)
        made.push_back(at(p));
    return made;
}

Figure figureOf(FigureKind kind)
{
    switch (kind) {
    case FigureKind::Point: return Figure::Point;
    case FigureKind::Line: return Figure::Line;
    case FigureKind::Closed: return Figure::Closed;
    }
    return Figure::Line;
}

void addHazards(Scene& scene, const Target& target)
{
    for (const Hazard& hazard : target.hazards) {
        const Role role = hazard.kind == HazardKind::Near ? Role::Near : Role::Strike;
        scene.push_back({role, Figure::Closed, at(hazard.plane.corners()), hazardName(hazard.code), {}});
    }
}

// The lines of a step that lays several side by side come in pairs of points.
void addStep(Scene& scene, const Step& step)
{
    const QVector<QPointF> points = at(step.points);
    if (step.code == StepCode::LayFingers && points.size() > 2) {
        for (qsizetype i = 0; i + 1 < points.size(); i += 2)
            scene.push_back(
                {Role::Construction, Figure::Line, {points[i], points[i + 1]}, {}, stepName(step.code)});
        return;
    }
    scene.push_back({Role::Construction, figureOf(step.kind), points, {}, stepName(step.code)});
}

}  // namespace target_scene_detail

Scene helpScene(const Target& target, HelpLevel help)
{
    Scene scene;
    if (help == HelpLevel::Nothing)
        return scene;
    for (const char* key : target_scene_detail::kAnatomicalOrder) {
        const auto found = target.landmarks.find(key);
        if (found == target.landmarks.end())
            continue;
        SceneShape shape{Role::Landmark, Figure::Point, {}, landmarkName(key), {}};
        if (help == HelpLevel::DrawnAndNamed)
            shape.points.push_back(target_scene_detail::at(found->second));
        scene.push_back(shape);
    }
    return scene;
}

Scene targetScene(const Target& target)
{
    using target_scene_detail::at;
    Scene scene;
    scene.push_back(
        {Role::Region, Figure::Closed, at(target.region.corners()), {}, stepName(StepCode::Region)});
    for (const Step& step : target.construction)
        if (step.code != StepCode::Region && step.code != StepCode::IdealPoint && !step.points.empty())
            target_scene_detail::addStep(scene, step);
    scene.push_back({Role::Ideal, Figure::Point, {at(target.ideal)}, {}, stepName(StepCode::IdealPoint)});
    return scene;
}

Scene gradedScene(const Target& target, Point mark, const Grade& grade)
{
    using target_scene_detail::at;
    Scene scene;
    target_scene_detail::addHazards(scene, target);
    scene += targetScene(target);
    if (grade.distanceToIdeal.value() >= target_scene_detail::kLeastArrow)
        scene.push_back({Role::Arrow,
                         Figure::Line,
                         {at(mark), at(target.ideal)},
                         cmText(grade.distanceToIdeal.value()),
                         {}});
    return scene;
}

QRectF closeUpOf(const Target& target, Point mark)
{
    constexpr double kRoom = 8.0;  // cm
    QPolygonF seen{target_scene_detail::at(mark)};
    for (const Step& step : target.construction)
        for (const Point p : step.points)
            seen.push_back(target_scene_detail::at(p));
    return seen.boundingRect().adjusted(-kRoom, -kRoom, kRoom, kRoom);
}

Scene runScene(const Target& model, const Summary& summary)
{
    using target_scene_detail::at;
    Scene scene;
    scene.push_back(
        {Role::Region, Figure::Closed, at(model.region.corners()), {}, stepName(StepCode::Region)});
    for (const Step& step : model.construction)
        if (step.code == StepCode::ArmpitLevel || step.code == StepCode::FeelAcromion)
            target_scene_detail::addStep(scene, step);
    scene.push_back({Role::Ideal, Figure::Point, {at(model.ideal)}, {}, stepName(StepCode::IdealPoint)});
    static constexpr std::array kRoles{Role::MarkOnTarget, Role::MarkAcceptable, Role::MarkOffTarget,
                                       Role::MarkUnsafe};
    for (std::size_t i = 0; i < summary.marks.size(); ++i) {
        const Point off = summary.marks[i];
        const Point skin = model.idealSkin + Point{off.x, -off.y} * model.scale;
        const Verdict verdict = summary.verdicts[i];
        scene.push_back({kRoles[static_cast<std::size_t>(verdict)],
                         Figure::Point,
                         {at(model.toViewer(skin))},
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
