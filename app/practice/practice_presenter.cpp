#include "app/practice/practice_presenter.h"

namespace fb {

PracticePresenter::PracticePresenter(Seeds& seeds, QObject* parent) : QObject(parent), m_seeds(seeds)
{
    // One after the other: what is asked first is painted first.
    m_pool.setMaxThreadCount(1);
}

PracticePresenter::~PracticePresenter()
{
    m_pool.clear();
    m_pool.waitForDone();
}

void PracticePresenter::setUp(const PracticeSetup& setup, std::optional<Convention> convention)
{
    m_wanted = setup;
    m_convention = convention;
    m_state.setup = setup;
    if (m_library)
        open(setup);
    else
        Q_EMIT changed();
}

void PracticePresenter::useLibrary(const std::shared_ptr<const Library>& library, const QString& policyFile)
{
    m_library = library;
    m_policy = library->defaultPolicy();
    std::optional<Fault> broken;
    if (!policyFile.isEmpty()) {
        if (const auto policy = library->policyWith(policyFile)) {
            m_policy = *policy;
            m_state.policyFile = policyFile;
        } else {
            broken = policy.error();
        }
    }
    PracticeSetup setup;
    setup.seed = m_seeds.fresh();
    open(m_wanted.value_or(setup));
    if (broken)
        tell(*broken);
}

void PracticePresenter::tell(const Fault& fault)
{
    m_state.notice = fault;
    Q_EMIT changed();
}

void PracticePresenter::dismissNotice()
{
    m_state.notice.reset();
    Q_EMIT changed();
}

Result<bool> PracticePresenter::startRun(const QString& seed, PracticeSetup setup,
                                         std::optional<Convention> convention)
{
    const auto number = seedFromText(seed.trimmed().toStdString());
    if (!number)
        return tl::unexpected(number.error());
    setup.seed = *number;
    const auto checked = checkedSetup(setup);
    if (!checked)
        return tl::unexpected(checked.error());
    m_convention = convention;
    open(*checked);
    return true;
}

void PracticePresenter::newRun()
{
    PracticeSetup setup = m_state.setup;
    setup.seed = m_seeds.fresh();
    open(setup);
}

void PracticePresenter::repeatRun()
{
    if (!m_practice)
        return;
    m_practice->repeat();
    refreshRequest();
}

void PracticePresenter::replaySeed(const QString& seed)
{
    if (const auto started = startRun(seed, m_state.setup, m_convention); !started)
        tell(started.error());
}

bool PracticePresenter::usePolicyFile(const QString& file)
{
    if (!m_library)
        return false;
    const auto policy =
        file.isEmpty() ? Result<Policy>(m_library->defaultPolicy()) : m_library->policyWith(file);
    if (!policy) {
        tell(policy.error());
        return false;
    }
    m_policy = *policy;
    m_convention.reset();
    m_state.policyFile = file;
    open(m_state.setup);
    return true;
}

void PracticePresenter::open(const PracticeSetup& setup)
{
    m_wanted = setup;
    m_state.setup = setup;
    m_state.notice.reset();
    if (!m_library) {
        Q_EMIT changed();
        return;
    }
    const auto atlas = m_library->atlas();
    if (!atlas) {
        tell(atlas.error());
        return;
    }
    if (m_convention == m_policy->convention(Site::Deltoid))
        m_convention.reset();
    m_state.chosenConvention = m_convention;
    const Policy policy = m_convention ? m_policy->withConvention(*m_convention) : *m_policy;
    m_state.convention = policy.convention(Site::Deltoid);
    m_state.policy = std::make_shared<const Policy>(policy);
    m_practice.emplace(*atlas, policy, setup);
    m_state.ready = true;
    refreshRequest();
}

void PracticePresenter::pickSide(Side side)
{
    if (!isRunning(Phase::PickingSide))
        return;
    m_practice->pickSide(side);
    refresh();
}

void PracticePresenter::placeMark(QPointF cm)
{
    if (!isRunning(Phase::Marking))
        return;
    const auto placed = m_practice->placeMark({cm.x(), cm.y()});
    if (placed)
        m_state.notice.reset();
    else
        m_state.notice = placed.error();
    refresh();
}

void PracticePresenter::withdrawMark()
{
    if (m_practice && m_practice->withdrawMark())
        refresh();
}

void PracticePresenter::grade()
{
    if (!m_practice || !m_practice->grade())
        return;
    m_state.notice.reset();
    refresh();
}

void PracticePresenter::next()
{
    if (!m_practice || !m_practice->next())
        return;
    m_state.notice.reset();
    refreshRequest();
}

void PracticePresenter::setPeelShown(Peel peel, bool shown)
{
    if (!m_state.canPeel)
        return;
    for (const Layer layer : layersOf(peel)) {
        if (shown)
            m_state.layers.insert(layer);
        else
            m_state.layers.remove(layer);
    }
    Q_EMIT changed();
}

void PracticePresenter::setCompanionShown(bool shown)
{
    m_state.companionShown = shown;
    if (shown && m_state.ready && !m_state.companion)
        makePicture(View::ShoulderThreeQuarter, *m_state.request);
    Q_EMIT changed();
}

void PracticePresenter::setOtherShown(Convention convention, bool shown)
{
    for (OtherPoint& other : m_state.others) {
        if (other.convention == convention)
            other.shown = shown;
    }
    refreshScenes();
    Q_EMIT changed();
}

void PracticePresenter::retranslate()
{
    refreshScenes();
    Q_EMIT changed();
}

}  // namespace fb
