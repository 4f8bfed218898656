// How fine the learner's screen is, found by laying a known thing against the glass.
#pragma once

#include <QString>
#include <optional>

#include "app/doors/profile.h"

class QScreen;

namespace fb {

// ISO/IEC 7810:2019, size ID-1 (bank card): nominal size, and a corner within its allowed radius.
inline constexpr Mm kCardWidth{85.60};
inline constexpr Mm kCardHeight{53.98};
inline constexpr Mm kCardCorner{3.18};
// What of a ruler is laid against the line.
inline constexpr Mm kRulerLength{100.0};

// 1.5 pixels to a millimetre is a wall of 38 dots per inch, 40 are 1016: no screen is beyond.
inline constexpr PixelsPerMm kCoarsest{1.5};
inline constexpr PixelsPerMm kFinest{40.0};

// Of a known length and the screen's own pixels it covers; none for a scale no screen has.
[[nodiscard]] std::optional<PixelsPerMm> scaleFrom(double pixels, Mm length);
[[nodiscard]] Cm lengthOn(PixelsPerMm scale, double pixels);

// By what a screen is known again: plug, maker, model, serial number and its own pixels.
[[nodiscard]] QString screenKey(const QScreen& screen);
// What the system believes of it, or a usual screen where it believes nonsense: to begin with.
[[nodiscard]] PixelsPerMm guessedScale(const QScreen& screen);

}  // namespace fb
