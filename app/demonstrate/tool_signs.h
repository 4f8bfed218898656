// Small drawings on the tools of a demonstration, as lines in one colour on a square of 24 units.
#pragma once

#include <QColor>
#include <QIcon>

namespace fb {

enum class ToolSign {
    Pointer,    // a ring with a dot
    Spotlight,  // a lit circle and the dark round it
    Pen,
    Eraser,
    Lens,
    Ask,        // a raised hand
    PlainLine,  // the first ink's line
    EdgedLine,  // the second's: two edges
    DashedLine,
    Wipe,
    Stay  // a pin through a line
};
inline constexpr int kToolSignCount = static_cast<int>(ToolSign::Stay) + 1;

// Disabled it is drawn in the other colour.
[[nodiscard]] QIcon toolIcon(ToolSign sign, const QColor& ink, const QColor& faint);

}  // namespace fb
