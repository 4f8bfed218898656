#include "app/practice/summary_page.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPolygonF>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>

#include "app/canvas/plate_view.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/practice/run_by_hand.h"
#include "app/practice/run_by_site.h"
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

QString captionOf(Site site)
{
    switch (site) {
    case Site::Deltoid:
        return SummaryPage::tr(
            "All marks laid on one right arm, each as far from the ideal point as it was on its own.");
    case Site::VastusLateralis:
        return SummaryPage::tr(
            "All marks laid on one right thigh, each as far from the ideal point as it was on its own.");
    case Site::Ventrogluteal:
        return SummaryPage::tr(
            "All marks laid on one right hip, each as far from the ideal point as it was on its own.");
    }
    return {};
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
      m_refusals(parts::text(this, "refusals")),
      m_sides(parts::text(this, "sides")),
      m_points(parts::text(this, "runPoints")),
      m_byHand(new RunByHand(this)),
      m_bySite(new RunBySite(this)),
      m_column(new QWidget(this)),
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
    connect(m_bySite, &RunBySite::siteAsked, this, &SummaryPage::siteAsked);
    layOut();
}

void SummaryPage::layOut()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space::kMargin, space::kApart, space::kMargin, space::kApart);
    row->setSpacing(space::kMargin);
    row->addWidget(figure(), 1);
    m_column->setObjectName(QStringLiteral("summaryColumn"));
    auto* column = new QVBoxLayout(m_column);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kApart);
    auto* scroll = new QScrollArea(m_column);
    scroll->setObjectName(QStringLiteral("summaryScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(words());
    parts::followFocus(scroll);
    column->addWidget(scroll, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addWidget(m_new, 1);
    buttons->addWidget(m_repeat, 1);
    column->addLayout(buttons);
    row->addWidget(m_column);
}

QWidget* SummaryPage::figure()
{
    auto* whole = new QWidget(this);
    auto* picture = new QVBoxLayout(whole);
    picture->setContentsMargins(0, 0, 0, 0);
    picture->setSpacing(space::kNear);
    picture->addWidget(m_plate, 1);
    picture->addWidget(m_caption);
    return whole;
}

QWidget* SummaryPage::words()
{
    auto* whole = new QWidget;
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    const auto divide = [&] {
        column->addSpacing(space::kTight);
        column->addWidget(parts::rule(whole));
        column->addSpacing(space::kTight);
    };
    for (QLabel* label : {m_title, m_hits, m_interval})
        column->addWidget(label);
    divide();
    column->addLayout(counts());
    divide();
    column->addWidget(m_byHand);
    for (QLabel* sentence : {m_distance, m_lean, m_refusals, m_sides, m_points})
        column->addWidget(sentence);
    divide();
    column->addWidget(m_bySite);
    column->addStretch(1);
    return whole;
}

QLayout* SummaryPage::counts()
{
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kNear);
    grid->setColumnStretch(1, 1);
    for (std::size_t i = 0; i < m_counts.size(); ++i) {
        const int line = static_cast<int>(i);
        grid->addWidget(m_counts[i].icon, line, 0);
        grid->addWidget(m_counts[i].name, line, 1);
        grid->addWidget(m_counts[i].count, line, 2);
    }
    return grid;
}

void SummaryPage::showState(const PracticeState& state)
{
    if (!state.summary)
        return;
    m_column->setFixedWidth(parts::columnWidth(this, summary_page_detail::kColumnWidth));
    showPlate(state);
    m_caption->setText(summary_page_detail::captionOf(state.runSite));
    m_title->setText(tr("Run of seed %1").arg(QString::number(state.setup.seed)));
    sayNumbers(*state.summary);
    sayPoints(*state.summary);
    m_byHand->showState(state);
    m_bySite->showState(state);
    if (!state.foundByHand.empty())
        sayFound(state.foundByHand);
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
    const bool marked = summary.marked > 0;
    m_hits->setText(marked ? tr("%1 of %2 in the target region")
                                 .arg(locale.toString(summary.hits), locale.toString(summary.marked))
                           : tr("No place was marked"));
    //: A 95 percent confidence interval of the hit rate; %1 is the rate itself.
    m_interval->setText(tr("Hit rate %1, 95 % interval from %2 to %3.")
                            .arg(percent(marked ? double(summary.hits) / summary.marked : 0.0),
                                 percent(summary.hitRate.low), percent(summary.hitRate.high)));
    m_distance->setText(
        tr("Mean distance to the ideal point: %1.").arg(cmText(summary.meanDistance.value())));
    m_lean->setText(leanSentence(summary.leanWay, summary.lean));
    for (QLabel* ofMarks : {m_interval, m_distance, m_lean})
        ofMarks->setVisible(marked);
    for (std::size_t i = 0; i < m_counts.size(); ++i) {
        const auto verdict = static_cast<Verdict>(i);
        m_counts[i].name->setText(verdictName(verdict));
        m_counts[i].count->setText(locale.toString(countOf(summary, verdict)));
    }
}

// A lucky mark is no success of a run by hand.
void SummaryPage::sayFound(const std::vector<ByHandGrade>& found)
{
    const QLocale locale;
    const auto flawless =
        std::ranges::count_if(found, [](const ByHandGrade& grade) { return !grade.first.has_value(); });
    //: The headline of a run by hand: of how many requests every part was right.
    m_hits->setText(tr("%1 of %2 found, built and marked right")
                        .arg(locale.toString(static_cast<int>(flawless)),
                             locale.toString(static_cast<int>(found.size()))));
    m_interval->hide();
}

void SummaryPage::sayPoints(const Summary& summary)
{
    const QLocale locale;
    m_refusals->setText(refusalNumbers(summary));
    m_refusals->setVisible(!m_refusals->text().isEmpty());
    m_sides->setVisible(summary.sidesAsked > 0);
    m_sides->setText(tr("Side picked right at the first try: %1 of %2.")
                         .arg(locale.toString(summary.sidesRight), locale.toString(summary.sidesAsked)));
    m_points->setText(tr("Points: %1.").arg(parts::pointsText(summary.points)));
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
