// One SQLite file that keeps what the program must not lose. Written through to the disk before a
// commit returns (write-ahead log, synchronous full), opened by one thread and used by that one. A
// program opens a file for writing once at a time: any handle but SQLite's own that is closed would take
// SQLite's locks along.
//
// Its own words for SQL are plain values, so that nothing of the database leaves this room. Faults name the
// file: StoreFull, StoreBusy, StoreReadOnly, StoreNotWritable (any other way to it), StoreBroken.
#pragma once

#include <QDateTime>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariant>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "app/store/file_lock.h"
#include "app/store/migrations.h"
#include "core/basics/problem.h"

namespace fb {

struct Statement {
    QString sql;
    QVariantList values{};  // one for each ? in it
};

// What a file is for.
struct StoreKind {
    std::span<const Migration> steps = migrations();
    int applicationId = 0;  // stands in the file's header; 0: none
    bool alone = false;     // one program at a time has it open to write
};

class Store {
public:
    struct Opened;
    // Makes the file where there is none, and brings an older one up to date. A file that is damaged is
    // put aside, a fresh one opened and that told. StoreTooNew and NotAStore (another program's), the file
    // untouched; StoreBusy where another program has one that is to be alone; StoreBroken, where it could
    // not even be put aside. May wait for the disk: never on the window's thread.
    // `alone`: what a store of this file gave that was closed a moment ago.
    [[nodiscard]] static Result<Opened> open(const QString& file, const StoreKind& kind = {},
                                             std::shared_ptr<FileLock> alone = nullptr);
    // To read only, beside whoever writes it: nothing is made, checked as a whole, mended or put aside.
    // FileNotReadable, NotAStore, StoreTooNew, StoreBroken.
    [[nodiscard]] static Result<std::unique_ptr<Store>> openToRead(const QString& file,
                                                                   const StoreKind& kind);

    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;
    ~Store();

    // All of it or none; on disk once this returned true.
    [[nodiscard]] Result<bool> commit(const std::vector<Statement>& statements);
    // The same for work that also reads: its own fault undoes all of it.
    [[nodiscard]] Result<bool> transaction(const std::function<Result<bool>()>& work);
    // What is read in it is of one moment, whatever is written meanwhile.
    [[nodiscard]] Result<bool> snapshot(const std::function<Result<bool>()>& work) const;

    [[nodiscard]] Result<bool> change(const Statement& statement);
    [[nodiscard]] Result<std::vector<QVariantList>> rows(const Statement& query) const;
    // Row by row, for more than memory should hold, until `take` returns false.
    using Take = std::function<bool(const QSqlQuery&)>;
    [[nodiscard]] Result<bool> each(const Statement& query, const Take& take) const;

    // SQLite's own quick check; StoreBroken otherwise. Reads all of it.
    [[nodiscard]] Result<bool> isWhole() const;

    [[nodiscard]] const QString& file() const { return m_file; }
    // Where one program is to be alone: no other opens the file as long as this is kept, though the store is
    // closed meanwhile.
    [[nodiscard]] std::shared_ptr<FileLock> alone() const { return m_alone; }

private:
    explicit Store(QString file);

    [[nodiscard]] Result<bool> begin(bool readOnly);
    [[nodiscard]] Result<bool> examine(const StoreKind& kind) const;
    [[nodiscard]] Result<bool> isOurs(const StoreKind& kind) const;
    [[nodiscard]] Result<bool> migrate(const StoreKind& kind);
    [[nodiscard]] static Result<std::unique_ptr<Store>> attempt(const QString& file, const StoreKind& kind);
    [[nodiscard]] Result<QVariant> single(const char* sql) const;
    struct Ready {
        QSqlQuery query;
        int columns = 0;
    };
    [[nodiscard]] Result<Ready*> started(const Statement& statement) const;
    [[nodiscard]] Result<bool> walked(QSqlQuery& query, const Take& take) const;

    QString m_file;
    QString m_name;                            // of the connection
    mutable std::map<QString, Ready> m_ready;  // prepared once, by their words
    std::shared_ptr<FileLock> m_alone;
};

struct Store::Opened {
    std::unique_ptr<Store> store;
    std::optional<Fault> told;  // StoreBroken: what was there is put aside
};

}  // namespace fb
