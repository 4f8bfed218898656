#include "core/session/by_hand.h"

#include <algorithm>
#include <string>
#include <utility>

namespace fb {

ByHand::ByHand(Target target, const Policy& policy)
    : m_target(std::move(target)),
      m_builder(Builder::from(policy))
{
    m_now.build = emptyBuild(m_target);
}

void ByHand::change(const State& next)
{
    if (next == m_now)
        return;
    // A drag is kept once, as it was before its handle moved.
    if (!m_dragging || !m_dragKept) {
        State past = m_now;
        past.stage = m_stage;
        m_past.push_back(std::move(past));
        m_dragKept = m_dragging;
    }
    m_future.clear();
    m_now = next;
    m_now.stage = m_stage;
}

void ByHand::plant(const Flag& flag)
{
    if (!isFinite(flag.at))
        return;
    State next = m_now;
    const auto planted = std::ranges::find(next.flags, flag.name, &Flag::name);
    if (planted != next.flags.end())
        *planted = flag;
    else
        next.flags.push_back(flag);
    change(next);
}

bool ByHand::pullOut(Landmark name)
{
    State next = m_now;
    const bool planted = std::erase_if(next.flags, [&](const Flag& flag) { return flag.name == name; }) > 0;
    change(next);
    return planted;
}

bool ByHand::setHandle(Handle handle, Point to)
{
    State next = m_now;
    next.build = placed(next.build, m_target, m_builder, handle, to);
    const bool changes = !(next.build == m_now.build);
    change(next);
    return changes;
}

void ByHand::chooseHand(Side hand)
{
    State next = m_now;
    next.build = withHand(next.build, m_target, m_builder, hand);
    change(next);
}

void ByHand::chooseFingers(int count, Side laysWith)
{
    State next = m_now;
    next.build = withFingers(next.build, m_target, m_builder, count, laysWith);
    change(next);
}

bool ByHand::chooseCell(ThighCell cell)
{
    if (buildKindOf(m_now.build.convention) != BuildKind::ThighGrid || !missingHandles(m_now.build).empty())
        return false;
    State next = m_now;
    next.build.cell = cell;
    change(next);
    return true;
}

void ByHand::setMark(std::optional<Point> mark)
{
    if (mark && !isFinite(*mark))
        return;
    State next = m_now;
    next.mark = mark;
    change(next);
}

bool ByHand::clear()
{
    State next = m_now;
    switch (m_stage) {
    case ByHandStage::Feeling: next.flags.clear(); break;
    case ByHandStage::Building: next.build = emptyBuild(m_target); break;
    case ByHandStage::Marking: next.mark.reset(); break;
    }
    const bool clears = !(next == m_now);
    change(next);
    return clears;
}

void ByHand::beginDrag()
{
    m_dragging = true;
    m_dragKept = false;
}

void ByHand::endDrag()
{
    // A handle that came back to where it was taken is no step.
    if (m_dragging && m_dragKept && m_past.back() == m_now)
        m_past.pop_back();
    m_dragging = false;
}

// Either way the stage is the one in which the step was made.
bool ByHand::undo()
{
    if (m_past.empty())
        return false;
    endDrag();
    m_stage = m_past.back().stage;
    m_now.stage = m_stage;
    m_future.push_back(std::exchange(m_now, m_past.back()));
    m_past.pop_back();
    return true;
}

bool ByHand::redo()
{
    if (m_future.empty())
        return false;
    endDrag();
    m_stage = m_future.back().stage;
    m_now.stage = m_stage;
    m_past.push_back(std::exchange(m_now, m_future.back()));
    m_future.pop_back();
    return true;
}

Result<bool> ByHand::builtEnough() const
{
    if (isEmpty(m_now.build))
        return fault(Problem::NothingBuilt);
    const auto missing = missingHandles(m_now.build);
    const auto choice = choiceOf(buildKindOf(m_now.build.convention));
    if (!missing.empty()) {
        // A hand or fingers that are not laid yet are a choice before they are handles.
        const bool unchosen =
            choice && !isReady(m_now.build, missing.front()) && *choice != BuildChoice::WhichCell;
        return fault(Problem::BuildNotWhole, {},
                     std::string(unchosen ? wordOf(*choice) : wordOf(missing.front())));
    }
    if (!isWhole(m_now.build))
        return fault(Problem::BuildNotWhole, {}, std::string(wordOf(BuildChoice::WhichCell)));
    return true;
}

Result<bool> ByHand::goTo(ByHandStage stage)
{
    if (stage != ByHandStage::Feeling && m_now.flags.empty())
        return fault(Problem::NoFlagPlanted);
    if (stage == ByHandStage::Marking)
        if (const auto built = builtEnough(); !built)
            return built;
    endDrag();
    m_stage = stage;
    return true;
}

bool ByHand::watch() { return !std::exchange(m_watched, true); }

Result<bool> ByHand::ready() const
{
    if (m_now.flags.empty())
        return fault(Problem::NoFlagPlanted);
    if (const auto built = builtEnough(); !built)
        return built;
    if (!m_now.mark)
        return fault(Problem::NoMarkYet);
    return true;
}

}  // namespace fb
