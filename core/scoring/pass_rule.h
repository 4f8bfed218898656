// Whether a check-off is passed. A high score never buys back a missed critical step.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace fb {

// Kept apart in every record; in the order in which the first that holds is the outcome.
enum class Outcome {
    VoidTechnical,  // uses up no attempt
    NoShow,
    StoppedSafety,
    FailCritical,  // a critical step missed, a hard breach of order or an unsafe mark
    FailTime,
    FailScore,
    Pass
};
inline constexpr int kOutcomeCount = static_cast<int>(Outcome::Pass) + 1;

struct ScoredCheckOff {
    bool voided = false;
    bool noShow = false;
    bool safetyStop = false;
    int criticalMissed = 0;
    int hardBreaches = 0;
    int unsafeMarks = 0;
    bool timeKept = true;
    double earned = 0.0;
    double possible = 0.0;
    double cutPercent = 0.0;
};

struct Decision {
    Outcome outcome{};
    std::vector<Outcome> alsoTrue;  // every other reason to fail that holds; a void or a no-show judges none
    double percent = 0.0;           // 0 where nothing was possible
};

// The border of the cut counts as passed, whatever sums of parts have lost to rounding.
[[nodiscard]] Decision decide(const ScoredCheckOff& scored);

[[nodiscard]] std::string_view wordOf(Outcome outcome);  // pass, fail_critical, void_technical, no_show ...
[[nodiscard]] std::optional<Outcome> outcomeFrom(std::string_view word);

}  // namespace fb
