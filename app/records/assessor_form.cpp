#include "app/records/assessor_form.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/lock/pin.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace assessor_form_detail {

constexpr int kLongest = 64;

}  // namespace assessor_form_detail

AssessorForm::AssessorForm(QWidget* parent)
    : QWidget(parent),
      m_nameName(parts::text(this, "enrolNameName", "small")),
      m_name(new QLineEdit(this)),
      m_pinName(parts::text(this, "enrolPinName", "small")),
      m_pin(new QLineEdit(this)),
      m_againName(parts::text(this, "enrolAgainName", "small")),
      m_again(new QLineEdit(this)),
      m_hint(parts::text(this, "enrolHint", "small")),
      m_action(parts::mainButton(this, "enrolAction"))
{
    m_name->setObjectName(QStringLiteral("enrolName"));
    m_pin->setObjectName(QStringLiteral("enrolPin"));
    m_again->setObjectName(QStringLiteral("enrolAgain"));
    setFocusProxy(m_name);
    for (QLineEdit* field : {m_name, m_pin, m_again}) {
        field->setMaxLength(assessor_form_detail::kLongest);
        connect(field, &QLineEdit::returnPressed, this, &AssessorForm::goOn);
        connect(field, &QLineEdit::textEdited, this, &AssessorForm::edited);
    }
    for (QLineEdit* pin : {m_pin, m_again}) {
        pin->setEchoMode(QLineEdit::Password);
        pin->setInputMethodHints(Qt::ImhHiddenText | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
    }
    connect(m_action, &QPushButton::clicked, this, &AssessorForm::give);
    layOut();
    say();
}

// Both PINs side by side: they are looked at together.
void AssessorForm::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    column->addWidget(m_nameName);
    column->addWidget(m_name);
    column->addSpacing(space::kNear);
    auto* pins = new QGridLayout;
    pins->setHorizontalSpacing(space::kNear);
    pins->setVerticalSpacing(space::kTight);
    pins->addWidget(m_pinName, 0, 0, Qt::AlignBottom);
    pins->addWidget(m_againName, 0, 1, Qt::AlignBottom);
    pins->addWidget(m_pin, 1, 0);
    pins->addWidget(m_again, 1, 1);
    pins->setColumnStretch(0, 1);
    pins->setColumnStretch(1, 1);
    column->addLayout(pins);
    column->addSpacing(space::kNear);
    column->addWidget(m_hint);
    column->addSpacing(space::kNear);
    column->addWidget(m_action, 0, Qt::AlignLeading);
}

void AssessorForm::say()
{
    m_nameName->setText(tr("Name of the assessor"));
    m_name->setAccessibleName(m_nameName->text());
    m_pinName->setText(tr("PIN"));
    m_pin->setAccessibleName(tr("PIN"));
    m_againName->setText(tr("The same PIN again"));
    m_again->setAccessibleName(m_againName->text());
    m_hint->setText(tr("At least %1 digits or letters; the name stands on every sheet that is signed.")
                        .arg(QLocale().toString(kLeastPinLength)));
    parts::say(m_action, m_words);
}

void AssessorForm::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

void AssessorForm::setAction(const QString& words)
{
    m_words = words;
    parts::say(m_action, words);
}

void AssessorForm::setBusy(bool busy) { m_action->setEnabled(!busy); }

void AssessorForm::clear()
{
    for (QLineEdit* field : {m_name, m_pin, m_again})
        field->clear();
}

void AssessorForm::focusFirst() { m_name->setFocus(); }

void AssessorForm::goOn()
{
    for (QLineEdit* field : {m_name, m_pin, m_again}) {
        if (field->text().isEmpty())
            return field->setFocus();
    }
    give();
}

void AssessorForm::give()
{
    if (!m_action->isEnabled())
        return;
    const QString pin = m_pin->text();
    const QString again = m_again->text();
    m_pin->clear();
    m_again->clear();
    (m_name->text().trimmed().isEmpty() ? m_name : m_pin)->setFocus();
    Q_EMIT given(m_name->text().simplified(), pin, again);
}

}  // namespace fb
