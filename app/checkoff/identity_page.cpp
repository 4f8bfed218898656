#include "app/checkoff/identity_page.h"

#include <QEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace identity_page_detail {

QString detailsOf(const Student& student)
{
    //: What tells one student from another of the same name.
    const QString id = IdentityPage::tr("Student number %1").arg(student.id);
    QStringList lines{student.section.isEmpty() ? id : id + QStringLiteral(" · ") + student.section};
    if (student.invented)
        lines << IdentityPage::tr("Invented student of the sample");
    return lines.join(QLatin1Char('\n'));
}

QString attemptOf(const RunningCheckOff& open)
{
    const QLocale locale;
    QString words =
        IdentityPage::tr("Attempt %1 of %2.")
            .arg(locale.toString(open.attempt), locale.toString(open.sheet.sheet.retest.attempts));
    if (open.order.extraPercent > 0)
        words +=
            u' ' +
            IdentityPage::tr("You have %1 percent more time.").arg(locale.toString(open.order.extraPercent));
    return words;
}

}  // namespace identity_page_detail

IdentityPage::IdentityPage(CheckOffPresenter& presenter, QWidget* parent)
    : CalmPage("identityPage", parent),
      m_presenter(presenter),
      m_sheet(addWords("identitySheet", "small")),
      m_question(addWords("identityQuestion", "title")),
      m_name(addWords("identityName", "display")),
      m_details(addWords("identityDetails", "large")),
      m_attempt(addWords("identityAttempt", "large")),
      m_yes(addMain("identityYes")),
      m_no(addButton("identityNo"))
{
    setFocusPolicy(Qt::ClickFocus);
    connect(&presenter, &CheckOffPresenter::changed, this, &IdentityPage::showState);
    connect(m_yes, &QPushButton::clicked, &presenter, &CheckOffPresenter::confirmIdentity);
    connect(m_no, &QPushButton::clicked, &presenter, &CheckOffPresenter::backToDesk);
    showState();
}

void IdentityPage::showState()
{
    const CheckOffState& state = m_presenter.state();
    m_question->setText(tr("Is this you?"));
    parts::say(m_yes, tr("Yes, this is me"));
    parts::say(m_no, tr("No, back to the desk"));
    m_yes->setEnabled(!state.saving);
    m_no->setEnabled(!state.saving);
    if (!state.open || state.stage != CheckOffStage::Identity)
        return;
    const Student& student = state.open->student;
    m_sheet->setText(QString::fromStdString(state.open->sheet.sheet.title));
    m_name->setText(fullName(student.given, student.family));
    m_details->setText(identity_page_detail::detailsOf(student));
    m_attempt->setText(identity_page_detail::attemptOf(*state.open));
}

void IdentityPage::focusFirst() { setFocus(); }

void IdentityPage::changeEvent(QEvent* event)
{
    CalmPage::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        showState();
}

}  // namespace fb
