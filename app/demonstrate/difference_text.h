// How far apart two ideal points are, in words.
#pragma once

#include <QString>

#include "app/lecture/lecture_state.h"

namespace fb {

// "Ideal points 1.4 cm apart"; to the millimetre, "Ideal points in the same place" under half of one.
[[nodiscard]] QString apartText(const TargetDifference& difference);
// "The pinned body's lies 1.2 cm lower and 0.6 cm further forward." Empty where they are in the same place or
// nothing is compared.
[[nodiscard]] QString whereText(const TargetDifference& difference, Compare compare);
// Why the ideal points of two bodies lie so, and how much fat lies over the muscle of each: for bodies of one
// age, sex and stature "Bone decides, not weight: ...". Of other bodies the fat alone. Empty in a view in
// which nothing can be felt.
[[nodiscard]] QString whyText(const LectureBody& shown, const LectureBody& pinned,
                              const TargetDifference& difference);
// Whether nothing but the weight differs.
[[nodiscard]] bool differInWeightAlone(const LectureBody& a, const LectureBody& b);

}  // namespace fb
