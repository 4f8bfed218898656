#include <QHash>

#include "app/roster/roster.h"
#include "app/roster/roster_columns.h"

namespace fb {

namespace roster_rows_detail {

// One file seen through one mapping.
class RowReader {
public:
    RowReader(const RosterFile& file, const RosterMapping& mapping, const std::vector<Student>& known)
        : m_file(file),
          m_mapping(mapping),
          m_status(file.oneRoster ? file.header.indexOf(QLatin1String("status")) : -1),
          m_invented(inventedColumn(file.header))
    {
        for (const Student& student : known)
            m_known.insert(student.id, &student);
    }

    // Rows of another role, and those to be deleted, are no students.
    [[nodiscard]] bool isStudent(const QStringList& row) const
    {
        const QString role = field(row, m_file.roleColumn);
        return (m_file.roleColumn < 0 || role.compare(QLatin1String("student"), Qt::CaseInsensitive) == 0) &&
               field(row, m_status).compare(QLatin1String("tobedeleted"), Qt::CaseInsensitive) != 0;
    }

    RosterRow read(const QStringList& fields, int line)
    {
        RosterRow row;
        row.line = line;
        const QString id = field(fields, column(RosterColumn::Id));
        const Student* known = m_known.value(id);
        if (known)
            row.student = *known;
        row.student.id = id;
        row.student.invented = field(fields, m_invented) == QLatin1String("yes");
        readName(row.student, fields);
        if (column(RosterColumn::Section) >= 0)
            row.student.section = field(fields, column(RosterColumn::Section));
        if (column(RosterColumn::Language) >= 0)
            row.student.language = language(field(fields, column(RosterColumn::Language)));
        readExtra(row, fields);
        row.kind = kindOf(row, known);
        return row;
    }

private:
    [[nodiscard]] int column(RosterColumn column) const
    {
        return m_mapping[static_cast<std::size_t>(column)];
    }

    [[nodiscard]] static QString field(const QStringList& row, qsizetype column)
    {
        return column >= 0 && column < row.size() ? tidyText(row[column]) : QString();
    }

    void readName(Student& student, const QStringList& fields) const
    {
        if (column(RosterColumn::FullName) >= 0) {
            const SplitName whole = splitName(field(fields, column(RosterColumn::FullName)));
            student.family = whole.family;
            student.given = whole.given;
        }
        if (column(RosterColumn::Family) >= 0)
            student.family = field(fields, column(RosterColumn::Family));
        if (column(RosterColumn::Given) >= 0)
            student.given = field(fields, column(RosterColumn::Given));
    }

    void readExtra(RosterRow& row, const QStringList& fields) const
    {
        if (column(RosterColumn::ExtraPercent) < 0)
            return;
        const QString text = field(fields, column(RosterColumn::ExtraPercent));
        const auto percent = extraPercentIn(text);
        if (percent)
            row.student.extraPercent = *percent;
        else
            row.unclearExtra = text;
    }

    QString language(const QString& text)
    {
        const auto found = m_languages.constFind(text);
        return found != m_languages.cend() ? *found : *m_languages.insert(text, languageIn(text));
    }

    RosterRow::Kind kindOf(RosterRow& row, const Student* known)
    {
        using Kind = RosterRow::Kind;
        const Student& student = row.student;
        if (student.id.isEmpty() || student.id.size() > kLongestId)
            return Kind::NoId;
        if (student.family.isEmpty() && student.given.isEmpty())
            return Kind::Nameless;
        const auto first = m_lines.constFind(student.id);
        if (first != m_lines.cend()) {
            row.firstLine = *first;
            return Kind::Doubled;
        }
        m_lines.insert(student.id, row.line);
        if (!known)
            return Kind::New;
        return *known == student ? Kind::Same : Kind::Changed;
    }

    const RosterFile& m_file;
    const RosterMapping& m_mapping;
    const qsizetype m_status;
    const int m_invented;
    QHash<QString, const Student*> m_known;
    QHash<QString, int> m_lines;  // of the ids met so far
    QHash<QString, QString> m_languages;
};

}  // namespace roster_rows_detail

Result<std::vector<RosterRow>> rosterRows(const RosterFile& file, const RosterMapping& mapping,
                                          const std::vector<Student>& known)
{
    const auto has = [&](RosterColumn column) { return mapping[static_cast<std::size_t>(column)] >= 0; };
    if (!has(RosterColumn::Id))
        return fault(Problem::RosterNoColumn, file.name.toStdString(), "id");
    if (!has(RosterColumn::Family) && !has(RosterColumn::Given) && !has(RosterColumn::FullName))
        return fault(Problem::RosterNoColumn, file.name.toStdString(), "name");
    roster_rows_detail::RowReader reader(file, mapping, known);
    std::vector<RosterRow> rows;
    rows.reserve(file.rows.size());
    for (std::size_t i = 0; i < file.rows.size(); ++i) {
        if (reader.isStudent(file.rows[i]))
            rows.push_back(reader.read(file.rows[i], file.lines[i]));
    }
    return rows;
}

std::vector<Student> studentsToSave(const std::vector<RosterRow>& rows)
{
    std::vector<Student> students;
    for (const RosterRow& row : rows) {
        if (row.kind == RosterRow::Kind::New || row.kind == RosterRow::Kind::Changed)
            students.push_back(row.student);
    }
    return students;
}

}  // namespace fb
