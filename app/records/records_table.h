// A list of records as a table: rows of hairlines without a grid, sorted by its heads, walked by keys, one
// row at a time. Enter or a click opens a row.
#pragma once

#include <QTableView>

#include "app/look/palette.h"

namespace fb {

class RecordsTable : public QTableView {
    Q_OBJECT

public:
    explicit RecordsTable(const char* name, QWidget* parent = nullptr);

    // Sorted by that column at first; the last column takes the room that is left. `samples`: how wide each
    // column is at least, as text.
    void use(QAbstractItemModel& sorted, int column, Qt::SortOrder order, const QStringList& samples);
    void setScheme(const Scheme& scheme);
    void fitColumns();  // after the letters changed

Q_SIGNALS:
    void opened(const QModelIndex& row);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QStringList m_samples;
};

}  // namespace fb
