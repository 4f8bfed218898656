// A learner's construction, step by step: what is wrong with each, by how much, and where that
// alone would have put the site.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/basics/units.h"
#include "core/build/build.h"
#include "core/grade/grade.h"

namespace fb {

// One step of building, graded on its own.
enum class BuildStep {
    FingersLaid,   // upper edge at the acromion
    FingersLevel,  // square to the arm
    FingerCount,
    Base,
    Apex,
    LineEnds,
    LineHalved,
    ThighEnds,
    Thirds,  // or handbreadths
    FrontLine,
    OuterLine,
    Cell,
    WhichHand,
    Palm,
    IndexFinger,
    MiddleFinger,
    Corners,
    Medians
};
inline constexpr int kBuildStepCount = static_cast<int>(BuildStep::Medians) + 1;

// What is wrong with a step.
enum class Slip {
    None,
    FingersOff,     // direction, cm
    FingersTurned,  // degrees
    FingerCount,    // cm: where the last of them ends below the acromion
    BaseOff,        // direction, cm
    ApexOff,
    TopOff,        // a line's or the thigh's upper end: direction, cm
    BottomOff,     // its lower end
    HalfUneven,    // share of the line, from where its middle belongs
    ThirdsUneven,  // share of the thigh
    FrontLineOff,  // direction, cm straight across the picture
    OuterLineOff,
    WrongCell,
    WrongHand,
    PalmOff,        // direction, cm
    IndexOff,       // direction, cm from the spine
    IndexOnCrest,   // cm from the spine
    FingersClosed,  // degrees
    CornerTrochanterOff,
    CornerTubercleOff,
    CornerSpineOff,
    MedianUneven  // share of the side, from its middle
};
inline constexpr int kSlipCount = static_cast<int>(Slip::MedianUneven) + 1;

// Where a slip alone would have put the site, everything else built flawlessly.
struct Effect {
    Point site;   // viewer's frame, cm
    Cm moved;     // from the ideal point, along the surface
    Grade grade;  // of a needle there
};

struct BuildStepGrade {
    BuildStep step{};
    Slip slip{};  // None: right
    Direction direction{};
    Direction second{};  // of a place that is off aslant (see Ways)
    Cm amount;           // where the slip is a length
    Degrees degrees;     // where it is an angle
    double share = 0.0;
    std::optional<Effect> effect;  // of a slip
    bool carried = false;          // right in itself, but an earlier slip took it along by `amount`
};

// One for each step of the build's kind, in the order of teaching; the build is whole.
[[nodiscard]] std::vector<BuildStepGrade> gradeBuild(const Build& build, const Target& target,
                                                     const Builder& builder, const Policy& policy);

[[nodiscard]] std::string_view wordOf(BuildStep step);
[[nodiscard]] std::string_view wordOf(Slip slip);

}  // namespace fb
