// The tables of the records, records.db: see migrations.h. What was kept of a check-off and its log is only
// ever added to; triggers refuse anything else.
#pragma once

#include <span>

#include "app/store/store.h"

namespace fb {

// "FBRD", so that a file says whose it is.
inline constexpr int kRecordsApplication = 0x46425244;

[[nodiscard]] std::span<const Migration> recordMigrations();
// One program at a time.
[[nodiscard]] StoreKind recordStoreKind();

}  // namespace fb
