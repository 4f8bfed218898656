#include "app/store/backup.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <cstdio>

#include "app/store/audit_chain.h"
#include "app/store/record_migrations.h"
#include "app/store/store_file.h"

namespace fb {

namespace backup_detail {

const QString kPart = QStringLiteral(".part");

struct Contents {
    ChainEnd end;
    QVariantList counts;
};

Result<Contents> contentsOf(const Store& store)
{
    Contents contents;
    const auto read = store.snapshot([&]() -> Result<bool> {
        const auto end = chainEnd(store);
        const auto counts = store.rows({QStringLiteral(
            "SELECT (SELECT count(*) FROM check_off), (SELECT count(*) FROM check_off_event), "
            "(SELECT count(*) FROM answer), (SELECT count(*) FROM student)")});
        if (!end || !counts)
            return tl::unexpected(end ? counts.error() : end.error());
        contents = {*end, counts->front()};
        return true;
    });
    return read.map([&](bool) { return contents; });
}

bool isNoMore(const Contents& less, const Contents& more)
{
    bool fits = less.end.length <= more.end.length;
    for (qsizetype i = 0; i < less.counts.size(); ++i)
        fits = fits && less.counts[i].toLongLong() <= more.counts[i].toLongLong();
    return fits;
}

// The records may have gone on while they were copied; what was there before is in the copy.
bool holdsAll(const Store& source, const Contents& before, const QString& copied)
{
    const auto copy = Store::openToRead(copied, recordStoreKind());
    if (!copy || !(*copy)->isWhole())
        return false;
    const auto there = contentsOf(**copy);
    const auto after = contentsOf(source);
    if (!there || !after || !isNoMore(before, *there) || !isNoMore(*there, *after))
        return false;
    if (before.end.length == 0)
        return true;
    const auto link =
        (*copy)->rows({QStringLiteral("SELECT hash FROM audit WHERE seq = ?"), {before.end.length}});
    return link && !link->empty() && link->front().front().toByteArray() == before.end.head;
}

bool isCopied(const Store& source, const QString& part)
{
    return makePart(part) && source.rows({QStringLiteral("VACUUM INTO ?"), {part}}).has_value() &&
           isFlushed(part);
}

QFileInfoList backupsIn(const QString& folder, const QString& store)
{
    return QDir(folder).entryInfoList({QStringLiteral("records-*-%1-*.db").arg(store)}, QDir::Files);
}

qint64 entriesIn(const QFileInfo& backup) { return backup.completeBaseName().section(u'-', -1).toLongLong(); }

Result<QString> storeName(const Store& store)
{
    constexpr int kDigits = 8;
    return store
        .rows({QStringLiteral("SELECT hash FROM audit WHERE seq = 1 OR event = 'PUT_BACK' "
                              "ORDER BY seq DESC LIMIT 1")})
        .map([](const auto& rows) {
            return rows.empty() ? QString() : rows.front().front().toString().left(kDigits);
        });
}

void tidy(const QString& folder, const QString& store)
{
    for (const QFileInfo& left : QDir(folder).entryInfoList({u'*' + kPart}, QDir::Files))
        QFile::remove(left.filePath());
    QFileInfoList backups = backupsIn(folder, store);
    std::ranges::sort(backups, std::greater(), &entriesIn);
    for (qsizetype i = kBackupsKept; i < backups.size(); ++i)
        QFile::remove(backups[i].filePath());
}

}  // namespace backup_detail

using namespace backup_detail;

Result<bool> writeBackup(const Store& source, const QString& file, LongWork& work)
{
    constexpr int kCopied = 80;  // percent
    const auto failed = fault(Problem::BackupFailed, file.toStdString());
    // Never in the place of a folder, a device or the records themselves.
    const QFileInfo there(file);
    if ((there.exists() && !there.isFile()) ||
        there.canonicalFilePath() == QFileInfo(source.file()).canonicalFilePath())
        return failed;
    const QString part = file + kPart;
    const auto before = contentsOf(source);
    const bool copied = before && isCopied(source, part);
    work.percent = kCopied;
    const bool good = copied && !work.cancelled && holdsAll(source, *before, part);
    const bool placed =
        good && !work.cancelled &&
        std::rename(QFile::encodeName(part).constData(), QFile::encodeName(file).constData()) == 0;
    if (!placed)
        QFile::remove(part);
    if (copied && work.cancelled && !placed)
        return false;
    if (!placed || !isFlushed(QFileInfo(file).absolutePath()))
        return failed;
    work.percent = 100;
    return true;
}

Result<bool> writeUsualBackup(const Store& source, const QDateTime& at)
{
    const QString folder = backupFolder(source.file());
    const auto name = storeName(source);
    const auto end = name ? chainEnd(source) : tl::unexpected(name.error());
    if (!end)
        return tl::unexpected(end.error());
    const QString file =
        QDir(folder).filePath(QStringLiteral("records-%1-%2-%3.db")
                                  .arg(at.toLocalTime().toString(QStringLiteral("yyyy-MM-dd-HHmmss")), *name)
                                  .arg(end->length));
    // Makes the folder, for its owner alone.
    if (const auto made = makeOwnerOnly(file + kPart); !made)
        return fault(Problem::BackupFailed, file.toStdString());
    LongWork work;
    auto written = writeBackup(source, file, work);
    tidy(folder, *name);
    return written;
}

QString backupFolder(const QString& records)
{
    return QFileInfo(records).absoluteDir().filePath(QStringLiteral("backups"));
}

QString lastBackup(const QString& records)
{
    const QFileInfoList backups = backupsIn(backupFolder(records), QStringLiteral("*"));
    const auto newest = std::ranges::max_element(backups, {}, &QFileInfo::lastModified);
    return newest == backups.end() ? QString() : newest->filePath();
}

}  // namespace fb
