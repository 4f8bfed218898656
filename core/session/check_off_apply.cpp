// What a kept event changes.
#include <algorithm>

#include "core/session/check_off.h"

namespace fb {

Result<bool> CheckOff::apply(const CheckOffEvent& event, std::optional<Ms> now)
{
    if (!fits(event))
        return outOfOrder();
    change(event);
    m_keptOnScreen = event.onScreen;
    m_keptOnManikin = event.onManikin;
    setClocks(event, now);
    return true;
}

void CheckOff::change(const CheckOffEvent& event)
{
    using enum CheckOffEventKind;
    switch (event.kind) {
    case Answered: addAnswer(event); break;
    case TookOver: m_tookOver = true; break;
    case Observed: addObservation(timed(*event.observation)); break;
    case Withdrawn:
        std::erase_if(m_observations,
                      [&](const Observation& one) { return one.step == event.observation->step; });
        break;
    case Held: m_held = event.held; break;
    case Paused: m_paused = true; break;
    case Resumed: m_paused = false; break;
    case SafetyStop:
    case Voided:
    case NoShow:
        m_end = event.kind;
        m_endNote = event.note;
        m_paused = false;
        break;
    case Rated:
        m_rating = event.rating;
        m_remark = event.note;
        break;
    case Confirmed:
    case Started:
    case Finished:
    case Signed: break;
    }
    changeStage(event.kind);
}

void CheckOff::changeStage(CheckOffEventKind kind)
{
    using enum CheckOffEventKind;
    switch (kind) {
    case Confirmed: m_stage = CheckOffStage::Instructions; break;
    case Started: m_stage = CheckOffStage::OnScreen; break;
    case Answered:
        if (m_answers.size() == m_requests.size())
            m_stage = CheckOffStage::Handover;
        break;
    case TookOver:
        m_stage = m_setup.sheet.steps.empty() ? CheckOffStage::Closing : CheckOffStage::OnManikin;
        break;
    case Finished:
    case SafetyStop:
    case Voided:
    case NoShow: m_stage = CheckOffStage::Closing; break;
    case Signed: m_stage = CheckOffStage::Closed; break;
    case Observed:
    case Withdrawn:
    case Held:
    case Paused:
    case Resumed:
    case Rated: break;
    }
}

void CheckOff::addAnswer(const CheckOffEvent& event)
{
    m_screenRanOut = m_screenRanOut || (event.answer->timeUp && isScreenUp(event.onScreen));
    m_answers.push_back(*event.answer);
    m_itemBegan = event.onScreen;
}

void CheckOff::addObservation(const Observation& observation)
{
    const auto before = std::ranges::find(m_observations, observation.step, &Observation::step);
    if (before == m_observations.end())
        m_observations.push_back(observation);
    else
        *before = observation;
}

// The clock goes on from what was kept, so that a student does not pay for the time it took to keep it. While
// an assessor watches it goes on meanwhile: the next step may be seen before the last is kept.
void CheckOff::setClocks(const CheckOffEvent& event, std::optional<Ms> now)
{
    using enum CheckOffEventKind;
    const bool goesOn = now && (event.kind == Observed || event.kind == Withdrawn || event.kind == Held);
    Ms onManikin = event.onManikin;
    if (goesOn) {
        m_onManikin.look(*now);
        onManikin = std::max(onManikin, m_onManikin.used());
    }
    m_onScreen = CountedTime(event.onScreen);
    m_onManikin = CountedTime(onManikin);
    if (now)
        runClocks(*now);
}

void CheckOff::runClocks(Ms now)
{
    if (m_paused)
        return;
    if (m_stage == CheckOffStage::OnScreen)
        m_onScreen.run(now);
    if (m_stage == CheckOffStage::OnManikin)
        m_onManikin.run(now);
}

void CheckOff::resumeAt(Ms now, Ms onScreen, Ms onManikin)
{
    // A later count belongs to the stage that was running; what stood still has not gone on.
    if (m_stage == CheckOffStage::OnScreen && !m_paused)
        m_onScreen = CountedTime(std::max(m_onScreen.used(), onScreen));
    if (m_stage == CheckOffStage::OnManikin && !m_paused)
        m_onManikin = CountedTime(std::max(m_onManikin.used(), onManikin));
    runClocks(now);
}

}  // namespace fb
