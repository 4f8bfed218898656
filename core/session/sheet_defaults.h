// The numbers a new sheet starts with, and between what they may lie. The only home of these numbers,
// each with its source; a lab changes any of them in a sheet of its own.
// Those of attempts and re-tests stand in core/scoring/retest.h.
#pragma once

#include <cstddef>

#include "core/procedure/constraint.h"

namespace fb {

// A new sheet.
inline constexpr int kSheetSecondsPerItem = 120;  // lab's choice: two minutes
inline constexpr int kSheetSecondsOnScreen = 0;   // no limit beside the items' own: lab's choice
inline constexpr int kSheetSecondsOnManikin =
    600;  // stations last 3 to 10 minutes, as cited from Harden 1990
inline constexpr double kSheetPromptedShare = 0.5;  // lab's choice
inline constexpr double kSheetItemWeight = 1.0;     // lab's choice
inline constexpr double kSheetCutPercent = 80.0;    // lab's choice, until a cohort's own ratings set a cut
inline constexpr double kSheetHeldSeconds = kHoldSeconds;

// What a sheet may ask for: limits of the program, not of assessment.
inline constexpr int kSheetMostItems = 20;
inline constexpr std::size_t kSheetLongestTitle = 120;  // bytes of UTF-8
inline constexpr int kSheetMostSeconds = 7200;          // any one limit
inline constexpr double kSheetLeastWeight = 0.1;
inline constexpr double kSheetMostWeight = 20.0;
inline constexpr double kSheetLongestHold = 60.0;
inline constexpr int kSheetMostAttempts = 10;
inline constexpr int kSheetMostDays = 365;

// Where lean ends and heavy begins, kg/m2: 30 is where the World Health Organization's classes for adults
// speak of obesity; 22 is the lab's choice, so that a lean body is plainly seen to be one.
inline constexpr double kSheetLeanBelow = 22.0;
inline constexpr double kSheetHeavyFrom = 30.0;

}  // namespace fb
