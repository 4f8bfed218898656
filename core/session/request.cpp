#include "core/session/request.h"

#include <charconv>
#include <cmath>
#include <string>

#include "core/basics/seed_stream.h"
#include "core/session/population.h"

namespace fb {

namespace request_detail {

// Whole years, centimetres and kilograms, as a chart would give them.
Patient drawnPatient(SeedStream& stream)
{
    for (;;) {
        const Sex sex = stream.below(2) == 0 ? Sex::Female : Sex::Male;
        const Side side = stream.below(2) == 0 ? Side::Left : Side::Right;
        const int age = kYoungest + stream.below(kOldest - kYoungest + 1);
        const StatureSpread spread = statureSpread(sex);
        const double stature = std::round(spread.mean + spread.sd * stream.normal(2.5));
        const double index = kIndexMedian * std::exp(kIndexLogSd * stream.normal(2.5));
        const double arm = stream.normal(kIndividualCut);
        const double own = stream.normal(kIndividualCut);
        const double gap = kArmAxillaCorrelation * arm +
                           std::sqrt(1.0 - kArmAxillaCorrelation * kArmAxillaCorrelation) * own;
        const double girth = stream.normal(kIndividualCut);
        const double weight = std::round(index * stature * stature / 10000.0);
        if (index < kIndexLow || index > kIndexHigh)
            continue;
        if (const auto patient = Patient::make(age, sex, Cm{stature}, Kg{weight}, side, {arm, gap, girth}))
            return *patient;
    }
}

}  // namespace request_detail

Request requestFrom(std::uint64_t seed, int requestNumber)
{
    // Each request has a stream of its own, so that it can be replayed alone.
    SeedStream mixer(seed);
    SeedStream stream(mixer.next() ^
                      (0xD1B54A32D192ED03ULL * (static_cast<std::uint64_t>(requestNumber) + 1)));
    const int tone = stream.below(kSkinToneCount);
    return Request{requestNumber, Site::Deltoid, View::ShoulderSide, request_detail::drawnPatient(stream),
                   tone};
}

Result<std::uint64_t> seedFromText(std::string_view text)
{
    std::uint64_t seed = 0;
    const auto [rest, error] = std::from_chars(text.data(), text.data() + text.size(), seed);
    if (text.empty() || error != std::errc{} || rest != text.data() + text.size() || seed > kLargestSeed)
        return fault(Problem::SeedNotANumber, {}, std::string(text), 0.0, static_cast<double>(kLargestSeed));
    return seed;
}

}  // namespace fb
