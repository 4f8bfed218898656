// Gradebook CSV: see record_export.h.
#include <QHash>
#include <algorithm>

#include "app/roster/csv.h"
#include "app/store/record_export.h"
#include "app/store/record_people.h"
#include "app/store/record_sheets.h"
#include "app/store/record_standing.h"

namespace fb {

namespace record_export_gradebook_detail {

// The last attempt of one student on one sheet that was judged.
struct Judged {
    QString outcome, day;
    double percent = 0.0;
};

Result<QHash<QString, Judged>> judgedOn(const Store& store, const QString& sheet)
{
    QHash<QString, Judged> all;
    const auto read = store.each(
        {QStringLiteral(
             "SELECT student_id, outcome, percent, closed_on FROM check_off WHERE sheet_key = ? AND "
             "outcome <> ? ORDER BY student_id, check_off_id"),
         {sheet, word(Outcome::VoidTechnical)}},
        [&](const QSqlQuery& row) {
            all[row.value(0).toString()] = {row.value(1).toString(), row.value(3).toString(),
                                            row.value(2).toDouble()};
            return true;
        });
    if (!read)
        return tl::unexpected(read.error());
    return all;
}

struct GradebookSheet {
    QString title;
    QHash<QString, Judged> judged;
    QHash<QString, int> used;
};

// Sheets of one title are told apart by a number, the first used first.
QString freshTitle(const QString& title, const std::vector<GradebookSheet>& before)
{
    QString fresh = title;
    const auto isTaken = [&](const GradebookSheet& one) { return one.title == fresh; };
    for (int number = 2; std::ranges::any_of(before, isTaken); ++number)
        fresh = QStringLiteral("%1 (%2)").arg(title).arg(number);
    return fresh;
}

Result<std::vector<GradebookSheet>> gradebookSheets(const Store& store, const QString& only,
                                                    const Moment& now)
{
    auto sheets = readSheets(store);
    if (!sheets)
        return tl::unexpected(sheets.error());
    std::ranges::reverse(*sheets);
    std::vector<GradebookSheet> columns;
    for (const SheetOnFile& sheet : *sheets) {
        if (!only.isEmpty() && sheet.key != only)
            continue;
        auto judged = judgedOn(store, sheet.key);
        const auto lines = judged ? readStandings(store, sheet, now) : tl::unexpected(judged.error());
        if (!lines)
            return tl::unexpected(lines.error());
        if (judged->isEmpty() && only.isEmpty())
            continue;
        GradebookSheet column{freshTitle(QString::fromStdString(sheet.sheet.title), columns), *judged, {}};
        for (const StudentStanding& line : *lines)
            column.used[line.student.id] = line.where.used;
        columns.push_back(std::move(column));
    }
    return columns;
}

QByteArray gradebookHeader(const std::vector<GradebookSheet>& sheets)
{
    QByteArray line = csvByteOrderMark() + "id,family,given,section";
    for (const GradebookSheet& sheet : sheets) {
        for (const char* what : {"", " outcome", " attempts", " date"})
            line += ',' + csvText(sheet.title + QLatin1String(what));
    }
    return line + "\r\n";
}

QByteArray gradebookLine(const Student& student, const std::vector<GradebookSheet>& sheets)
{
    constexpr int kDecimals = 1;
    QByteArray line = csvText(student.id) + ',' + csvText(student.family) + ',' + csvText(student.given) +
                      ',' + csvText(student.section);
    for (const GradebookSheet& sheet : sheets) {
        const auto judged = sheet.judged.constFind(student.id);
        if (judged == sheet.judged.cend()) {
            line += ",,,,";
            continue;
        }
        line += ',' + csvNumber(judged->percent, kDecimals) + ',' + csvText(judged->outcome) + ',' +
                csvNumber(sheet.used.value(student.id), 0) + ',' + csvText(judged->day);
    }
    return line + "\r\n";
}

}  // namespace record_export_gradebook_detail

Result<bool> exportGradebook(const Store& store, const QString& sheet, const Moment& now, ExportFile& out)
{
    using namespace record_export_gradebook_detail;
    const auto sheets = gradebookSheets(store, sheet, now);
    const auto students = sheets ? readStudents(store) : tl::unexpected(sheets.error());
    if (!students)
        return tl::unexpected(students.error());
    out.write(gradebookHeader(*sheets));
    for (const Student& student : *students)
        out.write(gradebookLine(student, *sheets));
    return out.flushed();
}

}  // namespace fb
