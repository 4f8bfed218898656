// One request, marked or refused, with what came of it: the same for practice, for a check-off and for its
// replay a year later.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/point.h"
#include "core/grade/by_hand_grade.h"
#include "core/session/request.h"

namespace fb {

// "Not here", and why.
struct Refusal {
    FindingCode reason{};  // as the learner gave it
    RefusalOutcome outcome{};
};

struct Attempt {
    Request request;
    std::optional<bool> sideRight;  // whether the side was picked right at the first try, if asked
    Point mark;                     // viewer's frame, cm
    Grade grade;
    Point offIdeal;  // cm of the surface from the ideal: (anterior, distal), over the target's scale
    // Instead of a mark; then only verdict and points of the grade count.
    std::optional<Refusal> refusal{};
    // Marked although the chart rules the site out: unsafe, wherever the mark lies.
    bool missedFinding = false;
    // Of a request found by hand.
    std::vector<Flag> flags{};
    std::optional<Build> build{};
    std::optional<ByHandGrade> byHand{};
    bool watched = false;  // the program had shown how
};

// `limb`: what of the body the mark lies on (markedLimb).
[[nodiscard]] Attempt markedAttempt(const Target& target, const Policy& policy, const Request& request,
                                    Point mark, MarkedLimb limb);
// What the hand did before the mark, and the points of all three. The build is whole.
[[nodiscard]] Attempt foundByHand(Attempt attempt, const Target& target, const Policy& policy,
                                  std::vector<Flag> flags, Build build);
// `weight`: of the request against one mark.
[[nodiscard]] Attempt refusedAttempt(const Policy& policy, const Request& request, FindingCode reason,
                                     double weight);

}  // namespace fb
