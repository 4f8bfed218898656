#include "app/store/record_find.h"

#include <QSet>

#include "app/store/record_check_off.h"
#include "app/store/record_order.h"
#include "app/store/record_people.h"
#include "app/store/record_sheets.h"
#include "app/store/record_values.h"

namespace fb {

namespace record_find_detail {

const char* const kLine =
    "SELECT c.check_off_id, s.student_id, s.family, s.given, s.section, s.extra_percent, s.language, "
    "s.invented, c.sheet_key, h.title, c.attempt, c.closed_at, c.outcome, c.percent, c.rating, a.name, "
    "b.name, r.what, c.chain_head, c.chain_length, c.begun_at FROM check_off c "
    "JOIN student s ON s.student_id = c.student_id JOIN sheet h ON h.sheet_key = c.sheet_key "
    "JOIN assessor a ON a.assessor_id = c.first_assessor_id "
    "LEFT JOIN assessor b ON b.assessor_id = c.second_assessor_id "
    "LEFT JOIN remediation r ON r.check_off_id = c.check_off_id WHERE c.closed_at IS NOT NULL ";

CheckOffLine lineIn(const QSqlQuery& row)
{
    const auto text = [&](int column) { return row.value(column).toString(); };
    CheckOffLine line;
    line.id = row.value(0).toLongLong();
    line.student = {text(1), text(2), text(3), text(4), row.value(5).toInt(), text(6), row.value(7).toBool()};
    line.sheetKey = text(8);
    line.sheetTitle = text(9);
    line.attempt = row.value(10).toInt();
    line.at = timeFrom(text(11));
    line.outcome = outcomeFrom(text(12).toStdString()).value_or(Outcome::VoidTechnical);
    line.percent = row.value(13).toDouble();
    line.rating = row.value(14).toInt();
    line.assessor = text(15);
    line.secondAssessor = text(16);
    line.remediation = text(17);
    return line;
}

// What SQL can tell; words it cannot, for it knows capitals in English only.
Statement queryOf(const CheckOffFilter& filter)
{
    Statement query{QString::fromLatin1(kLine)};
    const auto narrow = [&](const char* condition, const QString& value) {
        query.sql += QLatin1String(condition);
        query.values << value;
    };
    if (!filter.student.isEmpty())
        narrow("AND c.student_id = ? ", filter.student);
    if (!filter.sheet.isEmpty())
        narrow("AND c.sheet_key = ? ", filter.sheet);
    if (filter.outcome)
        narrow("AND c.outcome = ? ", word(*filter.outcome));
    if (filter.from.isValid())
        narrow("AND c.closed_on >= ? ", filter.from.toString(Qt::ISODate));
    if (filter.to.isValid())
        narrow("AND c.closed_on <= ? ", filter.to.toString(Qt::ISODate));
    query.sql += QStringLiteral("ORDER BY c.check_off_id DESC");
    return query;
}

// Every word stands in the name or the id.
bool isMeant(const Student& student, const QStringList& words)
{
    const QString all = student.given + u' ' + student.family + u' ' + student.given + u' ' + student.id;
    return std::ranges::all_of(words,
                               [&](const QString& one) { return all.contains(one, Qt::CaseInsensitive); });
}

Result<QSet<QString>> meantStudents(const Store& store, const QStringList& words)
{
    const auto students = readStudents(store);
    if (!students)
        return tl::unexpected(students.error());
    QSet<QString> meant;
    for (const Student& student : *students) {
        if (isMeant(student, words))
            meant << student.id;
    }
    return meant;
}

}  // namespace record_find_detail

using namespace record_find_detail;

Result<std::vector<CheckOffLine>> findCheckOffs(const Store& store, const CheckOffFilter& filter)
{
    const QStringList words = filter.words.split(u' ', Qt::SkipEmptyParts);
    const auto meant = meantStudents(store, words);
    if (!meant)
        return tl::unexpected(meant.error());
    std::vector<CheckOffLine> found;
    const auto most = static_cast<std::size_t>(std::max(0, filter.most));
    const auto read = store.each(queryOf(filter), [&](const QSqlQuery& row) {
        if (found.size() < most && meant->contains(row.value(1).toString()))
            found.push_back(lineIn(row));
        return found.size() < most;
    });
    if (!read)
        return tl::unexpected(read.error());
    return found;
}

Result<CheckOffOnFile> readCheckOff(const Store& store, qint64 checkOff)
{
    std::optional<CheckOffOnFile> found;
    const auto read =
        store.each({QString::fromLatin1(kLine) + QStringLiteral("AND c.check_off_id = ?"), {checkOff}},
                   [&](const QSqlQuery& row) {
                       CheckOffOnFile& one = found.emplace();
                       one.line = lineIn(row);
                       one.chainHead = row.value(18).toString();
                       one.chainLength = row.value(19).toLongLong();
                       one.begunAt = timeFrom(row.value(20).toString());
                       return true;
                   });
    if (!read)
        return tl::unexpected(read.error());
    if (!found)
        return fault(Problem::CheckOffOutOfOrder);
    auto sheet = readSheet(store, found->line.sheetKey);
    if (!sheet)
        return tl::unexpected(sheet.error());
    found->sheet = std::move(*sheet);
    auto order = readOrder(store, checkOff);
    if (!order)
        return tl::unexpected(order.error());
    found->order = std::move(*order);
    auto events = readEvents(store, checkOff);
    if (!events)
        return tl::unexpected(events.error());
    found->events = std::move(*events);
    return std::move(*found);
}

}  // namespace fb
