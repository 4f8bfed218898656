// What a check-off tells of itself: time and result.
#include "core/session/check_off.h"

#include <algorithm>
#include <utility>

namespace fb {

CheckOff::CheckOff(CheckOffSetup setup)
    : m_setup(std::move(setup)),
      m_requests(requestsOf(m_setup.sheet, m_setup.seed))
{
}

const Observation* CheckOff::seen(ProcedureStep step) const
{
    const auto it = std::ranges::find(m_observations, step, &Observation::step);
    return it == m_observations.end() ? nullptr : &*it;
}

void CheckOff::look(Ms now)
{
    m_onScreen.look(now);
    m_onManikin.look(now);
}

Ms CheckOff::limit(int seconds) const
{
    constexpr int kMsPerPercent = 10;  // of a second
    return Ms{static_cast<std::int64_t>(seconds) * kMsPerPercent * (100 + m_setup.extraPercent)};
}

namespace check_off_detail {

std::optional<Ms> left(Ms limit, Ms used)
{
    if (limit == Ms{0})
        return std::nullopt;
    return std::max(Ms{0}, limit - used);
}

}  // namespace check_off_detail

std::optional<Ms> CheckOff::itemLeft() const
{
    return check_off_detail::left(limit(m_setup.sheet.secondsPerItem), m_onScreen.used() - m_itemBegan);
}

std::optional<Ms> CheckOff::screenLeft() const
{
    return check_off_detail::left(limit(m_setup.sheet.secondsOnScreen), m_onScreen.used());
}

std::optional<Ms> CheckOff::manikinLeft() const
{
    return check_off_detail::left(limit(m_setup.sheet.secondsOnManikin), m_onManikin.used());
}

bool CheckOff::isItemUp(Ms onScreen) const
{
    return check_off_detail::left(limit(m_setup.sheet.secondsPerItem), onScreen - m_itemBegan) == Ms{0};
}

bool CheckOff::isScreenUp(Ms onScreen) const
{
    return check_off_detail::left(limit(m_setup.sheet.secondsOnScreen), onScreen) == Ms{0};
}

bool CheckOff::isTimeUp() const
{
    const bool asks = m_stage == CheckOffStage::OnScreen && !m_paused;
    return asks && (isItemUp(m_onScreen.used()) || isScreenUp(m_onScreen.used()));
}

// Before the manikin phase has begun nothing of it is missed yet.
ProcedureGrade CheckOff::judged() const
{
    const Sheet& sheet = m_setup.sheet;
    if (sheet.steps.empty())
        return {};
    ProcedureGrade grade =
        judge(sheet.steps, sheet.protocol, m_observations, m_held, sheet.promptedShare, sheet.heldSeconds);
    if (m_tookOver)
        return grade;
    ProcedureGrade open;
    open.possible = grade.possible;
    return open;
}

CheckOffResult CheckOff::result() const
{
    CheckOffResult result;
    result.procedure = judged();
    result.onScreenKept = !m_screenRanOut;
    const Ms onManikin = limit(m_setup.sheet.secondsOnManikin);
    result.onManikinKept = onManikin == Ms{0} || m_onManikin.used() <= onManikin;

    ScoredCheckOff scored;
    scored.earned = result.procedure.earned;
    for (const Answer& answer : m_answers) {
        scored.earned += answer.points * m_setup.sheet.itemWeight;
        if (answer.verdict == Verdict::Unsafe)
            result.unsafeItems.push_back(answer.item);
        if (answer.verdict == Verdict::OnTarget || answer.verdict == Verdict::Acceptable)
            ++result.itemsRight;
    }
    scored.possible =
        result.procedure.possible + static_cast<double>(m_requests.size()) * m_setup.sheet.itemWeight;
    scored.voided = m_end == CheckOffEventKind::Voided;
    scored.noShow = m_end == CheckOffEventKind::NoShow;
    scored.safetyStop = m_end == CheckOffEventKind::SafetyStop;
    scored.criticalMissed = static_cast<int>(result.procedure.missedCritical.size());
    scored.hardBreaches =
        static_cast<int>(std::ranges::count(result.procedure.breaches, Severity::Hard, &Breach::severity));
    scored.unsafeMarks = static_cast<int>(result.unsafeItems.size());
    scored.timeKept = result.onScreenKept && result.onManikinKept;
    scored.cutPercent = m_setup.sheet.cutPercent;
    result.decision = decide(scored);
    return result;
}

}  // namespace fb
