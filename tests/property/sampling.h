// Patients for laws: replayable from a seed that every failure prints, and the corners of what
// the program accepts. Sanitizer and Debug builds take a tenth of the rounds.
#pragma once

#include <algorithm>
#include <vector>

#include "core/basics/seed_stream.h"
#include "core/session/request.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace fb::test {

[[nodiscard]] inline int rounds(int inRelease)
{
#ifdef NDEBUG
    return inRelease;
#else
    return std::max(1, inRelease / 10);
#endif
}

// A convention in a view it may be shown in.
struct Shown {
    Convention convention{};
    View view{};
};

[[nodiscard]] inline std::vector<Shown> everyShown()
{
    std::vector<Shown> all;
    for (const Convention convention : kConventions) {
        for (const View view : kViews) {
            if (siteOf(view) == siteOf(convention))
                all.push_back({convention, view});
        }
    }
    return all;
}

[[nodiscard]] inline std::string shown(Shown one)
{
    return std::string(wordOf(one.convention)) + " in " + std::string(wordOf(one.view));
}

// The site's conventions in turn.
[[nodiscard]] inline Convention conventionInTurn(Site site, int number)
{
    const auto own = conventionsOf(site);
    return own[static_cast<std::size_t>(number) % own.size()];
}

[[nodiscard]] inline Patient sampledPatient(std::uint64_t seed, int number)
{
    return requestFrom(seed, number).patient;
}

[[nodiscard]] inline Patient madePatient(double age, Sex sex, double stature, double weight, Side side,
                                         Individual individual = {})
{
    return Patient::make(age, sex, Cm{stature}, Kg{weight}, side, individual).value();
}

// Every combination of the ends of age, stature, weight and individual deviation.
[[nodiscard]] inline std::vector<Patient> cornerPatients()
{
    std::vector<Patient> corners;
    for (const Sex sex : kSexes) {
        for (const double age : {18.0, 64.9, 65.0, 110.0}) {
            for (const double stature : {130.0, 215.0}) {
                const double lightest = std::max(30.0, weightOf(13.001, stature));
                const double heaviest = std::min(250.0, weightOf(69.999, stature));
                for (const double weight : {lightest, heaviest}) {
                    for (int bits = 0; bits < 8; ++bits) {
                        const auto end = [bits](int bit) { return (bits >> bit & 1) != 0 ? 3.0 : -3.0; };
                        // Arm, and hip and thigh, share nothing: the same ends do for both.
                        corners.push_back(madePatient(age, sex, stature, weight, Side::Right,
                                                      {end(0), end(1), end(2), end(0), end(1), end(2)}));
                    }
                }
            }
        }
    }
    return corners;
}

[[nodiscard]] inline std::string shown(const Patient& p)
{
    const Individual& own = p.individual();
    return std::string(wordOf(p.sex())) + " " + std::to_string(p.ageYears()) + " y " +
           std::to_string(p.stature().value()) + " cm " + std::to_string(p.weight().value()) + " kg " +
           std::string(wordOf(p.side())) + " own " + std::to_string(own.armLength) + " " +
           std::to_string(own.axillaGap) + " " + std::to_string(own.armGirth) + ", " +
           std::to_string(own.crestGap) + " " + std::to_string(own.thighLength) + " " +
           std::to_string(own.thighGirth);
}

[[nodiscard]] inline Point pointIn(SeedStream& stream, Bounds box)
{
    const double x = stream.between(box.low.x, box.high.x);
    return {x, stream.between(box.low.y, box.high.y)};
}

[[nodiscard]] inline Target targetIn(const Patient& patient, Shown one,
                                     const Policy& policy = defaultPolicy())
{
    return locate(atlas(), policy, patient, one.convention, one.view).value();
}

// In the view its site is usually asked in.
[[nodiscard]] inline Target targetOf(const Patient& patient, Convention convention,
                                     const Policy& policy = defaultPolicy())
{
    return targetIn(patient, {convention, askedViews(siteOf(convention)).front()}, policy);
}

}  // namespace fb::test
