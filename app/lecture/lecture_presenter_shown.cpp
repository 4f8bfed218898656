// What is shown: a body is asked for, comes, and brings its steps and marks with it.
#include <algorithm>

#include "app/lecture/lecture_presenter.h"

namespace fb {

namespace lecture_presenter_shown_detail {

BodyValues valuesOf(const Patient& patient)
{
    return {patient.ageYears(), patient.sex(), patient.stature().value(), patient.weight().value()};
}

void mirror(QVector<PenStroke>& strokes, std::vector<RoomMark>& room)
{
    for (PenStroke& stroke : strokes)
        for (QPointF& point : stroke.points)
            point.rx() = -point.x();
    for (RoomMark& mark : room)
        mark.at = mirrored(mark.at);
}

}  // namespace lecture_presenter_shown_detail

void LecturePresenter::askShown()
{
    if (!m_library || !m_wasOpened)
        return;
    const BodyAsk ask{patientOf(m_state.body, m_state.side), m_state.convention, m_state.view,
                      m_state.skinTone};
    m_asked = ask;
    m_bodies.ask(
        0, m_library, m_state.policy, ask, this,
        [this, ask](const Result<std::shared_ptr<const LectureBody>>& body) { gotShown(ask, body); });
}

// An older body that was begun already is answered as well: while values move it is a frame on the way. One
// of another site, side, view or convention is not wanted any more, nor any once the newest is there.
bool LecturePresenter::isWanted(const BodyAsk& ask, const std::optional<BodyAsk>& newest,
                                const std::shared_ptr<const LectureBody>& there)
{
    if (!newest || ask.convention != newest->convention || !isSeenAs(ask, *newest))
        return false;
    return ask == *newest || !there || there->ask != *newest;
}

void LecturePresenter::gotShown(const BodyAsk& ask, const Result<std::shared_ptr<const LectureBody>>& body)
{
    if (!isWanted(ask, m_asked, m_state.shown))
        return;
    if (body) {
        takeShown(*body);
    } else if (ask == *m_asked) {
        m_state.notice = body.error();
        goBackToShown();
    } else {
        return;  // the newest will tell of itself
    }
    settle();
    Q_EMIT changed();
}

void LecturePresenter::takeShown(const std::shared_ptr<const LectureBody>& body)
{
    const auto before = m_state.shown;
    // A stroke lies on the body it was begun on, seen as it was.
    if (before && !isSeenAs(before->ask, body->ask))
        finishStroke();
    m_state.shown = body;
    m_state.ready = true;
    takeMarks(before);
    takeSteps(before);
    m_opening.reset();
    if (m_state.beside && !isSeenAs(m_state.beside->ask, body->ask))
        m_state.beside.reset();
    measure();
    gradeRoom();
}

void LecturePresenter::takeMarks(const std::shared_ptr<const LectureBody>& before)
{
    using lecture_presenter_shown_detail::mirror;
    if (!before)
        return;
    const BodyAsk& now = m_state.shown->ask;
    const bool isNew = m_opening.has_value();
    const bool isOther = isNew || now.view != before->ask.view;
    if (isNew) {
        m_sheets.clear();
        m_state.strokes.clear();
        m_state.drawing.reset();
        m_state.room.clear();
        m_state.revealed = false;
    } else if (isOther) {
        m_sheets[before->ask.view] = {m_state.strokes, m_state.room, m_state.revealed};
        const Sheet sheet = std::exchange(m_sheets[now.view], {});
        m_state.strokes = sheet.strokes;
        m_state.room = sheet.room;
        m_state.revealed = sheet.revealed;
    }
    if (isOther)
        m_state.pointer.reset();
    if (now.patient.side() != before->ask.patient.side()) {
        mirror(m_state.strokes, m_state.room);
        for (auto& [view, sheet] : m_sheets)
            mirror(sheet.strokes, sheet.room);
    }
    bindStrokes();
}

void LecturePresenter::takeSteps(const std::shared_ptr<const LectureBody>& before)
{
    const std::vector<LectureStep> steps = lectureSteps(*m_state.shown->target);
    const int last = static_cast<int>(steps.size()) - 1;
    int step = std::clamp(m_opening.value_or(0), 0, last);
    bool isSame = false;
    if (!m_opening && before) {
        const LectureStep& old = m_state.steps[static_cast<std::size_t>(m_state.step)];
        step = sameStep(steps, old);
        isSame = keyOf(steps[static_cast<std::size_t>(step)]) == keyOf(old);
    }
    m_state.steps = steps;
    if (isSame)
        m_state.step = step;
    else
        rest(step);
}

// What was asked for could not be made: what is shown is what is asked for again.
void LecturePresenter::goBackToShown()
{
    m_glide.reset();
    m_opening.reset();
    m_asked.reset();
    if (!m_state.shown)
        return;
    const BodyAsk& ask = m_state.shown->ask;
    m_asked = ask;
    m_state.convention = ask.convention;
    m_state.view = ask.view;
    m_state.side = ask.patient.side();
    m_state.skinTone = ask.skinTone;
    m_state.body = lecture_presenter_shown_detail::valuesOf(ask.patient);
    if (m_other && (siteOf(*m_other) != siteOf(ask.convention) || *m_other == ask.convention))
        m_other.reset();
    if (!m_other && m_state.compare == Compare::OtherConvention)
        m_state.compare = Compare::Nothing;
    compareAgain();
}

// Nothing moves any more once the body that was asked for last is there.
void LecturePresenter::settle()
{
    const bool isThere = !m_asked || (m_state.shown && m_state.shown->ask == *m_asked);
    if (!m_isHeld && !m_glide && isThere)
        m_state.moving = false;
}

}  // namespace fb
