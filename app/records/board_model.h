// The students of a board as rows, and what is left of them by name and standing. The order of a sorted
// column is that of its meaning: names by the language, days by time.
#pragma once

#include <QAbstractTableModel>
#include <memory>
#include <optional>

#include "app/doors/records.h"
#include "app/records/records_look.h"
#include "app/records/sorted_rows.h"

namespace fb {

class BoardModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { NameColumn, IdColumn, SectionColumn, StandingColumn, LastColumn, WhenColumn, ColumnCount };
    static constexpr int kSortRole = Qt::UserRole;

    explicit BoardModel(QObject* parent = nullptr);

    void setBoard(const std::shared_ptr<const Board>& board);  // null: nothing
    void setScheme(const Scheme& scheme);
    [[nodiscard]] const StudentStanding& at(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

private:
    [[nodiscard]] QString textOf(const StudentStanding& line, int column) const;
    [[nodiscard]] QVariant sortOf(const StudentStanding& line, int column) const;

    std::shared_ptr<const Board> m_board;
    RecordIcons m_icons;
};

class BoardFilter : public SortedRows {
    Q_OBJECT

public:
    explicit BoardFilter(QObject* parent = nullptr);

    // Every word must be in the name, the id or the section.
    void setWords(const QString& words);
    void setStanding(std::optional<Standing> standing);

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
    QStringList m_words;
    std::optional<Standing> m_standing;
};

}  // namespace fb
