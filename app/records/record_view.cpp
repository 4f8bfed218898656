#include "app/records/record_view.h"

#include <QEvent>
#include <QScrollArea>

#include "app/practice/parts.h"

namespace fb {

RecordView::RecordView(const char* scroll, QWidget* parent) : QWidget(parent), m_scroll(new QScrollArea(this))
{
    m_scroll->setObjectName(QLatin1String(scroll));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    parts::followFocus(m_scroll);
}

void RecordView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LanguageChange)
        return;
    say();
    if (hasRecord())
        rebuild();
}

void RecordView::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    if (hasRecord())
        rebuild();
}

}  // namespace fb
