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
    m_sideRight.reset();
    m_pickedWrong = false;
    m_byHand.reset();
    m_feel.reset();
    if (m_setup.byHand) {
        m_byHand.emplace(*m_target, m_policy);
        m_feel.emplace(FeelMap::make(m_atlas, m_policy, m_request.patient, m_request.view).value());
    }
    m_phase = m_setup.asksSide ? Phase::PickingSide : Phase::Marking;
}

Phase Practice::phase() const
{
    if (m_phase != Phase::Marking || !m_byHand)
        return m_phase;
    switch (m_byHand->stage()) {
    case ByHandStage::Feeling: return Phase::Feeling;
    case ByHandStage::Building: return Phase::Building;
    case ByHandStage::Marking: break;
    }
    return Phase::Marking;
}

ByHand* Practice::byHand() { return m_phase == Phase::Marking && m_byHand ? &*m_byHand : nullptr; }

const ByHand* Practice::byHand() const
{
    return m_phase == Phase::Marking && m_byHand ? &*m_byHand : nullptr;
}

std::optional<Point> Practice::mark() const { return m_byHand ? m_byHand->mark() : m_mark; }

Result<Feel> Practice::feelAt(Point viewer) const
{
    return m_feel->at(viewer, Cm{m_policy.value(PolicyKey::DeltoidFingerWidth)});
}

Result<bool> Practice::plant(Landmark name, Point viewer)
{
    if (phase() != Phase::Feeling)
        return false;
    if (const auto limb = limbUnder(viewer); !limb)
        return tl::unexpected(limb.error());
    m_byHand->plant({name, viewer});
    return true;
}

Result<MarkedLimb> Practice::limbUnder(Point viewer) const
{
    return markedLimb(m_atlas.plate(m_request.view), *m_map, m_request.patient.side(), viewer);
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
    if (phase() != Phase::Marking)
        return false;
    if (const auto limb = limbUnder(viewer); !limb)
        return tl::unexpected(limb.error());
    if (m_byHand)
        m_byHand->setMark(viewer);
    else
        m_mark = viewer;
    return true;
}

bool Practice::withdrawMark()
{
    if (phase() != Phase::Marking || !mark())
        return false;
    if (m_byHand)
        m_byHand->setMark(std::nullopt);
    m_mark.reset();
    return true;
}

Result<bool> Practice::gradeByHand()
{
    if (!byHand())
        return false;
    if (const auto ready = m_byHand->ready(); !ready)
        return ready;
    return grade();
}

bool Practice::grade()
{
    if (m_phase != Phase::Marking || !mark() || (m_byHand && !m_byHand->ready()))
        return false;
    const Point at = *mark();
    // A mark was asked of the plate when it was placed.
    Grade grade = gradeMark(*m_target, m_policy, at, limbUnder(at).value());
    const Point off{grade.offAnterior.value() / m_target->scale, grade.offDistal.value() / m_target->scale};
    const auto& finding = m_request.finding;
    const bool missed = finding && rulesOut(*finding, m_request.site, m_request.patient.side());
    if (missed) {
        grade.verdict = Verdict::Unsafe;
        grade.points = 0.0;
    }
    Attempt attempt{m_request, m_sideRight, at, grade, off, std::nullopt, missed};
    if (m_byHand)
        addByHand(attempt);
    m_attempts.push_back(std::move(attempt));
    m_phase = Phase::Graded;
    return true;
}

// What the hand did before the mark, and the points of all three.
void Practice::addByHand(Attempt& attempt) const
{
    attempt.flags = m_byHand->flags();
    attempt.build = m_byHand->build();
    attempt.watched = m_byHand->watched();
    attempt.byHand = fb::gradeByHand(*m_target, m_policy, attempt.flags, *attempt.build, attempt.grade);
    if (!attempt.missedFinding)
        attempt.grade.points = attempt.byHand->points;
}

double Practice::requestWeight() const
{
    using enum PolicyKey;
    if (!m_setup.byHand)
        return 1.0;
    return m_policy.value(WeightLandmarks) + m_policy.value(WeightBuild) + m_policy.value(WeightMark);
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
        grade.points = m_policy.value(PolicyKey::PointsRefusedRight) * requestWeight();
        break;
    case RefusalOutcome::WrongReason:
        grade.verdict = Verdict::Acceptable;
        grade.points = m_policy.value(PolicyKey::PointsRefusedWrongReason) * requestWeight();
        break;
    case RefusalOutcome::NothingRulesOut: grade.verdict = Verdict::OffTarget; break;
    }
    m_mark.reset();
    m_byHand.reset();
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
