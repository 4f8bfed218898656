// Any bytes as a roster: a fault, or rows in which nobody is doubled and no password stands, and which are
// read back as they are written.
#include <QSet>

#include "app/roster/csv.h"
#include "app/roster/roster.h"
#include "app/roster/roster_columns.h"
#include "tests/fuzz/source_file.h"

namespace fb::fuzz {

void useOfRows(const RosterFile& file, const RosterMapping& mapping)
{
    const auto rows = rosterRows(file, mapping, {});
    if (!rows)
        return;
    demand(rows->size() <= file.rows.size());
    QSet<QString> ids;
    const auto students = studentsToSave(*rows);
    for (const Student& student : students) {
        demand(!student.id.isEmpty() && !(student.family.isEmpty() && student.given.isEmpty()));
        demand(!ids.contains(student.id));
        demand(student.extraPercent >= 0 && student.extraPercent <= kMostExtraPercent);
        ids.insert(student.id);
    }
    for (const RosterRow& row : *rows)
        demand(row.kind != RosterRow::Kind::Doubled || ids.contains(row.student.id));
    // Saved once, everybody is known and nothing changes.
    const auto again = rosterRows(file, mapping, students);
    demand(again.has_value());
    for (const RosterRow& row : *again)
        demand(row.kind != RosterRow::Kind::New && row.kind != RosterRow::Kind::Changed);
}

void useOfFile(const RosterFile& file)
{
    demand(!file.rows.empty() && file.rows.size() == file.lines.size());
    for (const QString& name : file.header)
        demand(!isSecretColumn(name));
    useOfRows(file, file.guessed);
    useOfRows(file, {0, 1, 2, -1, 3, 4, 5});
    useOfRows(file, {0, -1, -1, 1, -1, -1, -1});
}

void roundTrip(const QString& text)
{
    const auto rows = parseCsv({}, text, u',');
    if (!rows)
        return;
    QByteArray written;
    for (const CsvRow& row : *rows) {
        for (const QString& field : row.fields)
            written += csvText(field) + ',';
        written += "\r\n";
    }
    const auto again = parseCsv({}, QString::fromUtf8(written), u',');
    demand(again.has_value() && again->size() == rows->size());
    for (std::size_t i = 0; i < rows->size(); ++i) {
        const QStringList& fields = (*rows)[i].fields;
        demand((*again)[i].fields.size() == fields.size() + 1);
        for (qsizetype column = 0; column < fields.size(); ++column)
            demand(withoutGuard((*again)[i].fields[column]) == fields[column]);
    }
}

}  // namespace fb::fuzz

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size)
{
    using namespace fb;
    const QByteArray bytes(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size));
    if (const auto file = parseRoster(QStringLiteral("fuzz.csv"), bytes))
        fuzz::useOfFile(*file);
    fuzz::roundTrip(QString::fromUtf8(bytes));
    return 0;
}
