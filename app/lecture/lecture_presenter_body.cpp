// The body that changes, and what it is compared with.
#include <algorithm>

#include "app/lecture/lecture_presenter.h"

namespace fb {

void LecturePresenter::setBody(const BodyValues& values)
{
    m_glide.reset();
    m_isHeld = true;
    m_state.moving = true;
    m_state.body = held(values);
    askShown();
    if (m_state.compare == Compare::OtherConvention)
        askBeside();
    Q_EMIT changed();
}

void LecturePresenter::letGo()
{
    if (!m_isHeld)
        return;
    m_isHeld = false;
    settle();
    Q_EMIT changed();
}

void LecturePresenter::glideTo(const BodyValues& values)
{
    startGlide(held(values));
    Q_EMIT changed();
}

void LecturePresenter::startGlide(const BodyValues& to)
{
    m_isHeld = false;
    m_glide.reset();
    if (!m_calm && m_state.shown && to != m_state.body) {
        m_glide = Glide{m_state.body, to, m_clock.steady()};
        m_state.moving = true;
        m_tick.start();
        return;
    }
    m_state.body = to;
    askShown();
    if (m_state.compare == Compare::OtherConvention)
        askBeside();
    settle();
}

void LecturePresenter::setStoutness(Stoutness stoutness) { glideTo(withStoutness(goal(), stoutness)); }

void LecturePresenter::pin()
{
    m_state.pinned = m_state.body;
    if (m_state.compare == Compare::Nothing)
        m_state.compare = Compare::SideBySide;
    compareAgain();
    Q_EMIT changed();
}

void LecturePresenter::unpin()
{
    if (!m_state.pinned)
        return;
    m_state.pinned.reset();
    if (m_state.compare != Compare::OtherConvention)
        m_state.compare = Compare::Nothing;
    compareAgain();
    Q_EMIT changed();
}

void LecturePresenter::swapPinned()
{
    if (!m_state.pinned)
        return;
    const BodyValues to = *m_state.pinned;
    m_state.pinned = goal();
    startGlide(to);
    compareAgain();
    Q_EMIT changed();
}

void LecturePresenter::setCompare(Compare compare)
{
    const bool needsPinned = compare == Compare::SideBySide || compare == Compare::Overlay;
    if (compare == m_state.compare || (needsPinned && !m_state.pinned))
        return;
    if (compare == Compare::OtherConvention && !m_other) {
        const auto all = conventionsOf(site());
        m_other = all.front() == m_state.convention ? all[1] : all.front();
    }
    m_state.compare = compare;
    compareAgain();
    Q_EMIT changed();
}

void LecturePresenter::compareConvention(Convention other)
{
    if (siteOf(other) != site() || other == m_state.convention)
        return;
    m_other = other;
    m_state.compare = Compare::OtherConvention;
    compareAgain();
    Q_EMIT changed();
}

// Asks for what is compared now. Until it is there the one of before stays beside, so that the picture is not
// laid out twice; a pinned body is never taken for another convention's.
void LecturePresenter::compareAgain()
{
    const bool isOther = m_state.compare == Compare::OtherConvention;
    if (m_state.compare == Compare::Nothing || isOther != m_besideIsOther)
        m_state.beside.reset();
    m_besideIsOther = isOther;
    askBeside();
    measure();
}

void LecturePresenter::askBeside()
{
    if (m_state.compare == Compare::Nothing || !m_library || !m_wasOpened) {
        m_besideAsked.reset();
        return;
    }
    const bool isOther = m_state.compare == Compare::OtherConvention;
    const BodyAsk ask{patientOf(isOther ? m_state.body : *m_state.pinned, m_state.side),
                      isOther ? *m_other : m_state.convention, m_state.view, m_state.skinTone};
    if (m_besideAsked == ask)
        return;
    m_besideAsked = ask;
    m_bodies.ask(
        1, m_library, m_state.policy, ask, this,
        [this, ask](const Result<std::shared_ptr<const LectureBody>>& body) { gotBeside(ask, body); });
}

void LecturePresenter::gotBeside(const BodyAsk& ask, const Result<std::shared_ptr<const LectureBody>>& body)
{
    // A pinned body has no frames on its way, and a fault is told of the newest alone.
    const bool isFrame = m_besideIsOther && body && isWanted(ask, m_besideAsked, m_state.beside);
    if (m_besideAsked != ask && !isFrame)
        return;
    if (body) {
        m_state.beside = *body;
        measure();
    } else {
        m_state.notice = body.error();
        m_state.compare = Compare::Nothing;
        compareAgain();
    }
    Q_EMIT changed();
}

void LecturePresenter::measure()
{
    const auto& shown = m_state.shown;
    const auto& beside = m_state.beside;
    const bool isPair = shown && beside && isSeenAs(shown->ask, beside->ask) &&
                        (shown->ask.convention != beside->ask.convention) == m_besideIsOther;
    m_state.difference = isPair ? std::optional(differenceOf(*shown->target, *beside->target)) : std::nullopt;
}

bool LecturePresenter::isSeenAs(const BodyAsk& a, const BodyAsk& b)
{
    return a.view == b.view && a.patient.side() == b.patient.side();
}

}  // namespace fb
