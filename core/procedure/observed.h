// What an assessor saw on the manikin, judged: each step done, prompted or not done, and every constraint
// that was broken.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/procedure/constraint.h"

namespace fb {

enum class Seen { Done, Prompted, NotDone };
inline constexpr int kSeenCount = static_cast<int>(Seen::NotDone) + 1;

struct Observation {
    ProcedureStep step{};
    Seen seen{};
    double at = 0.0;  // seconds since the phase began, pauses left out; of NotDone without meaning
    std::string remark{};

    friend bool operator==(const Observation&, const Observation&) = default;
};

// A step an assessor watches for.
struct SheetStep {
    ProcedureStep step{};
    bool critical = false;

    friend bool operator==(const SheetStep&, const SheetStep&) = default;
};

// A constraint that was broken.
struct Breach {
    ConstraintId id{};
    ConstraintKind kind{};
    Severity severity{};
    ProcedureStep first{};
    ProcedureStep then{};
    double seconds = 0.0;  // AtLeast: asked for
    double was = 0.0;      // AtLeast: seen

    friend bool operator==(const Breach&, const Breach&) = default;
};

struct ProcedureGrade {
    std::vector<Breach> breaches;  // hard ones first, then by constraint
    std::vector<ProcedureStep>
        missedCritical;     // critical and not done, or only when prompted; in order of teaching
    double earned = 0.0;    // points
    double possible = 0.0;  // one for each step of the sheet that belongs to the protocol

    [[nodiscard]] bool isUnsafe() const;  // a hard breach
};

// Steps of the sheet without an observation are not done; of several observations of one step the last
// counts. Order is that of `at`, at the same moment that of the observations.
//
// A constraint counts only where both its steps are watched: on the sheet and of the protocol, or seen. Where
// a step between two others of one chain is not watched, those two are held to each other, as softly as the
// softer link. A recap counts wherever it is seen, unless the needle is watched and was still clean.
// AtLeast counts where both steps were seen in order, to the millisecond; the border is kept.
//
// `held`: the assessor's stopwatch from injecting to withdrawing, s, in place of the time between those two
// observations; `heldAtLeast`: what the lab asks for, in place of the constraint's own seconds.
//
// A step earns its point when done, `promptedShare` of it when prompted, and nothing when it is the `then` of
// a soft breach.
[[nodiscard]] ProcedureGrade judge(std::span<const SheetStep> sheet, const Protocol& protocol,
                                   std::span<const Observation> seen, std::optional<double> held,
                                   double promptedShare, std::optional<double> heldAtLeast = {});

[[nodiscard]] std::string_view wordOf(Seen seen);  // done, prompted, not_done
[[nodiscard]] std::optional<Seen> seenFrom(std::string_view word);

}  // namespace fb
