#include "app/records/remediation_panel.h"

#include <QApplication>
#include <QEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/pin_form.h"

namespace fb {

RemediationPanel::RemediationPanel(RecordsPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_title(parts::text(this, "practiceTitle", "request")),
      m_done(parts::text(this, "practiceDone")),
      m_whatName(parts::text(this, "practiceWhatName", "small")),
      m_what(new QPlainTextEdit(this)),
      m_pin(new PinForm("practice", this))
{
    m_what->setObjectName(QStringLiteral("practiceWhat"));
    m_what->setTabChangesFocus(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    for (QWidget* part : std::initializer_list<QWidget*>{m_title, m_done, m_whatName, m_what})
        column->addWidget(part);
    column->addSpacing(space::kNear);
    column->addWidget(m_pin);
    connect(m_pin, &PinForm::given, this, [this](qint64 assessor, const QString& pin) {
        m_presenter.signPractice(m_what->toPlainText(), assessor, pin);
    });
    connect(&m_presenter, &RecordsPresenter::practiceSigned, m_what, &QPlainTextEdit::clear);
    say();
}

void RemediationPanel::say()
{
    m_title->setText(tr("Practice afterwards"));
    m_whatName->setText(tr("What was practised, in a few words"));
    m_what->setAccessibleName(m_whatName->text());
    m_pin->setAction(tr("Sign the practice"));
}

void RemediationPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        showState(m_presenter.state());
    }
}

void RemediationPanel::showState(const RecordsState& state)
{
    if (!state.opened)
        return;
    const CheckOffOnFile& file = state.opened->file;
    const bool asks = asksForPractice(file);
    const bool isDone = !file.line.remediation.isEmpty();
    setVisible(asks || isDone);
    m_done->setVisible(isDone);
    m_done->setText(tr("Signed: %1").arg(file.line.remediation));
    const bool hadKeys = isAncestorOf(QApplication::focusWidget());
    for (QWidget* part : std::initializer_list<QWidget*>{m_whatName, m_what, m_pin})
        part->setVisible(asks);
    // What was just signed is read out, and the next Tab goes on from there.
    if (hadKeys && !asks)
        m_done->setFocus();
    constexpr int kLines = 3;
    m_what->setFixedHeight(kLines * m_what->fontMetrics().lineSpacing() + 2 * space::kNear);
    m_pin->setAssessors(state.assessors);
    m_pin->setBusy(state.asking);
    m_pin->setHeld(state.heldSeconds);
    if (m_shown == file.line.id)
        return;
    m_shown = file.line.id;
    m_what->clear();
    m_pin->clear();
    if (state.who)
        m_pin->choose(state.who->id);
}

}  // namespace fb
