// One SQLite file that keeps what the program must not lose. Written through to the disk before a
// commit returns (write-ahead log, synchronous full), opened by one thread and used by that one. A
// program opens a file once at a time: any other handle that is closed would take SQLite's locks along.
//
// Its own words for SQL are plain values, so that nothing of the database leaves this room.
#pragma once

#include <QDateTime>
#include <QSqlDatabase>
#include <QString>
#include <QVariant>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "app/store/migrations.h"
#include "core/basics/problem.h"

namespace fb {

struct Statement {
    QString sql;
    QVariantList values{};  // one for each ? in it
};

class Store {
public:
    struct Opened;
    // Makes the file where there is none, and brings an older one up to date. A file that is damaged is
    // put aside, a fresh one opened and that told. Faults: StoreNotWritable; StoreTooNew, the file
    // untouched; StoreBroken, where it could not even be put aside. May wait for the disk: never on the
    // window's thread.
    [[nodiscard]] static Result<Opened> open(const QString& file,
                                             std::span<const Migration> steps = migrations());

    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;
    ~Store();

    // All of it or none; on disk once this returned true. StoreNotWritable (full, locked, read-only) or
    // StoreBroken otherwise.
    [[nodiscard]] Result<bool> commit(const std::vector<Statement>& statements);
    [[nodiscard]] Result<std::vector<QVariantList>> rows(const Statement& query) const;

    [[nodiscard]] const QString& file() const { return m_file; }

private:
    explicit Store(QString file);

    [[nodiscard]] Result<bool> begin(bool readOnly);
    [[nodiscard]] Result<bool> examine(std::size_t newest) const;
    [[nodiscard]] Result<bool> migrate(std::span<const Migration> steps);
    [[nodiscard]] Result<std::vector<QVariantList>> run(const Statement& statement) const;

    QString m_file;
    QString m_name;  // of the connection
};

struct Store::Opened {
    std::unique_ptr<Store> store;
    std::optional<Fault> told;  // StoreBroken: what was there is put aside
};

}  // namespace fb
