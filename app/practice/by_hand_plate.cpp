#include "app/practice/by_hand_plate.h"

#include <QCoreApplication>
#include <QLineF>
#include <QPolygonF>
#include <algorithm>

#include "app/canvas/plate_view.h"
#include "app/practice/watched.h"
#include "app/words/build_words.h"
#include "app/words/feel_words.h"
#include "app/words/landmark_words.h"

namespace fb {

namespace by_hand_plate_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::ByHandPlate)
};

QPointF cmOf(Point at) { return {at.x, at.y}; }

HandleShape shapeOf(Handle handle)
{
    switch (handle) {
    case Handle::Fingers:
    case Handle::Palm: return HandleShape::Grip;
    case Handle::FingersTurn:
    case Handle::IndexTip:
    case Handle::MiddleTip: return HandleShape::Turn;
    case Handle::UpperLine:
    case Handle::LowerLine:
    case Handle::FrontLine:
    case Handle::OuterLine: return HandleShape::Line;
    default: return HandleShape::Point;
    }
}

PressLook pressLook(const Feel& feel, QPointF at, const ByHandState& byHand, const Target& target,
                    Cm followed)
{
    PressLook press;
    press.cm = at;
    press.fingerCm = byHand.fingerCm;
    press.firmness = feel.firmness;
    press.shape = feel.shape;
    press.clearness = feel.clearness;
    if (feel.toward)
        press.toward = cmOf(*feel.toward);
    if (feel.along)
        press.along = cmOf(*feel.along);
    const Point place{at.x(), at.y()};
    press.words = feelPlaque(feel, target, place, followed);
    press.spokenWords = feelSentence(feel, target, place, followed);
    return press;
}

FlagLook flagLook(Landmark name, QPointF at)
{
    FlagLook flag;
    flag.cm = at;
    flag.name = landmarkName(name);
    return flag;
}

// A flag that stands on the place of its landmark, where the scene labels it, bears no second label of the
// same words; one that stands apart says whose it is.
FlagLook gradedFlag(const Scene& scene, const Flag& flag)
{
    FlagLook look = flagLook(flag.name, cmOf(flag.at));
    constexpr double kClose = 1.0;  // cm
    const auto told = std::ranges::find_if(scene, [&](const SceneShape& shape) {
        return shape.label == look.name && shape.figure == Figure::Point && !shape.points.isEmpty();
    });
    if (told == scene.end())
        return look;
    if (QLineF(told->points.front(), look.cm).length() < kClose) {
        look.description = look.name;
        look.name.clear();
    } else {
        //: Beside a flag that does not stand on its landmark; %1 is the landmark's name.
        look.name = Words::tr("Your flag: %1").arg(look.name);
    }
    return look;
}

PlateTool toolFor(const PracticeState& state)
{
    if (!state.byHand || state.byHand->watching)
        return PlateTool::Mark;
    switch (state.byHand->stage) {
    case ByHandStage::Feeling: return PlateTool::Press;
    case ByHandStage::Building: return PlateTool::Handles;
    case ByHandStage::Marking: break;
    }
    return PlateTool::Mark;
}

QVector<FlagLook> flagsOf(const PracticeState& state)
{
    QVector<FlagLook> flags;
    if (state.graded) {
        for (const Flag& flag : state.graded->flags)
            flags << gradedFlag(state.scene, flag);
    } else if (state.byHand && !state.byHand->watching) {
        for (const PlantedFlag& flag : state.byHand->flags)
            flags << flagLook(flag.name, flag.cm);
    }
    return flags;
}

// What lies on the body from the building on; nothing while it is shown how.
bool isLaid(const PracticeState& state)
{
    return state.byHand && !state.byHand->watching && state.byHand->stage != ByHandStage::Feeling;
}

FingersLook fingersLook(const PracticeState& state, const LaidFingers& fingers)
{
    return {state.fingerArt[fingers.count == 2 ? 0 : 1], fingers,
            state.byHand->builder.hand.fingerWidth.value()};
}

}  // namespace by_hand_plate_detail

using namespace by_hand_plate_detail;

QRectF workArea(const PracticeState& state)
{
    constexpr double kRoom = 6.0;
    constexpr double kLeast = 32.0;  // so wide that what a misplaced flag missed is still to be seen
    constexpr double kReach = 15.0;  // down the limb: where a hand or fingers lie before they are laid
    QPolygonF seen{cmOf(state.target->toViewer({0.0, -kReach}))};
    for (const PlantedFlag& flag : state.byHand->flags)
        seen << flag.cm;
    for (const BuildHandle& each : state.byHand->handles)
        seen << each.cm.value_or(seen.front());
    const QRectF area = seen.boundingRect().adjusted(-kRoom, -kRoom, kRoom, kRoom);
    const double across = std::max(0.0, kLeast - area.width()) / 2.0;
    const double along = std::max(0.0, kLeast - area.height()) / 2.0;
    return area.adjusted(-across, -along, across, along);
}

void showHands(PlateView& plate, const PracticeState& state)
{
    plate.setTool(toolFor(state));
    plate.setFlags(flagsOf(state));
    showPress(plate, state);
    showBuild(plate, state);
}

void showPress(PlateView& plate, const PracticeState& state)
{
    std::optional<PressLook> press;
    if (state.byHand && state.target) {
        const ByHandState& byHand = *state.byHand;
        if (byHand.watching && byHand.shownFeel)
            press = pressLook(*byHand.shownFeel, *byHand.shownPress, byHand, *state.target, Cm{});
        else if (!byHand.watching && byHand.feel && byHand.stage == ByHandStage::Feeling)
            press = pressLook(*byHand.feel, *byHand.finger, byHand, *state.target, byHand.followed);
    }
    plate.setPress(press);
}

void showBuild(PlateView& plate, const PracticeState& state)
{
    QVector<HandleLook> handles;
    std::shared_ptr<const HandLook> hand;
    std::optional<FingersLook> fingers;
    int current = -1;
    if (isLaid(state)) {
        const ByHandState& byHand = *state.byHand;
        if (byHand.stage == ByHandStage::Building) {
            for (const BuildHandle& each : byHand.handles) {
                if (each.cm)
                    handles << HandleLook{static_cast<int>(each.handle), *each.cm, handleName(each.handle),
                                          shapeOf(each.handle)};
            }
            current = byHand.current ? static_cast<int>(*byHand.current) : -1;
        }
        if (byHand.build.hand && state.handArt)
            hand = std::make_shared<const HandLook>(
                HandLook{state.handArt, poseOf(*byHand.build.hand, byHand.builder.hand)});
        if (byHand.build.fingers)
            fingers = fingersLook(state, *byHand.build.fingers);
    }
    if (const auto shown = watchedFingers(state))
        fingers = fingersLook(state, *shown);
    plate.setHandles(handles);
    plate.setCurrentHandle(current);
    plate.setHeldHand(hand);
    plate.setHeldFingers(fingers);
}

}  // namespace fb
