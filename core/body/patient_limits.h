// Whom the adult regressions can answer for: limits of the program, not clinical numbers.
#pragma once

#include <utility>

namespace fb {

inline constexpr std::pair kAgeLimits{18.0, 110.0};       // years
inline constexpr std::pair kStatureLimits{130.0, 215.0};  // cm
inline constexpr std::pair kWeightLimits{30.0, 250.0};    // kg
inline constexpr std::pair kBodyMassLimits{13.0, 70.0};   // kg/m2

}  // namespace fb
