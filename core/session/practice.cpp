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

Practice::Practice(Atlas atlas, Policy policy, std::vector<SetRequest> set, int from)
    : m_atlas(atlas),
      m_policy(std::move(policy)),
      m_set(std::move(set)),
      m_request(m_set[static_cast<std::size_t>(from)].request)
{
    m_setup.length = static_cast<int>(m_set.size());
    m_setup.asksSide = false;
    m_setup.mix = RequestMix{SiteSet::all(), false};
    open(from);
}

void Practice::open(int number)
{
    if (m_set.empty()) {
        m_request = requestFrom(m_setup.seed, number, m_setup.mix);
    } else {
        const SetRequest& set = m_set[static_cast<std::size_t>(number)];
        m_request = set.request;
        m_request.number = number;
        m_setup.help = set.help;
        m_setup.byHand = set.byHand;
    }
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
    Attempt attempt = markedAttempt(*m_target, m_policy, m_request, at, limbUnder(at).value());
    if (m_byHand)
        attempt = foundByHand(std::move(attempt), *m_target, m_policy, m_byHand->flags(), m_byHand->build());
    attempt.watched = m_byHand && m_byHand->watched();
    attempt.sideRight = m_sideRight;
    m_attempts.push_back(std::move(attempt));
    m_phase = Phase::Graded;
    return true;
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
    Attempt attempt = refusedAttempt(m_policy, m_request, reason, requestWeight());
    attempt.sideRight = m_sideRight;
    m_mark.reset();
    m_byHand.reset();
    m_attempts.push_back(std::move(attempt));
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
