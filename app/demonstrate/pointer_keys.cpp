#include "app/demonstrate/pointer_keys.h"

#include <QKeyEvent>
#include <algorithm>

#include "app/lecture/lecture_presenter.h"

namespace fb {

namespace pointer_keys_detail {

// The viewer's frame: up is up.
QPointF wayOf(int key)
{
    switch (key) {
    case Qt::Key_Left: return {-1, 0};
    case Qt::Key_Right: return {1, 0};
    case Qt::Key_Up: return {0, 1};
    case Qt::Key_Down: return {0, -1};
    default: return {};
    }
}

bool enters(const QKeyEvent& event)
{
    return (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) &&
           !(event.modifiers() & ~Qt::KeypadModifier);
}

bool moves(const QKeyEvent& event)
{
    const auto held = event.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier);
    return held == Qt::ControlModifier && !wayOf(event.key()).isNull();
}

}  // namespace pointer_keys_detail

bool PointerKeys::isOf(const QKeyEvent& event) const
{
    using namespace pointer_keys_detail;
    return moves(event) || enters(event) || (m_isDown && event.key() == Qt::Key_Escape);
}

bool PointerKeys::take(const QKeyEvent& event, const QRectF& seen)
{
    using namespace pointer_keys_detail;
    if (!isOf(event))
        return false;
    if (seen.isEmpty())
        return true;
    if (moves(event))
        move(wayOf(event.key()) * (event.modifiers().testFlag(Qt::ShiftModifier) ? kFineStepCm : kStepCm),
             seen);
    else if (m_isDown)
        lift();
    else if (!event.isAutoRepeat())
        press(seen);
    return true;
}

QPointF PointerKeys::pointer(const QRectF& seen) const
{
    return m_presenter.state().pointer.value_or(seen.center());
}

void PointerKeys::move(QPointF by, const QRectF& seen)
{
    const QPointF to = pointer(seen) + by;
    const QPointF held(std::clamp(to.x(), seen.left(), seen.right()),
                       std::clamp(to.y(), seen.top(), seen.bottom()));
    m_presenter.point(held);
    if (m_isDown)
        m_presenter.drag(held);
}

void PointerKeys::press(const QRectF& seen)
{
    const QPointF at = pointer(seen);
    m_presenter.point(at);
    m_presenter.press(at);
    m_isDown = m_presenter.state().tool == LectureTool::Pen;
    if (!m_isDown)
        m_presenter.release();
}

void PointerKeys::lift()
{
    if (!m_isDown)
        return;
    m_isDown = false;
    m_presenter.release();
}

}  // namespace fb
