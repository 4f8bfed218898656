// Sheets and policies in the records, each kept once by the hash of its text.
#pragma once

#include <vector>

#include "app/doors/records.h"
#include "app/store/record_values.h"
#include "app/store/store.h"

namespace fb {

// A sheet that is there already is only the last one used from now on; a new one is noted in the log. The
// faults of checkedSheet().
[[nodiscard]] Result<SheetOnFile> saveSheet(Store& store, const Sheet& sheet, const Moment& now);
// The last used first. What cannot be read any more is the fault of sheetFrom().
[[nodiscard]] Result<std::vector<SheetOnFile>> readSheets(const Store& store);
// SheetNotReadable where there is none.
[[nodiscard]] Result<SheetOnFile> readSheet(const Store& store, const QString& key);

// In a transaction.
[[nodiscard]] Result<bool> useSheet(Store& store, const QString& key);
// Its hash.
[[nodiscard]] Result<QString> keepPolicy(Store& store, const QString& text);

}  // namespace fb
