#include "app/checkoff/sign_panel.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/assessor_form.h"
#include "app/records/pin_field.h"
#include "app/words/fault_words.h"

namespace fb {

namespace sign_panel_detail {

constexpr int kIcon = 18;

bool isOf(const PinField& field, const Fault& fault)
{
    return field.assessorName() == QString::fromStdString(fault.what);
}

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
      m_formTitle(parts::text(this, "enrolTitle", "small")),
      m_form(new AssessorForm(this)),
      m_formNote(parts::text(this, "enrolNote", "small")),
      m_first(new PinField(QStringLiteral("first"), this)),
      m_second(new PinField(QStringLiteral("second"), this)),
      m_icon(new QLabel(this)),
      m_sentence(parts::text(this, "signFault")),
      m_sign(parts::mainButton(this, "sign"))
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    rows->addWidget(m_formTitle);
    rows->addWidget(m_form);
    rows->addWidget(m_formNote);
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
    connect(m_form, &AssessorForm::given, this, &SignPanel::enrol);
    connect(m_first, &PinField::edited, this, &SignPanel::chooseOther);
    for (PinField* field : {m_first, m_second})
        connect(field, &PinField::edited, this, &SignPanel::edited);
    connect(m_form, &AssessorForm::edited, this, &SignPanel::edited);
    connect(this, &SignPanel::edited, this, [this] { tell(std::nullopt); });
    say();
    tell(std::nullopt);
}

void SignPanel::say()
{
    m_formTitle->setText(tr("No assessor is enrolled yet. Enrol yourself to sign."));
    m_formNote->setText(tr("The PIN keeps others from signing in your name by mistake; this computer's own "
                           "accounts protect the records."));
    m_form->setAction(tr("Enrol"));
    m_first->say(tr("Assessor"));
    m_second->say(tr("Second assessor, for the last attempt"));
    //: An assessor puts their name to a check-off.
    parts::say(m_sign, tr("Sign"));
    sayWhatIsWrong();
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
    for (QWidget* ofForm : std::initializer_list<QWidget*>{m_formTitle, m_form, m_formNote})
        ofForm->setVisible(m_enrols);
    m_form->setBusy(state.saving);
    m_first->setVisible(!m_enrols);
    m_sign->setVisible(!m_enrols);
    m_second->setVisible(!m_enrols && m_needsSecond);
    if (enrolled) {
        // They typed their PIN a moment ago: one press is left.
        m_first->choose(state.desk.assessors.front().id);
        m_first->setPin(m_enrolledPin);
        m_enrolledPin.clear();
        m_form->clear();
        m_sign->setFocus();
    }
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
    using sign_panel_detail::isOf;
    m_fault = fault;
    m_untyped = nullptr;
    sayWhatIsWrong();
    const bool ofPin = fault && (fault->problem == Problem::PinWrong || fault->problem == Problem::PinHeld);
    PinField* wrong = nullptr;  // of two, the one it is told of; what the other typed stays
    if (ofPin)
        wrong = m_needsSecond && isOf(*m_second, *fault) && !isOf(*m_first, *fault) ? m_second : m_first;
    m_first->setWrong(wrong == m_first);
    m_second->setWrong(wrong == m_second);
    if (!fault)
        return;
    if (wrong) {
        wrong->clearPin();
        return wrong->focusPin();
    }
    const bool ofSecond =
        fault->problem == Problem::SecondAssessorMissing || fault->problem == Problem::SameAssessor;
    if (ofSecond)
        m_second->focusPin();
    else if (fault->problem == Problem::AssessorUnknown)
        m_first->focusPin();
}

// An empty PIN is no wrong one: it uses up no try.
void SignPanel::askForPin(PinField* field)
{
    m_fault.reset();
    m_untyped = field;
    sayWhatIsWrong();
    field->focusPin();
}

void SignPanel::sayWhatIsWrong()
{
    QString words;
    if (m_fault)
        words = sentenceOf(*m_fault);
    else if (m_untyped)
        //: %1 is an assessor's name.
        words = tr("To sign, type the PIN of %1.").arg(m_untyped->assessorName());
    m_sentence->setText(words);
    m_sentence->setVisible(!words.isEmpty());
    m_icon->setVisible(!words.isEmpty());
    if (words.isEmpty())
        return;
    QAccessibleEvent event(m_sentence, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
    Q_EMIT spoke(words);
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
    if (m_first->pin().isEmpty())
        return askForPin(m_first);
    if (m_needsSecond && m_second->assessor() == 0)
        return tell(Fault{Problem::SecondAssessorMissing, {}, {}, 0.0, 0.0});
    if (m_needsSecond && m_second->pin().isEmpty())
        return askForPin(m_second);
    Q_EMIT signAsked(m_first->assessor(), m_first->pin(), m_needsSecond ? m_second->assessor() : 0,
                     m_needsSecond ? m_second->pin() : QString());
}

// The form has emptied its PINs and waits for them again.
void SignPanel::enrol(const QString& name, const QString& pin, const QString& again)
{
    if (pin != again)
        return tell(Fault{Problem::PinsDiffer, {}, {}, 0.0, 0.0});
    m_enrolledPin = pin;
    Q_EMIT enrolAsked(name, pin);
}

}  // namespace fb
