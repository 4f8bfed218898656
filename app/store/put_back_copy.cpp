#include "app/store/put_back_copy.h"

#include <QFile>

#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"
#include "app/store/store_file.h"

namespace fb {

namespace put_back_copy_detail {

// In percent; the rest is the check of the whole and, at the very end, the change of places.
constexpr int kCopied = 30;
constexpr int kChecked = 95;

// What is wrong with the backup is told of the backup; anything else hindered the copy.
tl::unexpected<Fault> told(const Fault& why, const QString& backup)
{
    const bool isOfBackup = why.problem == Problem::StoreBroken || why.problem == Problem::ChainBroken;
    return isOfBackup ? fault(why.problem, backup.toStdString(),
                              why.problem == Problem::ChainBroken ? why.what : std::string())
                      : fault(Problem::NotPutBack, backup.toStdString());
}

Result<bool> goesOn(const LongWork& work, const QString& backup)
{
    return work.cancelled ? Result<bool>(fault(Problem::NotPutBack, backup.toStdString())) : true;
}

Result<bool> copied(const QString& backup, const QString& part)
{
    const auto source = Store::openToRead(backup, recordStoreKind());
    if (!source)
        return tl::unexpected(source.error());
    if (!makePart(part))
        return fault(Problem::NotPutBack, backup.toStdString());
    const auto done = (*source)->rows({QStringLiteral("VACUUM INTO ?"), {part}});
    if (!done)
        return told(done.error(), backup);
    return true;
}

// The store is closed again at its end, which leaves nothing beside its file.
Result<bool> checkedAndNoted(const QString& part, const AuditEntry& entry, const QDateTime& at,
                             LongWork& work)
{
    StoreKind kind = recordStoreKind();
    kind.alone = false;
    const auto opened = Store::open(part, kind);
    if (!opened)
        return tl::unexpected(opened.error());
    if (opened->told) {
        QFile::remove(QString::fromStdString(opened->told->what));
        return fault(Problem::StoreBroken);
    }
    Store& copy = *opened->store;
    const auto verified = verifyRecords(copy, work, kCopied, kChecked);
    if (!verified)
        return tl::unexpected(verified.error());
    if (!verified->whole && !work.cancelled)
        return fault(Problem::StoreBroken);
    return copy.transaction(
        [&] { return appendAudit(copy, entry, at).map([](const ChainEnd&) { return true; }); });
}

Result<bool> made(const QString& backup, const QString& part, const AuditEntry& entry, const QDateTime& at,
                  LongWork& work)
{
    const QStringList before = besideOf(backup);
    const auto copy = copied(backup, part);
    removeBeside(backup, before);
    if (!copy)
        return copy;
    work.percent = kCopied;
    if (const auto on = goesOn(work, backup); !on)
        return on;
    if (const auto noted = checkedAndNoted(part, entry, at, work); !noted)
        return told(noted.error(), backup);
    if (!besideOf(part).isEmpty() || !isFlushed(part))
        return fault(Problem::NotPutBack, backup.toStdString());
    return goesOn(work, backup);
}

}  // namespace put_back_copy_detail

QString putBackPart(const QString& records) { return records + QStringLiteral(".putting-back"); }

void removePutBackPart(const QString& records)
{
    const QString part = putBackPart(records);
    QStringList left = besideOf(part);
    left << part << part + QStringLiteral(".opening");
    for (const QString& each : left)
        QFile::remove(each);
}

Result<bool> makePutBackPart(const QString& backup, const QString& records, const AuditEntry& entry,
                             const QDateTime& at, LongWork& work)
{
    removePutBackPart(records);
    auto done = put_back_copy_detail::made(backup, putBackPart(records), entry, at, work);
    if (!done)
        removePutBackPart(records);
    return done;
}

}  // namespace fb
