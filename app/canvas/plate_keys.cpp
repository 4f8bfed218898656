// What keys do to a plate.
#include <QKeyEvent>

#include "app/canvas/plate_input.h"

namespace fb {

namespace input_detail {

inline constexpr double kPanKeyPixels = 60.0;
inline constexpr double kZoomKey = 1.25;

QPointF arrowOf(int key)
{
    switch (key) {
    case Qt::Key_Left: return {-1, 0};
    case Qt::Key_Right: return {1, 0};
    case Qt::Key_Up: return {0, 1};
    case Qt::Key_Down: return {0, -1};
    default: return {};
    }
}

// Both habits, whatever the platform's own is.
bool redoes(const QKeyEvent& event)
{
    const auto held = event.modifiers() & ~Qt::KeypadModifier;
    return (event.key() == Qt::Key_Z && held == (Qt::ControlModifier | Qt::ShiftModifier)) ||
           (event.key() == Qt::Key_Y && held == Qt::ControlModifier);
}

}  // namespace input_detail

bool PlateInput::arrow(const QKeyEvent& event)
{
    const QPointF way = input_detail::arrowOf(event.key());
    if (way.isNull())
        return false;
    if (event.modifiers().testFlag(Qt::ControlModifier) || !m_hands.isMarkable()) {
        // The paper goes the other way, as if the eye moved with the arrow.
        m_hands.panBy(QPointF(-way.x(), way.y()) * input_detail::kPanKeyPixels);
        return true;
    }
    if (isToolAtWork())
        return true;
    m_hands.setByKeyboard(true);
    m_hands.stepCrosshair(way * (event.modifiers().testFlag(Qt::ShiftModifier) ? kFineStepCm : kStepCm));
    return true;
}

// Undo and redo, while nothing is under way that they could cut in two.
bool PlateInput::editing(const QKeyEvent& event)
{
    const bool undoes = event.matches(QKeySequence::Undo);
    const bool redoes = input_detail::redoes(event);
    if (!(undoes || redoes) || !m_hands.isMarkable() || m_gesture != Gesture::None)
        return false;
    undoes ? m_hands.undo() : m_hands.redo();
    return true;
}

// Shift+Enter among handles: to the one before.
bool PlateInput::back(const QKeyEvent& event)
{
    const bool enters = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (!enters || !event.modifiers().testFlag(Qt::ShiftModifier) || !m_hands.isMarkable() ||
        isToolAtWork() || m_hands.tool() != PlateTool::Handles)
        return false;
    m_hands.setByKeyboard(true);
    m_hands.enterBack();
    return true;
}

bool PlateInput::keyLetGo(const QKeyEvent& event)
{
    if (event.isAutoRepeat())
        return false;
    if (event.key() == Qt::Key_Space)
        m_space = false;
    if (!input_detail::arrowOf(event.key()).isNull())
        m_hands.endStep();
    return false;
}

bool PlateInput::key(const QKeyEvent& event)
{
    if (arrow(event) || editing(event) || back(event))
        return true;
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!m_hands.isMarkable() || isToolAtWork())
            return false;
        m_hands.setByKeyboard(true);
        m_hands.enter();
        return true;
    case Qt::Key_Backspace:
    case Qt::Key_Delete:
        if (!m_hands.isMarkable() || isToolAtWork())
            return false;
        m_hands.withdraw();
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal: m_hands.zoom(input_detail::kZoomKey); return true;
    case Qt::Key_Minus: m_hands.zoom(1.0 / input_detail::kZoomKey); return true;
    case Qt::Key_0: m_hands.whole(); return true;
    case Qt::Key_Space: m_space = true; return true;
    case Qt::Key_Escape:
        if (m_gesture == Gesture::None)
            return false;
        giveUp();
        return true;
    default: return false;
    }
}

}  // namespace fb
