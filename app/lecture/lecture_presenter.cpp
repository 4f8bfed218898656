#include "app/lecture/lecture_presenter.h"

#include <algorithm>

#include "app/look/palette.h"

namespace fb {

LecturePresenter::LecturePresenter(Bodies& bodies, Clock& clock, QObject* parent)
    : QObject(parent),
      m_bodies(bodies),
      m_clock(clock),
      m_began(clock.steady())
{
    m_state.convention = conventionsOf(Site::Deltoid).front();
    m_state.view = askedViews(Site::Deltoid).front();
    m_state.layers = QSet<Layer>(kLayers.begin(), kLayers.end());
    m_tick.setTimerType(Qt::PreciseTimer);
    m_tick.setInterval(kFrameMs);
    connect(&m_tick, &QTimer::timeout, this, &LecturePresenter::tick);
}

void LecturePresenter::useLibrary(const std::shared_ptr<const Library>& library, const Policy& policy)
{
    // A convention of the speaker's own choice stays.
    const bool byPolicy =
        !m_state.policy || m_state.convention == m_state.policy->convention(siteOf(m_state.convention));
    m_library = library;
    m_state.policy = std::make_shared<const Policy>(policy);
    if (byPolicy)
        useConvention(policy.convention(siteOf(m_state.convention)));
    // Whatever was made is of the policy of before.
    m_besideAsked.reset();
    askShown();
    askBeside();
    Q_EMIT changed();
}

void LecturePresenter::openSite(Site site)
{
    m_state.body = goal();
    m_glide.reset();
    rest(m_state.step);
    m_isHeld = m_erases = false;
    m_opening = 0;
    m_state.convention = m_state.policy ? m_state.policy->convention(site) : conventionsOf(site).front();
    m_state.view = askedViews(site).front();
    m_other.reset();
    if (m_state.compare == Compare::OtherConvention)
        m_state.compare = Compare::Nothing;
    if (!m_wasOpened)
        m_began = m_clock.steady();
    m_wasOpened = true;
    askShown();
    compareAgain();
    Q_EMIT changed();
}

void LecturePresenter::setConvention(Convention convention)
{
    if (siteOf(convention) != site() || convention == m_state.convention)
        return;
    useConvention(convention);
    askShown();
    compareAgain();
    Q_EMIT changed();
}

// Nothing is compared with itself: what it was compared with becomes the other way round.
void LecturePresenter::useConvention(Convention convention)
{
    if (m_other == convention)
        m_other = m_state.convention;
    m_state.convention = convention;
}

void LecturePresenter::setView(View view)
{
    // The hands belong to a site, too, and are no views of a patient.
    const bool isView = std::ranges::find(kViews, view) != kViews.end();
    if (!isView || siteOf(view) != site() || view == m_state.view)
        return;
    m_state.view = view;
    askShown();
    compareAgain();
    Q_EMIT changed();
}

void LecturePresenter::setSide(Side side)
{
    if (side == m_state.side)
        return;
    m_state.side = side;
    askShown();
    compareAgain();
    Q_EMIT changed();
}

void LecturePresenter::setSkinTone(int tone)
{
    const int held = std::clamp(tone, 0, kSkinRampCount - 1);
    if (held == m_state.skinTone)
        return;
    m_state.skinTone = held;
    askShown();
    askBeside();
    Q_EMIT changed();
}

void LecturePresenter::setLayerShown(Layer layer, bool shown)
{
    if (shown == m_state.layers.contains(layer))
        return;
    if (shown)
        m_state.layers.insert(layer);
    else
        m_state.layers.remove(layer);
    Q_EMIT changed();
}

void LecturePresenter::setBlank(bool blank)
{
    if (blank == m_state.blank)
        return;
    m_state.blank = blank;
    Q_EMIT changed();
}

Ms LecturePresenter::elapsed() const { return std::max(Ms{0}, m_clock.steady() - m_began); }

void LecturePresenter::restartClock()
{
    m_began = m_clock.steady();
    Q_EMIT changed();
}

void LecturePresenter::tell(const Fault& fault)
{
    m_state.notice = fault;
    Q_EMIT changed();
}

void LecturePresenter::dismissNotice()
{
    if (!m_state.notice)
        return;
    m_state.notice.reset();
    Q_EMIT changed();
}

}  // namespace fb
