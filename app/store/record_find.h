// Signed check-offs found again and read back.
#pragma once

#include <vector>

#include "app/doors/records.h"
#include "app/store/store.h"

namespace fb {

// Newest first, at most so many as the filter says.
[[nodiscard]] Result<std::vector<CheckOffLine>> findCheckOffs(const Store& store,
                                                              const CheckOffFilter& filter);
// CheckOffOutOfOrder for one that is not signed.
[[nodiscard]] Result<CheckOffOnFile> readCheckOff(const Store& store, qint64 checkOff);

}  // namespace fb
