// One check-off kept in memory, and the clock it is timed by: see memory_records.h.
#pragma once

#include <map>
#include <optional>

#include "app/doors/clock.h"
#include "app/doors/records.h"

namespace fb::test {

// Its hands are turned by the test.
class TestClock : public Clock {
public:
    [[nodiscard]] Ms steady() const override { return now; }
    [[nodiscard]] QDateTime wall() const override { return day; }

    Ms now{1000};
    QDateTime day = QDateTime(QDate(2026, 11, 30), QTime(9, 0), Qt::UTC);
};

struct MemoryEntry {
    RunningCheckOff open;
    std::optional<SignedOff> signedOff;
    QString remediation;
    QDateTime at;
};
struct MemoryPerson {
    Assessor assessor;
    QString pin;
    int wrong = 0;
};

// How often each outcome was signed.
[[nodiscard]] inline std::vector<std::pair<Outcome, int>>
outcomesOf(const std::map<qint64, MemoryEntry>& kept)
{
    std::map<Outcome, int> outcomes;
    for (const auto& [id, entry] : kept) {
        if (entry.signedOff)
            ++outcomes[entry.signedOff->result.decision.outcome];
    }
    return {outcomes.begin(), outcomes.end()};
}

[[nodiscard]] inline Day dayOf(const QDate& date)
{
    return Day{std::chrono::year{date.year()} / static_cast<unsigned>(date.month()) /
               static_cast<unsigned>(date.day())};
}

[[nodiscard]] inline CheckOffLine lineOf(const MemoryEntry& entry)
{
    CheckOffLine line;
    line.id = entry.open.id;
    line.student = entry.open.student;
    line.sheetKey = entry.open.sheet.key;
    line.sheetTitle = QString::fromStdString(entry.open.sheet.sheet.title);
    line.attempt = entry.open.attempt;
    line.at = entry.at;
    line.remediation = entry.remediation;
    if (entry.signedOff) {
        line.outcome = entry.signedOff->result.decision.outcome;
        line.percent = entry.signedOff->result.decision.percent;
        line.assessor = entry.signedOff->assessors.front().name;
        if (entry.signedOff->assessors.size() > 1)
            line.secondAssessor = entry.signedOff->assessors.back().name;
    }
    for (const CheckOffEvent& event : entry.open.events) {
        if (event.kind == CheckOffEventKind::Rated)
            line.rating = event.rating;
    }
    return line;
}
[[nodiscard]] inline bool fits(const CheckOffFilter& filter, const CheckOffLine& line)
{
    const QString name = line.student.given + u' ' + line.student.family + u' ' + line.student.id;
    const QDate on = line.at.toLocalTime().date();
    return (filter.words.isEmpty() || name.contains(filter.words, Qt::CaseInsensitive)) &&
           (filter.student.isEmpty() || filter.student == line.student.id) &&
           (filter.sheet.isEmpty() || filter.sheet == line.sheetKey) &&
           (!filter.outcome || *filter.outcome == line.outcome) &&
           (!filter.from.isValid() || on >= filter.from) && (!filter.to.isValid() || on <= filter.to);
}
inline void count(Standing standing, CohortCount& counts)
{
    switch (standing) {
    case Standing::NotTried: ++counts.notTried; break;
    case Standing::Running: ++counts.running; break;
    case Standing::Passed: ++counts.passed; break;
    case Standing::OutOfAttempts: ++counts.outOfAttempts; break;
    case Standing::RemediationDue:
    case Standing::Waiting:
    case Standing::MayRetest: ++counts.due; break;
    }
}
[[nodiscard]] inline StudentStanding standingOf(const std::map<qint64, MemoryEntry>& kept,
                                                const Student& student, const SheetOnFile& sheet,
                                                const QDate& today)
{
    std::vector<PastAttempt> past;
    StudentStanding line{student, {}, {}, {}, 0.0};
    bool running = false;
    for (const auto& [id, entry] : kept) {
        if (entry.open.student.id != student.id || entry.open.sheet.key != sheet.key)
            continue;
        if (!entry.signedOff) {
            running = true;
            continue;
        }
        const Decision& decision = entry.signedOff->result.decision;
        past.push_back({decision.outcome, dayOf(entry.at.date()), !entry.remediation.isEmpty()});
        line.lastOutcome = decision.outcome;
        line.lastAt = entry.at;
        line.lastPercent = decision.percent;
    }
    line.where = standing(sheet.sheet.retest, past, running, dayOf(today));
    return line;
}

// Why no check-off may be begun; nullopt: one may.
[[nodiscard]] inline std::optional<Fault> refusalOf(Standing standing)
{
    switch (standing) {
    case Standing::RemediationDue: return Fault{Problem::RemediationNotSigned, {}, {}, 0.0, 0.0};
    case Standing::Waiting: return Fault{Problem::NotDueYet, {}, "2026-12-01", 0.0, 0.0};
    case Standing::OutOfAttempts:
    case Standing::Passed: return Fault{Problem::NoAttemptLeft, {}, {}, 0.0, 0.0};
    case Standing::NotTried:
    case Standing::Running:
    case Standing::MayRetest: break;
    }
    return std::nullopt;
}

}  // namespace fb::test
