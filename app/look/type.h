// Letters: two faces and a small scale of sizes, in device-independent pixels times the text
// scale (1 to 2, what the user calls 100 to 200 percent; anything else is held to it).
#pragma once

#include <QFont>

namespace fb {

enum class Type {
    Title,       // display face: page titles
    Request,     // display face: what the learner is asked
    Body,        // text face: controls and running text
    Small,       // text face: asides and the caution
    PlateLabel,  // display face, italic: names on a plate
    PlateWord    // display face, letters spaced: words in an area
};

inline constexpr int kTypeCount = static_cast<int>(Type::PlateWord) + 1;

[[nodiscard]] double heldTextScale(double textScale);

// Law: pixelSize grows with the scale; no face is ever under 12 pixels.
[[nodiscard]] QFont fontOf(Type type, double textScale);

// The scale that a widget's running text was set in: the inverse of fontOf(Type::Body, ...).
[[nodiscard]] double textScaleOf(const QFont& body);

}  // namespace fb
