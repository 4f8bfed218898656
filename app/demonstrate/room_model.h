// The room's marks as rows: number, name (can be edited), and once revealed the verdict and the distance to
// the ideal point.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "app/lecture/room_marks.h"
#include "app/look/palette.h"

namespace fb {

class RoomModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { NumberColumn, NameColumn, VerdictColumn, DistanceColumn, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void setMarks(const std::vector<RoomMark>& marks, bool revealed);
    void setScheme(const Scheme& scheme);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void named(int row, const QString& name);  // the presenter keeps it

private:
    [[nodiscard]] QString textOf(int row, int column) const;
    [[nodiscard]] QString spokenOf(int row) const;

    std::vector<RoomMark> m_marks;
    bool m_revealed = false;
    Scheme m_scheme;
};

}  // namespace fb
