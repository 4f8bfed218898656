// What a chart says of the patient beside the order. Some findings rule a site out; the same
// finding on the other side, or on another part of the body, does not.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/basics/enums.h"

namespace fb {

// Which findings rule a site out: common practice, no source.
enum class FindingCode {
    Rash,
    Scar,
    Bruise,
    Cast,          // plaster cast
    Fistula,       // arteriovenous, of an arm
    Mastectomy,    // of a breast
    Paralysis,     // of one half of the body
    LastInjection  // the last injection was given there
};
inline constexpr int kFindingCodeCount = static_cast<int>(FindingCode::LastInjection) + 1;
[[nodiscard]] constexpr FindingCode findingAt(int index) { return static_cast<FindingCode>(index); }

enum class BodyPart { UpperArm, Thigh, Hip, WholeSide };

struct Finding {
    FindingCode code{};
    BodyPart part{};  // WholeSide: of a fistula's arm, a breast or a palsy there is one a side
    Side side{};

    friend bool operator==(const Finding&, const Finding&) = default;
};

[[nodiscard]] BodyPart partOf(Site site);

// A rash, scar, bruise, cast or last injection rules out the part and side it is on; fistula
// and mastectomy the deltoid of their side; a palsy every site of its side.
[[nodiscard]] bool rulesOut(const Finding& finding, Site site, Side side);

// A learner's "not here", held against the chart.
enum class RefusalOutcome {
    RightReason,
    WrongReason,     // the site is ruled out, but by something else
    NothingRulesOut  // the site could have been used
};
inline constexpr int kRefusalOutcomeCount = static_cast<int>(RefusalOutcome::NothingRulesOut) + 1;

[[nodiscard]] RefusalOutcome refused(const std::optional<Finding>& finding, Site site, Side side,
                                     FindingCode reason);

[[nodiscard]] std::string_view wordOf(FindingCode code);
[[nodiscard]] std::string_view wordOf(BodyPart part);
[[nodiscard]] std::string_view wordOf(RefusalOutcome outcome);

}  // namespace fb
