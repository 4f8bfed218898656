// Whether the records are what was kept: whole for SQLite, the log's chain unbroken, every signed check-off
// as its entry in the log tells it, and every answer the one that was given.
#pragma once

#include "app/doors/records.h"
#include "app/store/store.h"

namespace fb {

// ChainBroken names the first entry of the log that does not follow, or that tells of something that is no
// longer so. Cancelled: what was counted so far, and not whole. The work's percent go over the given part of
// it.
[[nodiscard]] Result<Verified> verifyRecords(const Store& store, LongWork& work, int fromPercent = 0,
                                             int toPercent = 100);

}  // namespace fb
