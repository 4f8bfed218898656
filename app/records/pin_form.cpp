#include "app/records/pin_form.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/pin_field.h"

namespace fb {

PinForm::PinForm(const char* name, QWidget* parent)
    : QWidget(parent),
      m_field(new PinField(QLatin1String(name), this)),
      m_action(parts::mainButton(this, "")),
      m_wait(parts::text(this, "pinFormWait", "small"))
{
    const QString begun = QLatin1String(name);
    setObjectName(begun);
    m_action->setObjectName(begun + QStringLiteral("Action"));
    setFocusProxy(m_field);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    column->addWidget(m_field);
    column->addWidget(m_action, 0, Qt::AlignLeading);
    column->addWidget(m_wait);
    connect(m_field, &PinField::entered, this, &PinForm::give);
    connect(m_field, &PinField::edited, this, &PinForm::enable);
    connect(m_action, &QPushButton::clicked, this, &PinForm::give);
    say();
    setHeld(0);
}

void PinForm::say()
{
    m_field->say(tr("Assessor"));
    parts::say(m_action, m_words);
    setHeld(m_held);
}

void PinForm::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

void PinForm::setAssessors(const std::vector<Assessor>& assessors)
{
    m_field->showAssessors(assessors);
    if (m_field->assessor() == 0 && !assessors.empty())
        m_field->choose(assessors.front().id);
    enable();
}

void PinForm::choose(qint64 assessor) { m_field->choose(assessor); }

void PinForm::setAction(const QString& words)
{
    m_words = words;
    parts::say(m_action, words);
}

void PinForm::setBusy(bool busy)
{
    m_busy = busy;
    enable();
}

void PinForm::setHeld(int seconds)
{
    m_held = seconds;
    m_wait->setText(seconds > 0 ? tr("The next PIN can be tried in %n second(s).", nullptr, seconds)
                                : QString());
    m_wait->setVisible(seconds > 0);
    enable();
}

void PinForm::enable()
{
    m_action->setEnabled(!m_busy && m_held == 0 && m_field->assessor() != 0 && !isBlank());
}

void PinForm::clear()
{
    m_field->clearPin();
    enable();
}

void PinForm::focusFirst() { m_field->focusPin(); }

bool PinForm::isBlank() const { return m_field->pin().isEmpty(); }

void PinForm::give()
{
    if (!m_action->isEnabled())
        return;
    const QString pin = m_field->pin();
    clear();
    m_field->focusPin();
    Q_EMIT given(m_field->assessor(), pin);
}

}  // namespace fb
