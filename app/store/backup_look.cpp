#include "app/store/backup_look.h"

#include <QDir>
#include <QFileInfo>
#include <tuple>

#include "app/store/backup.h"
#include "app/store/record_migrations.h"
#include "app/store/record_values.h"
#include "app/store/store_file.h"

namespace fb {

namespace backup_look_detail {

Result<bool> isFreshAfterDamage(const Store& records)
{
    return records
        .rows({QStringLiteral(
            "SELECT (SELECT detail FROM audit WHERE seq = 1), EXISTS (SELECT 1 FROM assessor) "
            "OR EXISTS (SELECT 1 FROM student) OR EXISTS (SELECT 1 FROM sheet) "
            "OR EXISTS (SELECT 1 FROM check_off)")})
        .map([](const auto& rows) {
            const QVariantList& row = rows.front();
            return row[0].toString().contains(QLatin1String(" after ")) && row[1].toInt() == 0;
        });
}

bool goesOnLonger(const BackupOnFile& one, const std::optional<BackupOnFile>& other)
{
    return !other || std::tie(one.lastAt, one.entries) > std::tie(other->lastAt, other->entries);
}

Result<BackupOnFile> readFrom(const QString& backup)
{
    const auto store = Store::openToRead(backup, recordStoreKind());
    if (!store)
        return tl::unexpected(store.error());
    const auto rows = (*store)->rows({QStringLiteral(
        "SELECT seq, at, (SELECT count(*) FROM student), (SELECT count(*) FROM check_off WHERE closed_at IS "
        "NOT NULL) FROM audit ORDER BY seq DESC LIMIT 1")});
    if (!rows)
        return tl::unexpected(rows.error());
    BackupOnFile found;
    found.file = backup;
    if (!rows->empty()) {
        const QVariantList& row = rows->front();
        found.entries = row[0].toLongLong();
        found.lastAt = timeFrom(row[1].toString());
        found.students = row[2].toInt();
        found.checkOffs = row[3].toInt();
    }
    if (!found.lastAt.isValid())
        return fault(Problem::StoreBroken, backup.toStdString());
    return found;
}

}  // namespace backup_look_detail

using namespace backup_look_detail;

Result<BackupOnFile> lookInto(const QString& backup)
{
    const QStringList before = besideOf(backup);
    auto found = readFrom(backup);
    removeBeside(backup, before);
    return found;
}

Result<std::optional<BackupOnFile>> offeredBackup(const Store& records, const QStringList& refused)
{
    std::optional<BackupOnFile> newest;
    const auto fresh = isFreshAfterDamage(records);
    if (!fresh)
        return tl::unexpected(fresh.error());
    if (!*fresh)
        return newest;
    const QFileInfoList files = QDir(backupFolder(records.file()))
                                    .entryInfoList({QStringLiteral("records-*.db")}, QDir::Files, QDir::Time);
    for (const QFileInfo& file : files.first(std::min<qsizetype>(files.size(), kBackupsLookedInto))) {
        if (refused.contains(file.filePath()))
            continue;
        if (const auto found = lookInto(file.filePath()); found && goesOnLonger(*found, newest))
            newest = *found;
    }
    return newest;
}

}  // namespace fb
