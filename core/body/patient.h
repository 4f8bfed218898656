// Whom the learner is looking at: nothing identifying, valid from birth.
#pragma once

#include <string_view>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/basics/units.h"

namespace fb {

// How far this one person lies from the mean of people of the same sex, stature and weight,
// in residual standard deviations (-3 to 3). All zero: the mean body.
struct Individual {
    double armLength = 0.0;
    double axillaGap = 0.0;
    double armGirth = 0.0;
    double crestGap = 0.0;  // iliac crest above the trochanter
    double thighLength = 0.0;
    double thighGirth = 0.0;

    friend bool operator==(const Individual&, const Individual&) = default;
};

class Patient {
public:
    // Adults of 18 to 110 years, 130 to 215 cm, 30 to 250 kg, body-mass index 13 to 70.
    // Anything else, not a number, or implausible together is a fault naming the field.
    // Individual deviations are held to -3..3.
    [[nodiscard]] static Result<Patient> make(double ageYears, Sex sex, Cm stature, Kg weight, Side side,
                                              Individual individual = {});

    [[nodiscard]] double ageYears() const { return m_ageYears; }
    [[nodiscard]] Sex sex() const { return m_sex; }
    [[nodiscard]] Cm stature() const { return m_stature; }
    [[nodiscard]] Kg weight() const { return m_weight; }
    [[nodiscard]] Side side() const { return m_side; }
    [[nodiscard]] const Individual& individual() const { return m_individual; }
    [[nodiscard]] double bodyMassIndex() const;  // kg/m2

    [[nodiscard]] Patient withSide(Side side) const;

    friend bool operator==(const Patient&, const Patient&) = default;

private:
    Patient() = default;

    double m_ageYears = 0.0;
    Sex m_sex{};
    Cm m_stature;
    Kg m_weight;
    Side m_side{};
    Individual m_individual;
};

// "34y", "6mo", "14d" to years; a fault (AgeNotANumber) for anything else.
[[nodiscard]] Result<double> ageFromText(std::string_view text);

}  // namespace fb
