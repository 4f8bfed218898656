// The four things a demonstration changes of a body, as plain numbers that can glide from one body to
// another: bones still while weight alone changes, for the body map moves them by stature, sex and age.
#pragma once

#include <array>
#include <string_view>

#include "core/body/patient.h"

namespace fb {

struct BodyValues {
    double ageYears = 40.0;
    Sex sex = Sex::Female;
    double statureCm = 165.0;
    double weightKg = 65.0;

    friend bool operator==(const BodyValues&, const BodyValues&) = default;
};

// What a slider runs over. The weight's ends follow the stature, so that every body is one Patient::make
// takes.
struct ValueRange {
    double least = 0.0, most = 0.0;
};
[[nodiscard]] ValueRange ageRange();
[[nodiscard]] ValueRange statureRange();
[[nodiscard]] ValueRange weightRange(double statureCm);

// The nearest values that are a body: age and stature held to their ranges, then the weight to its own.
// Not a number becomes the middle of its range.
[[nodiscard]] BodyValues held(BodyValues values);
// The mean body of these values; values that are no body are held first.
[[nodiscard]] Patient patientOf(const BodyValues& values, Side side);
// A share t of the way, 0 to 1, held; the sex is b's as soon as t leaves 0.
[[nodiscard]] BodyValues between(const BodyValues& a, const BodyValues& b, double t);

// Three builds of one age, sex and stature to compare: body-mass index 19, 25 and 38; lab's choice.
enum class Stoutness { Lean, Average, Heavy };
inline constexpr std::array kStoutnesses{Stoutness::Lean, Stoutness::Average, Stoutness::Heavy};
[[nodiscard]] BodyValues withStoutness(BodyValues values, Stoutness stoutness);
[[nodiscard]] std::string_view wordOf(Stoutness stoutness);

}  // namespace fb
