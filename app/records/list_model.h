// Signed check-offs as rows.
#pragma once

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>
#include <memory>

#include "app/doors/records.h"
#include "app/records/records_look.h"

namespace fb {

class ListModel : public QAbstractTableModel {
    Q_OBJECT

public:
    using Lines = std::shared_ptr<const std::vector<CheckOffLine>>;
    enum Column {
        WhenColumn,
        NameColumn,
        SheetColumn,
        AttemptColumn,
        OutcomeColumn,
        PercentColumn,
        RatingColumn,
        AssessorColumn,
        ColumnCount
    };
    static constexpr int kSortRole = Qt::UserRole;

    explicit ListModel(QObject* parent = nullptr);

    void setLines(const Lines& lines);  // null: nothing
    void setScheme(const Scheme& scheme);
    [[nodiscard]] const CheckOffLine& at(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

private:
    [[nodiscard]] QString textOf(const CheckOffLine& line, int column) const;
    [[nodiscard]] QVariant sortOf(const CheckOffLine& line, int column) const;

    Lines m_lines;
    RecordIcons m_icons;
};

}  // namespace fb
