// Full CSV: see record_export.h. Half a million rows: words that need no care are joined by SQLite and names
// are looked up once, for reading one long text is far cheaper than many short ones.
#include <QHash>
#include <array>

#include "app/roster/csv.h"
#include "app/store/record_answers.h"
#include "app/store/record_export.h"
#include "app/store/record_people.h"

namespace fb {

namespace record_export_csv_detail {

constexpr char kBetween = '\x1f';  // stands in no word

// Those of core need no care; any other is taken apart and guarded.
void appendWords(QByteArray& line, QByteArray words)
{
    const auto isPlain = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == kBetween || c == '_' || c == '.' ||
               c == ':' || c == 'T' || c == 'Z';
    };
    bool isFirst = true;  // of its word: there a dash is a formula
    bool isGood = true;
    for (const char c : words) {
        isGood = isGood && (isPlain(c) || (c == '-' && !isFirst));
        isFirst = c == kBetween;
    }
    if (isGood) {
        line += words.replace(kBetween, ',');
        return;
    }
    const QList<QByteArray> parts = words.split(kBetween);
    for (qsizetype i = 0; i < parts.size(); ++i)
        line += (i == 0 ? "" : ",") + csvText(QString::fromUtf8(parts[i]));
}

// As bytes, for Qt would turn a text into UTF-16 first.
QString joined(const QStringList& columns)
{
    return QStringLiteral("CAST(printf('%1', %2) AS BLOB)")
        .arg(QStringList(columns.size(), QStringLiteral("%s")).join(QLatin1Char(kBetween)),
             columns.join(u','));
}

void appendNumbers(QByteArray& line, const QSqlQuery& row, int from, int count)
{
    for (int i = from; i < from + count; ++i) {
        line += ',';
        const QVariant number = row.value(i);
        if (!number.isNull())
            appendRounded(line, number.toDouble());
    }
}

// A view's hash after its name, by its first twelve digits.
QString shortened(const QString& hashes)
{
    constexpr int kDigits = 12;
    QStringList parts = hashes.split(u' ', Qt::SkipEmptyParts);
    for (QString& part : parts)
        part.truncate(part.indexOf(u'=') + 1 + kDigits);
    return parts.join(u' ');
}

const QByteArray kStudentColumns = QByteArrayLiteral("student_id,family,given,section,");
const QByteArray kSheetColumns = QByteArrayLiteral("sheet,sheet_key,");
const QByteArray kWordColumns =
    QByteArrayLiteral("check_off_id,attempt,seed,extra_percent,policy_hash,begun_at,closed_at,on_screen_ms,"
                      "on_manikin_ms,outcome,rating,chain_length,chain_head");
const QByteArray kOtherColumns =
    QByteArrayLiteral(",percent,pixels_per_mm,program_version,plate_hashes,assessor,second_assessor,remark,");

const QStringList kWords{"check_off_id",
                         "attempt",
                         "seed",
                         "extra_percent",
                         "substr(policy_hash, 1, 12)",
                         "begun_at",
                         "closed_at",
                         "on_screen_ms",
                         "on_manikin_ms",
                         "outcome",
                         "rating",
                         "chain_length",
                         "substr(chain_head, 1, 12)"};

using Cells = QHash<QString, QByteArray>;

// What stands in every row of one student, sheet or assessor.
struct Known {
    Cells students, sheets, assessors;
};

Result<Known> knownOf(const Store& store)
{
    Known known;
    const auto students = readStudents(store);
    if (!students)
        return tl::unexpected(students.error());
    for (const Student& one : *students)
        known.students[one.id] = csvText(one.id) + ',' + csvText(one.family) + ',' + csvText(one.given) +
                                 ',' + csvText(one.section) + ',';
    const auto assessors = readAssessors(store);
    if (!assessors)
        return tl::unexpected(assessors.error());
    for (const Assessor& one : *assessors)
        known.assessors[QString::number(one.id)] = csvText(one.name);
    const auto sheets =
        store.each({QStringLiteral("SELECT sheet_key, title FROM sheet")}, [&](const QSqlQuery& row) {
            const QString key = row.value(0).toString();
            constexpr int kDigits = 12;
            known.sheets[key] = csvText(row.value(1).toString()) + ',' + csvText(key.left(kDigits)) + ',';
            return true;
        });
    if (!sheets)
        return tl::unexpected(sheets.error());
    return known;
}

using Prefixes = QHash<qint64, QByteArray>;

// The part of a row that its check-off fills.
Result<Prefixes> prefixesOf(const Store& store, const Known& known, const QString& sheet,
                            const CheckOffRange& range)
{
    static const QString sql =
        QStringLiteral(
            "SELECT check_off_id, student_id, sheet_key, %1, percent, pixels_per_mm, program_version, "
            "plate_hashes, first_assessor_id, second_assessor_id, remark FROM check_off "
            "WHERE check_off_id BETWEEN ? AND ? AND (? = '' OR sheet_key = ?)")
            .arg(joined(kWords));
    Prefixes prefixes;
    const auto read =
        store.each({sql, {range.from, range.to, notNull(sheet), notNull(sheet)}}, [&](const QSqlQuery& row) {
            const auto text = [&](int column) { return row.value(column).toString(); };
            QByteArray line = known.students.value(text(1)) + known.sheets.value(text(2));
            appendWords(line, row.value(3).toByteArray());
            appendNumbers(line, row, 4, 2);
            for (const QByteArray& cell :
                 {csvText(text(6)), csvText(shortened(text(7))), known.assessors.value(text(8)),
                  known.assessors.value(text(9)), csvText(text(10))})
                line += ',' + cell;
            prefixes[row.value(0).toLongLong()] = line + ',';
            return true;
        });
    if (!read)
        return tl::unexpected(read.error());
    return prefixes;
}

Result<QByteArray> answersOf(const Store& store, const Prefixes& prefixes, const CheckOffRange& range)
{
    static const QString sql =
        QStringLiteral("SELECT check_off_id, %1, %2 FROM answer WHERE check_off_id BETWEEN ? AND ? "
                       "ORDER BY check_off_id, item")
            .arg(joined(QStringList{"item", "answered_at"} + answerWords()), answerNumbers().join(u','));
    const int numbers = static_cast<int>(answerNumbers().size());
    QByteArray lines;
    const auto read = store.each({sql, {range.from, range.to}}, [&](const QSqlQuery& row) {
        const auto prefix = prefixes.constFind(row.value(0).toLongLong());
        if (prefix == prefixes.cend())
            return true;
        lines += *prefix;
        appendWords(lines, row.value(1).toByteArray());
        appendNumbers(lines, row, 2, numbers);
        lines += "\r\n";
        return true;
    });
    if (!read)
        return tl::unexpected(read.error());
    return lines;
}

}  // namespace record_export_csv_detail

QByteArray csvByteOrderMark() { return QByteArrayLiteral("\xEF\xBB\xBF"); }

Result<bool> exportFullCsv(const Store& store, const QString& sheet, ExportFile& out, LongWork& work)
{
    using namespace record_export_csv_detail;
    out.write(csvByteOrderMark() + kStudentColumns + kSheetColumns + kWordColumns + kOtherColumns +
              "item,answered_at," + answerColumnNames().toLatin1() + "\r\n");
    const auto known = knownOf(store);
    if (!known)
        return tl::unexpected(known.error());
    return writeRanges(
        store, out, work, {}, [&](const Store& in, const CheckOffRange& range) -> Result<QByteArray> {
            const auto prefixes = prefixesOf(in, *known, sheet, range);
            return prefixes ? answersOf(in, *prefixes, range) : tl::unexpected(prefixes.error());
        });
}

}  // namespace fb
