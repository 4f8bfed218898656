// What a learner's hands have on a plate besides the mark: which tool they use, the fingertip that
// presses, planted flags, handles of what is being built, the hand or the fingers laid on the body.
// Values only; places are centimetres of the viewer's frame (+x right, +y up).
#pragma once

#include <QPointF>
#include <QString>
#include <QVector>
#include <memory>
#include <optional>

#include "core/feel/feel.h"
#include "core/hand/hand_pose.h"
#include "core/hand/laid_fingers.h"
#include "core/plate/plate.h"

namespace fb {

enum class PlateTool {
    Mark,    // a click marks where the needle would go in
    Press,   // a fingertip feels the body
    Handles  // what is built is moved by its handles
};

// A fingertip on the skin and what it feels. Kept where it was when it is lifted.
struct PressLook {
    QPointF cm;             // middle of the fingertip's pad
    double fingerCm = 1.6;  // breadth of the finger
    Firmness firmness{};
    BoneShape shape{};
    Clearness clearness{};
    std::optional<QPointF> toward;  // unit: to a bone beside the finger
    std::optional<QPointF> along;   // unit: the way an edge runs
    QString words;                  // painted beside the ring
    QString spokenWords;            // for a screen reader; empty: the words

    friend bool operator==(const PressLook&, const PressLook&) = default;
};

// What a screen reader says of a press.
[[nodiscard]] inline const QString& spoken(const PressLook& press)
{
    return press.spokenWords.isEmpty() ? press.words : press.spokenWords;
}

// A pennant on a pin. Its name is a label of the scene, so that no two labels overlap.
struct FlagLook {
    QPointF cm;
    QString name;         // as the learner called it
    QString description;  // for a screen reader; empty: the name

    friend bool operator==(const FlagLook&, const FlagLook&) = default;
};

enum class HandleShape {
    Grip,   // slides a whole thing: a rounded square
    Turn,   // turns it: a ring with an arc beside it
    Point,  // one point: an open diamond
    Line    // a line: a short bar across
};

struct HandleLook {
    int id = -1;
    QPointF cm;
    QString name;
    HandleShape shape{};

    friend bool operator==(const HandleLook&, const HandleLook&) = default;
};

// The learner's hand. art: the plate of View::OpenHand.
struct HandLook {
    std::shared_ptr<const Plate> art;
    HandPose pose;
};

// The learner's fingers laid across an arm. Without art they are plain outlines.
struct FingersLook {
    std::shared_ptr<const Plate> art;
    LaidFingers fingers;
    double fingerCm = 1.6;

    friend bool operator==(const FingersLook&, const FingersLook&) = default;
};

}  // namespace fb
