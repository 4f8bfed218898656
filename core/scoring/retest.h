// Where one student stands on one sheet: attempts used, what is due, when the next may be.
#pragma once

#include <chrono>
#include <optional>
#include <span>
#include <string_view>

#include "core/scoring/pass_rule.h"

namespace fb {

using Day = std::chrono::sys_days;  // of the lab's calendar

// What a new sheet starts with. "Handbook practice": what lab policies in the published student handbooks of
// nursing programmes in the United States agree on, editions of 2019 to 2026.
inline constexpr int kAttempts = 3;                  // handbook practice: two to three
inline constexpr int kDaysBetween = 1;               // handbook practice: never on the same day
inline constexpr bool kRemediationFirst = true;      // handbook practice: signed before each further attempt
inline constexpr bool kSecondAssessorOnLast = true;  // handbook practice: two assessors at the last attempt
inline constexpr bool kNoShowCounts = false;         // lab's choice; handbooks count it as an attempt

struct RetestRule {
    int attempts = kAttempts;
    int daysBetween = kDaysBetween;
    bool remediationFirst = kRemediationFirst;
    bool secondAssessorOnLast = kSecondAssessorOnLast;
    bool noShowCounts = kNoShowCounts;

    friend bool operator==(const RetestRule&, const RetestRule&) = default;
};

struct PastAttempt {
    Outcome outcome{};
    Day on{};
    bool remediationSigned = false;  // after it
};

enum class Standing {
    NotTried,
    Running,
    Passed,
    RemediationDue,  // to be signed first
    Waiting,         // for the earliest day
    MayRetest,
    OutOfAttempts
};
inline constexpr int kStandingCount = static_cast<int>(Standing::OutOfAttempts) + 1;

struct WhereTheyStand {
    Standing standing{};
    int used = 0;  // attempts that count
    int allowed = 0;
    std::optional<Day> earliest;       // of the next attempt, when there is one to come after a fail
    bool needsSecondAssessor = false;  // the next attempt does

    friend bool operator==(const WhereTheyStand&, const WhereTheyStand&) = default;
};

// Attempts in the order they were made. A void uses up none and asks for nothing, likewise a no-show that
// does not count; one that counts is a fail like any other. A pass ends it. Running goes before all others;
// its second assessor is that of the running attempt.
[[nodiscard]] WhereTheyStand standing(const RetestRule& rule, std::span<const PastAttempt> past, bool running,
                                      Day today);

[[nodiscard]] std::string_view wordOf(Standing standing);
[[nodiscard]] std::optional<Standing> standingFrom(std::string_view word);

}  // namespace fb
