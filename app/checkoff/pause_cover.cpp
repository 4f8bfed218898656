#include "app/checkoff/pause_cover.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>

#include "app/checkoff/reason_dialog.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

PauseCover::PauseCover(CheckOffPresenter& presenter, QWidget* parent)
    : CalmPage("pauseCover", parent),
      m_presenter(presenter),
      m_title(addWords("pausedTitle", "display")),
      m_reason(addWords("pausedReason", "title")),
      m_words(addWords("pausedWords", "large")),
      m_goOn(addMain("resume")),
      m_void(addButton("voidPaused"))
{
    connect(&presenter, &CheckOffPresenter::changed, this, &PauseCover::showState);
    connect(m_goOn, &QPushButton::clicked, &presenter, &CheckOffPresenter::resume);
    connect(m_void, &QPushButton::clicked, this, &PauseCover::askVoid);
    showState();
}

void PauseCover::showState()
{
    const CheckOffState& state = m_presenter.state();
    m_title->setText(tr("Paused"));
    m_reason->setText(state.pauseReason);
    m_words->setText(tr("The clock stands still."));
    parts::say(m_goOn, tr("Go on"));
    //: Ends the check-off without a result; it uses up no attempt. Asks for the reason.
    parts::say(m_void, tr("Void…"));
    m_goOn->setEnabled(!state.saving);
    m_void->setEnabled(!state.saving);
}

void PauseCover::askVoid()
{
    ReasonDialog::ask(ReasonFor::Void, this, [this](const QString& why) { m_presenter.voidTechnical(why); });
}

void PauseCover::focusFirst() { m_goOn->setFocus(); }

void PauseCover::changeEvent(QEvent* event)
{
    CalmPage::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        showState();
}

}  // namespace fb
