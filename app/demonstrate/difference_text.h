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

}  // namespace fb
