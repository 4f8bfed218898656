// What the desk and the board show, in one reading.
#pragma once

#include "app/doors/records.h"
#include "app/store/record_values.h"
#include "app/store/store.h"

namespace fb {

// All of it but what opening told and the last backup. A sheet that is not there: the last used.
[[nodiscard]] Result<Desk> readDesk(const Store& store, const QString& sheet, const Moment& now);
// SheetNotReadable.
[[nodiscard]] Result<Board> readBoard(const Store& store, const QString& sheet, const Moment& now);

}  // namespace fb
