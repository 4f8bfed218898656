// verify and backup: the records without a window, also while the window is open. Each returns what goes to
// standard output, or the one fault that is told instead. Needs a QCoreApplication.
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/basics/problem.h"

namespace fb {

// Of the records themselves or of a backup: how much is there, and that it is what was kept. ChainBroken,
// StoreBroken, NotAStore, StoreTooNew, FileNotReadable.
[[nodiscard]] Result<std::string> verifyAnswer(const QString& records);
// BackupFailed names the new file; the faults of verifyAnswer the records.
[[nodiscard]] Result<std::string> backupAnswer(const QString& records, const QString& file);

// The words after the program's name: "verify [FILE]" and "backup FILE", of the usual records where no other
// is named. nullopt: another command. ArgumentUnknown, ArgumentMissing.
[[nodiscard]] std::optional<Result<std::string>> recordsAnswer(const std::vector<std::string_view>& words);

}  // namespace fb
