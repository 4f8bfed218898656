// Everything a demonstration is at a moment. The audience's window and the speaker's page show it; nobody but
// the presenter changes it.
#pragma once

#include <QPointF>
#include <QSet>
#include <QString>
#include <QVector>
#include <memory>
#include <optional>
#include <vector>

#include "app/lecture/lecture_body.h"
#include "app/lecture/lecture_step.h"
#include "app/lecture/pen_stroke.h"
#include "app/lecture/room_marks.h"
#include "core/body/body_values.h"
#include "core/policy/policy.h"
#include "core/site/difference.h"

namespace fb {

enum class Compare {
    Nothing,
    SideBySide,      // the pinned body beside the shown one
    Overlay,         // the pinned body's target over the shown one
    OtherConvention  // on the same body
};
inline constexpr int kCompareCount = static_cast<int>(Compare::OtherConvention) + 1;

enum class LectureTool {
    Point,  // the pointer, with a spotlight if wished
    Pen,
    Eraser,
    Magnifier,
    Ask  // a click is a volunteer's point
};
inline constexpr int kLectureToolCount = static_cast<int>(LectureTool::Ask) + 1;

struct LectureState {
    bool ready = false;           // plates and policy are there and a first body is made
    std::optional<Fault> notice;  // for the speaker alone, never for the audience

    Convention convention{};
    View view{};
    Side side = Side::Right;
    BodyValues body;
    int skinTone = 0;
    QSet<Layer> layers;   // all but those that are peeled
    bool moving = false;  // a slider is held or a body glides: half-size will do

    std::shared_ptr<const Policy> policy;
    std::shared_ptr<const LectureBody> shown;  // the newest made; of `body` once nothing moves

    std::vector<LectureStep> steps;
    int step = 0;
    double progress = 1.0;  // of the step's animation

    Compare compare{};
    std::optional<BodyValues> pinned;
    std::shared_ptr<const LectureBody> beside;   // the pinned body, or the other convention's; null: nothing
    std::optional<TargetDifference> difference;  // from shown to beside

    bool blank = false;
    LectureTool tool{};
    bool spotlight = false;
    std::optional<QPointF> pointer;  // cm; where the speaker points
    double magnification = 2.5;
    PenInk ink{};
    PenLine line{};
    bool strokesStay = true;  // with the patient when the body changes
    QVector<PenStroke> strokes;
    std::optional<PenStroke> drawing;

    std::vector<RoomMark> room;
    bool revealed = false;
};

}  // namespace fb
