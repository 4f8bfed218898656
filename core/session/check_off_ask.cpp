// What may happen next: asks change nothing, and apply() goes by the same rules.
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/session/check_off.h"

namespace fb {

namespace check_off_ask_detail {

constexpr double kLongestHold = 3600.0;  // s: a stopwatch that was forgotten
constexpr int kBestRating = 5;

bool isBlank(const std::string& text) { return text.find_first_not_of(" \t\r\n") == std::string::npos; }

double secondsOf(Ms time) { return static_cast<double>(time.count()) / 1000.0; }

bool isSame(const Request& a, const Request& b)
{
    return a.site == b.site && a.view == b.view && a.patient == b.patient;
}

}  // namespace check_off_ask_detail

using check_off_ask_detail::isBlank;
using check_off_ask_detail::secondsOf;

CheckOffEvent CheckOff::event(CheckOffEventKind kind, Ms now) const
{
    CountedTime onScreen = m_onScreen;
    CountedTime onManikin = m_onManikin;
    onScreen.look(now);
    onManikin.look(now);
    CheckOffEvent event;
    event.kind = kind;
    event.onScreen = onScreen.used();
    event.onManikin = onManikin.used();
    return event;
}

tl::unexpected<Fault> CheckOff::outOfOrder() const
{
    return fault(Problem::CheckOffOutOfOrder, {}, std::string(wordOf(m_stage)));
}

Result<CheckOffEvent> CheckOff::asked(CheckOffEvent event) const
{
    if (const auto fitting = fits(event); !fitting)
        return tl::unexpected(fitting.error());
    return event;
}

Result<bool> CheckOff::fits(const CheckOffEvent& event) const
{
    // Only the clock of the present stage goes on, and none goes back.
    const auto isAfter = [&](Ms then, Ms kept, CheckOffStage stage) {
        return m_stage == stage && !m_paused ? then >= kept : then == kept;
    };
    if (!fitsStage(event.kind) || !isAfter(event.onScreen, m_keptOnScreen, CheckOffStage::OnScreen) ||
        !isAfter(event.onManikin, m_keptOnManikin, CheckOffStage::OnManikin) || !fitsWhatIsSaid(event))
        return outOfOrder();
    return isWhole(event);
}

bool CheckOff::fitsStage(CheckOffEventKind kind) const
{
    using enum CheckOffEventKind;
    using enum CheckOffStage;
    const bool isTimed = m_stage == OnScreen || m_stage == OnManikin;
    switch (kind) {
    case Confirmed: return m_stage == Identity;
    case Started: return m_stage == Instructions;
    case Answered: return m_stage == OnScreen && !m_paused;
    case TookOver: return m_stage == Handover;
    case Observed:
    case Withdrawn:
    case Held:
    case Finished: return m_stage == OnManikin && !m_paused;
    case Paused: return isTimed && !m_paused;
    case Resumed: return m_paused;
    case SafetyStop: return isTimed || m_stage == Handover;
    case Voided: return m_stage < Closing;
    case NoShow: return m_stage == Identity || m_stage == Instructions;
    case Rated:
    case Signed: return m_stage == Closing;
    }
    return false;
}

bool CheckOff::fitsWhatIsSaid(const CheckOffEvent& event) const
{
    switch (event.kind) {
    case CheckOffEventKind::Answered: {
        if (!event.answer || event.answer->item != item())
            return false;
        const bool isUp = isItemUp(event.onScreen) || isScreenUp(event.onScreen);
        return event.answer->timeUp ? isUp : event.answer->mark || event.answer->refusal;
    }
    case CheckOffEventKind::Observed:
        return event.observation && event.observation->at >= 0.0 &&
               event.observation->at <= secondsOf(event.onManikin);
    case CheckOffEventKind::Withdrawn: return event.observation && seen(event.observation->step);
    case CheckOffEventKind::Held:
        return event.held >= 0.0 && event.held <= check_off_ask_detail::kLongestHold;
    default: return true;
    }
}

Result<bool> CheckOff::isWhole(const CheckOffEvent& event) const
{
    switch (event.kind) {
    case CheckOffEventKind::Paused:
    case CheckOffEventKind::SafetyStop:
    case CheckOffEventKind::Voided:
        if (isBlank(event.note))
            return fault(Problem::ReasonMissing);
        break;
    case CheckOffEventKind::Finished:
        if (const int unrated = unratedSteps(); unrated > 0)
            return fault(Problem::StepsNotRated, {}, std::to_string(unrated));
        break;
    case CheckOffEventKind::Rated:
        if (event.rating < 1 || event.rating > check_off_ask_detail::kBestRating)
            return fault(Problem::RatingMissing);
        break;
    case CheckOffEventKind::Signed: {
        const bool needsNone = m_end == CheckOffEventKind::Voided || m_end == CheckOffEventKind::NoShow;
        if (!m_rating && !needsNone)
            return fault(Problem::RatingMissing);
        break;
    }
    default: break;
    }
    return true;
}

// Steps of another protocol are on the sheet but not asked for.
int CheckOff::unratedSteps() const
{
    return static_cast<int>(std::ranges::count_if(m_setup.sheet.steps, [&](const SheetStep& step) {
        return belongs(step.step, m_setup.sheet.protocol) && !seen(step.step);
    }));
}

// A step that was seen keeps its time, whether it turns out to have been prompted or not.
Observation CheckOff::timed(Observation observation) const
{
    const Observation* before = seen(observation.step);
    if (before && before->seen != Seen::NotDone && observation.seen != Seen::NotDone)
        observation.at = before->at;
    return observation;
}

Result<CheckOffEvent> CheckOff::confirm(Ms now) const
{
    return asked(event(CheckOffEventKind::Confirmed, now));
}

Result<CheckOffEvent> CheckOff::start(Ms now) const { return asked(event(CheckOffEventKind::Started, now)); }

Result<CheckOffEvent> CheckOff::answer(Answer answer, Ms now) const
{
    // Nobody is asked about another patient, and nothing is taken once the time was seen to be up. Neither is
    // asked of a kept event: a later version may draw others, and a look may come late.
    const auto number = static_cast<std::size_t>(item());
    const bool isAsked = number < m_requests.size() &&
                         check_off_ask_detail::isSame(answer.request, m_requests[number].request);
    if (!isAsked || (isTimeUp() && !answer.timeUp))
        return outOfOrder();
    CheckOffEvent answered = event(CheckOffEventKind::Answered, now);
    answered.answer = std::move(answer);
    return asked(std::move(answered));
}

Result<CheckOffEvent> CheckOff::takeOver(Ms now) const
{
    return asked(event(CheckOffEventKind::TookOver, now));
}

Result<CheckOffEvent> CheckOff::observe(ProcedureStep step, Seen seen, std::string remark, Ms now) const
{
    CheckOffEvent observed = event(CheckOffEventKind::Observed, now);
    observed.observation = timed({step, seen, secondsOf(observed.onManikin), std::move(remark)});
    return asked(std::move(observed));
}

Result<CheckOffEvent> CheckOff::withdraw(ProcedureStep step, Ms now) const
{
    CheckOffEvent withdrawn = event(CheckOffEventKind::Withdrawn, now);
    if (const Observation* before = seen(step))
        withdrawn.observation = *before;
    return asked(std::move(withdrawn));
}

Result<CheckOffEvent> CheckOff::hold(double seconds, Ms now) const
{
    CheckOffEvent held = event(CheckOffEventKind::Held, now);
    held.held = seconds;
    return asked(std::move(held));
}

Result<CheckOffEvent> CheckOff::finish(Ms now) const
{
    return asked(event(CheckOffEventKind::Finished, now));
}

Result<CheckOffEvent> CheckOff::pause(std::string reason, Ms now) const
{
    return asked(noted(CheckOffEventKind::Paused, std::move(reason), now));
}

Result<CheckOffEvent> CheckOff::resume(Ms now) const { return asked(event(CheckOffEventKind::Resumed, now)); }

Result<CheckOffEvent> CheckOff::stopForSafety(std::string why, Ms now) const
{
    return asked(noted(CheckOffEventKind::SafetyStop, std::move(why), now));
}

Result<CheckOffEvent> CheckOff::voidTechnical(std::string why, Ms now) const
{
    return asked(noted(CheckOffEventKind::Voided, std::move(why), now));
}

Result<CheckOffEvent> CheckOff::noShow(Ms now) const { return asked(event(CheckOffEventKind::NoShow, now)); }

Result<CheckOffEvent> CheckOff::rate(int rating, std::string remark, Ms now) const
{
    CheckOffEvent rated = noted(CheckOffEventKind::Rated, std::move(remark), now);
    rated.rating = rating;
    return asked(std::move(rated));
}

Result<CheckOffEvent> CheckOff::sign(Ms now) const { return asked(event(CheckOffEventKind::Signed, now)); }

CheckOffEvent CheckOff::noted(CheckOffEventKind kind, std::string note, Ms now) const
{
    CheckOffEvent noted = event(kind, now);
    noted.note = std::move(note);
    return noted;
}

}  // namespace fb
