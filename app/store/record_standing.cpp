#include "app/store/record_standing.h"

#include <QHash>
#include <algorithm>
#include <string>
#include <tuple>

#include "app/store/record_people.h"

namespace fb {

namespace record_standing_detail {

// What is known of one student on one sheet.
struct PastOnSheet {
    std::vector<PastAttempt> attempts;
    QString lastAt;
    double lastPercent = 0.0;
    bool isRunning = false;
};

const char* const kPast =
    "SELECT c.student_id, c.closed_on, c.outcome, c.percent, c.closed_at, r.check_off_id FROM check_off c "
    "LEFT JOIN remediation r ON r.check_off_id = c.check_off_id WHERE c.sheet_key = ? ";

void add(PastOnSheet& past, const QSqlQuery& row)
{
    const QVariant day = row.value(1);
    if (day.isNull()) {
        past.isRunning = true;
        return;
    }
    const auto outcome = outcomeFrom(row.value(2).toString().toStdString());
    past.attempts.push_back(
        {outcome.value_or(Outcome::VoidTechnical), dayFrom(day.toString()), !row.value(5).isNull()});
    past.lastPercent = row.value(3).toDouble();
    past.lastAt = row.value(4).toString();
}

StudentStanding standingLine(const Student& student, const PastOnSheet& past, const RetestRule& rule,
                             const Moment& now)
{
    StudentStanding line;
    line.student = student;
    line.where = standing(rule, past.attempts, past.isRunning, dayOf(now.day));
    if (!past.attempts.empty()) {
        line.lastOutcome = past.attempts.back().outcome;
        line.lastAt = timeFrom(past.lastAt);
        line.lastPercent = past.lastPercent;
    }
    return line;
}

bool isBefore(const StudentStanding& a, const StudentStanding& b)
{
    const int family = QString::localeAwareCompare(a.student.family, b.student.family);
    const int given = family != 0 ? family : QString::localeAwareCompare(a.student.given, b.student.given);
    return given != 0 ? given < 0 : a.student.id < b.student.id;
}

}  // namespace record_standing_detail

using namespace record_standing_detail;

Result<std::vector<StudentStanding>> readStandings(const Store& store, const SheetOnFile& sheet,
                                                   const Moment& now)
{
    const auto students = readStudents(store);
    if (!students)
        return tl::unexpected(students.error());
    QHash<QString, PastOnSheet> all;
    const auto read = store.each(
        {QString::fromLatin1(kPast) + QStringLiteral("ORDER BY c.student_id, c.check_off_id"), {sheet.key}},
        [&](const QSqlQuery& row) {
            add(all[row.value(0).toString()], row);
            return true;
        });
    if (!read)
        return tl::unexpected(read.error());
    std::vector<StudentStanding> lines;
    lines.reserve(students->size());
    for (const Student& student : *students)
        lines.push_back(standingLine(student, all.value(student.id), sheet.sheet.retest, now));
    std::ranges::sort(lines, &isBefore);
    return lines;
}

Result<StudentStanding> readStanding(const Store& store, const SheetOnFile& sheet, const Student& student,
                                     const Moment& now)
{
    PastOnSheet past;
    const auto read = store.each(
        {QString::fromLatin1(kPast) + QStringLiteral("AND c.student_id = ? ORDER BY c.check_off_id"),
         {sheet.key, student.id}},
        [&](const QSqlQuery& row) {
            add(past, row);
            return true;
        });
    if (!read)
        return tl::unexpected(read.error());
    return standingLine(student, past, sheet.sheet.retest, now);
}

}  // namespace fb
