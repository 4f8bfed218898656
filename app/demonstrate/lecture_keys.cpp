#include "app/demonstrate/lecture_keys.h"

#include <QAbstractButton>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QScrollArea>
#include <QTableView>

#include "app/demonstrate/lecture_view.h"
#include "app/demonstrate/presenting_keys.h"

namespace fb {

namespace lecture_keys_detail {

// Whether the widget, or what it is a part of, turns keys into a value or a place of its own.
bool isField(const QWidget& widget)
{
    return qobject_cast<const QAbstractSlider*>(&widget) || qobject_cast<const QAbstractSpinBox*>(&widget) ||
           qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QComboBox*>(&widget) ||
           qobject_cast<const QTableView*>(&widget) || qobject_cast<const QScrollArea*>(&widget);
}

}  // namespace lecture_keys_detail

LectureKeys::LectureKeys(LecturePresenter& presenter, QWidget& page)
    : QObject(&page),
      m_presenter(presenter),
      m_page(page)
{
    qApp->installEventFilter(this);
}

bool LectureKeys::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return false;
    const auto* at = qobject_cast<const QWidget*>(watched);
    // The picture knows these keys itself; so does a menu or a dialog know its own.
    if (!at || qobject_cast<const LectureView*>(at) || at->window() != m_page.window() ||
        (at != &m_page && !m_page.isAncestorOf(at)))
        return false;
    return take(static_cast<const QKeyEvent&>(*event), *at);
}

bool LectureKeys::take(const QKeyEvent& key, const QWidget& at)
{
    if (key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))
        return false;
    const bool isPaging = key.key() == Qt::Key_PageDown || key.key() == Qt::Key_PageUp;
    if (!isPaging && key.key() != Qt::Key_F6 && lecture_keys_detail::isField(at))
        return false;
    // A field that has come to its end hands an arrow on, which must not go on then.
    const QWidget* focus = QApplication::focusWidget();
    const bool isBlank = key.key() == Qt::Key_B || key.key() == Qt::Key_Period;
    if (!isPaging && !isBlank && isPresentingKey(key.key()) && focus && lecture_keys_detail::isField(*focus))
        return false;
    if (key.key() == Qt::Key_Space && qobject_cast<const QAbstractButton*>(&at))
        return false;
    if (key.key() == Qt::Key_F6)
        Q_EMIT asksSwap();
    else if (key.key() == Qt::Key_Escape)
        Q_EMIT asksClose();
    else
        return presentBy(m_presenter, key.key());
    return true;
}

}  // namespace fb
