// A learner's flags against the landmarks that were asked: found, near, off, under another
// bone's name, or missing.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/basics/units.h"
#include "core/grade/grade.h"
#include "core/policy/policy.h"
#include "core/site/landmark.h"

namespace fb {

// Planted on the skin under a name; at most one under each name.
struct Flag {
    Landmark name{};
    Point at;  // viewer's frame, cm

    friend bool operator==(const Flag&, const Flag&) = default;
};

enum class FlagVerdict {
    Found,     // within the policy's tolerance
    Near,      // within twice as much, or what the policy says
    Off,       // farther away
    Misnamed,  // the place is right, the name is not
    Missing
};
inline constexpr int kFlagVerdictCount = static_cast<int>(FlagVerdict::Missing) + 1;

struct FlagGrade {
    Landmark asked{};
    FlagVerdict verdict{};
    std::optional<Flag> flag;  // none when missing
    // Straight across the picture from the flag to the landmark, cm, and the way the flag lies off.
    Cm distance;
    Direction direction{};
    Direction second{};  // of a flag that lies aslant (see Ways)
    // Off: the bony point that lies there instead, if any.
    std::optional<Landmark> really;
};

// One for each asked landmark, in the order of teaching.
[[nodiscard]] std::vector<FlagGrade> gradeFlags(const Target& target, const Policy& policy,
                                                std::span<const Flag> flags);

// The way from one place to another on the body, in its two parts: High to the head, Forward to the front.
struct Ways {
    Direction first = Direction::None;   // the greater part
    Direction second = Direction::None;  // the lesser, where it is at least half as much

    friend bool operator==(const Ways&, const Ways&) = default;
};

[[nodiscard]] Ways waysOn(const Target& target, Point a, Point b);
// The greater part alone.
[[nodiscard]] Direction directionOn(const Target& target, Point a, Point b);

[[nodiscard]] std::string_view wordOf(FlagVerdict verdict);

}  // namespace fb
