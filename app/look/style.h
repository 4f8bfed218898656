// The look of every control in one place: flat, hairlines instead of boxes, one accent, a
// focus ring that can be seen, at least 32 pixels to hit (44 in comfortable mode, for fingers).
#pragma once

#include <QString>

#include "app/look/palette.h"

class QApplication;

namespace fb {

enum class Reach { Compact, Comfortable };

[[nodiscard]] constexpr int leastControlHeight(Reach reach) { return reach == Reach::Comfortable ? 44 : 32; }

// Distances between things, in device-independent pixels.
namespace space {
inline constexpr int kTight = 4;
inline constexpr int kNear = 8;
inline constexpr int kApart = 16;
inline constexpr int kMargin = 28;
inline constexpr int kBroad = 44;
}  // namespace space

// Sets style, palette, font and style sheet of the whole application. May be called again at
// any time: everything on screen follows.
//
// Widgets ask for a role by the property "look": on a QLabel "title", "request", "small" or
// "caution", and "display" or "large" for what is read standing; on a QPushButton "main" for the one main action of a page; on a QToolButton
// "layer" for a button that stays down; on a QFrame "rule" for a hairline.
void applyStyle(QApplication& application, const Scheme& scheme, double textScale,
                Reach reach = Reach::Compact);

[[nodiscard]] QString styleSheetOf(const Scheme& scheme, double textScale, Reach reach);

}  // namespace fb
