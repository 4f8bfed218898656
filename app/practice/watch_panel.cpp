#include "app/practice/watch_panel.h"

#include <QEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QShortcut>
#include <QStyle>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/practice/watched.h"
#include "app/scene/by_hand_scene.h"

namespace fb {

bool asksForCalm(const QWidget& widget)
{
    return widget.style()->styleHint(QStyle::SH_Widget_Animate, nullptr, &widget) == 0;
}

WatchPanel::WatchPanel(QWidget* parent)
    : QWidget(parent),
      m_counter(parts::text(this, "watchCounter", "small")),
      m_caption(parts::text(this, "watchCaption", "request")),
      m_note(parts::text(this, "watchNote", "small")),
      m_back(parts::button(this, "watchBack")),
      m_next(parts::mainButton(this, "watchNext")),
      m_run(parts::button(this, "watchRun")),
      m_close(parts::button(this, "watchClose"))
{
    m_timer.setInterval(kStepMs);
    layOut();
    connectAll();
    say();
}

void WatchPanel::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    column->addWidget(m_counter);
    column->addWidget(m_caption);
    auto* ways = new QHBoxLayout;
    auto* ends = new QHBoxLayout;
    for (QHBoxLayout* row : {ways, ends})
        row->setSpacing(space::kNear);
    ways->addWidget(m_back, 1);
    ways->addWidget(m_next, 1);
    ends->addWidget(m_run, 1);
    ends->addWidget(m_close, 1);
    column->addSpacing(space::kTight);
    column->addLayout(ways);
    column->addLayout(ends);
    column->addWidget(m_note);
}

void WatchPanel::connectAll()
{
    connect(m_back, &QPushButton::clicked, this, [this] { step(-1); });
    connect(m_next, &QPushButton::clicked, this, [this] { step(1); });
    connect(m_close, &QPushButton::clicked, this, &WatchPanel::closeAsked);
    connect(m_run, &QPushButton::clicked, this, [this] { setRunning(!m_timer.isActive()); });
    connect(&m_timer, &QTimer::timeout, this, [this] { Q_EMIT stepAsked(1); });
    const auto key = [this](Qt::Key which, const auto& then) {
        auto* shortcut = new QShortcut(QKeySequence(which), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, then);
    };
    // The arrow that points onward in the language's direction.
    key(Qt::Key_Right, [this] { step(isRightToLeft() ? -1 : 1); });
    key(Qt::Key_Left, [this] { step(isRightToLeft() ? 1 : -1); });
    key(Qt::Key_Escape, [this] { Q_EMIT closeAsked(); });
}

void WatchPanel::step(int delta)
{
    setRunning(false);
    Q_EMIT stepAsked(delta);
}

void WatchPanel::setRunning(bool running)
{
    running ? m_timer.start() : m_timer.stop();
    say();
}

void WatchPanel::say()
{
    parts::say(m_back, tr("Back"));
    //: The next step of what is shown.
    parts::say(m_next, tr("Next"));
    //: Holds a showing that goes on by itself, or lets it go on.
    parts::say(m_run, m_timer.isActive() ? tr("Pause") : tr("Go on by itself"));
    parts::say(m_close, tr("Close"));
    m_close->setAccessibleName(tr("Close the showing"));
    m_note->setText(tr("Shown once for each request. The attempt will say that you watched."));
}

void WatchPanel::showState(const PracticeState& state)
{
    if (!state.byHand || !state.byHand->watching) {
        m_timer.stop();
        m_shown.reset();
        return;
    }
    const QLocale locale;
    const int step = *state.byHand->watching;
    const int steps = state.byHand->watchSteps;
    if (!m_shown)
        setRunning(!asksForCalm(*this));
    if (m_shown != step && m_timer.isActive())
        m_timer.start();
    m_shown = step;
    const bool last = step + 1 >= steps;
    if (last && m_timer.isActive())
        setRunning(false);
    m_counter->setText(tr("Step %1 of %2").arg(locale.toString(step + 1), locale.toString(steps)));
    m_caption->setText(watchCaption(watchedTarget(*state.target, state.byHand->builder), step));
    // Where the focus is, so that each step is heard.
    m_next->setAccessibleDescription(m_caption->text());
    m_close->setAccessibleDescription(m_caption->text());
    m_back->setEnabled(step > 0);
    m_next->setEnabled(!last);
    m_run->setEnabled(!last);
    if (last && !m_close->hasFocus() && isAncestorOf(window()->focusWidget()))
        m_close->setFocus();
}

void WatchPanel::focusFirst() { m_next->setFocus(); }

void WatchPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
