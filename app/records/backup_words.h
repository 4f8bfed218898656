// What a backup holds and what became of putting it back, in sentences: the desk of the check-off and the
// page of the log say them alike.
#pragma once

#include <QString>

#include "app/doors/records.h"

namespace fb {

// When it ends, whom and what it holds, and that nothing later is in it.
[[nodiscard]] QString holdsText(const BackupOnFile& backup);
// That it was put back, until when it goes, and where the other file lies.
[[nodiscard]] QString putBackText(const PutBack& done);

}  // namespace fb
