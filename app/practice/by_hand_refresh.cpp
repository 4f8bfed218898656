// From core's request by hand to the state: see by_hand_presenter.h.
#include <algorithm>
#include <utility>

#include "app/practice/by_hand_presenter.h"
#include "core/basics/seed_stream.h"

namespace fb {

namespace by_hand_refresh_detail {

QPointF onPlate(Point at) { return {at.x, at.y}; }

bool hasOfStage(const ByHand& byHand)
{
    switch (byHand.stage()) {
    case ByHandStage::Feeling: return !byHand.flags().empty();
    case ByHandStage::Building: return !isEmpty(byHand.build());
    case ByHandStage::Marking: return byHand.mark().has_value();
    }
    return false;
}

}  // namespace by_hand_refresh_detail

using namespace by_hand_refresh_detail;

void ByHandPresenter::open()
{
    m_state.byHand.reset();
    m_sweep = {};
    m_done.clear();
    if (!m_practice || !std::as_const(*m_practice).byHand())
        return;
    m_state.byHand.emplace();
    offerNames();
}

// Shuffled by the request, so that neither the first nor the last is ever the right one by habit.
void ByHandPresenter::offerNames()
{
    constexpr std::uint64_t kNames = 0x1a4d;
    SeedStream order(m_state.setup.seed +
                     kNames * static_cast<std::uint64_t>(m_practice->request().number + 1));
    std::vector<Landmark> names = offeredLandmarks(m_practice->target().site);
    for (std::size_t left = names.size(); left > 1; --left)
        std::swap(names[left - 1], names[static_cast<std::size_t>(order.below(static_cast<int>(left)))]);
    state().offered = std::move(names);
}

void ByHandPresenter::refresh()
{
    const ByHand* byHand = m_practice ? std::as_const(*m_practice).byHand() : nullptr;
    if (!byHand) {
        m_state.byHand.reset();
        return;
    }
    if (!m_state.byHand)
        open();
    ByHandState& now = state();
    if (now.stage != byHand->stage())
        now.planted.reset();
    now.stage = byHand->stage();
    now.hasMark = byHand->mark().has_value();
    now.fingerCm = m_practice->policy().value(PolicyKey::DeltoidFingerWidth);
    now.flags.clear();
    for (const Flag& flag : byHand->flags())
        now.flags.push_back({flag.name, onPlate(flag.at)});
    now.canUndo = byHand->canUndo();
    now.canRedo = byHand->canRedo();
    now.canClear = hasOfStage(*byHand);
    now.watched = byHand->watched();
    refreshBuild(*byHand);
    refreshDue();
}

void ByHandPresenter::refreshBuild(const ByHand& byHand)
{
    ByHandState& now = state();
    now.build = byHand.build();
    now.builder = byHand.builder();
    now.kind = buildKindOf(now.build.convention);
    now.choice = choiceOf(now.kind);
    now.isWhole = fb::isWhole(now.build);
    const std::vector<Handle> missing = missingHandles(now.build);
    now.handles.clear();
    for (const Handle handle : handlesOf(now.kind)) {
        BuildHandle each{handle, std::nullopt, false};
        if (const auto at = handleAt(now.build, *m_state.target, now.builder, handle))
            each.cm = onPlate(*at);
        if (!each.cm || std::ranges::find(missing, handle) != missing.end())
            m_done.erase(handle);
        each.isDone = m_done.contains(handle);
        now.handles.push_back(each);
    }
}

// What is to be done now: the choice that comes before handles, the next handle, the field at last.
void ByHandPresenter::refreshDue()
{
    ByHandState& now = state();
    const auto due = std::ranges::find_if(now.handles, [&](const BuildHandle& each) {
        return !each.isDone && isReady(now.build, each.handle);
    });
    now.next = due == now.handles.end() ? std::nullopt : std::optional(due->handle);
    now.asksChoice = false;
    if (now.choice) {
        switch (*now.choice) {
        case BuildChoice::WhichHand: now.asksChoice = !now.build.hand; break;
        case BuildChoice::HowManyFingers: now.asksChoice = !now.build.fingers; break;
        case BuildChoice::WhichCell: now.asksChoice = !now.next && !now.build.cell; break;
        }
    }
    if (now.asksChoice)
        now.next.reset();
    if (now.current && !isReady(now.build, *now.current))
        now.current.reset();
    if (!now.current)
        now.current = now.next;
}

}  // namespace fb
