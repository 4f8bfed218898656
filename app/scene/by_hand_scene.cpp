#include "app/scene/by_hand_scene.h"

#include <QCoreApplication>
#include <QPolygonF>
#include <QSet>
#include <algorithm>

#include "app/scene/scene_points.h"
#include "app/scene/target_scene.h"
#include "app/words/build_words.h"
#include "app/words/landmark_words.h"
#include "app/words/site_words.h"
#include "app/words/slip_words.h"

namespace fb {

namespace by_hand_scene_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::ByHandScene)
};

constexpr double kLeastMove = 0.5;  // cm: a needle moved less is not worth a sign

// The learner's own figures are called by what was set, not by what should have been found.
QString figureName(StepCode code, bool first)
{
    switch (code) {
    case StepCode::LayFingers: return handleName(Handle::Fingers);
    case StepCode::AcromionBase: return buildStepName(BuildStep::Base);
    case StepCode::Apex: return handleName(Handle::Apex);
    case StepCode::MidLateralLine: return buildStepName(BuildStep::LineEnds);
    case StepCode::MeasureDown: return handleName(Handle::LineMiddle);
    case StepCode::ThighLine:
        return first ? buildStepName(BuildStep::ThighEnds) : handleName(Handle::OuterLine);
    case StepCode::FrontLine: return handleName(Handle::FrontLine);
    case StepCode::UpperThird: return handleName(Handle::UpperLine);
    case StepCode::LowerThird: return handleName(Handle::LowerLine);
    case StepCode::LayPalm: return handleName(Handle::Palm);
    case StepCode::IndexOnSpine: return handleName(Handle::IndexTip);
    case StepCode::MiddleAlongCrest: return handleName(Handle::MiddleTip);
    default: return stepName(code);
    }
}

// The steps of building that a figure shows.
std::vector<BuildStep> shownBy(StepCode code, bool first)
{
    using enum BuildStep;
    switch (code) {
    case StepCode::LayFingers: return {FingersLaid, FingersLevel, FingerCount};
    case StepCode::Triangle: return {Base, Apex};
    case StepCode::MidLateralLine: return {LineEnds};
    case StepCode::MeasureDown: return {LineHalved};
    case StepCode::ThighLine: return {first ? ThighEnds : OuterLine};
    case StepCode::FrontLine: return {FrontLine};
    case StepCode::UpperThird:
    case StepCode::LowerThird: return {Thirds};
    case StepCode::LayPalm:
    case StepCode::IndexOnSpine:
    case StepCode::MiddleAlongCrest: return {WhichHand, Palm, IndexFinger, MiddleFinger};
    case StepCode::HipTriangle: return {Corners};
    case StepCode::Median: return {Medians};
    default: return {};
    }
}

bool slips(const ByHandGrade& grade, BuildStep step)
{
    return std::ranges::any_of(grade.steps, [step](const BuildStepGrade& graded) {
        return graded.step == step && graded.slip != Slip::None;
    });
}

SceneShape fieldShape(const Target& target, const Build& build)
{
    return {Role::Field,
            Figure::Closed,
            toScene(cellOutline(build, target, *build.cell)),
            {},
            cellName(*build.cell)};
}

bool hasField(const Build& build) { return build.cell && missingHandles(build).empty(); }

void addOwnFigures(Scene& scene, const Target& target, const Attempt& attempt, const Builder& builder)
{
    bool first = true;
    QString label = Words::tr("Yours");
    if (hasField(*attempt.build) && slips(*attempt.byHand, BuildStep::Cell))
        scene.push_back(fieldShape(target, *attempt.build));
    for (const Step& step : figuresOf(*attempt.build, target, builder)) {
        const bool isFirst = first;
        first = first && step.code != StepCode::ThighLine;
        // Medians follow their corners: one figure that is off tells enough.
        if (step.code == StepCode::Median && slips(*attempt.byHand, BuildStep::Corners))
            continue;
        const auto shown = shownBy(step.code, isFirst);
        if (std::ranges::none_of(shown, [&](BuildStep part) { return slips(*attempt.byHand, part); }))
            continue;
        //: What the learner has set; %1 is a part of the construction, as in a list.
        const QString spokenName = Words::tr("Yours: %1").arg(figureName(step.code, isFirst));
        scene.push_back({Role::Yours, figureOf(step.kind), toScene(step.points), label, spokenName});
        label.clear();  // one word is enough for all of them
    }
}

void addFlagArrows(Scene& scene, const Target& target, const ByHandGrade& grade)
{
    for (const FlagGrade& flag : grade.flags) {
        const auto place = placeOf(target, flag.asked);
        if (!flag.flag || !place || (flag.verdict != FlagVerdict::Near && flag.verdict != FlagVerdict::Off))
            continue;
        scene.push_back({Role::Arrow,
                         Figure::Line,
                         {toScene(flag.flag->at), toScene(place->nearest(flag.flag->at))},
                         cmText(flag.distance.value()),
                         landmarkName(flag.asked)});
    }
}

const BuildStepGrade* firstSlip(const ByHandGrade& grade)
{
    const auto found = std::ranges::find_if(
        grade.steps, [](const BuildStepGrade& step) { return step.slip != Slip::None && step.effect; });
    return found == grade.steps.end() ? nullptr : &*found;
}

void addEffect(Scene& scene, const Target& target, const BuildStepGrade& slip)
{
    if (slip.effect->moved.value() < kLeastMove)
        return;
    //: Where a needle would have gone by the learner's own construction.
    const QString label = Words::tr("By your hand");
    scene.push_back(
        {Role::Other, Figure::Point, {toScene(slip.effect->site)}, label, effectSentence(slip, target)});
}

// Of what a needle can hit only what it would have hit.
void keepStruck(Scene& scene, const QSet<QString>& struck)
{
    scene.removeIf([&struck](const SceneShape& shape) {
        return (shape.role == Role::Strike || shape.role == Role::Near) && !struck.contains(shape.label);
    });
}

std::vector<Step> shownSteps(const Target& target)
{
    std::vector<Step> steps;
    for (const Step& step : target.construction)
        if (!step.points.empty())
            steps.push_back(step);
    return steps;
}

void reach(QPolygonF& seen, const Steps& steps)
{
    for (const Step& step : steps)
        seen += toScene(step.points);
}

}  // namespace by_hand_scene_detail

Scene buildScene(const Target& target, const Build& build, const Builder& builder)
{
    using namespace by_hand_scene_detail;
    Scene scene;
    if (hasField(build))
        scene.push_back(fieldShape(target, build));
    bool first = true;
    for (const Step& step : figuresOf(build, target, builder)) {
        scene.push_back({Role::Construction,
                         figureOf(step.kind),
                         toScene(step.points),
                         {},
                         figureName(step.code, first)});
        first = first && step.code != StepCode::ThighLine;
    }
    return scene;
}

Scene gradedByHandScene(const Target& target, const Attempt& attempt, const Builder& builder)
{
    using namespace by_hand_scene_detail;
    Scene scene = gradedScene(target, attempt.mark, attempt.grade);
    if (!attempt.byHand || !attempt.build)
        return scene;
    const BuildStepGrade* slip = firstSlip(*attempt.byHand);
    QSet<QString> struck;
    if (attempt.grade.hazard)
        struck << hazardName(*attempt.grade.hazard);
    if (slip && slip->effect->grade.hazard)
        struck << hazardName(*slip->effect->grade.hazard);
    keepStruck(scene, struck);
    addOwnFigures(scene, target, attempt, builder);
    addFlagArrows(scene, target, *attempt.byHand);
    if (slip)
        addEffect(scene, target, *slip);
    return scene;
}

QRectF gradedByHandArea(const Target& target, const Attempt& attempt, const Builder& builder)
{
    using namespace by_hand_scene_detail;
    constexpr double kRoom = 6.0;  // cm
    QPolygonF seen;
    if (attempt.build)
        reach(seen, figuresOf(*attempt.build, target, builder));
    for (const Flag& flag : attempt.flags)
        seen.push_back(toScene(flag.at));
    const QRectF usual = closeUpOf(target, attempt.mark);
    return seen.isEmpty() ? usual : usual.united(seen.boundingRect().adjusted(-kRoom, -kRoom, kRoom, kRoom));
}

int watchStepCount(const Target& target)
{
    return static_cast<int>(by_hand_scene_detail::shownSteps(target).size());
}

Scene watchScene(const Target& target, int step)
{
    using namespace by_hand_scene_detail;
    Target soFar = target;
    soFar.construction = shownSteps(target);
    soFar.construction.resize(static_cast<std::size_t>(std::clamp(step + 1, 1, watchStepCount(target))));
    const StepCode newest = soFar.construction.back().code;
    Scene scene = targetScene(soFar);
    scene.removeIf([newest](const SceneShape& shape) {
        return (shape.role == Role::Ideal && newest != StepCode::IdealPoint) ||
               (shape.role == Role::Region && newest != StepCode::IdealPoint && newest != StepCode::Region);
    });
    SceneShape& shown = newest == StepCode::Region ? scene.front() : scene.back();
    if (shown.label.isEmpty())
        shown.label = stepName(newest);
    if (shown.role == Role::Construction || shown.role == Role::Landmark)
        shown.role = Role::Newest;
    return scene;
}

QString watchCaption(const Target& target, int step)
{
    const auto steps = by_hand_scene_detail::shownSteps(target);
    return watchCaption(target, steps[static_cast<std::size_t>(step)]);
}

std::optional<QPointF> watchPress(const Target& target, int step)
{
    const auto steps = by_hand_scene_detail::shownSteps(target);
    const Step& shown = steps[static_cast<std::size_t>(step)];
    switch (shown.code) {
    case StepCode::FeelAcromion:
    case StepCode::FeelTuberosity:
    case StepCode::FeelTrochanter:
    case StepCode::FeelCondyle:
    case StepCode::FeelSpine:
    case StepCode::FeelCrest:
    case StepCode::FeelTubercle:
    case StepCode::FeelBackSpine: return toScene(shown.points[shown.points.size() / 2]);
    default: return std::nullopt;
    }
}

bool watchLaysHand(const Target& target, int step)
{
    const auto steps = by_hand_scene_detail::shownSteps(target);
    const auto laid = std::ranges::find(steps, StepCode::LayPalm, &Step::code);
    return laid != steps.end() && laid - steps.begin() <= step;
}

QRectF watchArea(const Target& target) { return closeUpOf(target, target.ideal); }

}  // namespace fb
