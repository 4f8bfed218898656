// What hands have on the plate while a site is found by hand, from the state to the plate.
#pragma once

#include <QRectF>

#include "app/practice/practice_state.h"

namespace fb {

class PlateView;

// Tool, press, flags, handles and what is laid on the body; nothing of it where nothing is found by
// hand, but the flags of a graded attempt.
void showHands(PlateView& plate, const PracticeState& state);
// Of that only the finger, or only what is being built.
void showPress(PlateView& plate, const PracticeState& state);
void showBuild(PlateView& plate, const PracticeState& state);

// Where the learner's flags stand and what is to be laid lies, with room around; cm, low corner first.
[[nodiscard]] QRectF workArea(const PracticeState& state);

}  // namespace fb
