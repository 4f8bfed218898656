// What a check-off was begun with, as it is kept.
#pragma once

#include "app/doors/records.h"
#include "app/store/store.h"

namespace fb {

// CheckOffOutOfOrder where there is no such check-off.
[[nodiscard]] Result<CheckOffOrder> readOrder(const Store& store, qint64 checkOff);

}  // namespace fb
