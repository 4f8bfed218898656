// An answer written through SQLite's own C interface, statement by statement: what the keeper is measured
// against.
#pragma once

#include <sqlite3.h>

#include <QFile>
#include <chrono>
#include <cstdio>
#include <cstdlib>

#include "tests/support/many_records.h"

namespace fb::test {

// The same rows by hand: event, answer and the entry of the log, its hash computed too.
class AnswerByHand {
public:
    explicit AnswerByHand(const QString& file)
    {
        {
            ManyRecords made(file);
            made.fill(1, 1);
            m_end = ManyRecords::must(chainEnd(made.store()));
        }
        check(sqlite3_open(QFile::encodeName(file).constData(), &m_db));
        for (const char* pragma :
             {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON",
              "PRAGMA secure_delete = ON", "PRAGMA trusted_schema = OFF"})
            check(sqlite3_exec(m_db, pragma, nullptr, nullptr, nullptr));
        check(sqlite3_exec(
            m_db,
            "INSERT INTO check_off SELECT 2, student_id, sheet_key, 2, seed, 0, policy_hash, "
            "plate_hashes, program_version, 3.75, 0, begun_at, 0, 0, NULL, NULL, NULL, NULL, NULL, "
            "NULL, NULL, NULL, NULL, NULL FROM check_off",
            nullptr, nullptr, nullptr));
        prepare(m_event, "INSERT INTO check_off_event VALUES (2, ?, 'answered', ?, ?)");
        const QByteArray marks = QByteArray(", ?").repeated(answerWords().size() + answerNumbers().size());
        prepare(m_answer, "INSERT INTO answer (check_off_id, item, event_seq, answered_at, " +
                              answerColumnNames().toLatin1() + ") VALUES (2, ?, ?, ?" + marks + ")");
        prepare(m_audit, "INSERT INTO audit VALUES (?, ?, 'student', 'ANSWER', 'check-off-2', ?, ?)");
        prepare(m_begin, "BEGIN IMMEDIATE");
        prepare(m_commit, "COMMIT");
    }
    AnswerByHand(const AnswerByHand&) = delete;
    AnswerByHand& operator=(const AnswerByHand&) = delete;
    ~AnswerByHand()
    {
        for (sqlite3_stmt* one : {m_event, m_answer, m_audit, m_begin, m_commit})
            sqlite3_finalize(one);
        sqlite3_close(m_db);
    }

    double answer(const CheckOffEvent& event)
    {
        const auto begin = std::chrono::steady_clock::now();
        const QByteArray time = isoText(QDateTime::currentDateTimeUtc()).toLatin1();
        const QByteArray text = QByteArray::fromStdString(textOf(event));
        ++m_seq;
        run(m_begin, {});
        run(m_event, {m_seq, time, text});
        const QVariantList columns = answerColumns(*event.answer);
        run(m_answer, QVariantList{m_seq, m_seq, time} + columns);
        const AuditEntry entry{m_end.length + 1,
                               QString::fromLatin1(time),
                               QStringLiteral("student"),
                               QStringLiteral("ANSWER"),
                               QStringLiteral("check-off-2"),
                               answerDetail(event.answer->item, columns, text)};
        m_end = {entry.seq, chained(m_end.head, recordOf(entry))};
        run(m_audit, {entry.seq, time, entry.detail, m_end.head});
        run(m_commit, {});
        return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
    }

private:
    void check(int code) const
    {
        if (code == SQLITE_OK || code == SQLITE_DONE)
            return;
        std::fprintf(stderr, "%s\n", sqlite3_errmsg(m_db));
        std::abort();
    }
    void prepare(sqlite3_stmt*& statement, const QByteArray& sql)
    {
        check(sqlite3_prepare_v2(m_db, sql.constData(), -1, &statement, nullptr));
    }
    void run(sqlite3_stmt* statement, const QVariantList& values)
    {
        for (int i = 0; i < values.size(); ++i)
            bind(statement, i + 1, values[i]);
        check(sqlite3_step(statement));
        sqlite3_reset(statement);
    }
    static void bind(sqlite3_stmt* statement, int at, const QVariant& value)
    {
        if (value.isNull()) {
            sqlite3_bind_null(statement, at);
        } else if (value.typeId() == QMetaType::Double) {
            sqlite3_bind_double(statement, at, value.toDouble());
        } else if (value.typeId() == QMetaType::QString || value.typeId() == QMetaType::QByteArray) {
            const QByteArray utf8 = value.toString().toUtf8();
            sqlite3_bind_text(statement, at, utf8.constData(), static_cast<int>(utf8.size()),
                              SQLITE_TRANSIENT);
        } else {
            sqlite3_bind_int64(statement, at, value.toLongLong());
        }
    }

    sqlite3* m_db = nullptr;
    sqlite3_stmt *m_event = nullptr, *m_answer = nullptr, *m_audit = nullptr, *m_begin = nullptr,
                 *m_commit = nullptr;
    ChainEnd m_end;
    int m_seq = 0;
};

}  // namespace fb::test
