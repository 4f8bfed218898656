#include "app/records/assessor_form.h"

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>
#include <utility>

#include "app/lock/pin.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

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
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    const std::array<std::pair<QLabel*, QLineEdit*>, 3> fields{
        {{m_nameName, m_name}, {m_pinName, m_pin}, {m_againName, m_again}}};
    for (const auto& [name, field] : fields) {
        column->addWidget(name);
        column->addWidget(field);
        column->addSpacing(space::kNear);
        connect(field, &QLineEdit::returnPressed, this, &AssessorForm::give);
    }
    for (QLineEdit* pin : {m_pin, m_again}) {
        pin->setEchoMode(QLineEdit::Password);
        pin->setInputMethodHints(Qt::ImhHiddenText | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
    }
    column->addWidget(m_hint);
    column->addSpacing(space::kNear);
    column->addWidget(m_action, 0, Qt::AlignLeading);
    connect(m_action, &QPushButton::clicked, this, &AssessorForm::give);
    say();
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

void AssessorForm::give()
{
    if (!m_action->isEnabled())
        return;
    const QString pin = m_pin->text();
    const QString again = m_again->text();
    m_pin->clear();
    m_again->clear();
    (m_name->text().trimmed().isEmpty() ? m_name : m_pin)->setFocus();
    Q_EMIT given(m_name->text(), pin, again);
}

}  // namespace fb
