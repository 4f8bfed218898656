// What hands wish of a plate, and what they have on it besides the picture.
#include <QLineF>
#include <algorithm>

#include "app/canvas/plate_stage.h"
#include "app/canvas/tool_painter.h"

namespace fb {

namespace stage_detail {

inline constexpr double kSameSpot = 0.01;    // cm
inline constexpr double kShowMargin = 60.0;  // pixels kept around a crosshair that moves

QPointF heldIn(const QRectF& box, QPointF p)
{
    return {std::clamp(p.x(), box.left(), box.right()), std::clamp(p.y(), box.top(), box.bottom())};
}

}  // namespace stage_detail

// Repaints what the tools covered before and cover now.
template <typename Change>
void PlateStage::changeTools(Change change)
{
    const QRectF before = toolsBox(face());
    change();
    Q_EMIT changedWithin(before | toolsBox(face()));
}

void PlateStage::setTool(PlateTool tool)
{
    m_tools.setTool(tool);
    Q_EMIT changed();
}

void PlateStage::setPress(const std::optional<PressLook>& press)
{
    changeTools([&] { m_tools.setPress(press); });
}

void PlateStage::setFlags(const QVector<FlagLook>& flags)
{
    m_tools.setFlags(flags);
    Q_EMIT changed();
}

void PlateStage::setHandles(const QVector<HandleLook>& handles)
{
    const bool crossed = showsCrosshair();
    changeTools([&] { m_tools.setHandles(handles); });
    if (crossed != showsCrosshair())
        Q_EMIT changed();
}

void PlateStage::setCurrentHandle(int id)
{
    const bool crossed = showsCrosshair();
    changeTools([&] { m_tools.setCurrentHandle(id); });
    if (const auto place = m_tools.currentPlace())
        m_crosshair = *place;
    if (crossed || showsCrosshair())
        Q_EMIT changed();
}

void PlateStage::setHeldHand(const std::shared_ptr<const HandLook>& hand)
{
    changeTools([&] { m_tools.setHeldHand(hand); });
}

void PlateStage::setHeldFingers(const std::optional<FingersLook>& fingers)
{
    changeTools([&] { m_tools.setHeldFingers(fingers); });
}

void PlateStage::setDirection(Qt::LayoutDirection direction)
{
    m_tools.setDirection(direction);
    Q_EMIT changed();
}

void PlateStage::lookAgain() { m_tools.look(m_face.frame.pixelsPerCm() * m_pixelRatio, m_face.scheme); }

PlateFace PlateStage::paintedFace()
{
    PlateFace now = face();
    if (tool() != PlateTool::Mark)
        now.sceneLayer = m_sceneLayer.of(now, m_pixelRatio);
    return now;
}

bool PlateStage::movesHandle() const
{
    return tool() == PlateTool::Handles && m_tools.currentPlace().has_value();
}

bool PlateStage::showsCrosshair() const
{
    return isMarkable() && m_byKeyboard && m_face.focused && !movesHandle();
}

void PlateStage::press(QPointF at)
{
    m_crosshair = stage_detail::heldIn(m_face.frame.picture(), m_face.frame.toCm(at));
    m_tools.press(m_crosshair, false);
}

bool PlateStage::grab(QPointF at, double reach)
{
    const bool grabbed = m_tools.grab(m_face.frame, at, reach);
    if (grabbed)
        Q_EMIT cursorWished(Qt::ClosedHandCursor);
    return grabbed;
}

void PlateStage::letGo()
{
    m_tools.letGo();
    Q_EMIT cursorWished(m_tools.face().hovered >= 0 ? Qt::OpenHandCursor : Qt::CrossCursor);
}

void PlateStage::putBack()
{
    m_tools.putBack();
    Q_EMIT cursorWished(Qt::CrossCursor);
}

void PlateStage::hover(std::optional<QPointF> at)
{
    if (tool() != PlateTool::Handles)
        return;
    const QRectF before = toolsBox(face());
    if (!m_tools.hover(m_face.frame, at, PlateInput::kMouseReach))
        return;
    Q_EMIT cursorWished(m_tools.face().hovered >= 0 ? Qt::OpenHandCursor : Qt::CrossCursor);
    Q_EMIT changedWithin(before | toolsBox(face()));
}

void PlateStage::carry(std::optional<QPointF> at)
{
    m_carried = at ? std::optional(m_face.frame.toCm(*at)) : std::nullopt;
    Q_EMIT changed();
}

void PlateStage::markAt(QPointF at)
{
    m_crosshair = m_face.frame.toCm(at);
    Q_EMIT marked(m_crosshair);
    Q_EMIT changed();
}

void PlateStage::loupe(std::optional<QPointF> at)
{
    m_face.loupe = at;
    Q_EMIT changed();
}

void PlateStage::panBy(QPointF pixels) { setFrame(m_face.frame.panned(pixels)); }

void PlateStage::zoomAt(QPointF at, double factor) { setFrame(m_face.frame.zoomedAt(at, factor)); }

void PlateStage::zoom(double factor)
{
    zoomAt(showsCrosshair() ? m_face.frame.toWidget(m_crosshair) : m_face.frame.sheet().center(), factor);
}

void PlateStage::whole() { setFrame(ViewFrame::whole(m_face.frame.sheet(), m_face.frame.picture())); }

void PlateStage::around(const QRectF& cm) { setFrame(m_face.frame.around(cm)); }

void PlateStage::stepCrosshair(QPointF cm)
{
    const QPointF from = movesHandle() ? *m_tools.currentPlace() : m_crosshair;
    m_crosshair = stage_detail::heldIn(m_face.frame.picture(), from + cm);
    setFrame(m_face.frame.showing(m_crosshair, stage_detail::kShowMargin));
    if (movesHandle()) {
        m_tools.step(m_crosshair);
        return;
    }
    if (tool() == PlateTool::Press)
        m_tools.press(m_crosshair, true);
    Q_EMIT crosshairMoved();
    Q_EMIT changed();
}

void PlateStage::enter()
{
    m_tools.endStep();
    if (movesHandle())
        Q_EMIT handleStepped(1);
    else if (tool() != PlateTool::Mark)
        Q_EMIT marked(m_crosshair);
    else if (m_face.mark && QLineF(*m_face.mark, m_crosshair).length() < stage_detail::kSameSpot)
        Q_EMIT gradeAsked();
    else
        Q_EMIT marked(m_crosshair);
}

void PlateStage::withdraw() { Q_EMIT withdrawAsked(); }

void PlateStage::setByKeyboard(bool keyboard)
{
    if (keyboard == m_byKeyboard)
        return;
    m_byKeyboard = keyboard;
    Q_EMIT changed();
}

void PlateStage::setMoving(bool moving)
{
    m_moving = moving;
    if (!moving)
        m_settle.start();
}

}  // namespace fb
