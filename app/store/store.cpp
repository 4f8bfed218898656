#include "app/store/store.h"

#include <QFile>
#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <atomic>

#include "app/store/file_lock.h"
#include "app/store/store_file.h"

namespace fb {

namespace store_detail {

constexpr int kBusyMs = 3000;   // how long another program's write is waited for
constexpr int kOpenMs = 10000;  // and another program's opening

// Result codes of SQLite (sqlite.org/rescode.html); the low byte of an extended code.
constexpr int kError = 1;
constexpr int kReadOnly = 8;
constexpr int kCorrupt = 11;
constexpr int kConstraint = 19;
constexpr int kMismatch = 20;
constexpr int kNotADatabase = 26;

int codeOf(const QSqlError& error) { return error.nativeErrorCode().toInt() & 0xff; }

// What lies in the file is wrong, or the way to it is.
Fault faultOf(const QSqlError& error, const QString& file)
{
    switch (codeOf(error)) {
    case kError:
    case kCorrupt:
    case kConstraint:
    case kMismatch:
    case kNotADatabase: return {Problem::StoreBroken, file.toStdString(), {}, 0.0, 0.0};
    default: return {Problem::StoreNotWritable, file.toStdString(), {}, 0.0, 0.0};
    }
}

QString freshName()
{
    static std::atomic_int count{0};
    return QStringLiteral("store-%1").arg(++count);
}

// SQLite takes a file of a few strange bytes for an empty one and would write over them.
bool isForeign(const QString& name)
{
    constexpr QByteArrayView kMagic("SQLite format 3\0", 16);
    QFile file(name);
    return file.size() > 0 && file.open(QIODevice::ReadOnly) && file.read(kMagic.size()) != kMagic;
}

Statement plain(const char* sql) { return {QString::fromLatin1(sql)}; }

}  // namespace store_detail

using namespace store_detail;

Store::Store(QString file) : m_file(std::move(file)), m_name(freshName()) {}

Store::~Store() { QSqlDatabase::removeDatabase(m_name); }

Result<bool> Store::begin(bool readOnly)
{
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name);
    database.setDatabaseName(m_file);
    QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(kBusyMs);
    if (readOnly)
        options += QStringLiteral(";QSQLITE_OPEN_READONLY");
    database.setConnectOptions(options);
    if (!database.open())
        return fault(Problem::StoreNotWritable, m_file.toStdString());
    if (readOnly)
        return true;
    for (const char* pragma :
         {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON"}) {
        if (const auto done = run(plain(pragma)); !done)
            return tl::unexpected(done.error());
    }
    return true;
}

Result<std::vector<QVariantList>> Store::run(const Statement& statement) const
{
    QSqlQuery query(QSqlDatabase::database(m_name, false));
    query.setForwardOnly(true);
    if (!query.prepare(statement.sql))
        return tl::unexpected(faultOf(query.lastError(), m_file));
    for (const QVariant& value : statement.values)
        query.addBindValue(value);
    if (!query.exec())
        return tl::unexpected(faultOf(query.lastError(), m_file));
    std::vector<QVariantList> rows;
    while (query.next()) {
        QVariantList row;
        for (int i = 0; i < query.record().count(); ++i)
            row << query.value(i);
        rows.push_back(row);
    }
    if (query.lastError().isValid())
        return tl::unexpected(faultOf(query.lastError(), m_file));
    return rows;
}

Result<std::vector<QVariantList>> Store::rows(const Statement& query) const { return run(query); }

Result<bool> Store::commit(const std::vector<Statement>& statements)
{
    // Immediate: whoever writes waits here, and not in the middle.
    if (const auto begun = run(plain("BEGIN IMMEDIATE")); !begun)
        return tl::unexpected(begun.error());
    const auto undo = [this](const Fault& why) -> Result<bool> {
        static_cast<void>(run(plain("ROLLBACK")));
        return tl::unexpected(why);
    };
    for (const Statement& statement : statements) {
        if (const auto done = run(statement); !done)
            return undo(done.error());
    }
    if (const auto done = run(plain("COMMIT")); !done)
        return undo(done.error());
    return true;
}

// Looks without touching: readable, whole, and no newer than this program.
Result<bool> Store::examine(std::size_t newest) const
{
    const auto check = run(plain("PRAGMA quick_check(1)"));
    if (!check)
        return tl::unexpected(check.error());
    if (check->empty() || check->front().front().toString() != QLatin1String("ok"))
        return fault(Problem::StoreBroken, m_file.toStdString());
    const auto version = run(plain("PRAGMA user_version"));
    if (!version)
        return tl::unexpected(version.error());
    if (version->front().front().toULongLong() > newest)
        return fault(Problem::StoreTooNew, m_file.toStdString());
    return true;
}

Result<bool> Store::migrate(std::span<const Migration> steps)
{
    const auto version = run(plain("PRAGMA user_version"));
    if (!version)
        return tl::unexpected(version.error());
    for (auto done = version->front().front().toULongLong(); done < steps.size(); ++done) {
        std::vector<Statement> statements;
        for (const QString& sql : steps[done].statements)
            statements.push_back({sql});
        statements.push_back({QStringLiteral("PRAGMA user_version = %1").arg(done + 1)});
        if (const auto written = commit(statements); !written)
            return written;
    }
    return true;
}

Result<Store::Opened> Store::open(const QString& file, std::span<const Migration> steps)
{
    if (const auto made = makeOwnerOnly(file); !made)
        return tl::unexpected(made.error());
    // One start at a time looks, puts aside and migrates.
    FileLock lock(file + QStringLiteral(".opening"));
    if (!lock.take(kOpenMs))
        return fault(Problem::StoreNotWritable, file.toStdString());
    const auto attempt = [&]() -> Result<std::unique_ptr<Store>> {
        if (const auto made = makeOwnerOnly(file); !made)
            return tl::unexpected(made.error());
        if (isForeign(file))
            return fault(Problem::StoreBroken, file.toStdString());
        {
            Store probe(file);
            if (const auto begun = probe.begin(true); !begun)
                return tl::unexpected(begun.error());
            // What only a writer can mend (a log cut short by a crash) is mended below.
            const auto fine = probe.examine(steps.size());
            if (!fine && fine.error().problem != Problem::StoreNotWritable)
                return tl::unexpected(fine.error());
        }
        std::unique_ptr<Store> store(new Store(file));
        const auto ready = store->begin(false)
                               .and_then([&](bool) { return store->examine(steps.size()); })
                               .and_then([&](bool) { return store->migrate(steps); });
        if (!ready)
            return tl::unexpected(ready.error());
        return store;
    };
    auto store = attempt();
    if (store)
        return Opened{std::move(*store), std::nullopt};
    if (store.error().problem != Problem::StoreBroken)
        return tl::unexpected(store.error());
    const auto aside = putAside(file, QDateTime::currentDateTime());
    if (!aside)
        return tl::unexpected(aside.error());
    store = attempt();
    if (!store)
        return tl::unexpected(store.error());
    return Opened{std::move(*store),
                  Fault{Problem::StoreBroken, file.toStdString(), aside->toStdString(), 0.0, 0.0}};
}

}  // namespace fb
