#include "app/checkoff/sign_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/checkoff/first_assessor.h"
#include "app/checkoff/pin_field.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/fault_words.h"

namespace fb {

namespace sign_panel_detail {

constexpr int kIcon = 18;

}  // namespace sign_panel_detail

bool isSaidInClosing(Problem problem)
{
    switch (problem) {
    case Problem::RatingMissing:
    case Problem::SecondAssessorMissing:
    case Problem::SameAssessor:
    case Problem::AssessorUnknown:
    case Problem::NameMissing:
    case Problem::PinTooShort:
    case Problem::PinTooCommon:
    case Problem::PinsDiffer:
    case Problem::PinWrong:
    case Problem::PinHeld:
    case Problem::PrinterMissing: return true;
    default: return false;
    }
}

SignPanel::SignPanel(QWidget* parent)
    : QWidget(parent),
      m_form(new FirstAssessor(this)),
      m_first(new PinField(QStringLiteral("first"), this)),
      m_second(new PinField(QStringLiteral("second"), this)),
      m_icon(new QLabel(this)),
      m_sentence(parts::text(this, "signFault")),
      m_sign(parts::mainButton(this, "sign"))
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    rows->addWidget(m_form);
    rows->addWidget(m_first);
    rows->addWidget(m_second);
    auto* line = new QHBoxLayout;
    line->setSpacing(space::kNear);
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    line->addWidget(m_icon, 0, Qt::AlignTop);
    line->addWidget(m_sentence, 1);
    rows->addLayout(line);
    rows->addWidget(m_sign);
    connect(m_sign, &QPushButton::clicked, this, &SignPanel::sign);
    connect(m_first, &PinField::entered, this, [this] {
        if (m_needsSecond && m_second->pin().isEmpty())
            m_second->focusPin();
        else
            sign();
    });
    connect(m_second, &PinField::entered, this, &SignPanel::sign);
    connect(m_form, &FirstAssessor::enrolPressed, this, &SignPanel::enrol);
    connect(m_first, &PinField::edited, this, &SignPanel::chooseOther);
    for (PinField* field : {m_first, m_second})
        connect(field, &PinField::edited, this, &SignPanel::edited);
    connect(m_form, &FirstAssessor::edited, this, &SignPanel::edited);
    connect(this, &SignPanel::edited, this, [this] { tell(std::nullopt); });
    say();
    tell(std::nullopt);
}

void SignPanel::say()
{
    m_form->say();
    m_first->say(tr("Assessor"));
    m_second->say(tr("Second assessor, for the last attempt"));
    //: An assessor puts their name to a check-off.
    parts::say(m_sign, tr("Sign"));
    tell(m_fault);
}

void SignPanel::showState(const CheckOffState& state)
{
    if (!state.open)
        return;
    const bool enrolled = m_enrols && !state.desk.assessors.empty();
    m_enrols = state.desk.assessors.empty();
    m_needsSecond = state.open->needsSecondAssessor;
    m_first->showAssessors(state.desk.assessors);
    m_second->showAssessors(state.desk.assessors);
    m_form->setVisible(m_enrols);
    m_first->setVisible(!m_enrols);
    m_sign->setVisible(!m_enrols);
    m_second->setVisible(!m_enrols && m_needsSecond);
    if (enrolled) {
        // They typed their PIN a moment ago: one press is left.
        m_first->choose(state.desk.assessors.front().id);
        m_first->setPin(m_form->pin());
        m_form->clear();
        m_sign->setFocus();
    }
    if (state.desk.assessors.size() == 1)
        m_first->choose(state.desk.assessors.front().id);
    m_assessors = state.desk.assessors;
    chooseOther();
}

// Of two, whoever does not sign first is the second.
void SignPanel::chooseOther()
{
    const qint64 first = m_first->assessor();
    if (!m_needsSecond || m_assessors.size() != 2 || first == 0)
        return;
    if (first == m_besideOf && m_second->assessor() != 0)
        return;  // chosen by hand since
    m_besideOf = first;
    m_second->choose(m_assessors[m_assessors[0].id == first ? 1 : 0].id);
}

void SignPanel::tell(const std::optional<Fault>& fault)
{
    m_fault = fault;
    m_sentence->setText(fault ? sentenceOf(*fault) : QString());
    m_sentence->setVisible(fault.has_value());
    m_icon->setVisible(fault.has_value());
    const bool ofPin = fault && (fault->problem == Problem::PinWrong || fault->problem == Problem::PinHeld);
    m_first->setWrong(ofPin);
    if (!ofPin)
        return;
    forgetPins();
    m_first->focusPin();
}

void SignPanel::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_icon->setPixmap(pixmapFor(Icon::Caution, scheme.danger, parts::scaled(this, sign_panel_detail::kIcon),
                                devicePixelRatioF()));
}

void SignPanel::focusFirst()
{
    if (m_enrols)
        m_form->focusFirst();
    else
        m_first->focusPin();
}

void SignPanel::forgetPins()
{
    m_first->clearPin();
    m_second->clearPin();
}

void SignPanel::sign()
{
    if (m_first->assessor() == 0)
        return tell(Fault{Problem::AssessorUnknown, {}, {}, 0.0, 0.0});
    if (m_needsSecond && (m_second->assessor() == 0 || m_second->pin().isEmpty()))
        return tell(Fault{Problem::SecondAssessorMissing, {}, {}, 0.0, 0.0});
    Q_EMIT signAsked(m_first->assessor(), m_first->pin(), m_needsSecond ? m_second->assessor() : 0,
                     m_needsSecond ? m_second->pin() : QString());
}

void SignPanel::enrol()
{
    if (!m_form->pinsAgree()) {
        tell(Fault{Problem::PinsDiffer, {}, {}, 0.0, 0.0});
        return m_form->focusPin();
    }
    Q_EMIT enrolAsked(m_form->name(), m_form->pin());
}

}  // namespace fb
