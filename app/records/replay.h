// One recorded answer, made ready to be looked at again on the plate it was given on: the recorded patient,
// the recorded numbers of the lab, the recorded convention and mark. Made in a worker; holds no widget.
#pragma once

#include <memory>
#include <optional>
#include <utility>

#include "app/doors/library.h"
#include "app/practice/practice_state.h"
#include "app/records/opened_check_off.h"

namespace fb {

struct Replay {
    explicit Replay(Answer answer) : recorded(std::move(answer)) {}

    Answer recorded;
    int item = 0;  // from 0
    int items = 0;
    // As practice shows a graded request; without an attempt where no answer was given.
    PracticeState shown;
    // Why it cannot be drawn: only the recorded numbers are to be shown then.
    std::optional<Fault> broken;
    bool sameDrawing = true;  // this program's plate is the one it was graded on
    bool sameGrade = true;    // graded again it comes to what was recorded
};

// The answer of that item, which there is. Reads and moves the plate: not on the window's thread.
[[nodiscard]] Replay replayOf(const OpenedCheckOff& opened, int item, const Library& library,
                              const Policy& shipped);
// The scene again, in the language of now.
void retranslate(Replay& replay);

// Whether both come to the same grade, to the accuracy in which a grade leaves core.
[[nodiscard]] bool agree(const Answer& recorded, const Answer& again);

}  // namespace fb
