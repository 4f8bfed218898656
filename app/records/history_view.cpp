#include "app/records/history_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/records_look.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace history_view_detail {

constexpr int kHistoryIcon = 20;

QLabel* iconLabel(QWidget* parent)
{
    auto* label = new QLabel(parent);
    label->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    return label;
}

}  // namespace history_view_detail

using namespace history_view_detail;

HistoryView::HistoryView(RecordsPresenter& presenter, QWidget* parent)
    : RecordView("historyScroll", parent),
      m_presenter(presenter),
      m_back(parts::button(this, "historyBack")),
      m_name(parts::text(this, "historyName", "title")),
      m_about(parts::text(this, "historyAbout", "small")),
      m_icon(iconLabel(this)),
      m_standing(parts::text(this, "historyStanding"))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    auto* top = new QHBoxLayout;
    top->setSpacing(space::kApart);
    top->addWidget(m_back);
    top->addWidget(m_name, 1);
    column->addLayout(top);
    column->addWidget(m_about);
    auto* standing = new QHBoxLayout;
    standing->setSpacing(space::kNear);
    standing->addWidget(m_icon);
    standing->addWidget(m_standing, 1);
    column->addLayout(standing);
    column->addWidget(parts::rule(this));
    column->addWidget(scroller(), 1);
    connect(m_back, &QPushButton::clicked, &m_presenter, &RecordsPresenter::back);
    say();
}

void HistoryView::say() { parts::say(m_back, tr("Back")); }

void HistoryView::showState(const RecordsState& state)
{
    if (!state.history || state.history == m_shown)
        return;
    m_shown = state.history;
    rebuild();
}

void HistoryView::rebuild()
{
    const Student& student = m_shown->student;
    m_name->setText(fullName(student.given, student.family));
    QStringList about{student.id};
    if (!student.section.isEmpty())
        about << student.section;
    if (student.extraPercent > 0)
        about << tr("%1 extra time").arg(percentText(student.extraPercent));
    if (student.invented)
        about << tr("invented");
    m_about->setText(about.join(QStringLiteral(" · ")));
    const bool stands = m_shown->where.has_value();
    m_standing->setVisible(stands);
    m_icon->setVisible(stands);
    if (stands) {
        const Standing standing = m_shown->where->standing;
        //: %1 title of a sheet, %2 where the student stands on it.
        m_standing->setText(tr("%1: %2.").arg(m_shown->sheetTitle, standingName(*m_shown->where)));
        m_icon->setPixmap(pixmapFor(iconOfStanding(standing), colourOfStanding(standing, scheme()),
                                    parts::scaled(this, kHistoryIcon), devicePixelRatioF()));
    }
    auto* whole = new QWidget;
    auto* rows = new QVBoxLayout(whole);
    rows->setContentsMargins(0, space::kNear, 0, 0);
    rows->setSpacing(space::kApart);
    if (m_shown->attempts.empty()) {
        QLabel* none = parts::text(whole, "historyNone");
        none->setText(tr("No check-off of this student is signed yet."));
        rows->addWidget(none);
    }
    for (const CheckOffLine& line : m_shown->attempts)
        rows->addWidget(attempt(line, whole));
    rows->addStretch(1);
    scroller()->setWidget(whole);
}

QWidget* HistoryView::attempt(const CheckOffLine& line, QWidget* parent)
{
    auto* whole = new QWidget(parent);
    auto* row = new QHBoxLayout(whole);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    QLabel* icon = iconLabel(whole);
    icon->setPixmap(pixmapFor(iconOfOutcome(line.outcome), colourOfOutcome(line.outcome, scheme()),
                              parts::scaled(this, kHistoryIcon), devicePixelRatioF()));
    row->addWidget(icon, 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(space::kTight);
    QLabel* what = parts::text(whole, "historyAttempt");
    //: %1 number of the attempt, %2 its outcome, %3 the score in percent.
    what->setText(tr("Attempt %1 · %2 · %3")
                      .arg(QLocale().toString(line.attempt), parts::alone(outcomeName(line.outcome)),
                           scoreText(line.percent)));
    QLabel* when = parts::text(whole, "historyWhen", "small");
    //: %1 a day and time, %2 title of a sheet, %3 who signed.
    when->setText(tr("%1, %2, signed by %3").arg(whenText(line.at), line.sheetTitle, signersOf(line)));
    words->addWidget(what);
    words->addWidget(when);
    if (const QString after = between(line); !after.isEmpty()) {
        QLabel* practised = parts::text(whole, "historyBetween");
        practised->setText(after);
        words->addWidget(practised);
    }
    row->addLayout(words, 1);
    QPushButton* open = parts::button(whole, "historyOpen");
    parts::say(open, tr("Open"));
    open->setAccessibleName(
        tr("Open attempt %1, %2").arg(QLocale().toString(line.attempt), whenText(line.at)));
    connect(open, &QPushButton::clicked, this, [this, id = line.id] { m_presenter.openCheckOff(id); });
    row->addWidget(open, 0, Qt::AlignTop);
    return whole;
}

// What came between this attempt and the next.
QString HistoryView::between(const CheckOffLine& line) const
{
    if (!line.remediation.isEmpty())
        return tr("Practised afterwards: %1").arg(line.remediation);
    const auto& sheets = m_presenter.state().sheets;
    const auto sheet = std::ranges::find(sheets, line.sheetKey, &SheetOnFile::key);
    const bool asks = sheet != sheets.end() && asksForPractice(line.outcome, sheet->sheet.retest);
    return asks ? tr("Practice afterwards is not signed yet.") : QString();
}

void HistoryView::focusFirst()
{
    auto* open = scroller()->widget() ? scroller()->widget()->findChild<QPushButton*>() : nullptr;
    (open ? open : m_back)->setFocus();
}

}  // namespace fb
