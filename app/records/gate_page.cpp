#include "app/records/gate_page.h"

#include <QEvent>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/assessor_form.h"
#include "app/records/backup_words.h"
#include "app/records/pin_form.h"

namespace fb {

GatePage::GatePage(RecordsPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_title(parts::text(this, "gateTitle", "title")),
      m_putBack(parts::text(this, "gatePutBack")),
      m_why(parts::text(this, "gateWhy")),
      m_pin(new PinForm("gate", this)),
      m_enrol(new AssessorForm(this)),
      m_honest(parts::text(this, "gateHonest", "small")),
      m_column(new QWidget)
{
    auto* column = new QVBoxLayout(m_column);
    column->setContentsMargins(0, space::kBroad, 0, space::kApart);
    column->setSpacing(space::kApart);
    column->addWidget(m_title);
    column->addWidget(m_putBack);
    column->addWidget(m_why);
    column->addWidget(m_pin);
    column->addWidget(m_enrol);
    column->addWidget(parts::rule(m_column));
    column->addWidget(m_honest);
    column->addStretch(1);
    auto* middle = new QWidget;
    auto* row = new QHBoxLayout(middle);
    row->setContentsMargins(space::kMargin, 0, space::kMargin, 0);
    row->addStretch(1);
    row->addWidget(m_column);
    row->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QStringLiteral("gateScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(middle);
    parts::followFocus(scroll);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    connect(m_pin, &PinForm::given, &m_presenter, &RecordsPresenter::open);
    connect(m_enrol, &AssessorForm::given, &m_presenter, &RecordsPresenter::enrol);
    say();
}

void GatePage::say()
{
    m_title->setText(tr("Records"));
    m_pin->setAction(tr("Open the records"));
    m_enrol->setAction(tr("Enrol and open the records"));
    m_honest->setText(tr("This PIN keeps the curious out while you are away from the desk. It does not "
                         "protect the files; your computer account does."));
}

void GatePage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        showState(m_presenter.state());
    }
}

void GatePage::showState(const RecordsState& state)
{
    constexpr int kWidth = 440;
    m_column->setFixedWidth(parts::columnWidth(this, kWidth));
    const bool locked = state.gate == RecordsGate::Locked;
    const bool nobody = state.gate == RecordsGate::NobodyEnrolled;
    m_pin->setVisible(locked);
    m_enrol->setVisible(nobody);
    m_honest->setVisible(locked || nobody);
    switch (state.gate) {
    case RecordsGate::Reading: m_why->setText(tr("The records are being opened.")); break;
    case RecordsGate::NobodyEnrolled:
        m_why->setText(
            state.isOffered
                ? tr("The records were damaged, and empty ones were begun. As long as nobody is enrolled, "
                     "their "
                     "last backup can be put back under “Check-off”. To go on without it, the first assessor "
                     "chooses a PIN here; check-offs are signed with it, and it opens these records.")
                : tr("Nobody is enrolled as an assessor yet. The first assessor chooses a PIN here; "
                     "check-offs are signed with it, and it opens these records."));
        break;
    case RecordsGate::Locked:
        m_why->setText(tr("The results of all students lie behind this page. An assessor’s PIN opens them."));
        break;
    case RecordsGate::Open: break;
    }
    m_putBack->setVisible(state.putBack.has_value());
    if (state.putBack)
        m_putBack->setText(putBackText(*state.putBack));
    m_pin->setAssessors(state.assessors);
    m_pin->setBusy(state.asking);
    m_pin->setHeld(state.heldSeconds);
    m_enrol->setBusy(state.asking);
    if (m_shown == state.gate)
        return;
    m_shown = state.gate;
    m_pin->clear();
    m_enrol->clear();
    setFocusProxy(nobody ? static_cast<QWidget*>(m_enrol) : m_pin);
    if (locked)
        m_pin->focusFirst();
    else if (nobody)
        m_enrol->focusFirst();
}

}  // namespace fb
