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

}  // namespace input_detail

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
    case QEvent::KeyRelease: {
        const auto& released = *static_cast<QKeyEvent*>(event);
        if (released.key() == Qt::Key_Space && !released.isAutoRepeat())
            m_space = false;
        return false;
    }
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd: return touch(*static_cast<QTouchEvent*>(event));
    case QEvent::TouchCancel:
    case QEvent::FocusOut:
        giveUp();
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
    m_gesture = Gesture::None;
    m_carrying = false;
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
    m_last = at;
    return m_gesture != Gesture::None;
}

bool PlateInput::released(const QMouseEvent& event)
{
    if (m_gesture == Gesture::None || event.button() != m_button)
        return m_gesture != Gesture::None;
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
    m_hands.setByKeyboard(true);
    m_hands.stepCrosshair(way * (event.modifiers().testFlag(Qt::ShiftModifier) ? kFineStepCm : kStepCm));
    return true;
}

bool PlateInput::key(const QKeyEvent& event)
{
    if (arrow(event))
        return true;
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!m_hands.isMarkable())
            return false;
        m_hands.setByKeyboard(true);
        m_hands.enter();
        return true;
    case Qt::Key_Backspace:
    case Qt::Key_Delete:
        if (!m_hands.isMarkable())
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
    if (event.type() == QEvent::TouchEnd) {
        giveUp();
        m_hands.markAt(at);
        return;
    }
    m_hands.carry(at);
    m_hands.loupe(at);
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
