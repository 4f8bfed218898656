#include "app/records/replay.h"

#include <cmath>

#include "app/canvas/hand_painter.h"
#include "app/doors/plate_hashes.h"
#include "app/scene/by_hand_scene.h"
#include "app/scene/target_scene.h"
#include "app/words/site_words.h"

namespace fb {

namespace replay_detail {

bool isClose(double a, double b)
{
    constexpr double kRounded = 1.5e-6;  // grades leave core rounded to 1e-6 cm
    return std::abs(a - b) <= kRounded;
}

// A refusal or no answer has no mark, and numbers that differ from the recorded ones are not drawn: the
// target alone is shown.
Scene sceneOf(const Replay& replay)
{
    const PracticeState& shown = replay.shown;
    const Target& target = *shown.target;
    if (!shown.graded || !replay.sameGrade)
        return targetScene(target);
    if (shown.graded->byHand)
        return gradedByHandScene(target, *shown.graded, Builder::from(*shown.policy));
    if (!shown.graded->refusal)
        return gradedScene(target, shown.graded->mark, shown.graded->grade);
    return isRuledOut(shown.graded->request) ? helpScene(target, HelpLevel::DrawnAndNamed)
                                             : targetScene(target);
}

// Many names on a plate of this size cover one another: areas that were not struck are drawn, and named for a
// screen reader alone.
Scene struckNamed(Scene scene, const Replay& replay)
{
    const auto& graded = replay.shown.graded;
    const auto hazard = graded && replay.sameGrade ? graded->grade.hazard : std::nullopt;
    const QString struck = hazard ? hazardName(*hazard) : QString();
    for (SceneShape& shape : scene) {
        const bool isArea = shape.role == Role::Strike || shape.role == Role::Near;
        if (!isArea || shape.label == struck)
            continue;
        shape.description = spoken(shape);
        shape.label.clear();
    }
    return scene;
}

bool isSameDrawing(const QString& recorded, View view)
{
    for (const View needed : neededPlates(view)) {
        const QString before = recordedHash(recorded, needed);
        if (!before.isEmpty() && before != plateHash(needed))
            return false;
    }
    return true;
}

Result<bool> fill(Replay& made, const OpenedCheckOff& opened, const Library& library, const Policy& shipped)
{
    const Answer& answer = made.recorded;
    PracticeState& shown = made.shown;
    const View view = answer.request.view;
    const QByteArray text = opened.file.order.policyText.toUtf8();
    auto policy = Policy::parseOver({text.constData(), static_cast<std::size_t>(text.size())}, shipped);
    if (!policy)
        return tl::unexpected(policy.error());
    const auto plate = library.plate(view);
    if (!plate)
        return tl::unexpected(plate.error());
    const auto atlas = library.atlas(view);
    if (!atlas)
        return tl::unexpected(atlas.error());
    const auto map = bodyMap(*atlas, view, answer.request.patient);
    if (!map)
        return tl::unexpected(map.error());
    const auto target = locate(*atlas, *policy, answer.request.patient, answer.convention, view);
    if (!target)
        return tl::unexpected(target.error());
    if (!answer.timeUp) {
        auto attempt = regraded(answer, *atlas, *policy);
        if (!attempt)
            return tl::unexpected(attempt.error());
        made.sameGrade = agree(answer, answerOf(answer.item, *attempt, answer.convention, *policy));
        shown.graded = std::move(*attempt);
    }
    if (target->hand) {
        const auto open = library.plate(View::OpenHand);
        if (!open)
            return tl::unexpected(open.error());
        shown.hand = handPicture(*open, target->hand);
    }
    shown.policy = std::make_shared<const Policy>(std::move(*policy));
    shown.target = std::make_shared<const Target>(*target);
    shown.picture = std::make_shared<const Picture>(
        Picture{*plate, movedInk(**plate, *map, answer.request.patient), answer.request.skinTone});
    shown.scene = struckNamed(sceneOf(made), made);
    return true;
}

}  // namespace replay_detail

Replay replayOf(const OpenedCheckOff& opened, int item, const Library& library, const Policy& shipped)
{
    Replay made(opened.run.answers()[static_cast<std::size_t>(item)]);
    made.item = item;
    made.items = static_cast<int>(opened.run.requests().size());
    made.sameDrawing =
        replay_detail::isSameDrawing(opened.file.order.plateHashes, made.recorded.request.view);
    PracticeState& shown = made.shown;
    shown.ready = true;
    shown.phase = Phase::Graded;
    shown.canPeel = true;
    shown.request = made.recorded.request;
    shown.request->number = item;
    shown.convention = made.recorded.convention;
    shown.setup.length = made.items;
    shown.setup.byHand = made.recorded.byHand;
    if (const auto filled = replay_detail::fill(made, opened, library, shipped); !filled) {
        made.broken = filled.error();
        shown.graded.reset();
    }
    return made;
}

void retranslate(Replay& replay)
{
    if (replay.shown.target)
        replay.shown.scene = replay_detail::struckNamed(replay_detail::sceneOf(replay), replay);
}

bool agree(const Answer& recorded, const Answer& again)
{
    using replay_detail::isClose;
    return recorded.verdict == again.verdict && recorded.hazard == again.hazard &&
           recorded.direction == again.direction && isClose(recorded.points, again.points) &&
           isClose(recorded.distanceToIdeal.value(), again.distanceToIdeal.value()) &&
           isClose(recorded.offDistal.value(), again.offDistal.value()) &&
           isClose(recorded.offAnterior.value(), again.offAnterior.value());
}

}  // namespace fb
