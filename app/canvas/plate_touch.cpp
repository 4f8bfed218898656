// What fingers do to a plate: one uses the tool in hand, two pan and zoom.
#include <QLineF>
#include <QTouchEvent>
#include <algorithm>

#include "app/canvas/plate_input.h"

namespace fb {

bool PlateInput::touch(const QTouchEvent& event)
{
    m_hands.setByKeyboard(false);
    if (event.points().size() >= 2) {
        touchWithTwo(event);
        return true;
    }
    // What is left of a pinch is no mark.
    if (!m_twoFingers)
        touchWithOne(event);
    if (event.type() == QEvent::TouchEnd) {
        if (m_twoFingers)
            m_hands.setMoving(false);
        m_twoFingers = false;
        m_spread = 0.0;
    }
    return true;
}

void PlateInput::touchWithOne(const QTouchEvent& event)
{
    if (event.points().isEmpty())
        return;
    const QPointF at = event.points().first().position();
    if (!m_hands.isMarkable()) {
        if (event.type() == QEvent::TouchBegin)
            m_hands.setMoving(true);
        if (event.type() == QEvent::TouchUpdate)
            m_hands.panBy(at - m_last);
        if (event.type() == QEvent::TouchEnd)
            m_hands.setMoving(false);
        m_last = at;
        return;
    }
    if (touchWithTool(event.type(), at))
        return;
    if (event.type() == QEvent::TouchEnd) {
        giveUp();
        m_hands.markAt(at);
        return;
    }
    m_hands.carry(at);
    m_hands.loupe(at);
}

// False: the finger has no tool in hand, and marks.
bool PlateInput::touchWithTool(QEvent::Type type, QPointF at)
{
    if (type == QEvent::TouchBegin) {
        m_hands.endStep();
        return beginWithTool(at, kTouchReach);
    }
    if (!isToolAtWork())
        return false;
    const bool presses = m_gesture == Gesture::Pressing;
    if (presses && type == QEvent::TouchUpdate)
        m_hands.press(at);
    m_carrying = m_carrying || QLineF(m_from, at).length() > kSlip;
    if (!presses && m_carrying && at != m_last)
        m_hands.drag(at);
    m_last = at;
    if (type == QEvent::TouchEnd) {
        m_gesture = Gesture::None;
        presses ? m_hands.lift() : m_hands.letGo();
    }
    return true;
}

void PlateInput::touchWithTwo(const QTouchEvent& event)
{
    const QPointF a = event.points()[0].position();
    const QPointF b = event.points()[1].position();
    const QPointF middle = (a + b) / 2.0;
    const double spread = std::max(1.0, QLineF(a, b).length());
    if (!m_twoFingers) {
        giveUp();
        m_hands.setMoving(true);
        m_twoFingers = true;
    } else if (m_spread > 0.0) {
        m_hands.panBy(middle - m_last);
        m_hands.zoomAt(middle, spread / m_spread);
    }
    if (event.type() == QEvent::TouchEnd) {
        m_hands.setMoving(false);
        m_twoFingers = false;
        m_spread = 0.0;
        return;
    }
    m_last = middle;
    m_spread = spread;
}

}  // namespace fb
