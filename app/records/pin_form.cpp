#include "app/records/pin_form.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

PinForm::PinForm(const char* name, QWidget* parent)
    : QWidget(parent),
      m_whoName(parts::text(this, "pinFormWho", "small")),
      m_who(new QComboBox(this)),
      m_pinName(parts::text(this, "pinFormPin", "small")),
      m_pin(new QLineEdit(this)),
      m_action(parts::mainButton(this, "")),
      m_wait(parts::text(this, "pinFormWait", "small"))
{
    const QString begun = QLatin1String(name);
    setObjectName(begun);
    m_who->setObjectName(begun + QStringLiteral("Who"));
    m_pin->setObjectName(begun + QStringLiteral("Pin"));
    m_action->setObjectName(begun + QStringLiteral("Action"));
    setFocusProxy(m_pin);
    m_pin->setEchoMode(QLineEdit::Password);
    m_pin->setInputMethodHints(Qt::ImhHiddenText | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
    m_who->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    column->addWidget(m_whoName);
    column->addWidget(m_who);
    column->addSpacing(space::kNear);
    column->addWidget(m_pinName);
    column->addWidget(m_pin);
    column->addSpacing(space::kNear);
    column->addWidget(m_action, 0, Qt::AlignLeading);
    column->addWidget(m_wait);
    connect(m_pin, &QLineEdit::returnPressed, this, &PinForm::give);
    connect(m_pin, &QLineEdit::textChanged, this, &PinForm::enable);
    connect(m_action, &QPushButton::clicked, this, &PinForm::give);
    say();
    setHeld(0);
}

void PinForm::say()
{
    //: Which assessor.
    m_whoName->setText(tr("Who"));
    m_who->setAccessibleName(tr("Assessor"));
    m_pinName->setText(tr("PIN"));
    m_pin->setAccessibleName(tr("PIN of the assessor"));
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
    std::vector<Assessor> shown;
    for (int i = 0; i < m_who->count(); ++i)
        shown.push_back({m_who->itemData(i).toLongLong(), m_who->itemText(i)});
    if (shown == assessors)
        return;
    const qint64 chosen = m_who->currentData().toLongLong();
    m_who->clear();
    for (const Assessor& each : assessors)
        m_who->addItem(each.name, each.id);
    choose(chosen);
    enable();
}

void PinForm::choose(qint64 assessor) { m_who->setCurrentIndex(std::max(0, m_who->findData(assessor))); }

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
    m_action->setEnabled(!m_busy && m_held == 0 && m_who->count() > 0 && !m_pin->text().isEmpty());
}

void PinForm::clear() { m_pin->clear(); }

void PinForm::focusFirst() { m_pin->setFocus(); }

bool PinForm::isBlank() const { return m_pin->text().isEmpty(); }

void PinForm::give()
{
    if (!m_action->isEnabled())
        return;
    const QString pin = m_pin->text();
    m_pin->clear();
    m_pin->setFocus();
    Q_EMIT given(m_who->currentData().toLongLong(), pin);
}

}  // namespace fb
