// Backups looked into without touching them: the log's last entry and counts are read, never all of a file.
#pragma once

#include <QStringList>

#include "app/doors/records.h"
#include "app/store/store.h"

namespace fb {

inline constexpr int kBackupsLookedInto = 30;  // at most, the newest files

// FileNotReadable, NotAStore, StoreTooNew; StoreBroken, where what is looked for cannot be read.
[[nodiscard]] Result<BackupOnFile> lookInto(const QString& backup);

// What Desk::offered says: of the program's own backups the one whose log goes on the latest, where the
// records were begun after a damage and hold no assessor, no student, no sheet and no check-off. A backup
// that cannot be looked into is passed over, and so is one of `refused`. While the records hold anything no
// backup is opened.
[[nodiscard]] Result<std::optional<BackupOnFile>> offeredBackup(const Store& records,
                                                                const QStringList& refused);

}  // namespace fb
