// A signed check-off as it is read back: its events applied again, so that what is shown is what happened.
#pragma once

#include "app/doors/records.h"

namespace fb {

struct OpenedCheckOff {
    CheckOffOnFile file;
    CheckOff run;  // after the last event
    CheckOffResult result;
};

// CheckOffOutOfOrder, AnswerNotReadable and the like where the kept events do not follow.
[[nodiscard]] Result<OpenedCheckOff> openedCheckOff(const CheckOffOnFile& file);

// Whether practice has to be agreed on and signed after it.
[[nodiscard]] bool asksForPractice(const CheckOffOnFile& file);
[[nodiscard]] bool asksForPractice(Outcome outcome, const RetestRule& rule);

}  // namespace fb
