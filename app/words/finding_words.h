// What a chart says of the patient, and how a learner's "not here" is answered: whole sentences in
// the user's language. Which findings rule a site out is common practice, without a source.
#pragma once

#include <QString>
#include <optional>

#include "core/session/finding.h"

namespace fb {

// As a note of the chart: "Chart: a rash over the left thigh."
[[nodiscard]] QString findingText(const Finding& finding);
// As a reason to choose from: "Rash".
[[nodiscard]] QString findingName(FindingCode code);

// What is said of a refusal: the finding is the chart's, the reason the learner's, the outcome
// core's. NothingRulesOut may come without a finding.
[[nodiscard]] QString refusalSentence(RefusalOutcome outcome, const std::optional<Finding>& finding,
                                      FindingCode reason);

// What is said when a mark was set although the chart ruled the site out.
[[nodiscard]] QString missedFindingSentence(const Finding& finding);

}  // namespace fb
