// A sheet: what a check-off asks, how long, and when it is passed. Read from and written to one JSON
// text, in which every key stands, so that a lab can keep, mail and version it; a new sheet starts with the
// numbers of sheet_defaults.h.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/procedure/observed.h"
#include "core/scoring/retest.h"
#include "core/session/request.h"
#include "core/session/sheet_defaults.h"

namespace fb {

struct SheetItem {
    Site site{};
    std::optional<Side> side{};  // none: drawn with the patient
    View view{};                 // one in which the site is asked
    HelpLevel help = HelpLevel::Nothing;
    bool byHand = false;  // landmarks and construction by the student's own hand

    friend bool operator==(const SheetItem&, const SheetItem&) = default;
};

// Whose bodies are drawn, by body-mass index, kg/m2: lab's choice.
enum class Population { Any, Lean, Average, Heavy };
inline constexpr int kPopulationCount = static_cast<int>(Population::Heavy) + 1;

enum class SeedRule {
    SameForAll,  // every student marks the same patients
    OwnForEach   // drawn anew for each attempt
};
inline constexpr int kSeedRuleCount = static_cast<int>(SeedRule::OwnForEach) + 1;

struct Sheet {
    std::string title;
    bool invented = false;         // sample data
    std::vector<SheetItem> items;  // 1 to 20
    Population population = Population::Any;
    SeedRule seedRule = SeedRule::OwnForEach;
    std::uint64_t seed = 1;                       // of SameForAll
    int secondsPerItem = kSheetSecondsPerItem;    // 0: only the whole is timed
    int secondsOnScreen = kSheetSecondsOnScreen;  // 0: no limit, likewise the next
    int secondsOnManikin = kSheetSecondsOnManikin;
    Protocol protocol;
    std::vector<SheetStep> steps;                // in order of teaching; none: no manikin phase
    double promptedShare = kSheetPromptedShare;  // of a step's point when it was prompted
    double itemWeight = kSheetItemWeight;        // points of one item against one step
    double cutPercent = kSheetCutPercent;
    double heldSeconds = kSheetHeldSeconds;  // to be held after injecting, under the Z-track
    RetestRule retest;

    friend bool operator==(const Sheet&, const Sheet&) = default;
};

// SheetNotReadable (where: the place in the text), SheetUnknownKey, SheetMissingKey, SheetWrongValue (where:
// key; what: the value; low..high), SheetNoItems.
[[nodiscard]] Result<Sheet> sheetFrom(std::string_view text);
[[nodiscard]] Result<Sheet> checkedSheet(Sheet sheet);
// Always the same bytes for the same sheet.
[[nodiscard]] std::string textOf(const Sheet& sheet);

// The requests of one attempt. Same sheet and seed, same requests.
[[nodiscard]] std::vector<SetRequest> requestsOf(const Sheet& sheet, std::uint64_t seed);

// Under, and from, which body-mass index a patient is lean or heavy.
struct IndexRange {
    double low = 0.0;
    double high = 0.0;
};
[[nodiscard]] IndexRange indexRange(Population population);

[[nodiscard]] std::string_view wordOf(Population population);
[[nodiscard]] std::string_view wordOf(SeedRule rule);
[[nodiscard]] std::string_view wordOf(HelpLevel help);

}  // namespace fb
