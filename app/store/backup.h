// Copies of the records, made by SQLite's own means while they are in use, for their owner alone from the
// first byte on, and only taken for a backup once it was opened and found to hold what the records hold.
//
// The program's own backups lie in the folder "backups" beside the records, named
// records-DATE-TIME-STORE-ENTRIES.db: STORE are the first eight hex digits of the log's first entry, or of
// its last one that tells of a backup put back, so that neither a store which was begun anew after a damage
// nor one that was put back ever pushes out the copies of the one before it.
#pragma once

#include <QDateTime>
#include <QString>

#include "app/doors/records.h"
#include "app/store/store.h"

namespace fb {

inline constexpr int kBackupsKept = 10;  // of one store

// False: cancelled, and no file left behind. BackupFailed; a file that was there is only replaced by a whole
// one.
[[nodiscard]] Result<bool> writeBackup(const Store& source, const QString& file, LongWork& work);
// In the folder of backups; the oldest beyond kBackupsKept go.
[[nodiscard]] Result<bool> writeUsualBackup(const Store& source, const QDateTime& at);

[[nodiscard]] QString backupFolder(const QString& records);
// The newest in that folder; empty: none.
[[nodiscard]] QString lastBackup(const QString& records);

}  // namespace fb
