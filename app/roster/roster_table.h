// The first rows of a roster as a table, with what each will do in words. Rows that ask for a second look
// (left out, or with an extra time that cannot be told) come first, so that none is hidden by a long list.
#pragma once

#include <QAbstractTableModel>
#include <QString>
#include <memory>
#include <vector>

#include "app/look/palette.h"
#include "app/roster/roster.h"

namespace fb {

inline constexpr int kShownRosterRows = 200;

enum class RosterTableColumn { Line, Does, Id, Family, Given, Section, ExtraPercent, Language };
inline constexpr int kRosterTableColumnCount = static_cast<int>(RosterTableColumn::Language) + 1;

class RosterTable : public QAbstractTableModel {
    Q_OBJECT

public:
    explicit RosterTable(QObject* parent = nullptr);

    void show(std::shared_ptr<const std::vector<RosterRow>> rows);  // null: empty
    void setScheme(const Scheme& scheme);
    void sayAnew();  // the language has changed

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] QString text(const RosterRow& row, RosterTableColumn column) const;

    std::shared_ptr<const std::vector<RosterRow>> m_rows;
    std::vector<std::size_t> m_order;  // of the rows shown
    Scheme m_scheme = schemeOf(PaletteKind::Light);
};

// "New", "Changed", "Left out: the id stands in line 3 already", ...
[[nodiscard]] QString whatItDoes(const RosterRow& row);
// Its name in the table and over the choice of the column.
[[nodiscard]] QString rosterColumnName(RosterColumn column);
// "12 new, 2 changed, 1 doubled and left out"; `passedOver`: rows of the file that are no students.
[[nodiscard]] QString rosterCounts(const std::vector<RosterRow>& rows, int passedOver);

}  // namespace fb
