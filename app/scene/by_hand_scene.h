// What is drawn over a plate while a site is found by hand and after it: the learner's own
// construction, the same beside the target's, and the target's step by step.
//
// The learner's flags are the view's (PlateView::setFlags), before the grade and after it; only
// the arrows from them to their landmarks are drawn here.
#pragma once

#include <QRectF>
#include <optional>

#include "app/scene/scene.h"
#include "core/session/practice.h"

namespace fb {

// What the learner has built so far, and the chosen field of a thigh. Nothing of the target.
[[nodiscard]] Scene buildScene(const Target& target, const Build& build, const Builder& builder);

// The target with its construction; the learner's where it is not the target's; from each flag that is off an
// arrow to its landmark; where the first slip alone would have put the needle; the arrow of the mark.
// An attempt that was not found by hand is drawn as gradedScene().
[[nodiscard]] Scene gradedByHandScene(const Target& target, const Attempt& attempt, const Builder& builder);
// All of that with room for words; cm, low corner first.
[[nodiscard]] QRectF gradedByHandArea(const Target& target, const Attempt& attempt, const Builder& builder);

// Showing how: one step after the other of the target's construction, the last two are the target region and
// the ideal point.
[[nodiscard]] int watchStepCount(const Target& target);
// Everything up to and including a step, from 0; the newest stands out and is named.
[[nodiscard]] Scene watchScene(const Target& target, int step);
[[nodiscard]] QString watchCaption(const Target& target, int step);
// Where a fingertip presses in a step that feels for a bone; viewer's frame, cm.
[[nodiscard]] std::optional<QPointF> watchPress(const Target& target, int step);
// Whether the hand lies on the body by then, where the convention lays one.
[[nodiscard]] bool watchLaysHand(const Target& target, int step);
// Where to look meanwhile; cm, low corner first.
[[nodiscard]] QRectF watchArea(const Target& target);

}  // namespace fb
