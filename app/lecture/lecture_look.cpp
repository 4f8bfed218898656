#include "app/lecture/lecture_look.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/lecture/lecture_bones.h"
#include "app/lecture/lecture_look_area.h"
#include "app/lecture/lecture_look_hand.h"
#include "app/scene/by_hand_scene.h"
#include "app/scene/target_scene.h"
#include "app/words/build_words.h"
#include "app/words/feel_words.h"
#include "app/words/lecture_words.h"
#include "app/words/site_words.h"
#include "core/build/laying.h"

namespace fb {

namespace lecture_look_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::LectureLook)
};

QPointF at(Point p) { return {p.x, p.y}; }

QVector<QPointF> at(const std::vector<Point>& points)
{
    QVector<QPointF> made;
    for (const Point p : points)
        made.push_back(at(p));
    return made;
}

// The steps of a construction that can be shown, as watchScene() counts them.
std::vector<Step> shownSteps(const Target& target)
{
    std::vector<Step> steps;
    std::ranges::copy_if(target.construction, std::back_inserter(steps),
                         [](const Step& step) { return !step.points.empty(); });
    return steps;
}

// What is laid arrives first; then its line is drawn.
constexpr double kArrived = 0.7;  // of a step's progress

bool laysHand(StepCode code)
{
    return code == StepCode::LayPalm || code == StepCode::IndexOnSpine || code == StepCode::MiddleAlongCrest;
}

// One name at a time: what was named before stays as a sign alone.
Scene unnamed(Scene scene)
{
    for (SceneShape& shape : scene)
        shape.label.clear();
    return scene;
}

// What is there before a step adds to it.
Scene sceneBefore(const Target& target, int step)
{
    Scene scene = unnamed(watchScene(target, step));
    scene.removeLast();
    return scene;
}

class Looker {
public:
    Looker(const LectureBody& body, const Policy& policy)
        : m_body(body),
          m_target(*body.target),
          m_builder(Builder::from(policy))
    {
        m_look.fingerCm = m_builder.hand.fingerWidth.value();
        m_look.area = lectureArea(m_target);
        m_look.heading = lectureHeading(m_target.site, m_target.side);
        m_look.manner = conventionName(m_target.convention);
    }

    [[nodiscard]] LectureLook look(const LectureStep& step, double progress)
    {
        m_look.bones = bonesFound(m_body, step);
        switch (step.kind) {
        case LectureStepKind::Skin: m_look.caption = skinCaption(m_target); break;
        case LectureStepKind::Press: press(step); break;
        case LectureStepKind::Build: build(step, progress); break;
        case LectureStepKind::Hazards: hazards(); break;
        case LectureStepKind::WrongPlace: wrongPlace(step.hazard); break;
        }
        return std::move(m_look);
    }

private:
    void press(const LectureStep& step)
    {
        m_look.scene = sceneBefore(m_target, step.construction);
        m_look.caption = pressCaption(step.code);
        if (const auto place = watchPress(m_target, step.construction))
            m_look.press = pressAt(*place);
    }

    // A view that cannot be felt still shows where the finger is.
    [[nodiscard]] PressLook pressAt(QPointF place) const
    {
        PressLook press;
        press.cm = place;
        press.fingerCm = m_look.fingerCm;
        press.firmness = Firmness::Hard;
        const Point skin{place.x(), place.y()};
        if (!m_body.feel)
            return press;
        const auto feel = m_body.feel->at(skin, m_builder.hand.fingerWidth);
        if (!feel)
            return press;
        press.firmness = feel->firmness;
        press.shape = feel->shape;
        press.clearness = feel->clearness;
        if (feel->toward)
            press.toward = at(*feel->toward);
        if (feel->along)
            press.along = at(*feel->along);
        press.words = feelPlaque(*feel, m_target, skin);
        press.spokenWords = feelSentence(*feel, m_target, skin);
        return press;
    }

    void build(const LectureStep& step, double progress)
    {
        const auto steps = shownSteps(m_target);
        const Step& newest = steps[static_cast<std::size_t>(step.construction)];
        m_look.scene = unnamed(watchScene(m_target, step.construction));
        m_look.caption = watchCaption(m_target, step.construction);
        lay(newest.code, step.construction, progress / kArrived);
        const bool isLaid = laysHand(newest.code) || laysFirstFinger(step.construction);
        double drawn = isLaid ? (progress - kArrived) / (1.0 - kArrived) : progress;
        if (newest.kind == FigureKind::Point)
            drawn = 1.0;
        const bool isRegion = newest.code == StepCode::Region;
        if (drawn >= 1.0)
            (isRegion ? m_look.scene.front() : m_look.scene.back()).label =
                wordFor(newest, step.construction);
        else if (isRegion)
            grow(m_look.scene.front(), newest, drawn);
        else if (drawn <= 0.0)
            m_look.scene = sceneBefore(m_target, step.construction);
        else
            grow(m_look.scene.back(), newest, drawn);
        if (m_look.hand)
            palmLine(newest.code == StepCode::LayPalm ? drawn : 1.0);
    }

    // Its name comes when it is whole, or it would run along with the line.
    static void grow(SceneShape& shape, const Step& step, double share)
    {
        const Step part = grown(step, share);
        if (part.points.size() < 2)
            return;
        shape.role = Role::Newest;
        shape.figure = Figure::Line;
        shape.points = at(part.points);
    }

    // The line through the palm turns with the hand.
    void palmLine(double share)
    {
        const QString palm = stepName(StepCode::LayPalm);
        const Step line{StepCode::LayPalm, FigureKind::Line, {m_look.hand->wrist, m_look.hand->fork}};
        for (SceneShape& shape : m_look.scene)
            if (shape.description == palm)
                shape.points = at(grown(line, share).points);
    }

    // A hand stays until the site is marked; fingers are taken away as soon as they have shown how far.
    void lay(StepCode newest, int construction, double progress)
    {
        if (newest == StepCode::LayFingers)
            m_look.fingers =
                fingersOnTheirWay(m_target, m_builder, laysFirstFinger(construction) ? progress : 1.0);
        if (watchLaysHand(m_target, construction))
            m_look.hand = handDuring(m_target, m_builder, newest, progress);
    }

    // Counted from the top, so many fingers below the acromion are shown by this step.
    [[nodiscard]] int fingersBy(int construction) const
    {
        const auto steps = shownSteps(m_target);
        return static_cast<int>(
            std::count_if(steps.begin(), steps.begin() + construction + 1,
                          [](const Step& step) { return step.code == StepCode::LayFingers; }));
    }
    // All of them are laid at once; the steps after the first only count on.
    [[nodiscard]] bool laysFirstFinger(int construction) const
    {
        const auto steps = shownSteps(m_target);
        return steps[static_cast<std::size_t>(construction)].code == StepCode::LayFingers &&
               fingersBy(construction) == 1;
    }
    [[nodiscard]] QString wordFor(const Step& step, int construction) const
    {
        return step.code == StepCode::LayFingers ? fingerbreadths(fingersBy(construction))
                                                 : plateWord(step.code);
    }

    void addSite(Scene& scene) const
    {
        scene.push_back(
            {Role::Region, Figure::Closed, at(m_target.region.corners()), {}, stepName(StepCode::Region)});
        scene.push_back(
            {Role::Ideal, Figure::Point, {at(m_target.ideal)}, {}, stepName(StepCode::IdealPoint)});
    }

    void hazards()
    {
        m_look.caption = hazardsCaption(m_target.site);
        for (const Hazard& hazard : m_target.hazards) {
            // Bones of hip and thigh stand in the drawing and among the landmarks.
            if (hazard.kind == HazardKind::Bone && m_target.site != Site::Deltoid)
                continue;
            const Role role = hazard.kind == HazardKind::Near ? Role::Near : Role::Strike;
            m_look.scene.push_back({role, Figure::Closed, at(hazard.plane.corners()), plateWord(hazard.code),
                                    hazardName(hazard.code)});
        }
        addSite(m_look.scene);
    }

    void wrongPlace(HazardCode code)
    {
        m_look.caption = wrongPlaceCaption(code);
        for (const Hazard& hazard : m_target.hazards)
            if (hazard.code == code)
                m_look.scene.push_back({Role::Strike, Figure::Closed, at(hazard.plane.corners()),
                                        plateWord(code), hazardName(code)});
        addSite(m_look.scene);
    }

    const LectureBody& m_body;
    const Target& m_target;
    Builder m_builder;
    LectureLook m_look;
};

}  // namespace lecture_look_detail

LectureLook lookOf(const LectureBody& body, const Policy& policy, const std::vector<LectureStep>& steps,
                   int step, double progress)
{
    const int last = static_cast<int>(steps.size()) - 1;
    const LectureStep shown =
        last < 0 ? LectureStep{} : steps[static_cast<std::size_t>(std::clamp(step, 0, last))];
    return lecture_look_detail::Looker(body, policy).look(shown, progress);
}

bool isMoving(const LectureBody& body, const LectureStep& step)
{
    if (step.kind != LectureStepKind::Build)
        return false;
    const auto steps = lecture_look_detail::shownSteps(*body.target);
    return steps[static_cast<std::size_t>(step.construction)].kind != FigureKind::Point;
}

QString stepTitle(const LectureBody&, const LectureStep& step)
{
    using lecture_look_detail::Words;
    switch (step.kind) {
    //: Titles of the steps of a demonstration, in a list.
    case LectureStepKind::Skin: return Words::tr("The patient");
    //: A fingertip presses on the bone that is named.
    case LectureStepKind::Press: return Words::tr("Press: %1").arg(plateWord(step.code));
    case LectureStepKind::Build: return plateWord(step.code);
    case LectureStepKind::Hazards: return Words::tr("What lies around");
    //: A place where a needle must not go; %1 is what lies there.
    case LectureStepKind::WrongPlace: return Words::tr("Not here: %1").arg(hazardName(step.hazard));
    }
    return {};
}

}  // namespace fb
