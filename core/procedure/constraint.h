// What must come before what: precedence constraints, hard (unsafe, ends the attempt) and soft (costs
// that step's marks). Any order that keeps them passes.
//
// From OpenStax Pharmacology for Nurses (steps to administering an intramuscular medication), OSHA on
// recapping and WHO on hand hygiene; which are hard and which are soft is the lab's choice.
#pragma once

#include <span>

#include "core/procedure/step.h"

namespace fb {

enum class Severity { Hard, Soft };

// One family of constraints, as the lab's sheet numbers them: P1 to P18.
using ConstraintId = int;

enum class ConstraintKind {
    Before,  // `first` is seen and comes before `then`, wherever `then` is seen
    After,   // `then` is seen after `first`, wherever `first` is seen (nothing is left undone)
    Never,   // `then` is never seen once `first` was
    AtLeast  // between `first` and `then` lie so many seconds
};

// Under which protocol a constraint holds.
enum class Condition { Always, CleansSkin, ZTrack, Aspirates, FilterNeedle, NoFilterNeedle };

struct Constraint {
    ConstraintId id{};
    ConstraintKind kind{};
    Severity severity{};
    ProcedureStep first{};
    ProcedureStep then{};
    double seconds = 0.0;  // AtLeast
    Condition when = Condition::Always;
};

// How long the needle stays after injecting under the Z-track, s: OpenStax Pharmacology for Nurses, "wait 10
// seconds".
inline constexpr double kHoldSeconds = 10.0;

// The only home of the constraints and their seconds, each with its source beside it.
[[nodiscard]] std::span<const Constraint> constraints();
[[nodiscard]] bool holds(Condition condition, const Protocol& protocol);

}  // namespace fb
