// Records of a large school over years: so many students with so many signed check-offs of six marks between
// them, by hand of nobody: written straight into the tables, with a log that follows. They lie on five
// sheets, for none allows more than ten attempts.
#pragma once

#include <cstdio>
#include <cstdlib>

#include "app/store/audit_chain.h"
#include "app/store/record_answers.h"
#include "app/store/record_check_off.h"
#include "app/store/record_people.h"
#include "app/store/record_sheets.h"
#include "app/store/record_signing.h"
#include "app/store/record_store.h"
#include "core/basics/seed_stream.h"
#include "core/session/sheet_defaults.h"

namespace fb::test {

// One answer a mark, another one each time, as a student would give it.
[[nodiscard]] inline Answer anyMark(SeedStream& stream, int item, const Request& request)
{
    Answer answer{item, request, conventionsOf(request.site).front()};
    answer.mark = Point{stream.between(-9.0, 9.0), stream.between(-9.0, 9.0)};
    answer.verdict = static_cast<Verdict>(stream.below(kVerdictCount));
    answer.points = answer.verdict == Verdict::OnTarget ? 1.0 : 0.0;
    answer.distanceToIdeal = Cm{stream.between(0.0, 9.0)};
    answer.offDistal = Cm{stream.between(-5.0, 5.0)};
    answer.offAnterior = Cm{stream.between(-5.0, 5.0)};
    if (answer.verdict == Verdict::Unsafe)
        answer.hazard = HazardCode::JointAndBursa;
    return answer;
}

[[nodiscard]] inline Sheet sixMarks(int number = 1)
{
    Sheet sheet;
    sheet.title = "Six marks, part " + std::to_string(number);
    sheet.invented = true;
    for (int i = 0; i < 6; ++i)
        sheet.items.push_back({kSites[static_cast<std::size_t>(i) % kSites.size()], std::nullopt,
                               askedViews(kSites[static_cast<std::size_t>(i) % kSites.size()]).front()});
    sheet.retest.attempts = kSheetMostAttempts;
    sheet.retest.secondAssessorOnLast = false;
    return sheet;
}

class ManyRecords {
public:
    explicit ManyRecords(const QString& file) : m_store(opened(file)) {}

    [[nodiscard]] const std::vector<SheetOnFile>& sheets() const { return m_sheets; }
    [[nodiscard]] Store& store() { return *m_store; }

    void fill(int students, int checkOffs)
    {
        std::vector<Student> all;
        for (int i = 0; i < students; ++i)
            all.push_back({idOf(i), QStringLiteral("Family %1").arg((i * 7919) % students),
                           QStringLiteral("Given"), QStringLiteral("Section %1").arg(i % 8), 0, QString(),
                           true});
        must(saveStudents(*m_store, all, at(0)));
        must(m_store->commit(
            {{QStringLiteral("INSERT INTO assessor VALUES (1, 'Invented Assessor', '', 0, NULL, "
                             "'2026-01-01T00:00:00.000Z')")}}));
        for (int i = 1; i <= kSheets; ++i)
            m_sheets.push_back(must(saveSheet(*m_store, sixMarks(i), at(0))));
        must(m_store->transaction([&]() -> Result<bool> {
            m_policy = must(keepPolicy(*m_store, QStringLiteral("{}")));
            return true;
        }));
        m_end = must(chainEnd(*m_store));
        constexpr int kAtOnce = 500;
        for (int done = 0; done < checkOffs; done += kAtOnce) {
            must(m_store->transaction([&]() -> Result<bool> {
                for (int i = done; i < std::min(checkOffs, done + kAtOnce); ++i)
                    addOne(i + 1, idOf(i % students), i / students);
                return true;
            }));
        }
        // As it is after a night: nothing waits in the log file.
        must(m_store->rows({QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)")}));
    }

    template <class T>
    static T must(const Result<T>& result)
    {
        if (result)
            return *result;
        std::fprintf(stderr, "the records could not be made: %d\n", static_cast<int>(result.error().problem));
        std::abort();
    }

private:
    static constexpr int kSheets = 5;

    static std::unique_ptr<Store> opened(const QString& file)
    {
        auto opened = openRecords(file, at(0).at);
        if (!opened)
            std::abort();
        return std::move(opened->store);
    }
    static QString idOf(int student) { return QStringLiteral("s-%1").arg(student, 6, 10, QChar(u'0')); }
    // A minute each, from the first of January 2026 on.
    static Moment at(int minute)
    {
        return momentOf(QDateTime(QDate(2026, 1, 1), QTime(8, 0), Qt::UTC).addSecs(60LL * minute));
    }

    void change(const char* sql, const QVariantList& values)
    {
        must(m_store->change({QString::fromLatin1(sql), values}));
    }

    // What keepEvent and signCheckOff write, with the end of the log in hand.
    void addOne(int id, const QString& student, int before)
    {
        const SheetOnFile& sheet = m_sheets[static_cast<std::size_t>(before % kSheets)];
        const int attempt = 1 + before / kSheets;
        const Moment now = at(id);
        const QString time = isoText(now.at);
        change("INSERT INTO check_off (check_off_id, student_id, sheet_key, attempt, seed, extra_percent, "
               "policy_hash, plate_hashes, program_version, pixels_per_mm, needs_second, begun_at, "
               "on_screen_ms, "
               "on_manikin_ms) VALUES (?, ?, ?, ?, ?, 0, ?, ?, '0.1.0', 3.75, 0, ?, 0, 0)",
               {id, student, sheet.key, attempt, id, m_policy, m_plates, time});
        note({.actor = QStringLiteral("program"), .event = QStringLiteral("BEGIN"), .object = objectName(id)},
             time);
        CheckOff run({sheet.sheet, static_cast<std::uint64_t>(id), 0});
        m_texts.clear();
        m_seq = 0;
        add(id, run, run.confirm(m_now), time);
        add(id, run, run.start(m_now), time);
        for (const SetRequest& set : run.requests())
            add(id, run, run.answer(anyMark(m_stream, run.item(), set.request), m_now), time);
        add(id, run, run.takeOver(m_now), time);
        add(id, run, run.rate(1 + m_stream.below(5), "Steady hands.", m_now), time);
        add(id, run, run.sign(m_now), time);
        const CheckOffResult result = run.result();
        const SignedLine line{student,
                              sheet.key,
                              attempt,
                              word(result.decision.outcome),
                              result.decision.percent,
                              run.rating().value_or(0),
                              textOfUtf8(run.remark()),
                              1,
                              0};
        note({.actor = QStringLiteral("assessor-1"),
              .event = QStringLiteral("SIGN"),
              .object = objectName(id),
              .detail = signedDetail(line, sha256(m_texts))},
             time);
        change("UPDATE check_off SET closed_at = ?, closed_on = ?, outcome = ?, percent = ?, rating = ?, "
               "remark = ?, "
               "first_assessor_id = 1, chain_length = ?, chain_head = ? WHERE check_off_id = ?",
               {time, now.day.toString(Qt::ISODate), line.outcome, line.percent, line.rating, line.remark,
                m_end.length, QString::fromLatin1(m_end.head), id});
        if (result.decision.outcome != Outcome::Pass)
            change("INSERT INTO remediation VALUES (?, 'Ten marks on each site.', 1, ?)", {id, time});
    }

    void add(int id, CheckOff& run, const Result<CheckOffEvent>& asked, const QString& time)
    {
        const CheckOffEvent event = must(asked);
        must(run.apply(event, m_now));
        m_now += Ms{700};
        const QString text = textOfUtf8(textOf(event));
        m_texts += text.toUtf8() + '\n';
        change("INSERT INTO check_off_event VALUES (?, ?, ?, ?, ?)",
               {id, ++m_seq, word(event.kind), time, text});
        if (!event.answer)
            return;
        const QVariantList columns = answerColumns(*event.answer);
        must(addAnswer(*m_store, id, m_seq, time, event.answer->item, columns));
        note({.actor = QStringLiteral("student"),
              .event = QStringLiteral("ANSWER"),
              .object = objectName(id),
              .detail = answerDetail(event.answer->item, columns, text.toUtf8())},
             time);
    }

    void note(AuditEntry entry, const QString& time)
    {
        entry.seq = m_end.length + 1;
        entry.at = time;
        m_end = {entry.seq, chained(m_end.head, recordOf(entry))};
        change("INSERT INTO audit VALUES (?, ?, ?, ?, ?, ?, ?)",
               {entry.seq, entry.at, entry.actor, entry.event, entry.object, notNull(entry.detail),
                QString::fromLatin1(m_end.head)});
    }

    std::unique_ptr<Store> m_store;
    std::vector<SheetOnFile> m_sheets;
    QString m_policy;
    const QString m_plates =
        QStringLiteral("shoulder-side=%1 hip-side=%1 thigh-side=%1").arg(QString(64, u'a'));
    SeedStream m_stream{20261129};
    ChainEnd m_end;
    QByteArray m_texts;
    int m_seq = 0;
    Ms m_now{0};
};

}  // namespace fb::test
