// The room is asked: where volunteers pointed, and how each would be graded.
#include <algorithm>

#include "app/lecture/lecture_presenter.h"

namespace fb {

void LecturePresenter::nameRoomMark(int index, const QString& name)
{
    if (index < 0 || index >= static_cast<int>(m_state.room.size()))
        return;
    QString& kept = m_state.room[static_cast<std::size_t>(index)].name;
    const QString tidy = tidyRoomName(name);
    if (kept == tidy)
        return;
    kept = tidy;
    Q_EMIT changed();
}

void LecturePresenter::takeRoomMarks(std::vector<RoomMark> marks)
{
    if (!takesMarks() || !hasRoomFor(marks.size()))
        return;
    m_state.room = std::move(marks);
    gradeRoom();
    Q_EMIT changed();
}

void LecturePresenter::dropRoomMark(int index)
{
    if (index < 0 || index >= static_cast<int>(m_state.room.size()))
        return;
    m_state.room.erase(m_state.room.begin() + index);
    Q_EMIT changed();
}

void LecturePresenter::clearRoom()
{
    if (m_state.room.empty() && !m_state.revealed)
        return;
    m_state.room.clear();
    m_state.revealed = false;
    Q_EMIT changed();
}

void LecturePresenter::reveal(bool revealed)
{
    if (!m_state.shown || revealed == m_state.revealed)
        return;
    m_state.revealed = revealed;
    gradeRoom();
    Q_EMIT changed();
}

// In a view to look at only nothing can be graded, which is told; while another view is on its way nobody
// knows which one is meant.
bool LecturePresenter::takesMarks()
{
    if (!m_state.shown || m_state.shown->ask.view != m_state.view)
        return false;
    const auto asked = askedViews(site());
    if (std::ranges::find(asked, m_state.view) != asked.end())
        return true;
    tell({Problem::ViewShowOnly, {}, std::string(wordOf(m_state.view))});
    return false;
}

// Nothing is passed over or cut off in silence.
bool LecturePresenter::hasRoomFor(std::size_t marks)
{
    if (marks <= static_cast<std::size_t>(kMostRoomMarks))
        return true;
    tell({Problem::RoomFull, {}, {}, 0.0, kMostRoomMarks});
    return false;
}

void LecturePresenter::addRoomMark(QPointF cm)
{
    if (!takesMarks() || !hasRoomFor(m_state.room.size() + 1))
        return;
    m_state.room.push_back({{}, {cm.x(), cm.y()}, {}});
    gradeRoom();
    Q_EMIT changed();
}

// Marks lie where they were pointed at; the body under them may be another by now.
void LecturePresenter::gradeRoom()
{
    const auto& body = m_state.shown;
    for (RoomMark& mark : m_state.room) {
        mark.grade.reset();
        if (!m_state.revealed || !body)
            continue;
        if (const auto limb = markedLimb(*body->plate, *body->map, body->ask.patient.side(), mark.at))
            mark.grade = gradeMark(*body->target, *m_state.policy, mark.at, *limb);
    }
}

}  // namespace fb
