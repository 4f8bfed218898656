#include "app/records/records_room.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QStackedLayout>
#include <QToolButton>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/assessors_page.h"
#include "app/records/board_view.h"
#include "app/records/check_off_view.h"
#include "app/records/history_view.h"
#include "app/records/list_view.h"
#include "app/records/log_page.h"
#include "app/records/replay_view.h"

namespace fb {

RecordsRoom::RecordsRoom(RecordsPresenter& presenter, Dialogs& dialogs, const Scheme& scheme, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_nav(new QWidget(this)),
      m_who(parts::text(m_nav, "recordsWho", "small")),
      m_lock(parts::button(m_nav, "recordsLock")),
      m_board(new BoardView(presenter, this)),
      m_list(new ListView(presenter, this)),
      m_log(new LogPage(presenter, dialogs, this)),
      m_assessors(new AssessorsPage(presenter, this)),
      m_history(new HistoryView(presenter, this)),
      m_opened(new CheckOffView(presenter, dialogs, this)),
      m_replay(new ReplayView(presenter, this))
{
    static constexpr std::array kNames{"areaBoard", "areaCheckOffs", "areaLog", "areaAssessors"};
    for (std::size_t i = 0; i < m_areas.size(); ++i) {
        m_areas[i] = parts::toggle(m_nav, kNames[i]);
        m_areas[i]->setToolButtonStyle(Qt::ToolButtonTextOnly);
        connect(m_areas[i], &QToolButton::clicked, this,
                [this, area = static_cast<RecordsArea>(i)] { m_presenter.show(area); });
    }
    layOut();
    say();
    setScheme(scheme);
    connect(m_lock, &QPushButton::clicked, &m_presenter, &RecordsPresenter::lock);
}

void RecordsRoom::layOut()
{
    auto* nav = new QHBoxLayout(m_nav);
    nav->setContentsMargins(0, 0, 0, 0);
    nav->setSpacing(space::kNear);
    for (QToolButton* area : m_areas)
        nav->addWidget(area);
    nav->addStretch(1);
    // Room is taken from what can be scrolled, never from the words on top.
    m_nav->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_who->setWordWrap(false);
    nav->addWidget(m_who);
    // A fixed height in a row would hold every other button down to it.
    nav->addWidget(m_lock, 0, Qt::AlignVCenter);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(space::kMargin, space::kNear, space::kMargin, space::kApart);
    rows->setSpacing(space::kApart);
    rows->addWidget(m_nav);
    m_stack = new QStackedLayout;
    for (QWidget* each :
         std::initializer_list<QWidget*>{m_board, m_list, m_log, m_assessors, m_history, m_opened, m_replay})
        m_stack->addWidget(each);
    rows->addLayout(m_stack, 1);
}

void RecordsRoom::say()
{
    //: Areas of the records. The first: who of a cohort stands where.
    parts::say(m_areas[0], tr("Board"));
    parts::say(m_areas[1], tr("Check-offs"));
    parts::say(m_areas[2], tr("Log and backup"));
    parts::say(m_areas[3], tr("Assessors"));
    //: Shuts the records; the PIN is asked again.
    parts::say(m_lock, tr("Lock"));
    m_lock->setAccessibleName(tr("Lock the records"));
}

void RecordsRoom::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

void RecordsRoom::setScheme(const Scheme& scheme)
{
    m_board->setScheme(scheme);
    m_list->setScheme(scheme);
    m_log->setScheme(scheme);
    m_history->setScheme(scheme);
    m_opened->setScheme(scheme);
    m_replay->setScheme(scheme);
}

QWidget* RecordsRoom::shownFor(const RecordsState& state) const
{
    if (state.item)
        return m_replay;
    if (state.opened)
        return m_opened;
    if (state.history)
        return m_history;
    switch (state.area) {
    case RecordsArea::Board: return m_board;
    case RecordsArea::CheckOffs: return m_list;
    case RecordsArea::Log: return m_log;
    case RecordsArea::Assessors: return m_assessors;
    }
    return m_board;
}

void RecordsRoom::showState(const RecordsState& state)
{
    for (std::size_t i = 0; i < m_areas.size(); ++i)
        m_areas[i]->setChecked(static_cast<std::size_t>(state.area) == i);
    m_who->setText(state.who ? state.who->name : QString());
    m_board->showState(state);
    m_list->showState(state);
    m_log->showState(state);
    m_assessors->showState(state);
    m_history->showState(state);
    m_opened->showState(state);
    m_replay->showState(state);
    QWidget* shown = shownFor(state);
    m_stack->setCurrentWidget(shown);
    if (shown != m_focused) {
        m_focused = shown;
        focusFor(shown);
    }
}

void RecordsRoom::showProgress(const RecordsState& state)
{
    m_log->showProgress(state);
    m_opened->showProgress(state);
}

void RecordsRoom::focusFor(const QWidget* shown)
{
    if (shown == m_board)
        m_board->focusFirst();
    else if (shown == m_list)
        m_list->focusFirst();
    else if (shown == m_log)
        m_log->focusFirst();
    else if (shown == m_assessors)
        m_assessors->focusFirst();
    else if (shown == m_history)
        m_history->focusFirst();
    else if (shown == m_opened)
        m_opened->focusFirst();
    else
        m_replay->focusFirst();
}

void RecordsRoom::keyPressEvent(QKeyEvent* event)
{
    const RecordsState& state = m_presenter.state();
    if (event->key() == Qt::Key_Escape && (state.item || state.opened || state.history))
        m_presenter.back();
    else
        QWidget::keyPressEvent(event);
}

}  // namespace fb
