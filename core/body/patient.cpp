#include "core/body/patient.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string>
#include <utility>

#include "core/body/patient_limits.h"

namespace fb {

namespace patient_detail {

std::string shown(double value)
{
    std::array<char, 32> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::general, 6);
    return {buffer.data(), end.ptr};
}

bool within(double value, std::pair<double, double> range)
{
    return value >= range.first && value <= range.second;
}

Individual held(Individual individual)
{
    const auto hold = [](double z) { return std::isfinite(z) ? std::clamp(z, -3.0, 3.0) : 0.0; };
    return {hold(individual.armLength), hold(individual.axillaGap),   hold(individual.armGirth),
            hold(individual.crestGap),  hold(individual.thighLength), hold(individual.thighGirth)};
}

}  // namespace patient_detail

using namespace patient_detail;

Result<Patient> Patient::make(double ageYears, Sex sex, Cm stature, Kg weight, Side side,
                              Individual individual)
{
    const auto outOf = [](Problem problem, double value, std::pair<double, double> range) {
        return fault(problem, {}, shown(value), range.first, range.second);
    };
    if (!std::isfinite(ageYears))
        return fault(Problem::AgeNotANumber);
    if (!within(ageYears, kAgeLimits))
        return outOf(Problem::AgeOutOfRange, ageYears, kAgeLimits);
    if (!stature.isFinite())
        return fault(Problem::StatureNotANumber);
    if (!within(stature.value(), kStatureLimits))
        return outOf(Problem::StatureOutOfRange, stature.value(), kStatureLimits);
    if (!weight.isFinite())
        return fault(Problem::WeightNotANumber);
    if (!within(weight.value(), kWeightLimits))
        return outOf(Problem::WeightOutOfRange, weight.value(), kWeightLimits);

    Patient patient;
    patient.m_ageYears = ageYears;
    patient.m_sex = sex;
    patient.m_stature = stature;
    patient.m_weight = weight;
    patient.m_side = side;
    patient.m_individual = held(individual);
    if (!within(patient.bodyMassIndex(), kBodyMassLimits))
        return outOf(Problem::BodyImplausible, patient.bodyMassIndex(), kBodyMassLimits);
    return patient;
}

double Patient::bodyMassIndex() const
{
    const double metres = m_stature.value() / 100.0;
    return m_weight.value() / (metres * metres);
}

Patient Patient::withSide(Side side) const
{
    Patient other = *this;
    other.m_side = side;
    return other;
}

Result<double> ageFromText(std::string_view text)
{
    constexpr double kMonthsPerYear = 12.0;
    constexpr double kDaysPerYear = 365.25;
    double number = 0.0;
    const auto [rest, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const std::string_view unit(rest, static_cast<std::size_t>(text.data() + text.size() - rest));
    if (error == std::errc{} && std::isfinite(number)) {
        if (unit == "y")
            return number;
        if (unit == "mo")
            return number / kMonthsPerYear;
        if (unit == "d")
            return number / kDaysPerYear;
    }
    return fault(Problem::AgeNotANumber, {}, std::string(text));
}

}  // namespace fb
