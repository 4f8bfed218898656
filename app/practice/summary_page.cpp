#include "app/practice/summary_page.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPolygonF>
#include <QPushButton>

#include "app/canvas/plate_view.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace summary_page_detail {

constexpr int kColumnWidth = 368;
constexpr int kIconSize = 18;

QString percent(double share)
{
    constexpr double kWhole = 100.0;
    //: A share in percent.
    return SummaryPage::tr("%1 %").arg(QLocale().toString(share * kWhole, 'f', 0));
}

int countOf(const Summary& summary, Verdict verdict)
{
    switch (verdict) {
    case Verdict::OnTarget: return summary.hits;
    case Verdict::Acceptable: return summary.acceptable;
    case Verdict::OffTarget: return summary.offTarget;
    case Verdict::Unsafe: return summary.unsafe;
    }
    return 0;
}

}  // namespace summary_page_detail

SummaryPage::SummaryPage(QWidget* parent)
    : QWidget(parent),
      m_plate(new PlateView(this)),
      m_caption(parts::text(this, "figureCaption", "small")),
      m_title(parts::text(this, "summaryTitle", "small")),
      m_hits(parts::text(this, "hits", "title")),
      m_interval(parts::text(this, "interval")),
      m_distance(parts::text(this, "meanDistance")),
      m_lean(parts::text(this, "lean")),
      m_sides(parts::text(this, "sides")),
      m_points(parts::text(this, "runPoints")),
      m_repeat(parts::button(this, "repeat")),
      m_new(parts::mainButton(this, "newRunFromSummary"))
{
    for (CountRow& row : m_counts) {
        row.icon = new QLabel(this);
        row.name = parts::text(this, "verdictName");
        row.count = parts::text(this, "verdictCount");
        row.icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
        row.count->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    }
    m_caption->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    m_caption->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_plate->setObjectName(QStringLiteral("runPlate"));
    m_plate->setMarkable(false);
    connect(m_repeat, &QPushButton::clicked, this, &SummaryPage::repeatAsked);
    connect(m_new, &QPushButton::clicked, this, &SummaryPage::newRunAsked);
    layOut();
}

void SummaryPage::layOut()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space::kMargin, space::kApart, space::kMargin, space::kApart);
    row->setSpacing(space::kMargin);
    auto* picture = new QVBoxLayout;
    picture->setContentsMargins(0, 0, 0, 0);
    picture->setSpacing(space::kNear);
    picture->addWidget(m_plate, 1);
    picture->addWidget(m_caption);
    row->addLayout(picture, 1);

    auto* column = new QVBoxLayout;
    column->setSpacing(space::kNear);
    column->addStretch(1);
    column->addWidget(m_title);
    column->addWidget(m_hits);
    column->addWidget(m_interval);
    column->addSpacing(space::kNear);
    column->addWidget(parts::rule(this));
    column->addSpacing(space::kNear);
    auto* counts = new QGridLayout;
    counts->setHorizontalSpacing(space::kNear);
    counts->setColumnStretch(1, 1);
    for (std::size_t i = 0; i < m_counts.size(); ++i) {
        const int line = static_cast<int>(i);
        counts->addWidget(m_counts[i].icon, line, 0);
        counts->addWidget(m_counts[i].name, line, 1);
        counts->addWidget(m_counts[i].count, line, 2);
    }
    column->addLayout(counts);
    column->addSpacing(space::kNear);
    column->addWidget(parts::rule(this));
    column->addSpacing(space::kNear);
    for (QLabel* sentence : {m_distance, m_lean, m_sides, m_points})
        column->addWidget(sentence);
    column->addSpacing(space::kApart);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_new, 1);
    buttons->addWidget(m_repeat, 1);
    column->addLayout(buttons);
    column->addStretch(1);
    auto* held = new QWidget(this);
    held->setObjectName(QStringLiteral("summaryColumn"));
    held->setLayout(column);
    column->setContentsMargins(0, 0, 0, 0);
    row->addWidget(held);
}

void SummaryPage::showState(const PracticeState& state)
{
    if (!state.summary)
        return;
    using summary_page_detail::kColumnWidth;
    findChild<QWidget*>(QStringLiteral("summaryColumn"))
        ->setFixedWidth(parts::columnWidth(this, kColumnWidth));
    showPlate(state);
    m_caption->setText(
        tr("All marks laid on one right arm, each as far from the ideal point as it was on its own."));
    m_title->setText(tr("Run of seed %1").arg(QString::number(state.setup.seed)));
    sayNumbers(*state.summary);
    parts::say(m_repeat, tr("Repeat this run"));
    parts::say(m_new, tr("New run"));
    paintIcons();
}

void SummaryPage::showPlate(const PracticeState& state)
{
    if (!state.runPicture)
        return;
    m_plate->setPicture(state.runPicture);
    m_plate->setScene(state.runScene);
    if (m_shown == state.runPicture)
        return;
    m_shown = state.runPicture;
    QPolygonF seen;
    for (const SceneShape& shape : state.runScene)
        seen += QPolygonF(shape.points);
    constexpr double kRoom = 4.0;  // cm
    m_plate->showAround(seen.boundingRect().adjusted(-kRoom, -kRoom, kRoom, kRoom));
}

void SummaryPage::sayNumbers(const Summary& summary)
{
    using namespace summary_page_detail;
    const QLocale locale;
    m_hits->setText(tr("%1 of %2 in the target region")
                        .arg(locale.toString(summary.hits), locale.toString(summary.attempts)));
    //: A 95 percent confidence interval of the hit rate; %1 is the rate itself.
    m_interval->setText(tr("Hit rate %1, 95 % interval from %2 to %3.")
                            .arg(percent(summary.attempts ? double(summary.hits) / summary.attempts : 0.0),
                                 percent(summary.hitRate.low), percent(summary.hitRate.high)));
    m_distance->setText(
        tr("Mean distance to the ideal point: %1.").arg(cmText(summary.meanDistance.value())));
    m_lean->setText(leanSentence(summary.leanWay, summary.lean));
    m_sides->setVisible(summary.sidesAsked > 0);
    m_sides->setText(tr("Side picked right at the first try: %1 of %2.")
                         .arg(locale.toString(summary.sidesRight), locale.toString(summary.sidesAsked)));
    m_points->setText(tr("Points: %1.").arg(locale.toString(summary.points)));
    for (std::size_t i = 0; i < m_counts.size(); ++i) {
        const auto verdict = static_cast<Verdict>(i);
        m_counts[i].name->setText(verdictName(verdict));
        m_counts[i].count->setText(locale.toString(countOf(summary, verdict)));
    }
}

void SummaryPage::paintIcons()
{
    const int size = parts::scaled(this, summary_page_detail::kIconSize);
    for (std::size_t i = 0; i < m_counts.size(); ++i) {
        const auto verdict = static_cast<Verdict>(i);
        m_counts[i].icon->setPixmap(
            pixmapFor(iconOf(verdict), colourOf(verdict, m_scheme), size, devicePixelRatioF()));
    }
}

void SummaryPage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_plate->setScheme(scheme);
    paintIcons();
}

void SummaryPage::focusFirst() { m_new->setFocus(); }

}  // namespace fb
