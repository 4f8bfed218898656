// The desk's list of students: Enter or a double click starts the check-off of one.
#pragma once

#include "app/records/records_table.h"

namespace fb {

class DeskTable : public RecordsTable {
    Q_OBJECT

public:
    explicit DeskTable(QWidget* parent = nullptr);

Q_SIGNALS:
    void startAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
};

}  // namespace fb
