#include "app/roster/roster_table.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <array>
#include <utility>

#include "app/look/icons.h"

namespace fb {

struct RosterWords {
    Q_DECLARE_TR_FUNCTIONS(fb::RosterWords)
};

namespace roster_table_detail {

bool isLeftOut(RosterRow::Kind kind)
{
    using Kind = RosterRow::Kind;
    return kind == Kind::Doubled || kind == Kind::NoId || kind == Kind::Nameless;
}

bool wantsALook(const RosterRow& row) { return isLeftOut(row.kind) || !row.unclearExtra.isEmpty(); }

QString kindText(const RosterRow& row)
{
    using Kind = RosterRow::Kind;
    switch (row.kind) {
    case Kind::New: return RosterWords::tr("New");
    case Kind::Changed: return RosterWords::tr("Changed");
    case Kind::Same: return RosterWords::tr("The same as before");
    case Kind::Doubled:
        return RosterWords::tr("Left out: same id as line %1").arg(QLocale().toString(row.firstLine));
    case Kind::NoId:
        return row.student.id.isEmpty() ? RosterWords::tr("Left out: no id")
                                        : RosterWords::tr("Left out: the id is too long");
    case Kind::Nameless: return RosterWords::tr("Left out: no name");
    }
    return {};
}

QString percentText(int percent)
{
    //: %1 is a number: so much more time.
    return percent == 0 ? QString() : RosterWords::tr("%1 %").arg(QLocale().toString(percent));
}

}  // namespace roster_table_detail

RosterTable::RosterTable(QObject* parent) : QAbstractTableModel(parent) {}

void RosterTable::show(std::shared_ptr<const std::vector<RosterRow>> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    m_order.clear();
    constexpr auto kMost = static_cast<std::size_t>(kShownRosterRows);
    for (const bool second : {true, false}) {
        for (std::size_t i = 0; m_rows && i < m_rows->size() && m_order.size() < kMost; ++i) {
            if (roster_table_detail::wantsALook((*m_rows)[i]) == second)
                m_order.push_back(i);
        }
    }
    endResetModel();
}

void RosterTable::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    sayAnew();
}

void RosterTable::sayAnew()
{
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, kRosterTableColumnCount - 1);
    if (!m_order.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, kRosterTableColumnCount - 1));
}

int RosterTable::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_order.size());
}

int RosterTable::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : kRosterTableColumnCount;
}

QVariant RosterTable::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    const RosterRow& row = (*m_rows)[m_order[static_cast<std::size_t>(index.row())]];
    const auto column = static_cast<RosterTableColumn>(index.column());
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole)
        return text(row, column);
    if (role == Qt::DecorationRole && column == RosterTableColumn::Does &&
        roster_table_detail::wantsALook(row))
        return iconFor(Icon::Caution, m_scheme);
    if (role == Qt::ForegroundRole && roster_table_detail::isLeftOut(row.kind))
        return m_scheme.quietInk;
    return {};
}

QVariant RosterTable::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (static_cast<RosterTableColumn>(section)) {
    case RosterTableColumn::Line: return RosterWords::tr("Line");
    case RosterTableColumn::Does: return RosterWords::tr("What it does");
    case RosterTableColumn::Id: return rosterColumnName(RosterColumn::Id);
    case RosterTableColumn::Family: return rosterColumnName(RosterColumn::Family);
    case RosterTableColumn::Given: return rosterColumnName(RosterColumn::Given);
    case RosterTableColumn::Section: return rosterColumnName(RosterColumn::Section);
    case RosterTableColumn::ExtraPercent: return rosterColumnName(RosterColumn::ExtraPercent);
    case RosterTableColumn::Language: return rosterColumnName(RosterColumn::Language);
    }
    return {};
}

QString RosterTable::text(const RosterRow& row, RosterTableColumn column) const
{
    switch (column) {
    case RosterTableColumn::Line: return QLocale().toString(row.line);
    case RosterTableColumn::Does: return whatItDoes(row);
    case RosterTableColumn::Id: return row.student.id;
    case RosterTableColumn::Family: return row.student.family;
    case RosterTableColumn::Given: return row.student.given;
    case RosterTableColumn::Section: return row.student.section;
    case RosterTableColumn::ExtraPercent: return roster_table_detail::percentText(row.student.extraPercent);
    case RosterTableColumn::Language: return row.student.language;
    }
    return {};
}

QString whatItDoes(const RosterRow& row)
{
    const QString kind = roster_table_detail::kindText(row);
    if (row.unclearExtra.isEmpty() || roster_table_detail::isLeftOut(row.kind))
        return kind;
    //: %1 is "New", "Changed" or "The same as before"; %2 is what the file says.
    return RosterWords::tr("%1; extra time unclear: %2").arg(kind, row.unclearExtra.left(24));
}

QString rosterColumnName(RosterColumn column)
{
    switch (column) {
    case RosterColumn::Id: return RosterWords::tr("Id");
    case RosterColumn::Family: return RosterWords::tr("Family name");
    case RosterColumn::Given: return RosterWords::tr("Given name");
    case RosterColumn::FullName: return RosterWords::tr("Full name");
    //: Of a course: the group a student belongs to.
    case RosterColumn::Section: return RosterWords::tr("Section");
    case RosterColumn::ExtraPercent: return RosterWords::tr("Extra time");
    case RosterColumn::Language: return RosterWords::tr("Language");
    }
    return {};
}

QString rosterCounts(const std::vector<RosterRow>& rows, int passedOver)
{
    using Kind = RosterRow::Kind;
    std::array<int, static_cast<std::size_t>(Kind::Nameless) + 1> counts{};
    int unclear = 0;
    for (const RosterRow& row : rows) {
        ++counts[static_cast<std::size_t>(row.kind)];
        unclear += !roster_table_detail::isLeftOut(row.kind) && !row.unclearExtra.isEmpty() ? 1 : 0;
    }
    const auto of = [&](Kind kind) { return counts[static_cast<std::size_t>(kind)]; };
    QStringList said;
    const auto say = [&said](int count, const QString& words) {
        if (count > 0)
            said.append(words);
    };
    say(of(Kind::New), RosterWords::tr("%Ln new", nullptr, of(Kind::New)));
    say(of(Kind::Changed), RosterWords::tr("%Ln changed", nullptr, of(Kind::Changed)));
    say(of(Kind::Same), RosterWords::tr("%Ln the same as before", nullptr, of(Kind::Same)));
    say(of(Kind::Doubled), RosterWords::tr("%Ln doubled and left out", nullptr, of(Kind::Doubled)));
    say(of(Kind::NoId), RosterWords::tr("%Ln without a usable id and left out", nullptr, of(Kind::NoId)));
    say(of(Kind::Nameless), RosterWords::tr("%Ln without a name and left out", nullptr, of(Kind::Nameless)));
    say(unclear, RosterWords::tr("%Ln with an extra time that is unclear", nullptr, unclear));
    say(passedOver,
        RosterWords::tr("%Ln of another role or to be deleted, passed over", nullptr, passedOver));
    return said.isEmpty() ? RosterWords::tr("No students") : said.join(QLatin1String(", "));
}

}  // namespace fb
