#include "app/store/record_verify.h"

#include <QHash>
#include <algorithm>

#include "app/store/audit_chain.h"
#include "app/store/record_answers.h"
#include "app/store/record_check_off.h"
#include "app/store/record_signing.h"
#include "app/store/record_values.h"

namespace fb {

namespace record_verify_detail {

// What the log tells of one check-off.
struct ToldOf {
    qint64 begun = 0;  // entry
    qint64 signedAt = 0;
    QByteArray signedHead;
    QString signedDetail;
    std::vector<std::pair<qint64, QString>> answers;  // entry, and its detail
    bool isSeen = false;                              // in the events
};

// What is there of it.
struct ThereIs {
    SignedLine line;
    bool isClosed = false;
    qint64 chainLength = 0;
    QByteArray chainHead;
};

class Verifier {
public:
    Verifier(const Store& store, LongWork& work, int fromPercent, int toPercent)
        : m_store(store),
          m_work(work),
          m_from(fromPercent),
          m_part(toPercent - fromPercent)
    {
    }

    Result<Verified> all()
    {
        const auto done = countWhole().and_then([&](bool) { return walkLog(); }).and_then([&](bool) {
            return readCheckOffs();
        });
        const auto ended =
            done.and_then([&](bool) { return walkEvents(); }).and_then([&](bool) { return tellMissing(); });
        if (!ended)
            return tl::unexpected(ended.error());
        m_found.whole = m_found.whole && !m_work.cancelled;
        return m_found;
    }

private:
    // Counts one row; false once it is cancelled.
    bool goesOn()
    {
        ++m_rows;
        const qint64 total = std::max<qint64>(1, m_total);
        m_work.percent = m_from + static_cast<int>(m_part * std::min(m_rows, total) / total);
        return !m_work.cancelled;
    }

    Result<bool> broken(const QString& what)
    {
        return fault(Problem::ChainBroken, m_store.file().toStdString(), what.toStdString());
    }
    // A row's verdict inside a walk: the first one stays.
    bool breaks(qint64 entry)
    {
        if (!m_broken)
            m_broken = QString::number(entry);
        return false;
    }
    Result<bool> walked(const Result<bool>& walk) { return walk && m_broken ? broken(*m_broken) : walk; }

    Result<bool> countWhole()
    {
        const auto check = m_store.rows({QStringLiteral("PRAGMA integrity_check(1)")});
        const auto keys = m_store.rows({QStringLiteral("PRAGMA foreign_key_check")});
        const auto counts = m_store.rows(
            {QStringLiteral("SELECT (SELECT count(*) FROM audit) + (SELECT count(*) FROM check_off_event), "
                            "(SELECT count(*) FROM check_off WHERE closed_at IS NOT NULL), "
                            "(SELECT count(*) FROM answer)")});
        if (!check || !keys || !counts)
            return tl::unexpected(!check ? check.error() : !keys ? keys.error() : counts.error());
        m_found.whole = check->front().front().toString() == QLatin1String("ok") && keys->empty();
        m_total = counts->front()[0].toLongLong();
        m_found.checkOffs = counts->front()[1].toLongLong();
        m_found.answers = counts->front()[2].toLongLong();
        return true;
    }

    Result<bool> walkLog()
    {
        QByteArray head = chainStart();
        const auto read = m_store.each(
            {QStringLiteral("SELECT seq, at, actor, event, object, detail, hash FROM audit ORDER BY seq")},
            [&](const QSqlQuery& row) {
                const AuditEntry entry{row.value(0).toLongLong(), row.value(1).toString(),
                                       row.value(2).toString(),   row.value(3).toString(),
                                       row.value(4).toString(),   row.value(5).toString()};
                head = chained(head, recordOf(entry));
                if (entry.seq != m_found.entries + 1 || head != row.value(6).toByteArray())
                    return breaks(m_found.entries + 1);
                m_found.entries = entry.seq;
                note(entry, head);
                return goesOn();
            });
        m_found.head = QString::fromLatin1(head);
        return walked(read);
    }

    void note(const AuditEntry& entry, const QByteArray& head)
    {
        const bool tells = entry.event == u"BEGIN" || entry.event == u"ANSWER" || entry.event == u"SIGN";
        if (!tells)
            return;
        ToldOf& told = m_told[entry.object.section(u'-', -1).toLongLong()];
        if (entry.event == u"BEGIN") {
            told.begun = entry.seq;
        } else if (entry.event == u"ANSWER") {
            told.answers.emplace_back(entry.seq, entry.detail);
        } else {
            told.signedAt = entry.seq;
            told.signedHead = head;
            told.signedDetail = entry.detail;
        }
    }

    Result<bool> readCheckOffs()
    {
        return m_store.each(
            {QStringLiteral(
                "SELECT check_off_id, student_id, sheet_key, attempt, outcome, percent, rating, "
                "remark, first_assessor_id, second_assessor_id, closed_at, chain_length, chain_head "
                "FROM check_off")},
            [&](const QSqlQuery& row) {
                ThereIs& there = m_there[row.value(0).toLongLong()];
                there.line = {row.value(1).toString(), row.value(2).toString(),   row.value(3).toInt(),
                              row.value(4).toString(), row.value(5).toDouble(),   row.value(6).toInt(),
                              row.value(7).toString(), row.value(8).toLongLong(), row.value(9).toLongLong()};
                there.isClosed = !row.value(10).isNull();
                there.chainLength = row.value(11).toLongLong();
                there.chainHead = row.value(12).toByteArray();
                return !m_work.cancelled;
            });
    }

    Result<bool> walkEvents()
    {
        const QString sql =
            QStringLiteral("SELECT e.check_off_id, e.kind, CAST(e.event_text AS BLOB), a.item, %1 FROM "
                           "check_off_event e "
                           "LEFT JOIN answer a ON a.check_off_id = e.check_off_id AND a.event_seq = e.seq "
                           "AND e.kind = 'answered' ORDER BY e.check_off_id, e.seq")
                .arg(answerColumnNames());
        const auto read = m_store.each({sql}, [&](const QSqlQuery& row) {
            const qint64 checkOff = row.value(0).toLongLong();
            if (checkOff != m_current && !endCheckOff())
                return false;
            m_current = checkOff;
            const QByteArray text = row.value(2).toByteArray();
            m_texts += text + '\n';
            const bool isAnswered = row.value(1).toString() == u"answered";
            return (!isAnswered || isAnswer(row, text)) && goesOn();
        });
        if (read && !m_broken && !m_work.cancelled)
            static_cast<void>(endCheckOff());
        return walked(read);
    }

    // Whether the row and the text of an answer are those the log tells of.
    bool isAnswer(const QSqlQuery& row, const QByteArray& text)
    {
        constexpr int kFirst = 4;
        const ToldOf& told = m_told[m_current];
        const std::size_t item = m_answers++;
        if (item >= told.answers.size())
            return breaks(told.begun);
        QVariantList columns;
        for (qsizetype i = 0; i < answerWords().size() + answerNumbers().size(); ++i)
            columns << row.value(kFirst + static_cast<int>(i));
        const auto& [entry, detail] = told.answers[item];
        const bool same =
            !row.value(3).isNull() && detail == answerDetail(row.value(3).toInt(), columns, text);
        return same ? true : breaks(entry);
    }

    // All events of one check-off have been seen.
    bool endCheckOff()
    {
        const auto told = m_told.find(m_current);
        const auto there = m_there.constFind(m_current);
        const QByteArray hash = sha256(std::exchange(m_texts, {}));
        const std::size_t answers = std::exchange(m_answers, 0);
        if (m_current == 0)
            return true;
        if (told == m_told.end() || there == m_there.cend())
            return breaks(told == m_told.end() ? m_found.entries : told->begun);
        told->isSeen = true;
        if (answers != told->answers.size())
            return breaks(told->answers.empty() ? told->begun : told->answers.back().first);
        if (there->isClosed != (told->signedAt != 0))
            return breaks(std::max(told->signedAt, told->begun));
        if (!there->isClosed)
            return true;
        const SignedLine& line = there->line;
        const bool same = told->signedDetail == signedDetail(line, hash) &&
                          told->signedAt == there->chainLength && told->signedHead == there->chainHead;
        return same ? true : breaks(told->signedAt);
    }

    // What the log tells of and is not there any more, and what is there that it never told of. A check-off
    // may have been begun and nothing more.
    Result<bool> tellMissing()
    {
        if (m_work.cancelled)
            return true;
        std::optional<qint64> first;
        for (auto told = m_told.cbegin(); told != m_told.cend(); ++told) {
            const bool isBare = told->signedAt == 0 && told->answers.empty();
            const qint64 entry = std::max(told->begun, told->signedAt);
            if (!m_there.contains(told.key()) || (!told->isSeen && !isBare))
                first = std::min(entry, first.value_or(entry));
        }
        for (auto there = m_there.cbegin(); there != m_there.cend() && !first; ++there) {
            if (!m_told.contains(there.key()))
                first = m_found.entries;
        }
        return first ? broken(QString::number(*first)) : Result<bool>(true);
    }

    const Store& m_store;
    LongWork& m_work;
    const int m_from, m_part;  // of the work, in percent
    Verified m_found;
    QHash<qint64, ToldOf> m_told;
    QHash<qint64, ThereIs> m_there;
    std::optional<QString> m_broken;
    qint64 m_rows = 0, m_total = 0;
    // of the check-off whose events are being seen
    qint64 m_current = 0;
    QByteArray m_texts;
    std::size_t m_answers = 0;
};

}  // namespace record_verify_detail

Result<Verified> verifyRecords(const Store& store, LongWork& work, int fromPercent, int toPercent)
{
    std::optional<Verified> found;
    const auto read = store.snapshot([&]() -> Result<bool> {
        const auto all = record_verify_detail::Verifier(store, work, fromPercent, toPercent).all();
        if (!all)
            return tl::unexpected(all.error());
        found = *all;
        return true;
    });
    if (!read)
        return tl::unexpected(read.error());
    return *found;
}

}  // namespace fb
