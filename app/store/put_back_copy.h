// A backup made ready to stand in the place of the records: copied by SQLite's own means into a file for its
// owner alone, brought up to date, checked as a whole, and with the entry in its log that tells of it.
// Whatever can go wrong goes wrong here, where nothing of the records is touched.
#pragma once

#include "app/doors/records.h"
#include "app/store/audit_chain.h"
#include "app/store/store.h"

namespace fb {

// Where it is made, beside the records.
[[nodiscard]] QString putBackPart(const QString& records);
// That file, and what lay beside it while it was open.
void removePutBackPart(const QString& records);

// The part is whole, closed and on the disk. FileNotReadable, NotAStore, StoreTooNew, StoreBroken,
// ChainBroken, each of the backup; NotPutBack for anything else, and where it was cancelled. Then nothing is
// left of it.
[[nodiscard]] Result<bool> makePutBackPart(const QString& backup, const QString& records,
                                           const AuditEntry& entry, const QDateTime& at, LongWork& work);

}  // namespace fb
