// One step after the other, and the frames of what moves.
#include <algorithm>

#include "app/lecture/lecture_look.h"
#include "app/lecture/lecture_presenter.h"

namespace fb {

namespace lecture_presenter_step_detail {

double shareOf(Ms passed, int wholeMs)
{
    return std::clamp(static_cast<double>(passed.count()) / wholeMs, 0.0, 1.0);
}

// Sets out and arrives at rest.
double eased(double t) { return t * t * (3.0 - 2.0 * t); }

}  // namespace lecture_presenter_step_detail

void LecturePresenter::setCalm(bool calm)
{
    if (calm == m_calm)
        return;
    m_calm = calm;
    if (!calm)
        return;
    m_stepSince.reset();
    m_state.progress = 1.0;
    if (m_glide)
        startGlide(BodyValues(m_glide->to));
    Q_EMIT changed();
}

void LecturePresenter::next()
{
    if (m_opening) {
        ++*m_opening;
        return;
    }
    if (m_stepSince)
        rest(m_state.step);
    else if (m_state.step + 1 < static_cast<int>(m_state.steps.size()))
        goOn(m_state.step + 1);
    else
        return;
    Q_EMIT changed();
}

void LecturePresenter::back()
{
    if (m_opening) {
        m_opening = std::max(0, *m_opening - 1);
        return;
    }
    if (m_state.step == 0)
        return;
    rest(m_state.step - 1);
    Q_EMIT changed();
}

void LecturePresenter::goTo(int step)
{
    if (m_opening) {
        m_opening = std::max(0, step);
        return;
    }
    if (m_state.steps.empty())
        return;
    const int held = std::clamp(step, 0, static_cast<int>(m_state.steps.size()) - 1);
    if (held == m_state.step)
        return;
    if (held > m_state.step)
        goOn(held);
    else
        rest(held);
    Q_EMIT changed();
}

void LecturePresenter::replay()
{
    if (m_opening || m_state.steps.empty())
        return;
    goOn(m_state.step);
    Q_EMIT changed();
}

// As it looks when nothing of it moves any more.
void LecturePresenter::rest(int step)
{
    m_state.step = step;
    m_state.progress = 1.0;
    m_stepSince.reset();
}

void LecturePresenter::goOn(int step)
{
    rest(step);
    if (m_calm || !m_state.shown || !isMoving(*m_state.shown, m_state.steps[static_cast<std::size_t>(step)]))
        return;
    m_state.progress = 0.0;
    m_stepSince = m_clock.steady();
    m_tick.start();
}

void LecturePresenter::tick()
{
    const Ms now = m_clock.steady();
    if (m_glide)
        tickGlide(now);
    if (m_stepSince)
        tickStep(now);
    if (m_isBinding)
        bindStrokes();
    if (!m_glide && !m_stepSince && !m_isBinding)
        m_tick.stop();
}

// Said once its body is there, so that sliders go along with the picture.
void LecturePresenter::tickGlide(Ms now)
{
    using namespace lecture_presenter_step_detail;
    const double share = shareOf(now - m_glide->since, kGlideMs);
    m_state.body = held(between(m_glide->from, m_glide->to, eased(share)));
    if (share >= 1.0) {
        m_state.body = m_glide->to;
        m_glide.reset();
    }
    askShown();
    if (m_state.compare == Compare::OtherConvention)
        askBeside();
}

void LecturePresenter::tickStep(Ms now)
{
    using namespace lecture_presenter_step_detail;
    const double share = shareOf(now - *m_stepSince, kStepMs);
    m_state.progress = eased(share);
    if (share >= 1.0)
        m_stepSince.reset();
    Q_EMIT pointerMoved();
}

}  // namespace fb
