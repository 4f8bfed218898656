// Our own small drawings (resources/icons), tinted by the scheme. Each verdict has a shape of
// its own, so that colour never has to be seen.
#pragma once

#include <QIcon>
#include <QPixmap>

#include "app/look/palette.h"
#include "core/grade/grade.h"

class QPainter;

namespace fb {

enum class Icon {
    LayerSkin,
    LayerMuscle,
    LayerNerves,  // nerves and vessels
    LayerBone,
    OnTarget,    // a ring with a full heart
    Acceptable,  // an open ring
    OffTarget,   // half a ring and a stroke that passes it
    Unsafe,      // a ruled lozenge
    ZoomIn,
    ZoomOut,
    ZoomWhole,
    Left,
    Right,
    Caution,
    Done,  // a tick
    Undo,
    Redo,
    StartOver,  // back to the beginning of a stage
    Watch,      // an eye
    Prompted,   // a word said to the student
    NotDone,    // a cross
    Remark,     // a pencil
    Application
};

inline constexpr int kIconCount = static_cast<int>(Icon::Application) + 1;

[[nodiscard]] Icon iconOf(Verdict verdict);
[[nodiscard]] QColor colourOf(Verdict verdict, const Scheme& scheme);

// In the scheme's ink (the application's icon keeps its own colours); verdicts in their colour.
[[nodiscard]] QIcon iconFor(Icon icon, const Scheme& scheme);

// One picture of a size in device-independent pixels, drawn at the given device pixel ratio.
[[nodiscard]] QPixmap pixmapFor(Icon icon, const QColor& colour, int pixels, double devicePixelRatio = 1.0);
// As lines, for paper; in any thread.
void paintIcon(QPainter& painter, Icon icon, const QColor& colour, const QRectF& at);

}  // namespace fb
