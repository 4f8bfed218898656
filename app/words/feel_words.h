// What a fingertip feels, in words: short ones to stand beside the finger, whole sentences to be
// spoken. They tell what is felt and never which bone it is.
#pragma once

#include <QString>

#include "core/feel/feel.h"
#include "core/site/target.h"

namespace fb {

[[nodiscard]] QString firmnessName(Firmness firmness);
// "Hard, a knob", "Hard, an edge", "Hard, broad bone", "Firm, muscle", "Soft, fat"
[[nodiscard]] QString feelName(const Feel& feel);
// "plain", "dull through 22 mm of fat", "faint through 48 mm of fat"
[[nodiscard]] QString clearnessText(const Feel& feel);
// Of a bone that lies beside the finger: "Bone beside your finger, toward the head"; else empty.
// `at` is where the finger presses, viewer's frame, cm.
[[nodiscard]] QString besideText(const Feel& feel, const Target& target, Point at);
// How far an edge was followed: "An edge, followed for 4.2 cm"; empty under half a centimetre.
[[nodiscard]] QString followedText(Cm followed);

// For the plaque beside the finger: two or three short lines.
[[nodiscard]] QString feelPlaque(const Feel& feel, const Target& target, Point at, Cm followed = {});
// The same as sentences for a screen reader.
[[nodiscard]] QString feelSentence(const Feel& feel, const Target& target, Point at, Cm followed = {});

}  // namespace fb
