// What hands do with the tools other than the mark, told as wishes to whoever owns the plate. One
// who only marks leaves them all as they are.
#pragma once

#include <QPointF>
#include <optional>

#include "app/canvas/plate_tool.h"

namespace fb {

// Places are widget pixels.
class ToolHands {
public:
    virtual ~ToolHands() = default;
    [[nodiscard]] virtual PlateTool tool() const { return PlateTool::Mark; }
    virtual void press(QPointF) {}  // again and again while the finger moves
    virtual void lift() {}
    // Takes hold of the nearest handle within reach, pixels; false: there is none.
    virtual bool grab(QPointF, double) { return false; }
    virtual void drag(QPointF) {}
    virtual void letGo() {}
    virtual void putBack() {}  // the drag is given up
    virtual void hover(std::optional<QPointF>) {}
    virtual void endStep() {}  // the arrow key was let go
    virtual void enterBack() {}
    virtual void undo() {}
    virtual void redo() {}
};

}  // namespace fb
