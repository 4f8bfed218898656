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
    QVector<QPointF> points;                       // viewer's frame of the body it was drawn on, cm
    std::vector<std::optional<Anchor>> anchors{};  // one for each point; empty: it does not go along
};

// Bound to the patient it was drawn on, and where it lies on another.
[[nodiscard]] PenStroke anchored(PenStroke stroke, const LectureBody& body);
[[nodiscard]] QVector<QPointF> pointsOn(const PenStroke& stroke, const LectureBody& body);
// Whether an eraser of that radius touches it.
[[nodiscard]] bool isTouched(const PenStroke& stroke, const LectureBody& body, QPointF cm, double radiusCm);

}  // namespace fb
