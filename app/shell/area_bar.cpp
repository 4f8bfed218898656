#include "app/shell/area_bar.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QTimer>
#include <QToolButton>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

AreaBar::AreaBar(QWidget* parent) : QWidget(parent)
{
    constexpr std::array kNames{"areaPractice", "areaCheckOff", "areaDemonstrate", "areaRecords"};
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    for (std::size_t i = 0; i < kAreas.size(); ++i) {
        m_buttons[i] = parts::toggle(this, kNames[i]);
        m_buttons[i]->setToolButtonStyle(Qt::ToolButtonTextOnly);
        row->addWidget(m_buttons[i]);
        connect(m_buttons[i], &QToolButton::clicked, this, [this, area = kAreas[i]] {
            // A button that was down stays down; whoever listens says what is open now.
            showArea(m_shown);
            if (area != m_shown)
                Q_EMIT areaAsked(area);
        });
    }
    say();
    showArea(m_shown);
}

void AreaBar::showArea(Area area)
{
    m_shown = area;
    for (std::size_t i = 0; i < kAreas.size(); ++i) {
        m_buttons[i]->setChecked(kAreas[i] == area);
        m_buttons[i]->setEnabled(m_free || kAreas[i] == area);
    }
}

void AreaBar::setFree(bool free)
{
    m_free = free;
    showArea(m_shown);
}

void AreaBar::say()
{
    parts::say(m_buttons[0], tr("Practice"));
    //: The assessment in which a skill is signed off.
    parts::say(m_buttons[1], tr("Check-off"));
    //: What an instructor does before a class.
    parts::say(m_buttons[2], tr("Demonstrate"));
    //: Of check-offs.
    parts::say(m_buttons[3], tr("Records"));
    fit();
}

void AreaBar::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    fit();
}

void AreaBar::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
    // The buttons are dressed anew after the bar.
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        QTimer::singleShot(0, this, &AreaBar::fit);
}

// A style sheet with a least height lets a layout press such buttons to less than their words.
void AreaBar::fit()
{
    for (QToolButton* button : m_buttons) {
        button->ensurePolished();
        button->setMinimumSize(button->sizeHint());
    }
}

}  // namespace fb
