// How headings and steps flow into columns: see step_list.h.
#include <QHBoxLayout>
#include <QScrollBar>
#include <algorithm>
#include <numeric>

#include "app/checkoff/step_list.h"
#include "app/checkoff/step_row.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace step_list_flow_detail {

constexpr int kLeastColumn = 390;  // px at 100 percent text
constexpr int kMostColumn = 720;   // a longer line is hard to follow from its name to its answers
constexpr int kWordyColumn = 600;
constexpr int kMostColumns = 3;
constexpr int kMostAir = 4;

int wholeWidth(int columns, int column) { return columns * (column + space::kApart) - space::kApart; }

}  // namespace step_list_flow_detail

int tallestColumn(const std::vector<int>& heights, const std::vector<int>& headings,
                  const std::vector<int>& breaks)
{
    int most = 0;
    for (std::size_t i = 0; i < breaks.size(); ++i) {
        const auto from = heights.begin() + breaks[i];
        const auto to = i + 1 < breaks.size() ? heights.begin() + breaks[i + 1] : heights.end();
        most = std::max(most, std::accumulate(from, to, headings[static_cast<std::size_t>(breaks[i])]));
    }
    return most;
}

std::vector<int> columnBreaks(const std::vector<int>& heights, const std::vector<int>& headings, int columns)
{
    const int count = static_cast<int>(heights.size());
    const auto may = [&](int at) { return headings[static_cast<std::size_t>(at)] >= 0; };
    std::vector<int> best{0};
    int lowest = tallestColumn(heights, headings, best);
    const auto consider = [&](const std::vector<int>& breaks) {
        const int high = tallestColumn(heights, headings, breaks);
        if (high < lowest) {
            lowest = high;
            best = breaks;
        }
    };
    for (int second = 1; columns > 1 && second < count; ++second) {
        if (!may(second))
            continue;
        consider({0, second});
        for (int third = second + 1; columns > 2 && third < count; ++third) {
            if (may(third))
                consider({0, second, third});
        }
    }
    return best;
}

std::vector<int> StepList::heights(int width) const
{
    std::vector<int> all;
    for (const Unit& unit : m_units)
        all.push_back(unit.widget->heightForWidth(width) - (unit.again ? 2 * m_air : 0));
    return all;
}

std::vector<int> StepList::headings(int width, bool whole) const
{
    std::vector<int> all;
    for (const Unit& unit : m_units) {
        const int more = unit.again ? unit.again->heightForWidth(width) : 0;
        all.push_back(unit.mayBegin && !(whole && unit.again) ? more : -1);
    }
    return all;
}

// Whole groups where that fits and leaves the rows some air, or where nothing else would; else a group may go
// on in the next column.
std::vector<int> StepList::bestBreaks(int width, int columns) const
{
    const std::vector<int> high = heights(width);
    const std::vector<int> whole = columnBreaks(high, headings(width, true), columns);
    const std::vector<int> anywhere = columnBreaks(high, headings(width, false), columns);
    const bool isBest = airFor(width, whole) > 0 || airFor(width, anywhere) == 0;
    return isBest && tallestColumn(high, headings(width, true), whole) <= height() ? whole : anywhere;
}

void StepList::setWordy(int columnWidth)
{
    const bool wordy = columnWidth >= parts::scaled(this, step_list_flow_detail::kWordyColumn);
    for (StepRow* row : m_rows)
        row->setWordy(wordy);
}

// Where all of it is in sight and room is left over, the rows stand so many pixels farther apart on each
// side.
int StepList::airFor(int width, const std::vector<int>& breaks) const
{
    const int spare = height() - tallestColumn(heights(width), headings(width, false), breaks);
    std::ptrdiff_t most = 1;  // rows in a column
    for (std::size_t i = 0; i < breaks.size(); ++i) {
        const auto from = m_units.begin() + breaks[i];
        const auto end = i + 1 < breaks.size() ? m_units.begin() + breaks[i + 1] : m_units.end();
        most = std::max(most, std::count_if(from, end, [](const Unit& unit) { return unit.again; }));
    }
    return std::clamp(spare / static_cast<int>(2 * most), 0, step_list_flow_detail::kMostAir);
}

void StepList::setAir(int air)
{
    if (air == m_air)
        return;
    m_air = air;
    for (StepRow* row : m_rows)
        row->setAir(air);
}

int StepList::roomForSteps() const
{
    return (m_room > 0 ? m_room : width()) - verticalScrollBar()->sizeHint().width();
}

void StepList::fit(int width)
{
    m_room = width;
    flow();
}

// As few columns as show everything at once, or as many as there is room for.
void StepList::flow()
{
    using namespace step_list_flow_detail;
    if (m_units.empty())
        return;
    const int room = roomForSteps();
    const int most = std::clamp(room / parts::columnWidth(this, kLeastColumn), 1, kMostColumns);
    std::vector<int> breaks;
    int wide = room;
    for (int columns = 1; columns <= most; ++columns) {
        wide = std::min((room - (columns - 1) * space::kApart) / columns, parts::scaled(this, kMostColumn));
        setWordy(wide);
        breaks = bestBreaks(wide, columns);
        if (tallestColumn(heights(wide), headings(wide, false), breaks) <= height())
            break;
    }
    setAir(airFor(wide, breaks));
    const int whole = wholeWidth(static_cast<int>(breaks.size()), wide);
    m_content->setMaximumWidth(whole);
    if (m_room > 0)
        setFixedWidth(whole + verticalScrollBar()->sizeHint().width());
    if (breaks != m_breaks)
        layInto(breaks);
}

void StepList::layInto(const std::vector<int>& breaks)
{
    m_breaks = breaks;
    m_columns = static_cast<int>(breaks.size());
    while (QLayoutItem* item = m_flow->takeAt(0))
        delete item;
    for (const Group& group : m_groups)
        group.again->hide();
    for (std::size_t i = 0; i < breaks.size(); ++i) {
        auto* column = new QVBoxLayout;
        column->setSpacing(0);
        if (QWidget* again = m_units[static_cast<std::size_t>(breaks[i])].again) {
            column->addWidget(again);
            again->show();
        }
        const auto end = i + 1 < breaks.size() ? static_cast<std::size_t>(breaks[i + 1]) : m_units.size();
        for (auto unit = static_cast<std::size_t>(breaks[i]); unit < end; ++unit)
            column->addWidget(m_units[unit].widget);
        column->addStretch(1);
        m_flow->addLayout(column, 1);
    }
}

}  // namespace fb
