// Asked, kept, applied; and the time that goes by meanwhile: see check_off_presenter.h.
#include <utility>

#include "app/checkoff/check_off_presenter.h"

namespace fb {

void CheckOffPresenter::ask(const Result<CheckOffEvent>& event)
{
    if (event)
        keep(*event);
    else
        tell(event.error());
}

void CheckOffPresenter::keep(const CheckOffEvent& event)
{
    m_lastTry = now();
    m_state.saving = true;
    Q_EMIT changed();
    m_records.keep(m_state.open->id, event, this,
                   [this, event, checkOff = m_state.open->id](const Result<bool>& kept) {
                       if (!m_state.open || m_state.open->id != checkOff)
                           return;
                       if (kept)
                           applied(event);
                       else
                           notKept(event, kept.error());
                   });
}

void CheckOffPresenter::applied(const CheckOffEvent& event)
{
    m_state.saving = false;
    m_unkept.reset();
    if (const auto fits = m_checkOff->apply(event, now()); !fits)
        return fail(fits.error());
    m_state.notice.reset();
    if (event.kind == CheckOffEventKind::Paused)
        m_state.pauseReason = QString::fromStdString(event.note);
    if (event.kind == CheckOffEventKind::Held) {
        m_stopped.reset();
        m_stopwatch = CountedTime();
    }
    if (event.kind == CheckOffEventKind::Answered) {
        m_state.itemTimeUp = event.answer->timeUp;
        if (m_checkOff->stage() == CheckOffStage::OnScreen)
            showItem();
    }
    refresh();
    Q_EMIT this->kept();
    m_turn.goOn();
}

// Everything stays as it was, and time stands still for an answer that waits: the student has given it.
void CheckOffPresenter::notKept(const CheckOffEvent& event, const Fault& fault)
{
    if (event.kind == CheckOffEventKind::Answered) {
        m_unkept = event;
        m_items->setKeeping(Keeping::Failed);
    }
    fail(fault);
}

void CheckOffPresenter::keepAgain()
{
    m_items->setKeeping(Keeping::Saving);
    keep(CheckOffEvent(*m_unkept));
}

void CheckOffPresenter::confirmed()
{
    if (!isFree())
        return;
    if (m_unkept)
        return keepAgain();
    const Attempt* attempt = m_items->confirmedAnswer();
    if (!attempt)
        return;
    const Convention convention = m_policy->convention(attempt->request.site);
    ask(m_checkOff->answer(answerOf(m_checkOff->item(), *attempt, convention, *m_policy), now()));
}

void CheckOffPresenter::timeUp()
{
    const int item = m_checkOff->item();
    const Request& request = m_checkOff->requests()[static_cast<std::size_t>(item)].request;
    m_items->setKeeping(Keeping::Saving);
    ask(m_checkOff->answer(unanswered(item, request, m_policy->convention(request.site)), now()));
}

void CheckOffPresenter::tick()
{
    if (!m_checkOff)
        return;
    m_stopwatch.look(now());
    if (!m_unkept)
        m_checkOff->look(now());
    const bool waited = now() - m_lastTry >= Ms{kKeepTimeMs};
    if (isFree() && m_unkept && m_unkept->answer->timeUp && waited)
        keepAgain();
    else if (isFree() && !m_unkept && m_checkOff->isTimeUp())
        timeUp();
    const bool runs = m_state.stage == CheckOffStage::OnScreen || m_state.stage == CheckOffStage::OnManikin;
    if (runs && !m_state.paused && now() - m_timeKept >= Ms{kKeepTimeMs}) {
        m_timeKept = now();
        m_records.keepTime(m_state.open->id, m_checkOff->onScreen(), m_checkOff->onManikin());
    }
    showTimes();
    Q_EMIT ticked();
}

void CheckOffPresenter::showTimes()
{
    const bool onManikin = m_checkOff->stage() >= CheckOffStage::OnManikin;
    m_state.used = onManikin ? m_checkOff->onManikin() : m_checkOff->onScreen();
    m_state.itemLeft = m_checkOff->itemLeft();
    m_state.screenLeft = m_checkOff->screenLeft();
    m_state.manikinLeft = m_checkOff->manikinLeft();
    const bool holds = m_stopwatch.isRunning() || m_stopped;
    m_state.holding = holds ? std::optional(m_stopwatch.used()) : std::nullopt;
}

void CheckOffPresenter::refresh()
{
    const CheckOff& checkOff = *m_checkOff;
    m_state.stage = checkOff.stage();
    m_state.item = checkOff.item();
    m_state.itemCount = static_cast<int>(checkOff.requests().size());
    m_state.paused = checkOff.isPaused();
    m_state.observations = checkOff.observations();
    m_state.held = checkOff.held();
    m_state.answers = checkOff.answers();
    m_state.result = checkOff.result();
    m_state.rating = checkOff.rating();
    m_state.remark = QString::fromStdString(checkOff.remark());
    m_state.endNote = QString::fromStdString(checkOff.endNote());
    showTimes();
    findNext();
    Q_EMIT changed();
}

}  // namespace fb
