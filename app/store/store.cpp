#include "app/store/store.h"

#include <QSqlError>
#include <QSqlRecord>
#include <atomic>

namespace fb {

namespace store_detail {

constexpr int kBusyMs = 3000;  // how long another program's write is waited for

// Result codes of SQLite (sqlite.org/rescode.html); the low byte of an extended code.
enum Code {
    kError = 1,
    kBusy = 5,
    kLocked = 6,
    kReadOnly = 8,
    kCorrupt = 11,
    kFull = 13,
    kConstraint = 19,
    kMismatch = 20,
    kNotADatabase = 26
};

Problem problemOf(const QSqlError& error)
{
    constexpr int kLowByte = 0xff;
    switch (error.nativeErrorCode().toInt() & kLowByte) {
    // What lies in the file is wrong, or the way to it is.
    case kError:
    case kCorrupt:
    case kConstraint:
    case kMismatch:
    case kNotADatabase: return Problem::StoreBroken;
    case kBusy:
    case kLocked: return Problem::StoreBusy;
    case kFull: return Problem::StoreFull;
    case kReadOnly: return Problem::StoreReadOnly;
    default: return Problem::StoreNotWritable;
    }
}

tl::unexpected<Fault> faultOf(const QSqlError& error, const QString& file)
{
    return fault(problemOf(error), file.toStdString());
}

QString freshName()
{
    static std::atomic_int count{0};
    return QStringLiteral("store-%1").arg(++count);
}

// By names: a value bound by its place makes a name of the place anew each time, which takes as long as to
// write the row.
const QString& nameOfPlace(std::size_t place)
{
    static thread_local std::vector<QString> names;
    while (names.size() <= place)
        names.push_back(QStringLiteral(":p%1").arg(names.size()));
    return names[place];
}

QString withNames(const QString& sql)
{
    QString named;
    std::size_t place = 0;
    for (const QChar c : sql)
        named += c == u'?' ? nameOfPlace(place++) : QString(c);
    return named;
}

Statement plain(const char* sql) { return {QString::fromLatin1(sql)}; }

}  // namespace store_detail

using namespace store_detail;

Store::Store(QString file) : m_file(std::move(file)), m_name(freshName()) {}

Store::~Store()
{
    m_ready.clear();
    QSqlDatabase::removeDatabase(m_name);
}

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
        return change(plain("PRAGMA trusted_schema = OFF"));
    for (const char* pragma :
         {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON",
          "PRAGMA secure_delete = ON", "PRAGMA trusted_schema = OFF"}) {
        if (const auto done = change(plain(pragma)); !done)
            return done;
    }
    return true;
}

// A query that is in use and its words again cannot meet: what is read row by row is read with words of
// its own.
Result<Store::Ready*> Store::started(const Statement& statement) const
{
    auto ready = m_ready.find(statement.sql);
    const bool isNew = ready == m_ready.end();
    if (isNew) {
        QSqlQuery query(QSqlDatabase::database(m_name, false));
        query.setForwardOnly(true);
        if (!query.prepare(withNames(statement.sql)))
            return faultOf(query.lastError(), m_file);
        ready = m_ready.emplace(statement.sql, Ready{std::move(query)}).first;
    }
    QSqlQuery& query = ready->second.query;
    for (qsizetype i = 0; i < statement.values.size(); ++i)
        query.bindValue(nameOfPlace(static_cast<std::size_t>(i)), statement.values[i]);
    if (!query.exec()) {
        const auto why = faultOf(query.lastError(), m_file);
        m_ready.erase(ready);
        return why;
    }
    if (isNew)
        ready->second.columns = query.record().count();
    return &ready->second;
}

Result<bool> Store::walked(QSqlQuery& query, const Take& take) const
{
    bool goesOn = true;
    while (goesOn && query.next())
        goesOn = take(query);
    const QSqlError error = query.lastError();
    query.finish();
    if (error.isValid())
        return faultOf(error, m_file);
    return true;
}

Result<bool> Store::each(const Statement& query, const Take& take) const
{
    return started(query).and_then([&](Ready* ready) { return walked(ready->query, take); });
}

Result<std::vector<QVariantList>> Store::rows(const Statement& query) const
{
    std::vector<QVariantList> rows;
    const auto read = started(query).and_then([&](Ready* ready) {
        return walked(ready->query, [&](const QSqlQuery& row) {
            QVariantList values;
            for (int i = 0; i < ready->columns; ++i)
                values << row.value(i);
            rows.push_back(std::move(values));
            return true;
        });
    });
    if (!read)
        return tl::unexpected(read.error());
    return rows;
}

Result<bool> Store::change(const Statement& statement)
{
    return each(statement, [](const QSqlQuery&) { return true; });
}

Result<bool> Store::transaction(const std::function<Result<bool>()>& work)
{
    // Immediate: whoever writes waits here, and not in the middle.
    if (const auto begun = change(plain("BEGIN IMMEDIATE")); !begun)
        return begun;
    auto done = work();
    if (done)
        done = change(plain("COMMIT"));
    if (!done)
        static_cast<void>(change(plain("ROLLBACK")));
    return done;
}

Result<bool> Store::snapshot(const std::function<Result<bool>()>& work) const
{
    const auto none = [](const QSqlQuery&) { return true; };
    if (const auto begun = each(plain("BEGIN"), none); !begun)
        return begun;
    const auto done = work();
    static_cast<void>(each(plain("ROLLBACK"), none));
    return done;
}

Result<bool> Store::commit(const std::vector<Statement>& statements)
{
    return transaction([&]() -> Result<bool> {
        for (const Statement& statement : statements) {
            if (const auto done = change(statement); !done)
                return done;
        }
        return true;
    });
}

}  // namespace fb
