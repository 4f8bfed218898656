#include "app/practice/hand_field.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <cmath>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/site_words.h"
#include "core/hand/hand_pose.h"

namespace fb {

HandField::HandField(QWidget* parent)
    : QWidget(parent),
      m_name(parts::text(this, "runHandName")),
      m_length(new QLineEdit(this)),
      m_unit(parts::text(this, "runHandUnit")),
      m_hint(parts::text(this, "runHandHint", "small")),
      m_sex(new QComboBox(this)),
      m_stature(new QLineEdit(this)),
      m_statureUnit(parts::text(this, "runHandStatureUnit")),
      m_estimate(parts::button(this, "estimateHand"))
{
    m_length->setObjectName(QStringLiteral("runHand"));
    m_sex->setObjectName(QStringLiteral("runHandSex"));
    m_stature->setObjectName(QStringLiteral("runHandStature"));
    // Return in the field of stature estimates; it does not start the run.
    m_estimate->setAutoDefault(false);
    for (const Sex sex : kSexes)
        m_sex->addItem({}, static_cast<int>(sex));
    connect(m_estimate, &QPushButton::clicked, this, &HandField::estimateAsked);
    layOut();
    say();
}

void HandField::layOut()
{
    constexpr int kDigits = 70;
    for (QLineEdit* edit : {m_length, m_stature})
        edit->setFixedWidth(parts::scaled(this, kDigits));
    for (QLabel* label : {m_name, m_unit, m_statureUnit})
        label->setWordWrap(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    auto* typed = new QHBoxLayout;
    auto* estimated = new QHBoxLayout;
    for (QHBoxLayout* row : {typed, estimated})
        row->setSpacing(space::kNear);
    for (QWidget* part : std::initializer_list<QWidget*>{m_name, m_length, m_unit})
        typed->addWidget(part);
    typed->addStretch(1);
    for (QWidget* part : std::initializer_list<QWidget*>{m_sex, m_stature, m_statureUnit, m_estimate})
        estimated->addWidget(part);
    estimated->addStretch(1);
    column->addLayout(typed);
    column->addWidget(m_hint);
    column->addLayout(estimated);
}

void HandField::say()
{
    //: Of the learner: from the wrist crease to the tip of the middle finger.
    m_name->setText(tr("Length of your hand"));
    m_length->setAccessibleName(tr("Length of your hand in centimetres"));
    m_unit->setText(tr("cm"));
    m_hint->setText(tr("From wrist crease to middle fingertip; or estimated from your sex and stature:"));
    m_sex->setAccessibleName(tr("Your sex"));
    m_stature->setAccessibleName(tr("Your stature in centimetres"));
    m_statureUnit->setText(tr("cm"));
    parts::say(m_estimate, tr("Estimate"));
    for (int i = 0; i < m_sex->count(); ++i)
        m_sex->setItemText(i, parts::alone(sexName(static_cast<Sex>(m_sex->itemData(i).toInt()))));
}

void HandField::setLength(Cm length) { m_length->setText(parts::numberText(length.value())); }

void HandField::setEstimate(Sex sex, Cm stature)
{
    m_sex->setCurrentIndex(m_sex->findData(static_cast<int>(sex)));
    m_stature->setText(parts::numberText(stature.value()));
}

void HandField::setUsual(Cm length) { m_length->setPlaceholderText(parts::numberText(length.value())); }

bool HandField::isBlank() const { return m_length->text().trimmed().isEmpty(); }

bool HandField::hasStature() const { return !m_stature->text().trimmed().isEmpty(); }

Result<Cm> HandField::length() const { return checkedHandLength(Cm{parts::numberIn(m_length->text())}); }

Result<Cm> HandField::stature() const
{
    const double typed = parts::numberIn(m_stature->text());
    if (!std::isfinite(typed))
        return fault(Problem::StatureNotANumber, {}, m_stature->text().toStdString());
    return Cm{typed};
}

Sex HandField::sex() const { return static_cast<Sex>(m_sex->currentData().toInt()); }

void HandField::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
