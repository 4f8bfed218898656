// The path language of a plate: absolute M, L, C and Z with plain numbers.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/plate/plate.h"

namespace fb {

// Rings in the units of the text; straight pieces come back as cubics. nullopt for any other
// letter, a number that is missing or not finite, or a ring that does not start with M.
[[nodiscard]] std::optional<std::vector<Ring>> ringsFrom(std::string_view d);

// "1 2 3.5" or "1,2": exactly `count` finite numbers, nullopt otherwise.
[[nodiscard]] std::optional<std::vector<double>> numbersFrom(std::string_view text, std::size_t count);

}  // namespace fb
