#include "app/checkoff/step_list.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <algorithm>

#include "app/checkoff/step_row.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace step_list_detail {

// The name, and at the far edge what goes with it, over a rule.
void layHead(QWidget& head, std::initializer_list<QLabel*> words)
{
    auto* rows = new QVBoxLayout(&head);
    rows->setContentsMargins(0, space::kTight, 0, 0);
    rows->setSpacing(space::kTight / 2);
    auto* line = new QHBoxLayout;
    line->setContentsMargins(space::kTight, 0, space::kTight, 0);
    for (QLabel* each : words)
        line->addWidget(each, each == *words.begin() ? 1 : 0);
    rows->addLayout(line);
    rows->addWidget(parts::rule(&head));
}

}  // namespace step_list_detail

StepList::StepList(QWidget* parent) : QScrollArea(parent), m_content(new QWidget)
{
    setObjectName(QStringLiteral("steps"));
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    m_flow = new QHBoxLayout(m_content);
    m_flow->setContentsMargins(0, 0, 0, 0);
    m_flow->setSpacing(space::kApart);
    setWidget(m_content);
}

void StepList::build(const std::vector<SheetStep>& steps)
{
    for (const Unit& unit : m_units)
        delete unit.widget;
    for (const Group& group : m_groups)
        delete group.again;
    m_units.clear();
    m_groups.clear();
    m_rows.clear();
    m_asked.clear();
    m_steps = steps;
    m_current = 0;
    m_breaks.clear();
    m_air = 0;
    for (const SheetStep& step : steps)
        addRow(step);
    // Up and down follow what is seen: group by group.
    for (const Group& group : m_groups) {
        m_units.push_back({group.head, nullptr, true});
        for (StepRow* row : group.rows) {
            m_units.push_back({row, group.again, row != group.rows.front()});
            m_rows.push_back(row);
        }
    }
    for (int i = 0; i < count(); ++i) {
        StepRow* row = m_rows[static_cast<std::size_t>(i)];
        connect(row, &StepRow::chosen, this, [this, i] { choose(i, true); });
        connect(row, &StepRow::seenPressed, this, [this, i](Seen seen) { press(i, seen); });
        connect(row, &StepRow::remarkClosed, this, [this, i] { choose(i, true); });
        connect(row, &StepRow::remarkGiven, this, [this, row](const QString& remark) {
            Q_EMIT observeAsked(row->step().step, row->observation()->seen, remark);
        });
    }
    say();
    setScheme(m_scheme);
    flow();
}

StepList::Group& StepList::groupFor(StepGroup which)
{
    const auto at = std::ranges::find(m_groups, which, &Group::which);
    if (at != m_groups.end())
        return *at;
    Group group;
    group.which = which;
    group.head = new QWidget(m_content);
    group.name = parts::text(group.head, "groupName");
    group.count = parts::text(group.head, "groupCount", "small");
    group.count->setWordWrap(false);
    step_list_detail::layHead(*group.head, {group.name, group.count});
    group.again = new QWidget(m_content);
    group.againName = parts::text(group.again, "groupAgain");
    step_list_detail::layHead(*group.again, {group.againName});
    group.again->hide();
    for (QLabel* name : {group.name, group.againName})
        name->setStyleSheet(QStringLiteral("font-weight: 600"));
    // Groups stand in the order they are taught, whatever the sheet's.
    return *m_groups.insert(std::ranges::upper_bound(m_groups, which, {}, &Group::which), group);
}

void StepList::addRow(const SheetStep& step)
{
    Group& group = groupFor(groupOf(step.step));
    group.rows.push_back(new StepRow(step, m_content));
}

void StepList::showState(const CheckOffState& state)
{
    if (!state.open)
        return;
    if (state.open->sheet.sheet.steps != m_steps)
        build(state.open->sheet.sheet.steps);
    bool goesOn = false;  // the current step got its answer from elsewhere
    for (StepRow* row : m_rows) {
        const auto seen = std::ranges::find(state.observations, row->step().step, &Observation::step);
        const auto shown = seen == state.observations.end() ? std::nullopt : std::optional(*seen);
        goesOn = goesOn || (row == current() && !isAnswered(*row) && shown);
        if (row->observation() != shown)
            row->showSeen(shown);
        if (shown)
            m_asked.erase(row->step().step);
    }
    if (state.notice)
        m_asked.clear();  // what waited was given up
    countGroups();
    const bool holdsKeys = isAncestorOf(QApplication::focusWidget());
    if (goesOn)
        choose(nextOpen(m_current), holdsKeys);
    choose(m_current, false);
}

void StepList::countGroups()
{
    const QLocale locale;
    for (Group& group : m_groups) {
        const auto said = std::ranges::count_if(
            group.rows, [](const StepRow* row) { return row->observation().has_value(); });
        //: Of a group of steps: so many have been said, of so many.
        group.count->setText(tr("%1 of %2")
                                 .arg(locale.toString(static_cast<int>(said)),
                                      locale.toString(static_cast<int>(group.rows.size()))));
    }
}

const StepRow* StepList::current() const
{
    return m_rows.empty() ? nullptr : m_rows[static_cast<std::size_t>(m_current)];
}

int StepList::answered() const
{
    return static_cast<int>(
        std::ranges::count_if(m_rows, [](const StepRow* row) { return row->observation().has_value(); }));
}

bool StepList::isAnswered(const StepRow& row) const
{
    return row.observation() || m_asked.contains(row.step().step);
}

// After it, else from the first on; none: where it is.
int StepList::nextOpen(int from) const
{
    for (int i = 1; i <= count(); ++i) {
        const int at = (from + i) % count();
        if (!isAnswered(*m_rows[static_cast<std::size_t>(at)]))
            return at;
    }
    return from;
}

void StepList::answer(Seen seen)
{
    const bool bounced = m_last == seen && m_since.isValid() && m_since.elapsed() < kBounceMs;
    m_last = seen;
    m_since.start();
    if (!bounced && !m_rows.empty())
        press(m_current, seen);
}

void StepList::press(int row, Seen seen)
{
    StepRow& pressed = *m_rows[static_cast<std::size_t>(row)];
    const ProcedureStep step = pressed.step().step;
    if (pressed.observation() && pressed.observation()->seen == seen) {
        m_asked.erase(step);
        choose(row, true);
        Q_EMIT withdrawAsked(step);
        return;
    }
    m_asked.insert(step);
    choose(nextOpen(row), true);
    Q_EMIT observeAsked(step, seen, pressed.remark());
}

void StepList::choose(int row, bool focus)
{
    if (m_rows.empty())
        return;
    const int before = m_current;
    m_current = std::clamp(row, 0, count() - 1);
    for (int i = 0; i < count(); ++i)
        m_rows[static_cast<std::size_t>(i)]->setCurrent(i == m_current);
    if (focus)
        focusCurrent();
    if (before != m_current || !focus)
        Q_EMIT currentChanged();
}

void StepList::focusCurrent()
{
    if (m_rows.empty())
        return;
    StepRow* row = m_rows[static_cast<std::size_t>(m_current)];
    row->setFocus();
    // With what comes next in sight.
    ensureWidgetVisible(row, 0, 2 * row->height());
}

void StepList::move(int by) { choose(m_current + by, true); }

void StepList::goToFirstOpen()
{
    if (!m_rows.empty())
        choose(isAnswered(*m_rows.front()) ? nextOpen(0) : 0, true);
}

void StepList::editRemark()
{
    if (m_rows.empty())
        return;
    StepRow* row = m_rows[static_cast<std::size_t>(m_current)];
    row->editRemark();
    ensureWidgetVisible(row, 0, 2 * row->height());
}

void StepList::say()
{
    for (Group& group : m_groups) {
        group.name->setText(groupName(group.which));
        //: %1 is a group of steps that began in the column before.
        group.againName->setText(tr("%1 (continued)").arg(groupName(group.which)));
    }
    for (StepRow* row : m_rows)
        row->say();
    countGroups();
}

void StepList::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    for (StepRow* row : m_rows)
        row->setScheme(scheme);
}

void StepList::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    flow();
}

void StepList::showEvent(QShowEvent* event)
{
    QScrollArea::showEvent(event);
    flow();  // only now every part has its letters
}

// A name that became longer, or a remark, takes room from the air between the others.
bool StepList::event(QEvent* event)
{
    const bool done = QScrollArea::event(event);
    if (event->type() == QEvent::LayoutRequest && m_flow)
        flow();
    return done;
}

void StepList::changeEvent(QEvent* event)
{
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange && m_flow)
        flow();
}

}  // namespace fb
