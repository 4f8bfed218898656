#include "app/practice/request_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <cmath>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/finding_words.h"
#include "app/words/site_words.h"

namespace fb {

RequestPanel::RequestPanel(QWidget* parent)
    : QWidget(parent),
      m_counter(parts::text(this, "counter", "small")),
      m_request(parts::text(this, "request", "request")),
      m_chart(parts::text(this, "chartNote")),
      m_details(new QWidget(this))
{
    static constexpr const char* kNames[FieldCount]{"ageName",        "sexName",    "sideName",
                                                    "statureName",    "weightName", "postureName",
                                                    "conventionName", "helpName"};
    static constexpr const char* kValues[FieldCount]{"age",    "sex",     "side",       "stature",
                                                     "weight", "posture", "convention", "help"};
    for (int field = AgeField; field < FieldCount; ++field) {
        QWidget* owner = field < PostureField ? this : m_details;
        m_names[field] = parts::text(owner, kNames[field], "small");
        m_values[field] = parts::text(owner, kValues[field]);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    column->addWidget(m_counter);
    column->addWidget(m_request);
    column->addWidget(m_chart);
    column->addSpacing(space::kNear);
    column->addWidget(parts::rule(this));
    column->addSpacing(space::kNear);

    auto* grid = new QGridLayout;
    auto* details = new QGridLayout(m_details);
    details->setContentsMargins(0, space::kNear, 0, 0);
    for (QGridLayout* each : {grid, details}) {
        each->setHorizontalSpacing(space::kApart);
        each->setVerticalSpacing(0);
    }
    constexpr int kColumns = 3;
    for (int field = AgeField; field < PostureField; ++field)
        addField(*grid, field, field / kColumns, field % kColumns, 1);
    for (int field = PostureField; field < FieldCount; ++field)
        addField(*details, field, field - PostureField, 0, kColumns);
    for (int place = 0; place < kColumns; ++place)
        grid->setColumnStretch(place, 1);
    column->addLayout(grid);
    column->addWidget(m_details);
}

void RequestPanel::addField(QGridLayout& grid, int field, int row, int column, int span)
{
    constexpr int kLines = 3;  // the name, its value, and air before the next
    grid.addWidget(m_names[field], kLines * row, column, 1, span);
    grid.addWidget(m_values[field], kLines * row + 1, column, 1, span);
    if (row > 0)
        grid.setRowMinimumHeight(kLines * row - 1, space::kNear);
}

void RequestPanel::showState(const PracticeState& state)
{
    if (!state.request)
        return;
    const Request& request = *state.request;
    const Patient& patient = request.patient;
    const QLocale locale;
    m_counter->setText(
        tr("Request %1 of %2").arg(locale.toString(request.number + 1), locale.toString(state.setup.length)));
    // The strip above an exam counts its items.
    m_counter->setVisible(!state.exam);
    m_request->setText(state.setup.byHand ? findingRequestText(request.site, patient.side())
                                          : requestText(request.site, patient.side()));
    m_names[AgeField]->setText(tr("Age"));
    m_names[SexField]->setText(tr("Sex"));
    //: Side of the patient's body.
    m_names[SideField]->setText(tr("Side"));
    //: Body height.
    m_names[StatureField]->setText(tr("Stature"));
    m_names[WeightField]->setText(tr("Weight"));
    m_names[PostureField]->setText(tr("Posture"));
    m_values[AgeField]->setText(tr("%n year(s)", nullptr, static_cast<int>(std::floor(patient.ageYears()))));
    m_values[SexField]->setText(sexName(patient.sex()));
    m_values[SideField]->setText(sideName(patient.side()));
    m_values[StatureField]->setText(tr("%1 cm").arg(locale.toString(patient.stature().value(), 'f', 0)));
    m_values[WeightField]->setText(tr("%1 kg").arg(locale.toString(patient.weight().value(), 'f', 0)));
    m_values[PostureField]->setText(postureText(request.view));
    //: The published way of finding the site that this run is graded by.
    m_names[ConventionField]->setText(tr("Convention"));
    m_names[HelpField]->setText(tr("Help"));
    m_values[ConventionField]->setText(conventionName(state.convention));
    m_values[HelpField]->setText(helpLevelName(state.setup.help));
    m_details->setVisible(!state.graded && !state.choosingReason);
    // By hand nothing is drawn, and room is dear.
    for (const Field field : {PostureField, HelpField}) {
        m_names[field]->setVisible(!state.setup.byHand);
        m_values[field]->setVisible(!state.setup.byHand);
    }
    m_chart->setVisible(state.setup.mix.findings);
    //: What the patient's chart says beside the order.
    m_chart->setText(request.finding ? findingText(*request.finding) : tr("Chart: nothing of note."));
}

}  // namespace fb
