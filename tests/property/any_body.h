// Bodies as a demonstration's sliders make them, every one replayable from law and number; failures print
// what told() says.
#pragma once

#include <cstdint>
#include <string>

#include "core/body/body_values.h"
#include "tests/property/sampling.h"

namespace fb::test::any_body {

inline constexpr std::uint64_t kLectureSeed = 611;

[[nodiscard]] inline SeedStream streamOf(int law, int number)
{
    return SeedStream(kLectureSeed + static_cast<std::uint64_t>(law) * 1'000'000 +
                      static_cast<std::uint64_t>(number));
}

[[nodiscard]] inline std::string told(int number, const BodyValues& body, Shown one)
{
    return "seed " + std::to_string(kLectureSeed) + " number " + std::to_string(number) + ": " + shown(one) +
           ", " + shown(patientOf(body, Side::Right));
}

[[nodiscard]] inline double valueIn(SeedStream& stream, ValueRange range)
{
    // Every eighth lies at an end: sliders are pushed against their stops.
    switch (stream.below(16)) {
    case 0: return range.least;
    case 1: return range.most;
    default: return stream.between(range.least, range.most);
    }
}

[[nodiscard]] inline BodyValues anyBody(SeedStream& stream)
{
    BodyValues body;
    body.ageYears = valueIn(stream, ageRange());
    body.sex = stream.below(2) == 0 ? Sex::Female : Sex::Male;
    body.statureCm = valueIn(stream, statureRange());
    body.weightKg = valueIn(stream, weightRange(body.statureCm));
    return body;
}

[[nodiscard]] inline Shown inTurn(int number)
{
    static const std::vector<Shown> all = everyShown();
    return all[static_cast<std::size_t>(number) % all.size()];
}

[[nodiscard]] inline Side anySide(SeedStream& stream)
{
    return stream.below(2) == 0 ? Side::Left : Side::Right;
}

}  // namespace fb::test::any_body
