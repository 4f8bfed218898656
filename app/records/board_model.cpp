#include "app/records/board_model.h"

#include <algorithm>

#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

BoardModel::BoardModel(QObject* parent) : QAbstractTableModel(parent) {}

void BoardModel::setBoard(const std::shared_ptr<const Board>& board)
{
    beginResetModel();
    m_board = board;
    endResetModel();
}

void BoardModel::setScheme(const Scheme& scheme)
{
    m_icons.setScheme(scheme);
    if (const int rows = rowCount(); rows > 0)
        Q_EMIT dataChanged(index(0, 0), index(rows - 1, ColumnCount - 1), {Qt::DecorationRole});
}

const StudentStanding& BoardModel::at(int row) const
{
    return m_board->students[static_cast<std::size_t>(row)];
}

int BoardModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() || !m_board ? 0 : static_cast<int>(m_board->students.size());
}

int BoardModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString BoardModel::textOf(const StudentStanding& line, int column) const
{
    switch (column) {
    case NameColumn: return listName(line.student);
    case IdColumn: return line.student.id;
    case SectionColumn: return line.student.section;
    case StandingColumn: return parts::alone(standingName(line.where));
    case LastColumn: return line.lastOutcome ? parts::alone(outcomeName(*line.lastOutcome)) : QString();
    case WhenColumn: return line.lastAt.isValid() ? whenText(line.lastAt) : QString();
    default: return {};
    }
}

QVariant BoardModel::sortOf(const StudentStanding& line, int column) const
{
    switch (column) {
    case StandingColumn: return static_cast<int>(line.where.standing);
    case LastColumn: return line.lastOutcome ? static_cast<int>(*line.lastOutcome) : kOutcomeCount;
    case WhenColumn: return line.lastAt;
    default: return textOf(line, column);
    }
}

QVariant BoardModel::data(const QModelIndex& index, int role) const
{
    const StudentStanding& line = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole: return textOf(line, index.column());
    case kSortRole: return sortOf(line, index.column());
    case Qt::DecorationRole:
        if (index.column() == StandingColumn)
            return m_icons.of(line.where.standing);
        if (index.column() == LastColumn && line.lastOutcome)
            return m_icons.of(*line.lastOutcome);
        return {};
    default: return {};
    }
}

QVariant BoardModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case NameColumn: return tr("Student");
    //: The school's own number or code of a student.
    case IdColumn: return tr("Number");
    //: A class or group of a course.
    case SectionColumn: return tr("Section");
    //: Where a student stands on a sheet: passed, may try again ...
    case StandingColumn: return tr("Standing");
    case LastColumn: return tr("Last outcome");
    case WhenColumn: return tr("When");
    default: return {};
    }
}

BoardFilter::BoardFilter(QObject* parent) : SortedRows(parent) { setSortRole(BoardModel::kSortRole); }

void BoardFilter::setWords(const QString& words)
{
    m_words = words.split(u' ', Qt::SkipEmptyParts);
    invalidateFilter();
}

void BoardFilter::setStanding(std::optional<Standing> standing)
{
    m_standing = standing;
    invalidateFilter();
}

bool BoardFilter::filterAcceptsRow(int row, const QModelIndex&) const
{
    const StudentStanding& line = static_cast<const BoardModel*>(sourceModel())->at(row);
    if (m_standing && line.where.standing != *m_standing)
        return false;
    const Student& student = line.student;
    const QString all = student.given + u' ' + student.family + u' ' + student.id + u' ' + student.section;
    return std::ranges::all_of(m_words,
                               [&](const QString& word) { return all.contains(word, Qt::CaseInsensitive); });
}

}  // namespace fb
