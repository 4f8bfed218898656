#include "app/practice/practice_presenter.h"

namespace fb {

PracticePresenter::PracticePresenter(Seeds& seeds, QObject* parent) : QObject(parent), m_seeds(seeds)
{
    // One after the other: what is asked first is painted first.
    m_pool.setMaxThreadCount(1);
    connect(&m_byHand, &ByHandPresenter::changed, this, &PracticePresenter::refresh);
}

PracticePresenter::~PracticePresenter()
{
    m_pool.clear();
    m_pool.waitForDone();
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

void PracticePresenter::newRun()
{
    PracticeSetup setup = m_state.setup;
    setup.seed = m_seeds.fresh();
    open(setup);
}

void PracticePresenter::repeatRun()
{
    if (!m_practice || m_state.exam)
        return;
    m_practice->repeat();
    refreshRequest();
}

void PracticePresenter::replaySeed(const QString& seed)
{
    if (const auto started = startRun(seed, m_state.setup, m_own); !started)
        tell(started.error());
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
    if (m_state.choosingReason || m_state.keeping != Keeping::Open || !isRunning(Phase::Marking))
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
    const bool open = !m_state.choosingReason && m_state.keeping == Keeping::Open;
    if (open && m_practice && m_practice->withdrawMark())
        refresh();
}

void PracticePresenter::grade()
{
    if (m_state.choosingReason || !m_practice)
        return;
    if (m_state.keeping != Keeping::Open)
        return confirm();
    if (m_practice->byHand()) {
        const auto graded = m_practice->gradeByHand();
        if (!graded)
            return tell(graded.error());
    } else if (!m_practice->grade()) {
        return;
    }
    m_state.notice.reset();
    if (m_state.exam)
        return confirm();
    refresh();
}

void PracticePresenter::chooseReason(bool choosing)
{
    if (!m_state.canRefuse || m_state.choosingReason == choosing)
        return;
    m_state.choosingReason = choosing;
    Q_EMIT changed();
}

void PracticePresenter::refuse(FindingCode reason)
{
    if (!m_state.choosingReason || !m_practice->refuse(reason))
        return;
    m_state.notice.reset();
    refresh();
}

void PracticePresenter::next()
{
    if (m_state.exam || !isRunning(Phase::Graded))
        return;
    const PracticeSetup& setup = m_practice->setup();
    const int number = m_practice->request().number;
    const bool last = number + 1 >= setup.length;
    const Request following = requestFrom(setup.seed, last ? number : number + 1, setup.mix);
    withPlates(following.view, [this] {
        if (!m_practice->next())
            return;
        m_state.notice.reset();
        refreshRequest();
    });
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
    if (shown && m_state.ready && !m_state.summary && !m_state.companion)
        makePicture(companionOf(m_state.request->view), *m_state.request);
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

void PracticePresenter::setHandShown(bool shown)
{
    m_state.handShown = shown;
    Q_EMIT changed();
}

void PracticePresenter::setRunSite(Site site)
{
    if (!m_state.summary || m_state.runSite == site)
        return;
    m_state.runSite = site;
    makeRunPicture();
    Q_EMIT changed();
}

void PracticePresenter::retranslate()
{
    refreshScenes();
    Q_EMIT changed();
}

}  // namespace fb
