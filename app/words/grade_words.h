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

// Never empty, whatever the combination of site, direction, tissue, verdict and note.
[[nodiscard]] QString reasonSentence(Site site, Verdict verdict, const Reason& reason);
[[nodiscard]] inline QString reasonSentence(Site site, const Grade& grade)
{
    return reasonSentence(site, grade.verdict, grade.reason);
}

// The two ways an offset is told at a site: "Along the arm", "Around the arm"; "Head to foot",
// "Front to back".
[[nodiscard]] QString alongName(Site site);
[[nodiscard]] QString acrossName(Site site);
// From the ideal point: "1.1 cm too high" (toward the head), "0.6 cm too far back"; under half a
// millimetre the words say that it is right.
[[nodiscard]] QString alongText(Cm offDistal);
[[nodiscard]] QString acrossText(Site site, Cm offAnterior);
// "0.4 cm inside", "1.8 cm outside", "on the border".
[[nodiscard]] QString borderText(Cm distanceToBorder);
// All of it in one line: "0.6 cm too far back, 1.1 cm too high".
[[nodiscard]] QString offsetsText(Site site, const Grade& grade);

// Which way the marks of a run lean: (anterior, distal) in cm, and whether it is worth a word.
[[nodiscard]] QString leanSentence(Direction way, Point lean);

}  // namespace fb
