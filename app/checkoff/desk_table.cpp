#include "app/checkoff/desk_table.h"

#include <QKeyEvent>
#include <QMouseEvent>

namespace fb {

DeskTable::DeskTable(QWidget* parent) : RecordsTable("students", parent) {}

void DeskTable::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!enter)
        return RecordsTable::keyPressEvent(event);
    if (currentIndex().isValid())
        Q_EMIT startAsked();
}

void DeskTable::mouseDoubleClickEvent(QMouseEvent* event)
{
    RecordsTable::mouseDoubleClickEvent(event);
    if (event->button() == Qt::LeftButton && indexAt(event->pos()).isValid())
        Q_EMIT startAsked();
}

}  // namespace fb
