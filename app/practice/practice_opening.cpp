// Library, policy and plates, and the run that is opened with them: see practice_presenter.h.
#include <utility>

#include "app/practice/practice_presenter.h"

namespace fb {

namespace practice_opening_detail {

constexpr int kSoon = 0;
constexpr int kLater = -1;  // behind every picture that is wanted now

// The learner's choices, without those that are the policy's own anyway.
OwnChoices ownBeside(const Policy& policy, const OwnChoices& chosen)
{
    OwnChoices own;
    for (const Site site : kSites) {
        const auto convention = chosen.convention(site);
        if (convention && *convention != policy.convention(site))
            own.choose(*convention);
    }
    if (chosen.handLength && chosen.handLength->value() != policy.value(PolicyKey::HandLength))
        own.handLength = chosen.handLength;
    if (chosen.fingerWidth && chosen.fingerWidth->value() != policy.value(PolicyKey::DeltoidFingerWidth))
        own.fingerWidth = chosen.fingerWidth;
    own.handedness = chosen.handedness;
    return own;
}

Policy with(const Policy& policy, const OwnChoices& own)
{
    Policy used = policy;
    for (const auto& convention : own.conventions) {
        if (convention)
            used = used.withConvention(*convention);
    }
    if (own.handLength)
        used = used.with(PolicyKey::HandLength, own.handLength->value());
    if (own.fingerWidth)
        used = used.with(PolicyKey::DeltoidFingerWidth, own.fingerWidth->value());
    return used;
}

}  // namespace practice_opening_detail

using namespace practice_opening_detail;

void PracticePresenter::setUp(const PracticeSetup& setup, const OwnChoices& own)
{
    m_own = own;
    open(setup);
}

void PracticePresenter::useLibrary(const std::shared_ptr<const Library>& library,
                                   const std::optional<LabPolicy>& lab)
{
    lendLibrary(library);
    m_policy = library->defaultPolicy();
    if (lab && lab->policy) {
        m_policy = *lab->policy;
        m_state.policyFile = lab->file;
    }
    PracticeSetup setup;
    setup.seed = m_seeds.fresh();
    open(m_wanted.value_or(setup));
    if (lab && !lab->policy)
        tell(lab->policy.error());
}

Result<bool> PracticePresenter::startRun(const QString& seed, PracticeSetup setup, const OwnChoices& own)
{
    const auto number = seedFromText(seed.trimmed().toStdString());
    if (!number)
        return tl::unexpected(number.error());
    setup.seed = *number;
    const auto checked = checkedSetup(setup);
    if (!checked)
        return tl::unexpected(checked.error());
    if (own.handLength) {
        if (const auto hand = checkedHandLength(*own.handLength); !hand)
            return tl::unexpected(hand.error());
    }
    m_own = own;
    open(*checked);
    return true;
}

void PracticePresenter::setHand(const OwnChoices& own)
{
    OwnChoices changedOwn = m_own;
    changedOwn.handLength = own.handLength;
    changedOwn.fingerWidth = own.fingerWidth;
    changedOwn.handedness = own.handedness;
    if (changedOwn == m_own)
        return;
    m_own = changedOwn;
    if (!m_practice)
        return;
    const OwnChoices before = m_state.own;
    m_state.own = ownBeside(*m_policy, m_own);
    if (m_state.own != before && m_practice->phase() != Phase::Summary && !wouldLose())
        open(m_state.setup);
    else
        Q_EMIT changed();
}

Result<Cm> PracticePresenter::estimatedHand(Sex sex, Cm stature) const
{
    return measuredHand(m_library->proportions(), sex, stature).map([](const HandMeasures& hand) {
        return hand.length;
    });
}

void PracticePresenter::open(const PracticeSetup& setup)
{
    m_wanted = setup;
    if (!m_practice)
        m_state.setup = setup;
    if (!m_policy) {
        Q_EMIT changed();
        return;
    }
    withPlates(requestFrom(setup.seed, 0, setup.mix).view, [this, setup] { begin(setup); });
}

void PracticePresenter::begin(const PracticeSetup& setup)
{
    m_state.exam = false;
    m_state.keeping = Keeping::Open;
    m_state.setup = setup;
    m_state.notice.reset();
    m_state.own = ownBeside(*m_policy, m_own);
    const Policy policy = with(*m_policy, m_own);
    m_state.policy = std::make_shared<const Policy>(policy);
    m_practice.emplace(m_atlas, policy, setup);
    m_state.ready = true;
    refreshRequest();
    readAhead(setup.mix.sites);
}

bool PracticePresenter::holds(View view)
{
    bool all = true;
    for (const View needed : neededPlates(view)) {
        const Plate*& place = m_atlas.plates[static_cast<std::size_t>(needed)];
        if (!place && m_library->isRead(needed)) {
            if (const auto plate = m_library->plate(needed))
                place = plate->get();
        }
        all = all && place;
    }
    return all;
}

void PracticePresenter::withPlates(View view, const std::function<void()>& then)
{
    m_whenRead = nullptr;
    if (holds(view)) {
        if (m_practice)
            m_practice->useAtlas(m_atlas);
        then();
        return;
    }
    m_awaited = view;
    m_whenRead = then;
    readPlates(view, kSoon);
}

void PracticePresenter::readAhead(const SiteSet& sites)
{
    for (const Site site : kSites) {
        for (const View view : askedViews(site)) {
            if (sites.has(site) && !holds(view))
                readPlates(view, kLater);
        }
    }
}

void PracticePresenter::readPlates(View view, int priority)
{
    const auto read = [this, view, library = m_library] {
        const auto atlas = library->atlas(view);
        const auto broken = atlas ? std::nullopt : std::optional(atlas.error());
        QMetaObject::invokeMethod(
            this, [this, broken, view] { takePlates(broken, view); }, Qt::QueuedConnection);
    };
    m_pool.start(read, priority);
}

void PracticePresenter::takePlates(const std::optional<Fault>& broken, View view)
{
    if (!m_whenRead || view != m_awaited)
        return;
    const auto then = std::exchange(m_whenRead, nullptr);
    if (broken)
        tell(*broken);
    else
        withPlates(view, then);
}

void PracticePresenter::usePolicyFile(const QString& file)
{
    if (!m_policy)
        return;
    const int wanted = ++m_wantedPolicy;
    if (file.isEmpty())
        return takePolicy({file, m_library->defaultPolicy()});
    const auto read = [this, file, wanted, library = m_library] {
        const LabPolicy lab{file, library->policyWith(file)};
        QMetaObject::invokeMethod(
            this,
            [this, lab, wanted] {
                if (wanted == m_wantedPolicy)
                    takePolicy(lab);
            },
            Qt::QueuedConnection);
    };
    m_pool.start(read, kSoon);
}

void PracticePresenter::takePolicy(const LabPolicy& lab)
{
    if (!lab.policy)
        return tell(lab.policy.error());
    if (!wouldLose())
        return changePolicy(lab);
    m_offered = lab;
    m_state.policyOffered = true;
    m_state.offeredPolicy = lab.file;
    Q_EMIT changed();
}

void PracticePresenter::answerOffer(bool starts)
{
    if (!m_offered)
        return;
    const LabPolicy lab = *m_offered;
    m_offered.reset();
    m_state.policyOffered = false;
    m_state.offeredPolicy.clear();
    if (starts)
        changePolicy(lab);
    else
        Q_EMIT changed();
}

void PracticePresenter::changePolicy(const LabPolicy& lab)
{
    m_policy = *lab.policy;
    // A lab that comes with conventions of its own wants them used.
    m_own.conventions = {};
    m_state.policyFile = lab.file;
    open(m_state.setup);
}

bool PracticePresenter::wouldLose() const
{
    return m_practice && m_practice->phase() != Phase::Summary &&
           (m_practice->mark() || (m_state.byHand && m_state.byHand->canUndo) ||
            !m_practice->attempts().empty());
}

}  // namespace fb
