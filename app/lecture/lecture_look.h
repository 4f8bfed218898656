// What a step looks like on a body at a moment of its animation: shapes, fingertip, hand, where to look, and
// the words beside it. Values only; the audience, the speaker, thumbnails and hand-outs all paint this.
#pragma once

#include <QRectF>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "app/canvas/plate_tool.h"
#include "app/lecture/lecture_body.h"
#include "app/lecture/lecture_step.h"
#include "app/scene/scene.h"
#include "core/policy/policy.h"

namespace fb {

struct LectureLook {
    Scene scene;
    std::optional<PressLook> press;
    std::optional<HandPose> hand;        // laid by then, or on its way
    std::optional<LaidFingers> fingers;  // likewise
    double fingerCm = 1.6;
    std::vector<std::string> bones;  // of the hip that are found by then: see lecture_bones.h
    QRectF area;      // cm, low corner first: the same for every step of one body, so that nothing jumps
    QString heading;  // "Ventrogluteal site, right hip"
    QString manner;   // the convention's name
    QString caption;  // one or two sentences: what is done here, what is felt, what it would hurt
};

// progress: 0 to 1 of the step's own animation; 1: it rests.
[[nodiscard]] LectureLook lookOf(const LectureBody& body, const Policy& policy,
                                 const std::vector<LectureStep>& steps, int step, double progress = 1.0);
// Whether anything moves in a step, so that it is worth an animation.
[[nodiscard]] bool isMoving(const LectureBody& body, const LectureStep& step);
// Few words for a list of steps: "Press: anterior superior iliac spine", "Target region".
[[nodiscard]] QString stepTitle(const LectureBody& body, const LectureStep& step);

// Another target in the same frame beside the one that is shown: its region's outline and ideal point, each
// with its name, and an arrow between the ideal points labelled with the distance.
[[nodiscard]] Scene besideScene(const Target& shown, const Target& other, const QString& shownName,
                                const QString& otherName);
// Where volunteers pointed, numbered; once revealed with the verdict's shape, its word and the distance.
struct RoomMark;
[[nodiscard]] Scene roomScene(const std::vector<RoomMark>& marks, bool revealed);

}  // namespace fb
