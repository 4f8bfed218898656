// The desk with the backup it offers, and putting one back: see record_store.h.
#include <QFileInfo>

#include "app/store/backup.h"
#include "app/store/backup_look.h"
#include "app/store/put_back.h"
#include "app/store/put_back_copy.h"
#include "app/store/record_desk.h"
#include "app/store/record_store.h"
#include "app/store/store_file.h"

namespace fb {

namespace record_put_back_detail {

// Names come last, so that they can be told from what stands before them.
AuditEntry putBackEntry(const QString& backup, const QString& aside, const std::optional<Proof>& by)
{
    QString detail =
        QStringLiteral("aside=%1 backup=%2").arg(QFileInfo(aside).fileName(), QFileInfo(backup).fileName());
    if (by)
        detail += QStringLiteral(" by=") + by->assessor.name;
    return {.actor = QStringLiteral("program"),
            .event = QStringLiteral("PUT_BACK"),
            .object = QStringLiteral("records"),
            .detail = detail};
}

bool isSame(const QString& one, const QString& other)
{
    return QFileInfo(one).canonicalFilePath() == QFileInfo(other).canonicalFilePath();
}

}  // namespace record_put_back_detail

using namespace record_put_back_detail;

std::optional<Fault> RecordStore::told()
{
    if (auto told = m_writer.takeTold())
        return told;
    const std::lock_guard lock(m_guard);
    return std::exchange(m_backupFault, std::nullopt);
}

void RecordStore::openDesk(const QString& sheet, QObject* asker, Then<Desk> then)
{
    ask<Desk>(m_writer, asker, std::move(then), [this, sheet, now = now()](Store& store) -> Result<Desk> {
        auto desk = readDesk(store, sheet, now);
        const auto offered = offeredBackup(store, m_refused);
        if (!desk || !offered)
            return tl::unexpected(desk ? offered.error() : desk.error());
        desk->offered = *offered;
        desk->told = told();
        desk->lastBackup = lastBackup(m_file);
        return desk;
    });
}

void RecordStore::lookInto(const QString& file, QObject* asker, Then<BackupOnFile> then)
{
    // Whether the records themselves can be read does not matter here.
    m_reader.ask(asker, [then = std::move(then), file](const Result<Store*>&) -> StoreThread::Then {
        return [then, found = fb::lookInto(file)] { then(found); };
    });
}

void RecordStore::putBack(const QString& file, const std::optional<Proof>& by,
                          const std::shared_ptr<LongWork>& work, QObject* asker, Then<PutBack> then)
{
    ask<PutBack>(m_writer, asker, std::move(then),
                 [=, this, at = now().at](Store& store) { return replaceBy(file, by, store, *work, at); });
}

Result<PutBack> RecordStore::replaceBy(const QString& backup, const std::optional<Proof>& by, Store& store,
                                       LongWork& work, const QDateTime& at)
{
    if (const auto may = mayPutBack(store, by); !may)
        return tl::unexpected(may.error());
    const auto found = fb::lookInto(backup);
    if (!found)
        return tl::unexpected(found.error());
    const auto refused = fault(Problem::NotPutBack, backup.toStdString());
    if (isSame(backup, m_file))
        return refused;
    const QString aside = nameBefore(m_file, at.toLocalTime());
    if (const auto ready = makePutBackPart(backup, m_file, putBackEntry(backup, aside, by), at, work);
        !ready) {
        if (ready.error().problem != Problem::NotPutBack)
            m_refused << backup;
        return tl::unexpected(ready.error());
    }
    const auto reader = m_reader.pause();
    auto replaced = replaceRecords(
        m_writer.takeOut(), putBackPart(m_file), aside, work,
        [&](const std::shared_ptr<FileLock>& alone) { return openRecords(m_file, at, alone); });
    m_writer.putIn(std::move(replaced.store));
    removePutBackPart(m_file);
    if (!replaced.aside)
        return refused;
    // Whoever had to wait before a PIN may be somebody else there.
    m_pins = PinCheck();
    work.percent = 100;
    return PutBack{*found, *replaced.aside};
}

}  // namespace fb
