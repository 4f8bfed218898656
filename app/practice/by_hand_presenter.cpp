#include "app/practice/by_hand_presenter.h"

#include <algorithm>

#include "app/practice/watched.h"
#include "app/scene/by_hand_scene.h"
#include "app/words/landmark_words.h"

namespace fb {

namespace by_hand_presenter_detail {

Point toPoint(QPointF at) { return {at.x(), at.y()}; }

}  // namespace by_hand_presenter_detail

using by_hand_presenter_detail::toPoint;

ByHandPresenter::ByHandPresenter(std::optional<Practice>& practice, PracticeState& state, QObject* parent)
    : QObject(parent),
      m_practice(practice),
      m_state(state)
{
}

ByHand* ByHandPresenter::hand()
{
    const bool free = m_state.byHand && !m_state.choosingReason && !m_state.byHand->watching &&
                      m_state.keeping == Keeping::Open;
    return free && m_practice ? m_practice->byHand() : nullptr;
}

void ByHandPresenter::tell(const Fault& fault)
{
    m_state.notice = fault;
    Q_EMIT changed();
}

void ByHandPresenter::done()
{
    m_state.notice.reset();
    Q_EMIT changed();
}

void ByHandPresenter::feel(QPointF cm)
{
    if (!hand())
        return;
    state().finger = cm;
    state().feel.reset();
    if (const auto felt = m_practice->feelAt(toPoint(cm))) {
        state().feel = *felt;
        m_sweep.add(toPoint(cm), *felt);
    } else {
        m_sweep.lift();
    }
    state().followed = m_sweep.followed();
    Q_EMIT felt();
}

void ByHandPresenter::lift()
{
    // What was felt last stays in sight; the next press begins a sweep of its own.
    m_sweep = {};
}

void ByHandPresenter::plant(const QString& name)
{
    if (!hand())
        return;
    if (!state().finger)
        return tell(Fault{Problem::NothingFelt, {}, {}});
    const TermMatch match = named(name, m_practice->target().site);
    if (match.fit == TermFit::Unclear || match.fit == TermFit::Unknown) {
        const bool unclear = match.fit == TermFit::Unclear;
        return tell(Fault{unclear ? Problem::NameUnclear : Problem::NameUnknown, {}, name.toStdString()});
    }
    const Landmark landmark = landmarkAt(match.id);
    const auto planted = m_practice->plant(landmark, toPoint(*state().finger));
    if (!planted)
        return tell(planted.error());
    state().planted = landmark;
    // How a name is spelled is told in practice alone.
    state().misspelt = match.fit == TermFit::Slip && !m_state.exam;
    done();
    Q_EMIT this->planted();
}

void ByHandPresenter::pullOut(Landmark name)
{
    if (!hand() || !hand()->pullOut(name))
        return;
    state().planted.reset();
    done();
}

void ByHandPresenter::grab(Handle handle)
{
    if (!hand())
        return;
    hand()->beginDrag();
    state().current = handle;
    Q_EMIT handled();
}

void ByHandPresenter::setHandle(Handle handle, QPointF cm)
{
    hand()->setHandle(handle, toPoint(cm));
    if (isReady(hand()->build(), handle))
        m_done.insert(handle);
}

void ByHandPresenter::move(Handle handle, QPointF cm)
{
    if (!hand())
        return;
    setHandle(handle, cm);
    refreshBuild(*hand());
    m_state.scene = buildScene(*m_state.target, state().build, state().builder);
    Q_EMIT handled();
}

void ByHandPresenter::letGo()
{
    if (!hand())
        return;
    hand()->endDrag();
    done();
}

void ByHandPresenter::place(QPointF cm)
{
    ByHand* byHand = hand();
    if (!byHand || byHand->stage() != ByHandStage::Building)
        return;
    if (const auto due = state().next) {
        setHandle(*due, cm);
        state().current.reset();
        done();
    } else if (const auto cell = cellAt(byHand->build(), *m_state.target, toPoint(cm))) {
        chooseCell(*cell);
    }
}

void ByHandPresenter::stepHandle(int delta)
{
    if (!hand() || state().handles.empty())
        return;
    const auto& handles = state().handles;
    const auto at =
        std::ranges::find(handles, state().current.value_or(handles.front().handle), &BuildHandle::handle);
    // To go on from a handle that lies ready is to leave it where it is.
    if (delta > 0 && at->cm)
        m_done.insert(at->handle);
    const auto last = static_cast<int>(handles.size()) - 1;
    const int to = std::clamp(static_cast<int>(at - handles.begin()) + delta, 0, last);
    if (isReady(state().build, handles[static_cast<std::size_t>(to)].handle))
        state().current = handles[static_cast<std::size_t>(to)].handle;
    done();
}

void ByHandPresenter::hold(Handle handle)
{
    if (!hand() || state().current == handle || !isReady(state().build, handle))
        return;
    state().current = handle;
    Q_EMIT changed();
}

void ByHandPresenter::chooseHand(Side side)
{
    if (!hand())
        return;
    hand()->chooseHand(side);
    done();
}

void ByHandPresenter::chooseFingers(int count)
{
    if (!hand())
        return;
    const Side writes = m_state.own.handedness;
    hand()->chooseFingers(count, writes == Side::Right ? Side::Left : Side::Right);
    done();
}

void ByHandPresenter::chooseCell(ThighCell cell)
{
    if (hand() && hand()->chooseCell(cell))
        done();
}

void ByHandPresenter::undo()
{
    if (hand() && hand()->undo())
        done();
}

void ByHandPresenter::redo()
{
    if (hand() && hand()->redo())
        done();
}

void ByHandPresenter::clearStage()
{
    if (!hand() || !hand()->clear())
        return;
    if (state().stage == ByHandStage::Building)
        m_done.clear();
    done();
}

void ByHandPresenter::goTo(ByHandStage stage)
{
    if (!hand())
        return;
    if (const auto went = hand()->goTo(stage); !went)
        return tell(went.error());
    done();
}

void ByHandPresenter::watch()
{
    if (m_state.exam || !hand() || !hand()->watch())
        return;
    state().watchSteps = watchStepCount(watchedTarget(*m_state.target, state().builder));
    m_state.notice.reset();
    toStep(0);
}

void ByHandPresenter::showStep(int delta)
{
    if (m_state.byHand && state().watching)
        toStep(std::clamp(*state().watching + delta, 0, state().watchSteps - 1));
}

void ByHandPresenter::toStep(int step)
{
    state().watching = step;
    state().shownPress = watchPress(watchedTarget(*m_state.target, state().builder), step);
    state().shownFeel.reset();
    if (state().shownPress) {
        if (const auto felt = m_practice->feelAt(toPoint(*state().shownPress)))
            state().shownFeel = *felt;
    }
    Q_EMIT changed();
}

void ByHandPresenter::endWatching()
{
    if (!m_state.byHand || !state().watching)
        return;
    state().watching.reset();
    state().shownPress.reset();
    state().shownFeel.reset();
    Q_EMIT changed();
}

}  // namespace fb
