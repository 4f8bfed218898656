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
                       const QStringList& samples)
{
    setModel(&sorted);
    m_samples = samples;
    sortByColumn(column, order);
    fitColumns();
}

// Each column as wide as its sample or its head; what is left over is shared, so that none is cut while there
// is room, and where there is not the table scrolls.
void RecordsTable::fitColumns()
{
    constexpr int kRowHeight = 34;
    constexpr int kIcon = 18;
    constexpr int kRoom = 28;  // the cell's own margins and the sorting arrow
    verticalHeader()->setDefaultSectionSize(parts::scaled(this, kRowHeight));
    setIconSize({parts::scaled(this, kIcon), parts::scaled(this, kIcon)});
    if (!model())
        return;
    std::vector<int> widths;
    for (int i = 0; i < m_samples.size(); ++i) {
        const QString head = model()->headerData(i, Qt::Horizontal).toString();
        widths.push_back(
            std::max(fontMetrics().horizontalAdvance(m_samples[i]), fontMetrics().horizontalAdvance(head)) +
            kRoom);
    }
    const int needed = std::accumulate(widths.begin(), widths.end(), 0);
    const int spare = std::max(0, viewport()->width() - needed);
    for (std::size_t i = 0; i < widths.size(); ++i)
        setColumnWidth(static_cast<int>(i), widths[i] + spare * widths[i] / std::max(1, needed));
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
