#include "app/practice/by_hand_bar.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QShortcut>
#include <QToolButton>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace by_hand_bar_detail {

QToolButton* quietButton(QWidget* parent, const char* name)
{
    QToolButton* made = parts::toggle(parent, name);
    made->setCheckable(false);
    made->setProperty("look", QLatin1String("quiet"));
    return made;
}

}  // namespace by_hand_bar_detail

using by_hand_bar_detail::quietButton;

ByHandBar::ByHandBar(QWidget* parent)
    : QWidget(parent),
      m_undo(quietButton(this, "undo")),
      m_redo(quietButton(this, "redo")),
      m_clear(quietButton(this, "clearStage")),
      m_watch(quietButton(this, "watchOnce"))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kTight);
    for (QToolButton* button : {m_undo, m_redo, m_clear, m_watch})
        row->addWidget(button);
    connect(m_undo, &QToolButton::clicked, this, &ByHandBar::undoAsked);
    connect(m_redo, &QToolButton::clicked, this, &ByHandBar::redoAsked);
    connect(m_clear, &QToolButton::clicked, this, &ByHandBar::clearAsked);
    connect(m_watch, &QToolButton::clicked, this, &ByHandBar::watchAsked);
    connect(new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_Z), this), &QShortcut::activated, this,
            &ByHandBar::undoAsked);
    for (const QKeySequence& keys :
         {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)})
        connect(new QShortcut(keys, this), &QShortcut::activated, this, &ByHandBar::redoAsked);
    hide();
    say();
}

void ByHandBar::say()
{
    parts::say(m_undo, tr("Undo"));
    parts::say(m_redo, tr("Redo"));
    //: Takes away everything that was set in this stage; can be undone.
    parts::say(m_clear, tr("Start over"));
    m_clear->setToolTip(tr("Take away everything set in this stage; it can be undone"));
    //: The program shows, once, how this site is found.
    parts::say(m_watch, tr("Watch once"));
}

void ByHandBar::showState(const PracticeState& state)
{
    setVisible(state.byHand.has_value());
    if (!state.byHand)
        return;
    const ByHandState& byHand = *state.byHand;
    const bool free = !byHand.watching && !state.choosingReason;
    m_undo->setEnabled(free && byHand.canUndo);
    m_redo->setEnabled(free && byHand.canRedo);
    m_clear->setEnabled(free && byHand.canClear);
    m_watch->setVisible(!state.exam);
    m_watch->setEnabled(free && !byHand.watched);
    m_watch->setToolTip(byHand.watched ? tr("Already shown for this request")
                                       : tr("See once how this site is found; the attempt will say so"));
}

void ByHandBar::setScheme(const Scheme& scheme)
{
    constexpr int kIcon = 18;
    const int icon = parts::scaled(this, kIcon);
    const std::pair<QToolButton*, Icon> icons[]{
        {m_undo, Icon::Undo}, {m_redo, Icon::Redo}, {m_clear, Icon::StartOver}, {m_watch, Icon::Watch}};
    for (const auto& [button, drawing] : icons) {
        button->setIcon(iconFor(drawing, scheme));
        button->setIconSize({icon, icon});
    }
}

void ByHandBar::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
