#include "app/checkoff/outcome_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>

#include "app/checkoff/score_bar.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/records_look.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace outcome_panel_detail {

constexpr int kIcon = 30;

bool isScored(Outcome outcome) { return outcome != Outcome::VoidTechnical && outcome != Outcome::NoShow; }

}  // namespace outcome_panel_detail

OutcomePanel::OutcomePanel(QWidget* parent)
    : QWidget(parent),
      m_who(parts::text(this, "closingWho", "small")),
      m_icon(new QLabel(this)),
      m_name(parts::text(this, "outcome", "title")),
      m_sentence(parts::text(this, "outcomeSentence")),
      m_score(parts::text(this, "score")),
      m_bar(new ScoreBar(this)),
      m_reasons(parts::text(this, "reasons"))
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    rows->addWidget(m_who);
    auto* line = new QHBoxLayout;
    line->setSpacing(space::kNear);
    m_icon->setObjectName(QStringLiteral("outcomeIcon"));
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    line->addWidget(m_icon);
    line->addWidget(m_name, 1);
    rows->addLayout(line);
    rows->addWidget(m_sentence);
    rows->addSpacing(space::kTight);
    rows->addWidget(m_score);
    rows->addWidget(m_bar);
    rows->addSpacing(space::kTight);
    rows->addWidget(m_reasons);
}

void OutcomePanel::showState(const CheckOffState& state)
{
    using namespace outcome_panel_detail;
    if (!state.open)
        return;
    const QLocale locale;
    const CheckOffSetup setup{state.open->sheet.sheet, state.open->order.seed,
                              state.open->order.extraPercent};
    m_outcome = state.result.decision.outcome;
    //: Who it is and which attempt: "Ada Marsh, attempt 2 of 3".
    m_who->setText(tr("%1, attempt %2 of %3")
                       .arg(fullName(state.open->student.given, state.open->student.family),
                            locale.toString(state.open->attempt),
                            locale.toString(setup.sheet.retest.attempts)));
    m_name->setText(parts::alone(outcomeName(m_outcome)));
    m_sentence->setText(outcomeSentence(m_outcome));
    const bool scored = isScored(m_outcome);
    //: A share of the points in percent and the least that passes.
    m_score->setText(tr("Score %1, needed %2")
                         .arg(scoreText(state.result.decision.percent), scoreText(setup.sheet.cutPercent)));
    m_bar->showScore(state.result.decision.percent, setup.sheet.cutPercent);
    m_score->setVisible(scored);
    m_bar->setVisible(scored);
    QStringList reasons;
    for (const QString& reason : reasonsOf(state.result, setup, state.endNote))
        //: One of several points in a list.
        reasons << tr("– %1").arg(reason);
    m_reasons->setText(reasons.join(QLatin1Char('\n')));
    m_reasons->setVisible(!reasons.isEmpty());
    paint();
}

void OutcomePanel::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_bar->setScheme(scheme);
    paint();
}

void OutcomePanel::paint()
{
    const QColor colour = colourOfOutcome(m_outcome, m_scheme);
    m_icon->setPixmap(pixmapFor(iconOfOutcome(m_outcome), colour,
                                parts::scaled(this, outcome_panel_detail::kIcon), devicePixelRatioF()));
    m_name->setStyleSheet(QStringLiteral("color: %1").arg(colour.name()));
}

}  // namespace fb
