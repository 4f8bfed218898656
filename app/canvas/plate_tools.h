// The state of the tools on a plate: the press, the flags, the handles and which of them a hand has hold
// of, and what is laid on the body. No widget: it says when to repaint and what was wished.
#pragma once

#include <QObject>
#include <optional>

#include "app/canvas/held_stage.h"
#include "app/canvas/plate_tool.h"
#include "app/canvas/view_frame.h"

namespace fb {

// What of the tools is painted.
struct ToolFace {
    PlateTool tool = PlateTool::Mark;
    std::optional<PressLook> press;
    QVector<FlagLook> flags;
    QVector<HandleLook> handles;
    int current = -1;
    int hovered = -1;
    std::optional<HeldImage> hand, fingers;
    std::optional<FingersLook> outlines;  // fingers without art
    Qt::LayoutDirection direction = Qt::LeftToRight;
};

class PlateTools : public QObject {
    Q_OBJECT

public:
    explicit PlateTools(QObject* parent = nullptr);

    void setTool(PlateTool tool);
    void setPress(const std::optional<PressLook>& press) { m_face.press = press; }
    void setFlags(const QVector<FlagLook>& flags) { m_face.flags = flags; }
    void setHandles(const QVector<HandleLook>& handles) { m_face.handles = handles; }
    void setCurrentHandle(int id) { m_face.current = id; }
    void setHeldHand(const std::shared_ptr<const HandLook>& hand);
    void setHeldFingers(const std::optional<FingersLook>& fingers);
    void setDirection(Qt::LayoutDirection direction) { m_face.direction = direction; }
    void look(double devicePixelsPerCm, const Scheme& scheme);

    [[nodiscard]] PlateTool tool() const { return m_face.tool; }
    [[nodiscard]] ToolFace face() const;
    [[nodiscard]] bool isHeldSharp() const { return m_hand.isSharp() && m_fingers.isSharp(); }
    // Where the current handle is; nullopt: it is not set yet, or there is none.
    [[nodiscard]] std::optional<QPointF> currentPlace() const;
    [[nodiscard]] bool isDragging() const { return m_grabbed.has_value() && !m_byKey; }

    // A finger on the skin, cm. One that came by keys stays down until something else happens.
    void press(QPointF cm, bool byKey);
    void lift();

    [[nodiscard]] bool grab(const ViewFrame& frame, QPointF at, double reach);
    void drag(const ViewFrame& frame, QPointF at);
    void letGo();
    void putBack();
    // True: another handle is under the pointer now, or none.
    bool hover(const ViewFrame& frame, std::optional<QPointF> at, double reach);
    // The current handle by keys: taken at the first step of a key, let go by endStep().
    void step(QPointF to);
    void endStep();

Q_SIGNALS:
    void heldChanged();  // a hand or fingers were drawn anew
    void pressed(QPointF cm);
    void lifted();
    void handleGrabbed(int id);
    void handleMoved(int id, QPointF cm);
    void handleReleased(int id);

private:
    struct Grab {
        int id;
        QPointF start;   // cm: where the handle was
        QPointF offset;  // cm: from the pointer to the handle
    };
    [[nodiscard]] const HandleLook* handleOf(int id) const;

    ToolFace m_face;
    HeldStage m_hand;
    HeldStage m_fingers;
    std::optional<Grab> m_grabbed;
    bool m_byKey = false;  // the grab, or the finger on the skin
    bool m_down = false;   // a finger is on the skin
};

}  // namespace fb
