#include "app/records/board_view.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/cohort_counts.h"
#include "app/records/records_table.h"
#include "app/words/check_off_words.h"

namespace fb {

BoardView::BoardView(RecordsPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_sheetName(parts::text(this, "boardSheetName", "small")),
      m_sheet(new QComboBox(this)),
      m_counts(new CohortCounts(this)),
      m_outcomes(parts::text(this, "boardOutcomes", "small")),
      m_words(new QLineEdit(this)),
      m_standing(new QComboBox(this)),
      m_rows(parts::text(this, "boardRows", "small")),
      m_table(new RecordsTable("boardTable", this)),
      m_hint(parts::text(this, "boardHint", "small"))
{
    m_sheet->setObjectName(QStringLiteral("boardSheet"));
    m_words->setObjectName(QStringLiteral("boardWords"));
    m_words->setClearButtonEnabled(true);
    m_standing->setObjectName(QStringLiteral("boardStanding"));
    m_filter.setSourceModel(&m_model);
    layOut();
    say();
    connect(m_sheet, &QComboBox::activated, this,
            [this](int at) { m_presenter.chooseSheet(m_sheets[static_cast<std::size_t>(at)]); });
    connect(m_words, &QLineEdit::textChanged, this, [this](const QString& words) {
        m_filter.setWords(words);
        sayShown();
    });
    connect(m_standing, &QComboBox::currentIndexChanged, this, [this](int at) {
        m_filter.setStanding(at > 0 ? std::optional(static_cast<Standing>(at - 1)) : std::nullopt);
        sayShown();
    });
    connect(m_table, &RecordsTable::opened, this, [this](const QModelIndex& row) {
        m_presenter.openHistory(m_model.at(m_filter.mapToSource(row).row()).student.id);
    });
}

void BoardView::layOut()
{
    m_sheetName->setWordWrap(false);
    m_rows->setWordWrap(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kApart);
    auto* sheet = new QHBoxLayout;
    sheet->setSpacing(space::kNear);
    sheet->addWidget(m_sheetName);
    sheet->addWidget(m_sheet);
    sheet->addStretch(1);
    column->addLayout(sheet);
    column->addWidget(m_counts);
    column->addWidget(m_outcomes);
    column->addWidget(parts::rule(this));
    auto* narrow = new QHBoxLayout;
    narrow->setSpacing(space::kNear);
    narrow->addWidget(m_words);
    narrow->addWidget(m_standing);
    narrow->addStretch(1);
    narrow->addWidget(m_rows);
    column->addLayout(narrow);
    column->addWidget(m_table, 1);
    column->addWidget(m_hint);
}

void BoardView::say()
{
    m_sheetName->setText(tr("Sheet"));
    m_sheet->setAccessibleName(tr("Sheet of the board"));
    m_words->setPlaceholderText(tr("Name, number or section"));
    m_words->setAccessibleName(tr("Narrow the list by name, number or section"));
    m_standing->setAccessibleName(tr("Narrow the list by standing"));
    m_table->setAccessibleName(tr("Students and where they stand; Enter opens a history"));
    m_hint->setText(tr("A click on a student, or Enter, opens the student’s history."));
    fillStandings();
    // As wide as what is usually in it.
    const WhereTheyStand waiting{Standing::Waiting, 1, 3, Day{std::chrono::year{2026} / 12 / 28}, false};
    m_table->use(m_filter, BoardModel::NameColumn, Qt::AscendingOrder,
                 {QStringLiteral("Featherstonehaugh, Maria"), QStringLiteral("00000000"),
                  QStringLiteral("Section 0"), standingName(waiting), outcomeName(Outcome::FailCritical),
                  whenText(QDateTime(QDate(2026, 12, 28), QTime(12, 28), Qt::UTC))},
                 {BoardModel::SectionColumn, BoardModel::NameColumn});
}

void BoardView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        m_filter.retranslate();
        say();
        m_shown.reset();
        m_sheets.clear();
        showState(m_presenter.state());
    } else if (event->type() == QEvent::FontChange) {
        m_table->fitColumns();
    }
}

void BoardView::fillStandings()
{
    const int chosen = std::max(0, m_standing->currentIndex());
    const QSignalBlocker quiet(m_standing);
    m_standing->clear();
    //: A filter that leaves every student in the list.
    m_standing->addItem(tr("Every standing"));
    for (int i = 0; i < kStandingCount; ++i)
        m_standing->addItem(parts::alone(standingWord(static_cast<Standing>(i))));
    m_standing->setCurrentIndex(chosen);
}

void BoardView::fillSheets(const RecordsState& state)
{
    std::vector<QString> keys;
    for (const SheetOnFile& each : state.sheets)
        keys.push_back(each.key);
    if (keys != m_sheets) {
        m_sheets = keys;
        m_sheet->clear();
        for (const SheetOnFile& each : state.sheets)
            m_sheet->addItem(sheetTitle(each));
    }
    const auto at = std::ranges::find(m_sheets, state.sheet);
    m_sheet->setCurrentIndex(at == m_sheets.end() ? -1 : static_cast<int>(at - m_sheets.begin()));
    m_sheet->setEnabled(!m_sheets.empty());
}

void BoardView::showState(const RecordsState& state)
{
    fillSheets(state);
    if (state.board == m_shown)
        return;
    m_shown = state.board;
    m_model.setBoard(state.board);
    sayShown();
    if (!state.board)
        return;
    m_counts->showCount(state.board->count);
    QStringList outcomes;
    int all = 0;
    for (const auto& [outcome, count] : state.board->outcomes) {
        //: How often an outcome was come to: %1 number, %2 outcome.
        outcomes << tr("%1 %2").arg(QLocale().toString(count), outcomeName(outcome));
        all += count;
    }
    //: %1 is a list such as "12 passed, 3 not passed: time".
    m_outcomes->setText(
        all == 0 ? tr("No check-off is signed on this sheet yet.")
                 : tr("Signed check-offs on this sheet: %1.").arg(QLocale().createSeparatedList(outcomes)));
}

void BoardView::sayShown()
{
    const int all = m_model.rowCount();
    m_rows->setText(
        all == 0 ? tr("No students yet")
                 : tr("%1 of %Ln student(s)", nullptr, all).arg(QLocale().toString(m_filter.rowCount())));
}

void BoardView::setScheme(const Scheme& scheme)
{
    m_counts->setScheme(scheme);
    m_model.setScheme(scheme);
    m_table->setScheme(scheme);
    constexpr int kSearch = 280;
    m_words->setMinimumWidth(parts::columnWidth(this, kSearch));
}

void BoardView::focusFirst() { m_words->setFocus(); }

}  // namespace fb
