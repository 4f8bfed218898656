#include "app/canvas/tool_painter.h"

#include <QPainter>

#include "app/canvas/flag_painter.h"
#include "app/canvas/handle_painter.h"
#include "app/canvas/press_painter.h"
#include "app/canvas/scene_layer.h"

namespace fb {

namespace tool_painter_detail {

inline constexpr double kMargin = 8.0;  // between words and the sheet's edge

QRectF paperOf(const PlateFace& face)
{
    return face.frame.sheet().adjusted(kMargin, kMargin, -kMargin, -kMargin);
}

PressPlace pressPlaceOf(const PlateFace& face)
{
    return {face.frame.toWidget(face.tools.press->cm), face.frame.pixelsPerCm(), paperOf(face),
            face.textScale};
}

HandlesPlace handlesPlaceOf(const PlateFace& face)
{
    return {face.frame.cmToWidget(), paperOf(face), face.textScale,      face.tools.current,
            face.tools.hovered,      face.focused,  face.tools.direction};
}

// What the words of a press keep clear of: flags, and the names on the plate.
QVector<QRectF> keptClearOf(const PlateFace& face)
{
    QVector<QRectF> boxes = labelBoxes(face);
    for (const FlagLook& flag : face.tools.flags)
        boxes.push_back(flagBox(face.frame.toWidget(flag.cm), paperOf(face), face.textScale));
    return boxes;
}

}  // namespace tool_painter_detail

void paintLaid(QPainter& painter, const PlateFace& face)
{
    const QTransform toWidget = face.frame.cmToWidget();
    if (face.tools.fingers)
        paintHeld(painter, *face.tools.fingers, toWidget);
    if (face.tools.hand)
        paintHeld(painter, *face.tools.hand, toWidget);
    if (face.tools.outlines)
        paintFingerOutlines(painter, *face.tools.outlines, face.scheme, toWidget, face.textScale);
}

void paintToolsOver(QPainter& painter, const PlateFace& face)
{
    using namespace tool_painter_detail;
    painter.setLayoutDirection(face.tools.direction);
    if (!face.tools.handles.isEmpty())
        paintHandles(painter, face.tools.handles, handlesPlaceOf(face), face.scheme);
    if (face.tools.press)
        paintPress(painter, *face.tools.press, pressPlaceOf(face), face.scheme, keptClearOf(face));
}

QRectF pressedBox(const PlateFace& face)
{
    return face.tools.press ? ringBox(*face.tools.press, tool_painter_detail::pressPlaceOf(face)) : QRectF();
}

QRectF toolsBox(const PlateFace& face)
{
    using namespace tool_painter_detail;
    const QTransform toWidget = face.frame.cmToWidget();
    QRectF box;
    for (const auto& held : {face.tools.hand, face.tools.fingers})
        if (held)
            box |= toWidget.mapRect(held->box());
    if (face.tools.outlines)
        box |= toWidget.mapRect(outlinesBox(*face.tools.outlines));
    if (!face.tools.handles.isEmpty())
        box |= handlesBox(face.tools.handles, handlesPlaceOf(face));
    if (face.tools.press)
        box |= pressBox(*face.tools.press, pressPlaceOf(face), keptClearOf(face), face.tools.direction);
    return box;
}

}  // namespace fb
