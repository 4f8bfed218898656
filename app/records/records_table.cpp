#include "app/records/records_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <algorithm>
#include <numeric>

#include "app/practice/parts.h"

namespace fb {

RecordsTable::RecordsTable(const char* name, QWidget* parent) : QTableView(parent)
{
    setObjectName(QLatin1String(name));
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setCornerButtonEnabled(false);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    setSortingEnabled(true);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    connect(this, &QTableView::clicked, this, &RecordsTable::opened);
}

void RecordsTable::use(QAbstractItemModel& sorted, int column, Qt::SortOrder order,
                       const QStringList& samples, const std::vector<int>& yielding)
{
    setModel(&sorted);
    m_samples = samples;
    m_yielding = yielding;
    connect(&sorted, &QAbstractItemModel::modelReset, this, &RecordsTable::fitColumns, Qt::UniqueConnection);
    sortByColumn(column, order);
    fitColumns();
}

// Of its head and of what stands in the first rows.
int RecordsTable::contentWidth(int column) const
{
    constexpr int kMeasured = 100;
    constexpr int kBesideIcon = 8;
    int words = fontMetrics().horizontalAdvance(model()->headerData(column, Qt::Horizontal).toString());
    int icon = 0;
    for (int row = 0; row < std::min(kMeasured, model()->rowCount()); ++row) {
        const QModelIndex at = model()->index(row, column);
        words = std::max(words, fontMetrics().horizontalAdvance(at.data().toString()));
        if (at.data(Qt::DecorationRole).isValid())
            icon = iconSize().width() + kBesideIcon;
    }
    return words + icon;
}

// Each column as wide as its sample, and what is left over is shared; where there is not so much room, as
// wide as what stands in it, and then the yielding ones give way.
void RecordsTable::fitColumns()
{
    constexpr int kRowHeight = 34;
    constexpr int kIcon = 18;
    constexpr int kRoom = 28;  // the cell's own margins and the sorting arrow
    verticalHeader()->setDefaultSectionSize(parts::scaled(this, kRowHeight));
    setIconSize({parts::scaled(this, kIcon), parts::scaled(this, kIcon)});
    if (!model())
        return;
    std::vector<int> widths, contents;
    for (int i = 0; i < m_samples.size(); ++i) {
        contents.push_back(contentWidth(i) + kRoom);
        widths.push_back(std::max(contents.back(), fontMetrics().horizontalAdvance(m_samples[i]) + kRoom));
    }
    const int wished = std::accumulate(widths.begin(), widths.end(), 0);
    int over = wished - viewport()->width();
    const auto give = [&](std::size_t column, int least) {
        const int given = std::clamp(widths[column] - least, 0, std::max(0, over));
        widths[column] -= given;
        over -= given;
    };
    for (std::size_t i = widths.size(); i-- > 0;)
        give(i, contents[i]);
    const int fewLetters = fontMetrics().horizontalAdvance(QStringLiteral("MMMM")) + kRoom;
    for (const int column : m_yielding)
        give(static_cast<std::size_t>(column), fewLetters);
    const int spare = std::max(0, viewport()->width() - wished);
    for (std::size_t i = 0; i < widths.size(); ++i)
        setColumnWidth(static_cast<int>(i), widths[i] + spare * widths[i] / std::max(1, wished));
}

void RecordsTable::setScheme(const Scheme& scheme)
{
    setStyleSheet(QStringLiteral("QTableView { background: transparent; border: 3px solid transparent; "
                                 "alternate-background-color: %2; }"
                                 "QTableView:focus { border-color: %1; }"
                                 "QTableView::item { border-bottom: 1px solid %3; padding: 0 6px; }"
                                 "QTableView::item:selected { background: %4; color: %5; }"
                                 "QAbstractScrollArea::corner { background: transparent; border: none; }"
                                 "QHeaderView { background: transparent; border: none; }"
                                 "QHeaderView::section { background: %6; color: %7; border: none; "
                                 "border-bottom: 1px solid %3; padding: 4px 8px; }")
                      .arg(scheme.focus.name(), scheme.panel.name(), scheme.line.name(), scheme.accent.name(),
                           scheme.accentInk.name(), scheme.window.name(), scheme.quietInk.name()));
}

void RecordsTable::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && currentIndex().isValid()) {
        Q_EMIT opened(currentIndex());
        return;
    }
    QTableView::keyPressEvent(event);
}

// Coming by key, the first row is where one begins.
void RecordsTable::focusInEvent(QFocusEvent* event)
{
    QTableView::focusInEvent(event);
    if (!currentIndex().isValid() && model() && model()->rowCount() > 0 &&
        event->reason() != Qt::MouseFocusReason)
        setCurrentIndex(model()->index(0, 0));
}

void RecordsTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    fitColumns();
}

}  // namespace fb
