#include "app/records/assessors_page.h"

#include <QEvent>
#include <QLabel>
#include <QScrollArea>
#include <QStringList>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/assessor_form.h"

namespace fb {

AssessorsPage::AssessorsPage(RecordsPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_title(parts::text(this, "assessorsTitle", "request")),
      m_names(parts::text(this, "assessorsNames")),
      m_newTitle(parts::text(this, "assessorsNewTitle", "request")),
      m_honest(parts::text(this, "assessorsHonest", "small")),
      m_form(new AssessorForm(this))
{
    constexpr int kWidth = 440;
    auto* whole = new QWidget;
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    column->addWidget(m_title);
    column->addWidget(m_names);
    column->addSpacing(space::kNear);
    column->addWidget(parts::rule(whole));
    column->addSpacing(space::kNear);
    column->addWidget(m_newTitle);
    column->addWidget(m_honest);
    column->addWidget(m_form);
    column->addStretch(1);
    m_form->setMaximumWidth(parts::columnWidth(this, kWidth));
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QStringLiteral("assessorsScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(whole);
    parts::followFocus(scroll);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(scroll);
    connect(m_form, &AssessorForm::given, &m_presenter, &RecordsPresenter::enrol);
    connect(&m_presenter, &RecordsPresenter::enrolled, m_form, &AssessorForm::clear);
    say();
}

void AssessorsPage::say()
{
    m_title->setText(tr("Assessors"));
    m_newTitle->setText(tr("Enrol another assessor"));
    m_honest->setText(tr("Whoever is enrolled can sign check-offs and open these records."));
    m_form->setAction(tr("Enrol"));
}

void AssessorsPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

void AssessorsPage::showState(const RecordsState& state)
{
    QStringList names;
    for (const Assessor& each : state.assessors)
        names << each.name;
    m_names->setText(names.join(u'\n'));
    m_form->setBusy(state.asking);
}

void AssessorsPage::focusFirst() { m_form->focusFirst(); }

}  // namespace fb
