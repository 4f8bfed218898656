#include "app/practice/grade_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/finding_words.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace grade_panel_detail {

QString refusalTitle(RefusalOutcome outcome)
{
    switch (outcome) {
    //: The learner answered "not here" instead of marking a place; what that came to.
    case RefusalOutcome::RightReason: return GradePanel::tr("Rightly refused");
    case RefusalOutcome::WrongReason: return GradePanel::tr("Refused for another reason");
    case RefusalOutcome::NothingRulesOut: return GradePanel::tr("Refused without need");
    }
    return {};
}

}  // namespace grade_panel_detail

GradePanel::GradePanel(QWidget* parent)
    : QWidget(parent),
      m_icon(new QLabel(this)),
      m_verdict(parts::text(this, "verdict", "title")),
      m_reason(parts::text(this, "reason")),
      m_measure(parts::text(this, "measure", "small"))
{
    static constexpr const char* kNames[RowCount]{"alongName", "acrossName", "idealName", "borderName",
                                                  "pointsName"};
    static constexpr const char* kValues[RowCount]{"along", "across", "ideal", "border", "points"};
    m_icon->setObjectName(QStringLiteral("verdictIcon"));
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    auto* line = new QHBoxLayout;
    line->setSpacing(space::kNear);
    line->addWidget(m_icon);
    line->addWidget(m_verdict, 1);
    column->addLayout(line);
    column->addWidget(m_reason);
    column->addSpacing(space::kTight);

    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kApart);
    grid->setVerticalSpacing(space::kTight);
    for (int row = AlongRow; row < RowCount; ++row) {
        m_names[row] = parts::text(this, kNames[row], "small");
        m_values[row] = parts::text(this, kValues[row]);
        grid->addWidget(m_names[row], row, 0, Qt::AlignTop);
        grid->addWidget(m_values[row], row, 1, Qt::AlignTop);
    }
    constexpr int kNameShare = 2;
    constexpr int kValueShare = 3;
    grid->setColumnStretch(0, kNameShare);
    grid->setColumnStretch(1, kValueShare);
    column->addLayout(grid);
    column->addWidget(m_measure);
}

void GradePanel::showAttempt(const Attempt& attempt, const Target& target)
{
    m_shown = attempt.grade.verdict;
    sayVerdict(attempt);
    sayOffsets(attempt, target);
    paintVerdict();
}

void GradePanel::sayVerdict(const Attempt& attempt)
{
    const Request& request = attempt.request;
    if (attempt.refusal) {
        m_verdict->setText(grade_panel_detail::refusalTitle(attempt.refusal->outcome));
        m_reason->setText(
            refusalSentence(attempt.refusal->outcome, request.finding, attempt.refusal->reason));
        return;
    }
    m_verdict->setText(verdictName(attempt.grade.verdict));
    m_reason->setText(attempt.missedFinding ? missedFindingSentence(*request.finding)
                                            : reasonSentence(request.site, attempt.grade));
}

void GradePanel::sayOffsets(const Attempt& attempt, const Target& target)
{
    const Grade& grade = attempt.grade;
    m_names[AlongRow]->setText(alongName(target.site));
    m_names[AcrossRow]->setText(acrossName(target.site));
    m_names[IdealRow]->setText(tr("To the ideal point"));
    m_names[BorderRow]->setText(tr("To the region's border"));
    m_names[PointsRow]->setText(tr("Points"));
    m_values[AlongRow]->setText(alongText(grade.offDistal));
    m_values[AcrossRow]->setText(acrossText(target.site, grade.offAnterior));
    m_values[IdealRow]->setText(cmText(grade.distanceToIdeal.value()));
    m_values[BorderRow]->setText(borderText(grade.distanceToBorder));
    m_values[PointsRow]->setText(parts::pointsText(grade.points));
    m_measure->setText(measureNote(target));
    const bool marked = !attempt.refusal;
    for (int row = AlongRow; row < PointsRow; ++row) {
        m_names[row]->setVisible(marked);
        m_values[row]->setVisible(marked);
    }
    m_measure->setVisible(marked);
}

void GradePanel::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    paintVerdict();
}

void GradePanel::paintVerdict()
{
    if (!m_shown)
        return;
    constexpr int kIconSize = 26;
    const QColor colour = colourOf(*m_shown, m_scheme);
    m_icon->setPixmap(
        pixmapFor(iconOf(*m_shown), colour, parts::scaled(this, kIconSize), devicePixelRatioF()));
    // The look sets every label's ink, so a verdict's has to be set over it.
    m_verdict->setStyleSheet(QStringLiteral("color: %1").arg(colour.name()));
}

}  // namespace fb
