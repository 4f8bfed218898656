// A sheet as a file a lab keeps and mails. Never on the window's thread.
#pragma once

#include <QString>

#include "core/session/sheet.h"

namespace fb {

// FileNotReadable, and the faults of sheetFrom(); where: the file's own name, or the place in it.
[[nodiscard]] Result<Sheet> readSheet(const QString& file);
// All of it or nothing of it; OutputNotWritable.
[[nodiscard]] Result<bool> writeSheet(const Sheet& sheet, const QString& file);
// From its title, of letters, digits and hyphens, without ending.
[[nodiscard]] QString sheetFileName(const Sheet& sheet);

}  // namespace fb
