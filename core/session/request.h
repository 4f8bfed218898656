// What is asked of the learner, from a seed: same seed and length, same requests.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/body/patient.h"
#include "core/session/finding.h"

namespace fb {

enum class HelpLevel { DrawnAndNamed, NamedOnly, Nothing };
inline constexpr int kHelpLevelCount = static_cast<int>(HelpLevel::Nothing) + 1;

inline constexpr int kSkinToneCount = 5;

// Which sites a run asks for.
struct SiteSet {
    std::array<bool, kSites.size()> chosen{true, false, false};

    [[nodiscard]] bool has(Site site) const { return chosen[static_cast<std::size_t>(site)]; }
    void set(Site site, bool on) { chosen[static_cast<std::size_t>(site)] = on; }
    [[nodiscard]] int count() const { return static_cast<int>(std::ranges::count(chosen, true)); }
    [[nodiscard]] static SiteSet all() { return {{true, true, true}}; }
    [[nodiscard]] static SiteSet only(Site site);

    friend bool operator==(const SiteSet&, const SiteSet&) = default;
};

// What requests are drawn from.
struct RequestMix {
    SiteSet sites;
    bool findings = false;  // some requests carry a note of the chart, and some of those rule the site out

    friend bool operator==(const RequestMix&, const RequestMix&) = default;
};

struct Request {
    int number = 0;  // from 0
    Site site{};
    View view{};
    Patient patient;                   // carries the side
    int skinTone = 0;                  // 0 lightest to kSkinToneCount - 1 darkest: how the plate is toned
    std::optional<Finding> finding{};  // a note of the chart
};

// One that is set and not drawn, with how it is asked.
struct SetRequest {
    Request request;
    HelpLevel help{};
    bool byHand = false;
};

// The requestNumber-th request of a seed. Adults drawn from the spread of the survey named in
// the source; deviations correlated and cut at 3 SD. The body of a request is the same whatever
// the mix. A mix without a site asks for the deltoid.
[[nodiscard]] Request requestFrom(std::uint64_t seed, int requestNumber, const RequestMix& mix = {});

// A seed as shown and typed: decimal digits, 0 to 2^53.
[[nodiscard]] Result<std::uint64_t> seedFromText(std::string_view text);
inline constexpr std::uint64_t kLargestSeed = 1ULL << 53;

}  // namespace fb
