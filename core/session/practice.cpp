#include "core/session/practice.h"

#include <string>
#include <utility>

namespace fb {

namespace practice_detail {
constexpr int kLongestRun = 200;
}

Result<PracticeSetup> checkedSetup(PracticeSetup setup)
{
    if (setup.length < 1 || setup.length > practice_detail::kLongestRun)
        return fault(Problem::RunLengthOutOfRange, {}, std::to_string(setup.length), 1.0,
                     practice_detail::kLongestRun);
    if (setup.mix.sites.count() == 0)
        return fault(Problem::NoSiteChosen);
    return setup;
}

Practice::Practice(Atlas atlas, Policy policy, PracticeSetup setup)
    : m_atlas(atlas),
      m_policy(std::move(policy)),
      m_setup(setup),
      m_request(requestFrom(setup.seed, 0, setup.mix))
{
    open(0);
}

void Practice::open(int number)
{
    m_request = requestFrom(m_setup.seed, number, m_setup.mix);
    // A drawn patient is valid and the plates are checked: neither call can fail.
    m_map.emplace(bodyMap(m_atlas, m_request.view, m_request.patient).value());
    m_target.emplace(
        locate(m_atlas, m_policy, m_request.patient, m_policy.convention(m_request.site), m_request.view)
            .value());
    m_mark.reset();
    m_limb.reset();
    m_sideRight.reset();
    m_pickedWrong = false;
    m_phase = m_setup.asksSide ? Phase::PickingSide : Phase::Marking;
}

const Attempt* Practice::graded() const { return m_phase == Phase::Graded ? &m_attempts.back() : nullptr; }

bool Practice::pickSide(Side side)
{
    if (m_phase != Phase::PickingSide)
        return false;
    const bool right = side == m_request.patient.side();
    if (!m_sideRight)
        m_sideRight = right;
    m_pickedWrong = !right;
    if (right)
        m_phase = Phase::Marking;
    return true;
}

Result<bool> Practice::placeMark(Point viewer)
{
    if (m_phase != Phase::Marking)
        return false;
    const auto limb = markedLimb(m_atlas.plate(m_request.view), *m_map, m_request.patient.side(), viewer);
    if (!limb)
        return tl::unexpected(limb.error());
    m_limb = *limb;
    m_mark = viewer;
    return true;
}

bool Practice::withdrawMark()
{
    if (m_phase != Phase::Marking || !m_mark)
        return false;
    m_mark.reset();
    m_limb.reset();
    return true;
}

bool Practice::grade()
{
    if (m_phase != Phase::Marking || !m_mark)
        return false;
    Grade grade = gradeMark(*m_target, m_policy, *m_mark, *m_limb);
    const Point off{grade.offAnterior.value() / m_target->scale, grade.offDistal.value() / m_target->scale};
    const auto& finding = m_request.finding;
    const bool missed = finding && rulesOut(*finding, m_request.site, m_request.patient.side());
    if (missed) {
        grade.verdict = Verdict::Unsafe;
        grade.points = 0.0;
    }
    m_attempts.push_back({m_request, m_sideRight, *m_mark, grade, off, std::nullopt, missed});
    m_phase = Phase::Graded;
    return true;
}

bool Practice::refuse(FindingCode reason)
{
    if (m_phase != Phase::Marking)
        return false;
    const RefusalOutcome outcome =
        refused(m_request.finding, m_request.site, m_request.patient.side(), reason);
    Grade grade;
    switch (outcome) {
    case RefusalOutcome::RightReason:
        grade.verdict = Verdict::OnTarget;
        grade.points = m_policy.value(PolicyKey::PointsRefusedRight);
        break;
    case RefusalOutcome::WrongReason:
        grade.verdict = Verdict::Acceptable;
        grade.points = m_policy.value(PolicyKey::PointsRefusedWrongReason);
        break;
    case RefusalOutcome::NothingRulesOut: grade.verdict = Verdict::OffTarget; break;
    }
    m_mark.reset();
    m_limb.reset();
    m_attempts.push_back({m_request, m_sideRight, {}, grade, {}, Refusal{reason, outcome}, false});
    m_phase = Phase::Graded;
    return true;
}

bool Practice::next()
{
    if (m_phase != Phase::Graded)
        return false;
    if (m_request.number + 1 >= m_setup.length) {
        m_phase = Phase::Summary;
        return true;
    }
    open(m_request.number + 1);
    return true;
}

void Practice::repeat()
{
    m_attempts.clear();
    open(0);
}

}  // namespace fb
