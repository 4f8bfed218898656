// What is asked of the learner, from a seed: same seed and length, same requests.
#pragma once

#include <cstdint>
#include <string_view>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/body/patient.h"

namespace fb {

enum class HelpLevel { DrawnAndNamed, NamedOnly, Nothing };
inline constexpr int kHelpLevelCount = static_cast<int>(HelpLevel::Nothing) + 1;

inline constexpr int kSkinToneCount = 5;

struct Request {
    int number = 0;  // from 0
    Site site{};
    View view{};
    Patient patient;   // carries the side
    int skinTone = 0;  // 0 lightest to kSkinToneCount - 1 darkest: how the plate is toned
};

// The requestNumber-th request of a seed. Adults drawn from the spread of the survey named in
// the source; deviations correlated and cut at 3 SD.
[[nodiscard]] Request requestFrom(std::uint64_t seed, int requestNumber);

// A seed as shown and typed: decimal digits, 0 to 2^53.
[[nodiscard]] Result<std::uint64_t> seedFromText(std::string_view text);
inline constexpr std::uint64_t kLargestSeed = 1ULL << 53;

}  // namespace fb
