#include "app/checkoff/first_assessor.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace first_assessor_detail {

constexpr int kLongest = 64;

}  // namespace first_assessor_detail

FirstAssessor::FirstAssessor(QWidget* parent)
    : QWidget(parent),
      m_title(parts::text(this, "enrolTitle", "small")),
      m_note(parts::text(this, "enrolNote", "small")),
      m_name(new QLineEdit(this)),
      m_pin(new QLineEdit(this)),
      m_again(new QLineEdit(this)),
      m_enrol(parts::mainButton(this, "enrol"))
{
    m_name->setObjectName(QStringLiteral("enrolName"));
    m_pin->setObjectName(QStringLiteral("enrolPin"));
    m_again->setObjectName(QStringLiteral("enrolAgain"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    rows->addWidget(m_title);
    rows->addWidget(m_name);
    auto* pins = new QHBoxLayout;
    pins->setSpacing(space::kNear);
    for (QLineEdit* pin : {m_pin, m_again}) {
        pin->setEchoMode(QLineEdit::Password);
        pins->addWidget(pin, 1);
    }
    rows->addLayout(pins);
    rows->addWidget(m_note);
    rows->addWidget(m_enrol);
    for (QLineEdit* field : {m_name, m_pin, m_again}) {
        field->setMaxLength(first_assessor_detail::kLongest);
        connect(field, &QLineEdit::returnPressed, this, &FirstAssessor::goOn);
        connect(field, &QLineEdit::textEdited, this, &FirstAssessor::edited);
    }
    connect(m_enrol, &QPushButton::clicked, this, &FirstAssessor::enrolPressed);
    say();
}

void FirstAssessor::say()
{
    m_title->setText(tr("No assessor is enrolled yet. Enrol yourself to sign."));
    m_note->setText(tr("The PIN keeps others from signing in your name by mistake; this computer's own "
                       "accounts protect the records."));
    m_name->setPlaceholderText(tr("Your name"));
    m_name->setAccessibleName(tr("Your name as assessor"));
    m_pin->setPlaceholderText(tr("PIN"));
    m_pin->setAccessibleName(tr("PIN you will sign with"));
    m_again->setPlaceholderText(tr("PIN again"));
    m_again->setAccessibleName(tr("The same PIN again"));
    parts::say(m_enrol, tr("Enrol"));
}

QString FirstAssessor::name() const { return m_name->text().simplified(); }

QString FirstAssessor::pin() const { return m_pin->text(); }

bool FirstAssessor::pinsAgree() const { return m_pin->text() == m_again->text(); }

// Enter goes on to what is still empty.
void FirstAssessor::goOn()
{
    for (QLineEdit* field : {m_name, m_pin, m_again}) {
        if (field->text().isEmpty())
            return field->setFocus();
    }
    Q_EMIT enrolPressed();
}

void FirstAssessor::clear()
{
    for (QLineEdit* field : {m_name, m_pin, m_again})
        field->clear();
}

void FirstAssessor::focusFirst() { m_name->setFocus(); }

void FirstAssessor::focusPin()
{
    m_again->clear();
    m_pin->setFocus();
    m_pin->selectAll();
}

}  // namespace fb
