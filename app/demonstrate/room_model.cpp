#include "app/demonstrate/room_model.h"

#include <QIcon>
#include <QLocale>
#include <algorithm>

#include "app/look/icons.h"
#include "app/practice/parts.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace room_model_detail {

bool sameGrade(const std::optional<Grade>& a, const std::optional<Grade>& b)
{
    return a.has_value() == b.has_value() &&
           (!a || (a->verdict == b->verdict && a->distanceToIdeal == b->distanceToIdeal));
}

bool looksAlike(const RoomMark& a, const RoomMark& b)
{
    return a.name == b.name && sameGrade(a.grade, b.grade);
}

}  // namespace room_model_detail

void RoomModel::setMarks(const std::vector<RoomMark>& marks, bool revealed)
{
    if (marks.size() != m_marks.size()) {
        beginResetModel();
        m_marks = marks;
        m_revealed = revealed;
        endResetModel();
        return;
    }
    // A name that is being typed is not typed over by news that are none.
    const bool isSame =
        revealed == m_revealed && std::ranges::equal(marks, m_marks, room_model_detail::looksAlike);
    m_marks = marks;
    m_revealed = revealed;
    if (!m_marks.empty() && !isSame)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

void RoomModel::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    if (!m_marks.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

int RoomModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_marks.size());
}

int RoomModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString RoomModel::textOf(int row, int column) const
{
    const RoomMark& mark = m_marks[static_cast<std::size_t>(row)];
    switch (column) {
    case NumberColumn: return QLocale().toString(row + 1);
    case NameColumn: return mark.name;
    case VerdictColumn:
        if (!m_revealed)
            return {};
        return mark.grade ? parts::alone(verdictName(mark.grade->verdict)) : tr("Not on the body");
    case DistanceColumn:
        return m_revealed && mark.grade ? cmText(mark.grade->distanceToIdeal.value()) : QString();
    default: return {};
    }
}

QString RoomModel::spokenOf(int row) const
{
    QStringList words;
    for (int column = 0; column < ColumnCount; ++column)
        if (const QString text = textOf(row, column); !text.isEmpty())
            words << text;
    return words.join(QStringLiteral(", "));
}

QVariant RoomModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const auto& grade = m_marks[static_cast<std::size_t>(index.row())].grade;
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole: return textOf(index.row(), index.column());
    case Qt::AccessibleTextRole: return spokenOf(index.row());
    case Qt::ToolTipRole:
        return index.column() == VerdictColumn ? textOf(index.row(), VerdictColumn) : QVariant();
    case Qt::DecorationRole:
        if (index.column() == VerdictColumn && m_revealed && grade)
            return iconFor(iconOf(grade->verdict), m_scheme);
        return {};
    case Qt::TextAlignmentRole:
        return static_cast<int>(Qt::AlignVCenter |
                                (index.column() == DistanceColumn ? Qt::AlignTrailing : Qt::AlignLeading));
    default: return {};
    }
}

QVariant RoomModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role == Qt::TextAlignmentRole && section == DistanceColumn)
        return static_cast<int>(Qt::AlignVCenter | Qt::AlignTrailing);
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    //: Head of a column: the number of a mark.
    case NumberColumn: return tr("No.");
    case NameColumn: return tr("Name");
    case VerdictColumn: return tr("Verdict");
    //: Head of a narrow column: how far from the ideal point.
    case DistanceColumn: return tr("Off by");
    default: return {};
    }
}

Qt::ItemFlags RoomModel::flags(const QModelIndex& index) const
{
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return index.column() == NameColumn ? flags | Qt::ItemIsEditable : flags;
}

bool RoomModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    if (!index.isValid() || index.column() != NameColumn || role != Qt::EditRole)
        return false;
    Q_EMIT named(index.row(), value.toString());
    return true;
}

}  // namespace fb
