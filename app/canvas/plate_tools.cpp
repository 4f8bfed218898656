#include "app/canvas/plate_tools.h"

#include <algorithm>

#include "app/canvas/handle_painter.h"

namespace fb {

namespace tools_state_detail {

QPointF heldOn(const QRectF& picture, QPointF p)
{
    return {std::clamp(p.x(), picture.left(), picture.right()),
            std::clamp(p.y(), picture.top(), picture.bottom())};
}

}  // namespace tools_state_detail

PlateTools::PlateTools(QObject* parent) : QObject(parent)
{
    connect(&m_hand, &HeldStage::changed, this, &PlateTools::heldChanged);
    connect(&m_fingers, &HeldStage::changed, this, &PlateTools::heldChanged);
}

void PlateTools::setTool(PlateTool tool)
{
    if (tool == m_face.tool)
        return;
    putBack();
    endStep();
    lift();
    m_face.tool = tool;
    m_face.hovered = -1;
}

void PlateTools::setHeldHand(const std::shared_ptr<const HandLook>& hand)
{
    m_hand.hold(hand ? heldOf(*hand) : std::nullopt);
}

void PlateTools::setHeldFingers(const std::optional<FingersLook>& fingers)
{
    m_fingers.hold(fingers ? heldOf(*fingers) : std::nullopt);
    m_face.outlines = fingers && !fingers->art ? fingers : std::nullopt;
}

void PlateTools::look(double devicePixelsPerCm, const Scheme& scheme)
{
    m_hand.look(devicePixelsPerCm, scheme);
    m_fingers.look(devicePixelsPerCm, scheme);
}

ToolFace PlateTools::face() const
{
    ToolFace now = m_face;
    now.hand = m_hand.image();
    now.fingers = m_fingers.image();
    return now;
}

const HandleLook* PlateTools::handleOf(int id) const
{
    const auto found = std::ranges::find(m_face.handles, id, &HandleLook::id);
    return found == m_face.handles.end() ? nullptr : &*found;
}

std::optional<QPointF> PlateTools::currentPlace() const
{
    const HandleLook* handle = handleOf(m_face.current);
    return handle ? std::optional(handle->cm) : std::nullopt;
}

void PlateTools::press(QPointF cm, bool byKey)
{
    if (m_down && m_byKey != byKey)
        lift();
    m_down = true;
    m_byKey = byKey;
    Q_EMIT pressed(cm);
}

void PlateTools::lift()
{
    if (!m_down)
        return;
    m_down = false;
    m_byKey = false;
    Q_EMIT lifted();
}

bool PlateTools::grab(const ViewFrame& frame, QPointF at, double reach)
{
    endStep();
    const HandleLook* handle = handleOf(nearestHandle(m_face.handles, frame.cmToWidget(), at, reach));
    if (!handle)
        return false;
    m_grabbed = Grab{handle->id, handle->cm, handle->cm - frame.toCm(at)};
    m_byKey = false;
    Q_EMIT handleGrabbed(m_grabbed->id);
    return true;
}

void PlateTools::drag(const ViewFrame& frame, QPointF at)
{
    if (!isDragging())
        return;
    Q_EMIT handleMoved(m_grabbed->id,
                       tools_state_detail::heldOn(frame.picture(), frame.toCm(at) + m_grabbed->offset));
}

void PlateTools::letGo()
{
    if (!m_grabbed)
        return;
    const int id = m_grabbed->id;
    m_grabbed.reset();
    m_byKey = false;
    Q_EMIT handleReleased(id);
}

void PlateTools::putBack()
{
    if (!isDragging())
        return;
    Q_EMIT handleMoved(m_grabbed->id, m_grabbed->start);
    letGo();
}

bool PlateTools::hover(const ViewFrame& frame, std::optional<QPointF> at, double reach)
{
    const int id = at ? nearestHandle(m_face.handles, frame.cmToWidget(), *at, reach) : -1;
    const bool another = id != m_face.hovered;
    m_face.hovered = id;
    return another;
}

void PlateTools::step(QPointF to)
{
    const HandleLook* handle = handleOf(m_face.current);
    if (!handle)
        return;
    if (m_grabbed && m_grabbed->id != handle->id)
        endStep();
    if (!m_grabbed) {
        m_grabbed = Grab{handle->id, handle->cm, {}};
        m_byKey = true;
        Q_EMIT handleGrabbed(m_grabbed->id);
    }
    Q_EMIT handleMoved(m_grabbed->id, to);
}

void PlateTools::endStep()
{
    if (m_grabbed && m_byKey)
        letGo();
}

}  // namespace fb
