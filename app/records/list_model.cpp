#include "app/records/list_model.h"

#include <QLocale>

#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

ListModel::ListModel(QObject* parent) : QAbstractTableModel(parent) {}

void ListModel::setLines(const Lines& lines)
{
    beginResetModel();
    m_lines = lines;
    endResetModel();
}

void ListModel::setScheme(const Scheme& scheme)
{
    m_icons.setScheme(scheme);
    if (const int rows = rowCount(); rows > 0)
        Q_EMIT dataChanged(index(0, 0), index(rows - 1, ColumnCount - 1), {Qt::DecorationRole});
}

const CheckOffLine& ListModel::at(int row) const { return (*m_lines)[static_cast<std::size_t>(row)]; }

int ListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() || !m_lines ? 0 : static_cast<int>(m_lines->size());
}

int ListModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString ListModel::textOf(const CheckOffLine& line, int column) const
{
    switch (column) {
    case WhenColumn: return whenText(line.at);
    case NameColumn: return listName(line.student);
    case SheetColumn: return line.sheetTitle;
    case AttemptColumn: return QLocale().toString(line.attempt);
    case OutcomeColumn: return parts::alone(outcomeName(line.outcome));
    case PercentColumn: return scoreText(line.percent);
    case RatingColumn: return line.rating > 0 ? QLocale().toString(line.rating) : QString();
    case AssessorColumn: return signersOf(line);
    default: return {};
    }
}

QVariant ListModel::sortOf(const CheckOffLine& line, int column) const
{
    switch (column) {
    case WhenColumn: return line.at;
    case AttemptColumn: return line.attempt;
    case OutcomeColumn: return static_cast<int>(line.outcome);
    case PercentColumn: return line.percent;
    case RatingColumn: return line.rating;
    default: return textOf(line, column);
    }
}

QVariant ListModel::data(const QModelIndex& index, int role) const
{
    const CheckOffLine& line = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole: return textOf(line, index.column());
    case kSortRole: return sortOf(line, index.column());
    case Qt::DecorationRole:
        return index.column() == OutcomeColumn ? QVariant(m_icons.of(line.outcome)) : QVariant();
    default: return {};
    }
}

QVariant ListModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case WhenColumn: return tr("When");
    case NameColumn: return tr("Student");
    //: What a check-off asks.
    case SheetColumn: return tr("Sheet");
    case AttemptColumn: return tr("Attempt");
    case OutcomeColumn: return tr("Outcome");
    case PercentColumn: return tr("Score");
    //: The overall rating from 1 to 5.
    case RatingColumn: return tr("Rating");
    case AssessorColumn: return tr("Signed by");
    default: return {};
    }
}

}  // namespace fb
