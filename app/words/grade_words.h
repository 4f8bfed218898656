// A grade in the user's language: the verdict's word, one sentence of reason with the harm a
// miss would do, the offsets in words. Whole sentences with placeholders, one for every
// combination core can report, so that a translator never has to glue.
#pragma once

#include <QString>

#include "core/grade/grade.h"

namespace fb {

[[nodiscard]] QString verdictName(Verdict verdict);
// What the verdict says about the place, without its numbers.
[[nodiscard]] QString verdictSentence(Verdict verdict);
[[nodiscard]] QString directionName(Direction direction);
[[nodiscard]] QString tissueName(Tissue tissue);

// Never empty, whatever the combination of direction, tissue, verdict and note.
[[nodiscard]] QString reasonSentence(Verdict verdict, const Reason& reason);
[[nodiscard]] inline QString reasonSentence(const Grade& grade)
{
    return reasonSentence(grade.verdict, grade.reason);
}

// From the ideal point: "1.1 cm too high", "0.6 cm too far back"; under half a millimetre the
// words say that it is right.
[[nodiscard]] QString alongText(Cm offDistal);
[[nodiscard]] QString acrossText(Cm offAnterior);
// "0.4 cm inside", "1.8 cm outside", "on the border".
[[nodiscard]] QString borderText(Cm distanceToBorder);
// All of it in one line: "0.6 cm too far back, 1.1 cm too high".
[[nodiscard]] QString offsetsText(const Grade& grade);

// Which way the marks of a run lean: (anterior, distal) in cm, and whether it is worth a word.
[[nodiscard]] QString leanSentence(Direction way, Point lean);

}  // namespace fb
