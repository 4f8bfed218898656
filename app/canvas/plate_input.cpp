#include "app/canvas/plate_input.h"

#include <QKeyEvent>
#include <QLineF>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QTouchEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace fb {

PlateInput::PlateInput(PlateHands& hands, QObject* parent) : QObject(parent), m_hands(hands)
{
    m_hold.setSingleShot(true);
    m_hold.setInterval(kHoldMs);
    connect(&m_hold, &QTimer::timeout, this, [this] {
        m_carrying = true;
        m_hands.carry(m_last);
        m_hands.loupe(m_last);
    });
}

bool PlateInput::handle(QEvent* event)
{
    switch (event->type()) {
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonDblClick: return pressed(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseMove: return moved(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseButtonRelease: return released(*static_cast<QMouseEvent*>(event));
    case QEvent::Wheel: return wheel(*static_cast<QWheelEvent*>(event));
    case QEvent::KeyPress: return key(*static_cast<QKeyEvent*>(event));
    case QEvent::KeyRelease: return keyLetGo(*static_cast<QKeyEvent*>(event));
    case QEvent::Leave: m_hands.hover(std::nullopt); return false;
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd: return touch(*static_cast<QTouchEvent*>(event));
    case QEvent::TouchCancel:
    case QEvent::FocusOut:
        giveUp();
        m_hands.endStep();
        m_hands.lift();
        m_space = false;
        return false;
    case QEvent::NativeGesture: {
        const auto& pinch = *static_cast<QNativeGestureEvent*>(event);
        if (pinch.gestureType() != Qt::ZoomNativeGesture)
            return false;
        m_hands.zoomAt(pinch.position(), 1.0 + pinch.value());
        return true;
    }
    default: return false;
    }
}

void PlateInput::giveUp()
{
    m_hold.stop();
    m_hands.loupe(std::nullopt);
    m_hands.carry(std::nullopt);
    if (m_gesture == Gesture::Panning)
        m_hands.setMoving(false);
    const Gesture was = m_gesture;
    m_gesture = Gesture::None;
    m_carrying = false;
    if (was == Gesture::Pressing)
        m_hands.lift();
    if (was == Gesture::Handling)
        m_hands.putBack();
}

// A press, or a handle that was met; anything else is a mark to be.
bool PlateInput::beginWithTool(QPointF at, double reach)
{
    m_from = at;
    m_last = at;
    if (m_hands.tool() == PlateTool::Press) {
        m_gesture = Gesture::Pressing;
        m_hands.press(at);
    } else if (m_hands.tool() == PlateTool::Handles && m_hands.grab(at, reach)) {
        m_gesture = Gesture::Handling;
        m_carrying = false;
    }
    return isToolAtWork();
}

void PlateInput::beginMarking(QPointF at)
{
    m_gesture = Gesture::Marking;
    m_carrying = false;
    m_from = at;
    m_last = at;
    m_hold.start();
}

bool PlateInput::pressed(const QMouseEvent& event)
{
    if (m_gesture != Gesture::None)
        return true;
    m_hands.setByKeyboard(false);
    m_button = event.button();
    m_last = event.position();
    if (event.button() == Qt::LeftButton && m_hands.isMarkable() && !m_space) {
        if (!beginWithTool(event.position(), kMouseReach))
            beginMarking(event.position());
        return true;
    }
    m_gesture = Gesture::Panning;
    m_hands.setMoving(true);
    return true;
}

bool PlateInput::moved(const QMouseEvent& event)
{
    const QPointF at = event.position();
    if (m_gesture == Gesture::Panning)
        m_hands.panBy(at - m_last);
    if (m_gesture == Gesture::Marking) {
        m_carrying = m_carrying || QLineF(m_from, at).length() > kSlip;
        if (m_carrying)
            m_hands.carry(at);
        if (m_carrying && !m_hold.isActive())
            m_hands.loupe(at);
    }
    if (m_gesture == Gesture::Pressing)
        m_hands.press(at);
    if (m_gesture == Gesture::Handling) {
        m_carrying = m_carrying || QLineF(m_from, at).length() > kSlip;
        if (m_carrying)
            m_hands.drag(at);
    }
    if (m_gesture == Gesture::None)
        m_hands.hover(at);
    m_last = at;
    return m_gesture != Gesture::None;
}

bool PlateInput::released(const QMouseEvent& event)
{
    if (m_gesture == Gesture::None || event.button() != m_button)
        return m_gesture != Gesture::None;
    if (isToolAtWork()) {
        if (m_gesture == Gesture::Handling && m_carrying && event.position() != m_last)
            m_hands.drag(event.position());
        const bool handles = m_gesture == Gesture::Handling;
        m_gesture = Gesture::None;
        handles ? m_hands.letGo() : m_hands.lift();
        return true;
    }
    const bool marks = m_gesture == Gesture::Marking;
    // A click that slipped a little marks where it was meant: where the button went down.
    const QPointF at = m_carrying ? event.position() : m_from;
    giveUp();
    if (marks)
        m_hands.markAt(at);
    return true;
}

bool PlateInput::wheel(const QWheelEvent& event)
{
    const double turn = event.angleDelta().y();
    if (turn != 0.0)
        m_hands.zoomAt(event.position(), std::pow(1.2, turn / 120.0));
    return true;
}

}  // namespace fb
