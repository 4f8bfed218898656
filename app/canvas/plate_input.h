// What hands do to a plate: mouse, wheel, keys, pinch and touch, told as wishes to whoever
// owns the plate. Keeps only what a gesture under way needs.
#pragma once

#include <QEvent>
#include <QObject>
#include <QPointF>
#include <QTimer>
#include <optional>

#include "app/canvas/tool_hands.h"

class QKeyEvent;
class QMouseEvent;
class QTouchEvent;
class QWheelEvent;

namespace fb {

// Places are widget pixels, steps are centimetres (y up).
class PlateHands : public ToolHands {
public:
    [[nodiscard]] virtual bool isMarkable() const = 0;
    virtual void carry(std::optional<QPointF> at) = 0;  // a mark under a moving hand; nullopt: none
    virtual void markAt(QPointF at) = 0;
    virtual void loupe(std::optional<QPointF> at) = 0;
    virtual void panBy(QPointF pixels) = 0;
    virtual void zoomAt(QPointF at, double factor) = 0;
    virtual void zoom(double factor) = 0;  // about the crosshair where there is one
    virtual void whole() = 0;
    virtual void stepCrosshair(QPointF cm) = 0;
    virtual void enter() = 0;
    virtual void withdraw() = 0;
    virtual void setByKeyboard(bool keyboard) = 0;  // the last wish came from keys
    virtual void setMoving(bool moving) = 0;        // a drag is under way
};

class PlateInput : public QObject {
    Q_OBJECT

public:
    static constexpr int kHoldMs = 300;          // after which a held button shows the loupe
    static constexpr double kSlip = 3.0;         // pixels a click may slip
    static constexpr double kStepCm = 0.5;       // arrows
    static constexpr double kFineStepCm = 0.1;   // with Shift
    static constexpr double kMouseReach = 12.0;  // pixels from a handle that a click still takes it
    static constexpr double kTouchReach = 22.0;

    explicit PlateInput(PlateHands& hands, QObject* parent = nullptr);

    // True: the event was a wish and is accepted.
    [[nodiscard]] bool handle(QEvent* event);

private:
    enum class Gesture { None, Marking, Panning, Pressing, Handling };

    bool pressed(const QMouseEvent& event);
    bool moved(const QMouseEvent& event);
    bool released(const QMouseEvent& event);
    bool wheel(const QWheelEvent& event);
    bool key(const QKeyEvent& event);
    bool keyLetGo(const QKeyEvent& event);
    bool arrow(const QKeyEvent& event);
    bool editing(const QKeyEvent& event);
    bool back(const QKeyEvent& event);
    bool touch(const QTouchEvent& event);
    void touchWithOne(const QTouchEvent& event);
    bool touchWithTool(QEvent::Type type, QPointF at);
    void touchWithTwo(const QTouchEvent& event);
    bool beginWithTool(QPointF at, double reach);
    void beginMarking(QPointF at);
    [[nodiscard]] bool isToolAtWork() const
    {
        return m_gesture == Gesture::Pressing || m_gesture == Gesture::Handling;
    }
    void giveUp();

    PlateHands& m_hands;
    QTimer m_hold;
    Gesture m_gesture = Gesture::None;
    Qt::MouseButton m_button = Qt::NoButton;
    QPointF m_from;
    QPointF m_last;
    bool m_carrying = false;
    bool m_space = false;
    bool m_twoFingers = false;
    double m_spread = 0.0;
};

}  // namespace fb
