#include "app/checkoff/missed_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <algorithm>

#include "app/checkoff/seen_button.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace missed_list_detail {

constexpr int kIcon = 16;

QString lineOf(const SheetStep& step, const Observation* seen)
{
    const QString name = stepName(step.step);
    const QString word = seenName(seen ? seen->seen : Seen::NotDone);
    const QString line = step.critical
                             //: %1 is a step that must not be missed, %2 what was seen of it: "not done".
                             ? MissedList::tr("%1 (critical): %2").arg(name, word)
                             : MissedList::tr("%1: %2").arg(name, word);
    if (!seen || seen->remark.empty())
        return line;
    //: A step and what was seen of it, then the assessor's remark on it.
    return MissedList::tr("%1. %2").arg(line, QString::fromStdString(seen->remark));
}

}  // namespace missed_list_detail

MissedList::MissedList(QWidget* parent)
    : QWidget(parent),
      m_title(parts::text(this, "missedTitle", "request")),
      m_none(parts::text(this, "noneMissed")),
      m_lines(new QVBoxLayout)
{
    setObjectName(QStringLiteral("missed"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    rows->addWidget(m_title);
    rows->addWidget(parts::rule(this));
    rows->addWidget(m_none);
    rows->addLayout(m_lines);
    m_lines->setSpacing(space::kTight);
}

void MissedList::showState(const CheckOffState& state)
{
    if (!state.open)
        return;
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_icons.clear();
    const auto& steps = state.open->sheet.sheet.steps;
    int missed = 0;
    for (const SheetStep& step : steps) {
        const auto at = std::ranges::find(state.observations, step.step, &Observation::step);
        const Observation* seen = at == state.observations.end() ? nullptr : &*at;
        // Ended before its time: what nobody rated was not reached.
        if (!seen && state.result.decision.outcome <= Outcome::StoppedSafety)
            continue;
        const bool whole = seen && seen->seen == Seen::Done;
        missed += whole ? 0 : 1;
        if (!whole || !seen->remark.empty())
            addLine(step, seen);
    }
    m_title->setText(tr("Steps on the manikin"));
    m_none->setText(tr("Every step was done without help."));
    m_none->setVisible(missed == 0);
    setVisible(!steps.empty() &&
               !(state.observations.empty() && state.result.decision.outcome <= Outcome::StoppedSafety));
    paint();
}

void MissedList::addLine(const SheetStep& step, const Observation* seen)
{
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    auto* icon = new QLabel(line);
    icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    auto* words = parts::text(line, "missedStep");
    words->setText(missed_list_detail::lineOf(step, seen));
    row->addWidget(icon, 0, Qt::AlignTop);
    row->addWidget(words, 1);
    m_icons.emplace_back(icon, seen ? seen->seen : Seen::NotDone);
    m_lines->addWidget(line);
}

void MissedList::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    paint();
}

void MissedList::paint()
{
    const int size = parts::scaled(this, missed_list_detail::kIcon);
    for (const auto& [icon, seen] : m_icons) {
        icon->setPixmap(pixmapFor(iconOf(seen), colourOf(seen, m_scheme), size, devicePixelRatioF()));
        icon->setMargin(2);
    }
}

}  // namespace fb
