// What the speaker draws over the patient: in one of two inks, each with a line of its own, so that they can
// be told without colour.
#pragma once

#include <QPointF>
#include <QVector>
#include <optional>

#include "app/lecture/lecture_body.h"
#include "core/body/anchor.h"

namespace fb {

enum class PenInk { First, Second };  // First is drawn plain, Second with a dark and a light edge
enum class PenLine { Plain, Dashed };

struct PenStroke {
    PenInk ink{};
    PenLine line{};
    QVector<QPointF> points;  // viewer's frame of the body it was drawn on, cm
    // One for each point that is bound to the patient; the points after them, and a place off the body, stay.
    std::vector<std::optional<Anchor>> anchors{};
};

// Binds to the patient what is not bound yet, at most so many points; how many it were. Which limb a point
// lies on takes up to 0.05 ms to tell: a window that must not wait binds a long stroke little by little.
int bindPoints(PenStroke& stroke, const LectureBody& body, int most);
// Where it lies on a body.
[[nodiscard]] QVector<QPointF> pointsOn(const PenStroke& stroke, const LectureBody& body);
// Whether an eraser of that radius touches it.
[[nodiscard]] bool isTouched(const PenStroke& stroke, const LectureBody& body, QPointF cm, double radiusCm);

}  // namespace fb
