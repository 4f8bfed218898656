// A list of records as a table: rows of hairlines without a grid, sorted by its heads, walked by keys, one
// row at a time. Enter or a click opens a row.
#pragma once

#include <QTableView>
#include <vector>

#include "app/look/palette.h"

namespace fb {

class RecordsTable : public QTableView {
    Q_OBJECT

public:
    explicit RecordsTable(const char* name, QWidget* parent = nullptr);

    // Sorted by that column at first. `samples`: what usually stands in each column, as text: it is given so
    // much where there is room. `yielding`: where there is too little, the columns whose words are cut first,
    // in that order; no other is cut, and what still does not fit scrolls.
    void use(QAbstractItemModel& sorted, int column, Qt::SortOrder order, const QStringList& samples,
             const std::vector<int>& yielding = {});
    void setScheme(const Scheme& scheme);
    void fitColumns();  // after the letters changed

Q_SIGNALS:
    void opened(const QModelIndex& row);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] int contentWidth(int column) const;

    QStringList m_samples;
    std::vector<int> m_yielding;
};

}  // namespace fb
