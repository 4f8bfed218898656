// From a file of any state to a store: see Store::open.
#include <QFile>
#include <QFileInfo>

#include "app/store/store.h"
#include "app/store/store_file.h"

namespace fb {

namespace store_open_detail {

constexpr int kOpenMs = 10000;  // how long another program's opening is waited for
constexpr int kAloneMs = 1000;  // and its end, where one is to be alone

// SQLite takes a file of a few strange bytes for an empty one and would write over them.
bool isForeign(const QString& name)
{
    constexpr QByteArrayView kMagic("SQLite format 3\0", 16);
    QFile file(name);
    return file.size() > 0 && file.open(QIODevice::ReadOnly) && file.read(kMagic.size()) != kMagic;
}

bool isFinal(const Fault& fault)
{
    return fault.problem == Problem::StoreBroken || fault.problem == Problem::StoreTooNew ||
           fault.problem == Problem::NotAStore;
}

Statement sql(const char* words) { return {QString::fromLatin1(words)}; }

Result<bool> taken(FileLock& lock, int milliseconds, const QString& file)
{
    if (!lock.isThere())
        return fault(Problem::StoreNotWritable, file.toStdString());
    if (!lock.take(milliseconds))
        return fault(Problem::StoreBusy, file.toStdString());
    return true;
}

}  // namespace store_open_detail

using namespace store_open_detail;

Result<QVariant> Store::single(const char* name) const
{
    return rows(sql(name)).map(
        [](const auto& read) { return read.empty() ? QVariant() : read.front().front(); });
}

// A file without tables is anybody's.
Result<bool> Store::isOurs(const StoreKind& kind) const
{
    const auto id = single("PRAGMA application_id");
    const auto tables = single("SELECT count(*) FROM sqlite_master");
    if (!id || !tables)
        return tl::unexpected(id ? tables.error() : id.error());
    return kind.applicationId == 0 || id->toInt() == kind.applicationId ||
           (id->toInt() == 0 && tables->toInt() == 0);
}

Result<bool> Store::isWhole() const
{
    const auto check = single("PRAGMA quick_check(1)");
    if (!check)
        return tl::unexpected(check.error());
    if (check->toString() != QLatin1String("ok"))
        return fault(Problem::StoreBroken, m_file.toStdString());
    return true;
}

// Looks without touching: readable, this program's, and no newer than it.
Result<bool> Store::examine(const StoreKind& kind) const
{
    const auto ours = isOurs(kind);
    if (!ours)
        return ours;
    if (!*ours)
        return fault(Problem::NotAStore, m_file.toStdString());
    const auto version = single("PRAGMA user_version");
    if (!version)
        return tl::unexpected(version.error());
    if (version->toULongLong() > kind.steps.size())
        return fault(Problem::StoreTooNew, m_file.toStdString());
    return true;
}

Result<bool> Store::migrate(const StoreKind& kind)
{
    const auto version = single("PRAGMA user_version");
    if (!version)
        return tl::unexpected(version.error());
    for (auto done = version->toULongLong(); done < kind.steps.size(); ++done) {
        std::vector<Statement> statements;
        for (const auto* words : {&kind.steps[done].statements, &kind.steps[done].forSqlite}) {
            for (const QString& one : *words)
                statements.push_back({one});
        }
        if (kind.applicationId != 0)
            statements.push_back({QStringLiteral("PRAGMA application_id = %1").arg(kind.applicationId)});
        statements.push_back({QStringLiteral("PRAGMA user_version = %1").arg(done + 1)});
        if (const auto written = commit(statements); !written)
            return written;
    }
    m_ready.clear();
    return true;
}

Result<std::unique_ptr<Store>> Store::attempt(const QString& file, const StoreKind& kind)
{
    if (const auto made = makeOwnerOnly(file); !made)
        return tl::unexpected(made.error());
    if (isForeign(file))
        return fault(Problem::StoreBroken, file.toStdString());
    Result<bool> fine = true;
    {
        Store probe(file);
        if (const auto begun = probe.begin(true); !begun)
            return tl::unexpected(begun.error());
        // What only a writer can mend (a log cut short by a crash) is mended below.
        fine = probe.isWhole().and_then([&](bool) { return probe.examine(kind); });
        if (!fine && isFinal(fine.error()))
            return tl::unexpected(fine.error());
    }
    std::unique_ptr<Store> store(new Store(file));
    const auto ready = store->begin(false)
                           .and_then([&](bool) { return fine ? fine : store->isWhole(); })
                           .and_then([&](bool) { return store->examine(kind); })
                           .and_then([&](bool) { return store->migrate(kind); });
    if (!ready)
        return tl::unexpected(ready.error());
    return store;
}

Result<Store::Opened> Store::open(const QString& file, const StoreKind& kind, std::shared_ptr<FileLock> alone)
{
    if (const auto made = makeOwnerOnly(file); !made)
        return tl::unexpected(made.error());
    if (kind.alone && !alone) {
        alone = std::make_shared<FileLock>(file + QStringLiteral(".held"));
        if (const auto held = taken(*alone, kAloneMs, file); !held)
            return tl::unexpected(held.error());
    }
    // One start at a time looks, puts aside and migrates.
    FileLock lock(file + QStringLiteral(".opening"));
    if (const auto held = taken(lock, kOpenMs, file); !held)
        return tl::unexpected(held.error());
    auto store = attempt(file, kind);
    std::optional<Fault> told;
    if (!store && store.error().problem == Problem::StoreBroken) {
        const auto aside = putAside(file, QDateTime::currentDateTime());
        if (!aside)
            return tl::unexpected(aside.error());
        told = Fault{Problem::StoreBroken, file.toStdString(), aside->toStdString(), 0.0, 0.0};
        store = attempt(file, kind);
    }
    if (!store)
        return tl::unexpected(store.error());
    (*store)->m_alone = std::move(alone);
    return Opened{std::move(*store), told};
}

Result<std::unique_ptr<Store>> Store::openToRead(const QString& file, const StoreKind& kind)
{
    if (!QFileInfo(file).isFile() || !QFileInfo(file).isReadable())
        return fault(Problem::FileNotReadable, file.toStdString());
    std::unique_ptr<Store> store(new Store(file));
    const auto fine = store->begin(true).and_then([&](bool) { return store->examine(kind); });
    if (!fine)
        return tl::unexpected(fine.error());
    const auto version = store->single("PRAGMA user_version");
    if (!version)
        return tl::unexpected(version.error());
    if (version->toULongLong() == 0)  // an empty file, or a few strange bytes
        return fault(Problem::NotAStore, file.toStdString());
    return store;
}

}  // namespace fb
