#include "app/checkoff/desk_model.h"

#include <algorithm>

#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace desk_model_detail {

bool isSame(const StudentStanding& one, const StudentStanding& other)
{
    return one.student == other.student && one.where == other.where;
}

}  // namespace desk_model_detail

DeskModel::DeskModel(QObject* parent) : QAbstractTableModel(parent) {}

void DeskModel::setStudents(const std::vector<StudentStanding>& students)
{
    if (std::ranges::equal(students, m_students, desk_model_detail::isSame))
        return;
    beginResetModel();
    m_students = students;
    endResetModel();
}

void DeskModel::setScheme(const Scheme& scheme)
{
    m_icons.setScheme(scheme);
    retranslate();
}

void DeskModel::retranslate()
{
    if (const int rows = rowCount(); rows > 0)
        Q_EMIT dataChanged(index(0, 0), index(rows - 1, ColumnCount - 1));
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
}

const StudentStanding& DeskModel::at(int row) const { return m_students[static_cast<std::size_t>(row)]; }

int DeskModel::rowOf(const QString& id) const
{
    const auto at =
        std::ranges::find_if(m_students, [&](const StudentStanding& each) { return each.student.id == id; });
    return at == m_students.end() ? -1 : static_cast<int>(at - m_students.begin());
}

int DeskModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_students.size());
}

int DeskModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant DeskModel::data(const QModelIndex& index, int role) const
{
    const StudentStanding& line = at(index.row());
    if (role == Qt::DecorationRole && index.column() == StandingColumn)
        return m_icons.of(line.where.standing);
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole)
        return {};
    switch (index.column()) {
    case NameColumn: return listName(line.student);
    case IdColumn: return line.student.id;
    case SectionColumn: return line.student.section;
    case StandingColumn: return parts::alone(standingName(line.where));
    default: return {};
    }
}

QVariant DeskModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case NameColumn: return tr("Name");
    //: The school's number of a student.
    case IdColumn: return tr("Number");
    //: Part of a class.
    case SectionColumn: return tr("Section");
    //: How a student stands: not tried, passed, may try again.
    case StandingColumn: return tr("Standing");
    default: return {};
    }
}

DeskFilter::DeskFilter(DeskModel& model, QObject* parent)
    : QSortFilterProxyModel(parent),
      m_model(model),
      m_order(listOrder())
{
    setSourceModel(&model);
    setDynamicSortFilter(true);
}

void DeskFilter::retranslate()
{
    m_order = listOrder();
    invalidate();
}

void DeskFilter::setWords(const QString& words)
{
    m_words = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    invalidateFilter();
}

bool DeskFilter::filterAcceptsRow(int row, const QModelIndex&) const
{
    const Student& student = m_model.at(row).student;
    return std::ranges::all_of(m_words, [&](const QString& word) {
        return student.family.contains(word, Qt::CaseInsensitive) ||
               student.given.contains(word, Qt::CaseInsensitive) ||
               student.id.contains(word, Qt::CaseInsensitive) ||
               student.section.contains(word, Qt::CaseInsensitive);
    });
}

// Standings by their meaning, everything else as the language sorts; the same by name.
bool DeskFilter::lessThan(const QModelIndex& one, const QModelIndex& other) const
{
    if (one.column() == DeskModel::StandingColumn) {
        const Standing first = m_model.at(one.row()).where.standing;
        const Standing second = m_model.at(other.row()).where.standing;
        if (first != second)
            return first < second;
    }
    const int column = one.column() == DeskModel::StandingColumn ? int{DeskModel::NameColumn} : one.column();
    const auto words = [&](const QModelIndex& at) {
        return m_model.data(m_model.index(at.row(), column)).toString();
    };
    return m_order.compare(words(one), words(other)) < 0;
}

}  // namespace fb
