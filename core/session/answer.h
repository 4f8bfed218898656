// A student's answer to one item of a check-off, as it is kept: enough to replay the grade on the plate a
// year later.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/session/practice.h"

namespace fb {

struct Answer {
    int item = 0;  // from 0
    Request request;
    Convention convention{};
    bool timeUp = false;          // no answer was given: nothing of the next is set
    std::optional<Point> mark{};  // viewer's frame, cm
    std::optional<FindingCode> refusal{};
    std::vector<Flag> flags{};  // of an item by hand, likewise the build
    std::optional<Build> build{};
    bool byHand = false;

    // What came of it.
    Verdict verdict = Verdict::OffTarget;
    double points = 0.0;  // of 1
    Cm distanceToIdeal{};
    Cm offDistal{};
    Cm offAnterior{};
    Direction direction{};  // outside the region, the greater way
    std::optional<HazardCode> hazard{};
};

// From a graded attempt. Points are parts of one, whatever the policy gives for an item.
[[nodiscard]] Answer answerOf(int item, const Attempt& attempt, Convention convention, const Policy& policy);
[[nodiscard]] Answer unanswered(int item, const Request& request, Convention convention);

// The attempt as it was graded: the same plate, policy and mark; a refusal weighs as one mark. The faults of
// locate() and markedLimb().
[[nodiscard]] Result<Attempt> regraded(const Answer& answer, const Atlas& atlas, const Policy& policy);

// One line of JSON, always the same bytes for the same answer. AnswerNotReadable (where: key).
[[nodiscard]] std::string textOf(const Answer& answer);
[[nodiscard]] Result<Answer> answerFrom(std::string_view text);

}  // namespace fb
