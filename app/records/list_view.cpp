#include "app/records/list_view.h"

#include <QComboBox>
#include <QDateEdit>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/records_table.h"
#include "app/words/check_off_words.h"

namespace fb {

ListView::ListView(RecordsPresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_words(new QLineEdit(this)),
      m_sheet(new QComboBox(this)),
      m_outcome(new QComboBox(this)),
      m_span(new QComboBox(this)),
      m_days(new QWidget(this)),
      m_from(new QDateEdit(presenter.today(), m_days)),
      m_toName(parts::text(m_days, "listToName", "small")),
      m_to(new QDateEdit(presenter.today(), m_days)),
      m_rows(parts::text(this, "listRows", "small")),
      m_table(new RecordsTable("listTable", this)),
      m_hint(parts::text(this, "listHint", "small"))
{
    m_words->setObjectName(QStringLiteral("listWords"));
    m_words->setClearButtonEnabled(true);
    m_sheet->setObjectName(QStringLiteral("listSheet"));
    m_outcome->setObjectName(QStringLiteral("listOutcome"));
    m_span->setObjectName(QStringLiteral("listSpan"));
    m_from->setObjectName(QStringLiteral("listFrom"));
    m_to->setObjectName(QStringLiteral("listTo"));
    m_sorted.setSourceModel(&m_model);
    m_sorted.setSortRole(ListModel::kSortRole);
    m_typing.setSingleShot(true);
    m_typing.setInterval(kTypingMs);
    m_days->hide();
    layOut();
    say();
    connect(&m_typing, &QTimer::timeout, this, &ListView::search);
    connect(m_words, &QLineEdit::textChanged, this, [this] { m_typing.start(); });
    connect(m_sheet, &QComboBox::activated, this, &ListView::search);
    connect(m_outcome, &QComboBox::activated, this, &ListView::search);
    connect(m_span, &QComboBox::activated, this, [this](int at) {
        m_days->setVisible(at == Between);
        search();
    });
    for (QDateEdit* day : {m_from, m_to}) {
        day->setCalendarPopup(false);
        connect(day, &QDateEdit::dateChanged, this, [this] { m_typing.start(); });
    }
    connect(m_table, &RecordsTable::opened, this, [this](const QModelIndex& row) {
        m_presenter.openCheckOff(m_model.at(m_sorted.mapToSource(row).row()).id);
    });
}

void ListView::layOut()
{
    constexpr int kSearch = 240;
    constexpr int kChoice = 14;  // letters: a long title of a sheet is cut in the box, not in its list
    m_words->setMinimumWidth(kSearch);
    m_sheet->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_sheet->setMinimumContentsLength(kChoice);
    m_toName->setWordWrap(false);
    auto* days = new QHBoxLayout(m_days);
    days->setContentsMargins(0, 0, 0, 0);
    days->setSpacing(space::kNear);
    days->addWidget(m_from);
    days->addWidget(m_toName);
    days->addWidget(m_to);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kApart);
    auto* narrow = new QHBoxLayout;
    narrow->setSpacing(space::kNear);
    narrow->addWidget(m_words, 1);
    narrow->addWidget(m_sheet);
    narrow->addWidget(m_outcome);
    column->addLayout(narrow);
    // When: in a line of its own, for with large letters and a wordy language one has no room for all.
    auto* second = new QHBoxLayout;
    second->setSpacing(space::kNear);
    second->addWidget(m_span);
    second->addWidget(m_days);
    second->addWidget(m_rows, 1);
    column->addLayout(second);
    column->addWidget(m_table, 1);
    column->addWidget(m_hint);
}

void ListView::say()
{
    m_words->setPlaceholderText(tr("Name or number"));
    m_words->setAccessibleName(tr("Search check-offs by name or number"));
    m_sheet->setAccessibleName(tr("Only of this sheet"));
    m_outcome->setAccessibleName(tr("Only of this outcome"));
    m_span->setAccessibleName(tr("Only of these days"));
    m_from->setAccessibleName(tr("From this day"));
    m_to->setAccessibleName(tr("To this day"));
    //: Between two days: from ... to.
    m_toName->setText(tr("to"));
    m_table->setAccessibleName(tr("Signed check-offs; Enter opens one"));
    m_hint->setText(tr("A click on a check-off, or Enter, opens it."));
    fillChoices();
    m_table->use(m_sorted, ListModel::WhenColumn, Qt::DescendingOrder,
                 {whenText(QDateTime(QDate(2026, 12, 28), QTime(12, 28), Qt::UTC)),
                  QStringLiteral("Featherstonehaugh, M"), QStringLiteral("Intramuscular injection"),
                  QStringLiteral("00"), outcomeName(Outcome::FailCritical), scoreText(99.9),
                  QStringLiteral("0"), QStringLiteral("Dr Featherstone")},
                 {ListModel::SheetColumn, ListModel::AssessorColumn, ListModel::NameColumn});
}

void ListView::fillChoices()
{
    const int outcome = std::max(0, m_outcome->currentIndex());
    const int span = std::max(0, m_span->currentIndex());
    m_outcome->clear();
    //: A filter that leaves every outcome in the list.
    m_outcome->addItem(tr("Every outcome"));
    for (int i = 0; i < kOutcomeCount; ++i)
        m_outcome->addItem(parts::alone(outcomeName(static_cast<Outcome>(i))));
    m_outcome->setCurrentIndex(outcome);
    m_span->clear();
    //: When: choices of a filter.
    m_span->addItems({tr("At any time"), tr("Today"), tr("In the last 7 days"), tr("In the last 30 days"),
                      tr("Between two days")});
    m_span->setCurrentIndex(span);
}

void ListView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        m_sorted.retranslate();
        say();
        m_sheets.clear();
        m_shown.reset();
        showState(m_presenter.state());
    } else if (event->type() == QEvent::FontChange) {
        m_table->fitColumns();
    }
}

void ListView::fillSheets(const RecordsState& state)
{
    std::vector<QString> keys{QString()};
    for (const SheetOnFile& each : state.sheets)
        keys.push_back(each.key);
    if (keys == m_sheets)
        return;
    m_sheets = keys;
    m_sheet->clear();
    //: A filter that leaves the check-offs of every sheet in the list.
    m_sheet->addItem(tr("Every sheet"));
    for (const SheetOnFile& each : state.sheets)
        m_sheet->addItem(sheetTitle(each));
    const auto at = std::ranges::find(m_sheets, state.filter.sheet);
    m_sheet->setCurrentIndex(at == m_sheets.end() ? 0 : static_cast<int>(at - m_sheets.begin()));
}

CheckOffFilter ListView::filter() const
{
    constexpr int kWeek = 7;
    constexpr int kMonth = 30;
    CheckOffFilter wanted;
    wanted.words = m_words->text().trimmed();
    wanted.sheet = m_sheets[static_cast<std::size_t>(std::max(0, m_sheet->currentIndex()))];
    if (m_outcome->currentIndex() > 0)
        wanted.outcome = static_cast<Outcome>(m_outcome->currentIndex() - 1);
    const QDate today = m_presenter.today();
    switch (m_span->currentIndex()) {
    case Today: wanted.from = today; break;
    case LastWeek: wanted.from = today.addDays(1 - kWeek); break;
    case LastMonth: wanted.from = today.addDays(1 - kMonth); break;
    case Between:
        wanted.from = std::min(m_from->date(), m_to->date());
        wanted.to = std::max(m_from->date(), m_to->date());
        break;
    default: break;
    }
    return wanted;
}

void ListView::search()
{
    m_typing.stop();
    m_presenter.find(filter());
}

void ListView::showState(const RecordsState& state)
{
    fillSheets(state);
    if (state.found == m_shown)
        return;
    m_shown = state.found;
    m_model.setLines(state.found);
    const int found = m_model.rowCount();
    m_rows->setText(found >= state.filter.most
                        ? tr("The newest %n are shown; narrow the search for older ones.", nullptr, found)
                        : tr("%n check-off(s)", nullptr, found));
}

void ListView::setScheme(const Scheme& scheme)
{
    m_model.setScheme(scheme);
    m_table->setScheme(scheme);
}

void ListView::focusFirst() { m_words->setFocus(); }

}  // namespace fb
