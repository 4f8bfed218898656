// Pointing and drawing.
#include <algorithm>
#include <cmath>

#include "app/lecture/lecture_presenter.h"

namespace fb {

namespace lecture_presenter_tools_detail {

constexpr double kEraserCm = 0.5;
// Nearer to the last point than this, a point would not be seen.
constexpr double kNearestCm = 0.05;
// A hand that never lifts begins a new stroke, so that no stroke grows without end.
constexpr qsizetype kMostPoints = 2000;
// Bound to the patient in one go: a few milliseconds.
constexpr int kBoundAtOnce = 100;

bool isPlace(QPointF cm) { return std::isfinite(cm.x()) && std::isfinite(cm.y()); }

}  // namespace lecture_presenter_tools_detail

void LecturePresenter::setTool(LectureTool tool)
{
    if (tool == m_state.tool)
        return;
    finishStroke();
    m_erases = false;
    m_state.tool = tool;
    Q_EMIT changed();
}

void LecturePresenter::setSpotlight(bool on)
{
    if (on == m_state.spotlight)
        return;
    m_state.spotlight = on;
    Q_EMIT changed();
}

void LecturePresenter::setPen(PenInk ink, PenLine line)
{
    if (ink == m_state.ink && line == m_state.line)
        return;
    finishStroke();
    m_state.ink = ink;
    m_state.line = line;
    Q_EMIT changed();
}

void LecturePresenter::setStrokesStay(bool stay)
{
    if (stay == m_state.strokesStay)
        return;
    m_state.strokesStay = stay;
    bindStrokes();
    Q_EMIT changed();
}

void LecturePresenter::point(std::optional<QPointF> cm)
{
    if (cm == m_state.pointer || (cm && !lecture_presenter_tools_detail::isPlace(*cm)))
        return;
    m_state.pointer = cm;
    Q_EMIT pointerMoved();
}

void LecturePresenter::press(QPointF cm)
{
    if (!m_state.shown || !lecture_presenter_tools_detail::isPlace(cm))
        return;
    m_state.pointer = cm;
    switch (m_state.tool) {
    case LectureTool::Pen:
        finishStroke();
        m_state.drawing = PenStroke{m_state.ink, m_state.line, {cm}, {}};
        bindStrokes();
        break;
    case LectureTool::Eraser:
        m_erases = true;
        if (erase(cm))
            return changed();
        break;
    case LectureTool::Ask: return addRoomMark(cm);
    case LectureTool::Point:
    case LectureTool::Magnifier: break;
    }
    Q_EMIT pointerMoved();
}

void LecturePresenter::drag(QPointF cm)
{
    if (!m_state.shown || !lecture_presenter_tools_detail::isPlace(cm))
        return;
    m_state.pointer = cm;
    if (m_erases && erase(cm))
        return changed();
    if (m_state.drawing) {
        const QPointF way = cm - m_state.drawing->points.back();
        if (std::hypot(way.x(), way.y()) >= lecture_presenter_tools_detail::kNearestCm)
            m_state.drawing->points.append(cm);
        bindStrokes();
        if (m_state.drawing->points.size() >= lecture_presenter_tools_detail::kMostPoints) {
            finishStroke();
            m_state.drawing = PenStroke{m_state.ink, m_state.line, {cm}, {}};
            return changed();
        }
    }
    Q_EMIT pointerMoved();
}

void LecturePresenter::release()
{
    m_erases = false;
    if (!m_state.drawing)
        return;
    finishStroke();
    Q_EMIT changed();
}

void LecturePresenter::undoStroke()
{
    if (m_state.drawing)
        m_state.drawing.reset();
    else if (!m_state.strokes.isEmpty())
        m_state.strokes.removeLast();
    else
        return;
    Q_EMIT changed();
}

void LecturePresenter::wipe()
{
    if (m_state.strokes.isEmpty() && !m_state.drawing)
        return;
    m_state.strokes.clear();
    m_state.drawing.reset();
    Q_EMIT changed();
}

void LecturePresenter::finishStroke()
{
    if (!m_state.drawing)
        return;
    m_state.strokes.append(*std::exchange(m_state.drawing, std::nullopt));
}

// Every stroke goes along with the patient, or none does. What cannot be bound at once is bound by the frames
// that follow.
void LecturePresenter::bindStrokes()
{
    if (!m_state.shown)
        return;
    int left = lecture_presenter_tools_detail::kBoundAtOnce;
    const auto bindOne = [&](PenStroke& stroke) {
        if (m_state.strokesStay) {
            left -= bindPoints(stroke, *m_state.shown, left);
        } else if (!stroke.anchors.empty()) {
            stroke.points = pointsOn(stroke, *m_state.shown);
            stroke.anchors.clear();
        }
    };
    if (m_state.drawing)
        bindOne(*m_state.drawing);
    for (PenStroke& stroke : m_state.strokes)
        bindOne(stroke);
    m_isBinding = m_state.strokesStay && left == 0;
    if (m_isBinding)
        m_tick.start();
}

bool LecturePresenter::erase(QPointF cm)
{
    return m_state.strokes.removeIf([&](const PenStroke& stroke) {
        return isTouched(stroke, *m_state.shown, cm, lecture_presenter_tools_detail::kEraserCm);
    }) > 0;
}

}  // namespace fb
