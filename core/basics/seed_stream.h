// A replayable stream of numbers from one seed that is handed in. Core has no randomness
// of its own: the same seed gives the same stream on every machine and compiler.
//
// Mixing function: SplitMix64 (Steele, Lea, Flood 2014), an open algorithm.
#pragma once

#include <cstdint>

namespace fb {

class SeedStream {
public:
    explicit SeedStream(std::uint64_t seed) : m_state(seed) {}

    [[nodiscard]] std::uint64_t next();
    // Uniform in [0, 1), 53 bits.
    [[nodiscard]] double unit();
    // Uniform in [low, high).
    [[nodiscard]] double between(double low, double high);
    // Uniform integer in [0, count); count must be at least 1.
    [[nodiscard]] int below(int count);
    // Standard normal deviate, drawn again until it lies within +-cut (cut >= 0.5).
    [[nodiscard]] double normal(double cut);

private:
    std::uint64_t m_state;
};

}  // namespace fb
