#include "app/records/pin_field.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QStyle>
#include <QVariant>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace pin_field_detail {

constexpr int kLongestPin = 64;
constexpr int kNameShare = 3;
constexpr int kPinShare = 2;

}  // namespace pin_field_detail

PinField::PinField(const QString& name, QWidget* parent)
    : QWidget(parent),
      m_title(parts::text(this, "pinTitle", "small")),
      m_who(new QComboBox(this)),
      m_pin(new QLineEdit(this))
{
    using namespace pin_field_detail;
    m_who->setObjectName(name + QStringLiteral("Who"));
    m_pin->setObjectName(name + QStringLiteral("Pin"));
    m_who->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_pin->setEchoMode(QLineEdit::Password);
    m_pin->setMaxLength(kLongestPin);
    m_pin->setInputMethodHints(Qt::ImhHiddenText | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
    setFocusProxy(m_pin);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kNear);
    grid->setVerticalSpacing(0);
    grid->addWidget(m_title, 0, 0, 1, 2);
    grid->addWidget(m_who, 1, 0);
    grid->addWidget(m_pin, 1, 1);
    grid->setColumnStretch(0, kNameShare);
    grid->setColumnStretch(1, kPinShare);
    connect(m_pin, &QLineEdit::returnPressed, this, &PinField::entered);
    connect(m_pin, &QLineEdit::textEdited, this, &PinField::edited);
    connect(m_who, &QComboBox::activated, this, &PinField::edited);
}

void PinField::say(const QString& title)
{
    m_title->setText(title);
    m_who->setAccessibleName(title);
    m_who->setPlaceholderText(tr("Choose a name"));
    //: A secret number that an assessor signs with.
    m_pin->setPlaceholderText(tr("PIN"));
    //: %1 says whose: "Assessor" or "Second assessor".
    m_pin->setAccessibleName(tr("PIN: %1").arg(title));
}

void PinField::showAssessors(const std::vector<Assessor>& assessors)
{
    if (assessors == m_assessors)
        return;
    const qint64 before = assessor();
    m_assessors = assessors;
    m_who->clear();
    for (const Assessor& each : assessors)
        m_who->addItem(each.name, QVariant::fromValue(each.id));
    choose(assessors.size() == 1 ? assessors.front().id : before);
}

void PinField::choose(qint64 assessor)
{
    m_who->setCurrentIndex(m_who->findData(QVariant::fromValue(assessor)));
}

qint64 PinField::assessor() const { return m_who->currentData().toLongLong(); }

QString PinField::assessorName() const { return m_who->currentText(); }

QString PinField::pin() const { return m_pin->text(); }

void PinField::setPin(const QString& pin) { m_pin->setText(pin); }

void PinField::clearPin() { m_pin->clear(); }

void PinField::setWrong(bool wrong)
{
    if (m_pin->property("wrong").toBool() == wrong)
        return;
    m_pin->setProperty("wrong", wrong);
    m_pin->style()->unpolish(m_pin);
    m_pin->style()->polish(m_pin);
}

void PinField::focusPin()
{
    if (assessor() == 0)
        m_who->setFocus();
    else
        m_pin->setFocus();
}

}  // namespace fb
