#include "app/checkoff/handover_page.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

HandoverPage::HandoverPage(CheckOffPresenter& presenter, QWidget* parent)
    : CalmPage("handoverPage", parent),
      m_presenter(presenter),
      m_title(addWords("handoverTitle", "display")),
      m_timeUp(addWords("handoverTimeUp", "large")),
      m_words(addWords("handoverWords", "title")),
      m_goOn(addButton("takeOver"))
{
    setFocusPolicy(Qt::ClickFocus);
    connect(&presenter, &CheckOffPresenter::changed, this, &HandoverPage::showState);
    connect(m_goOn, &QPushButton::clicked, &presenter, &CheckOffPresenter::takeOver);
    showState();
}

void HandoverPage::showState()
{
    const CheckOffState& state = m_presenter.state();
    m_title->setText(tr("On-screen part finished"));
    m_timeUp->setText(tr("The time for the last item was up."));
    m_timeUp->setVisible(state.itemTimeUp);
    m_words->setText(tr("Please call your assessor."));
    const bool hasSteps = state.open && !state.open->sheet.sheet.steps.empty();
    parts::say(m_goOn, hasSteps ? tr("Assessor: go on to the manikin") : tr("Assessor: go on to the result"));
    m_goOn->setEnabled(!state.saving);
}

void HandoverPage::focusFirst() { setFocus(); }

void HandoverPage::changeEvent(QEvent* event)
{
    CalmPage::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        showState();
}

}  // namespace fb
