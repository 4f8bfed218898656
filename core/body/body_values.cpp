#include "core/body/body_values.h"

#include <algorithm>
#include <cmath>

#include "core/body/patient_limits.h"

namespace fb {

namespace body_values_detail {

constexpr ValueRange rangeOf(std::pair<double, double> limits) { return {limits.first, limits.second}; }

constexpr ValueRange kAges = rangeOf(kAgeLimits);
constexpr ValueRange kStatures = rangeOf(kStatureLimits);
constexpr ValueRange kWeights = rangeOf(kWeightLimits);
constexpr ValueRange kIndices = rangeOf(kBodyMassLimits);

// Off the very end of an index: divided by the square of the stature again, it must not come out beyond.
constexpr double kInward = 1e-9;  // kg

double heldTo(ValueRange range, double value)
{
    if (std::isnan(value))
        return (range.least + range.most) / 2.0;
    return std::clamp(value, range.least, range.most);
}

double weightAt(double index, double statureCm) { return index * statureCm * statureCm / 10'000.0; }

double indexOf(Stoutness stoutness)
{
    switch (stoutness) {
    case Stoutness::Lean: return 19.0;
    case Stoutness::Average: return 25.0;
    case Stoutness::Heavy: return 38.0;
    }
    return 25.0;
}

}  // namespace body_values_detail

using namespace body_values_detail;

ValueRange ageRange() { return kAges; }

ValueRange statureRange() { return kStatures; }

ValueRange weightRange(double statureCm)
{
    const double stature = heldTo(kStatures, statureCm);
    return {std::max(kWeights.least, weightAt(kIndices.least, stature) + kInward),
            std::min(kWeights.most, weightAt(kIndices.most, stature) - kInward)};
}

BodyValues held(BodyValues values)
{
    values.ageYears = heldTo(kAges, values.ageYears);
    values.statureCm = heldTo(kStatures, values.statureCm);
    values.weightKg = heldTo(weightRange(values.statureCm), values.weightKg);
    return values;
}

Patient patientOf(const BodyValues& values, Side side)
{
    const BodyValues body = held(values);
    // Held values are a body: a law in tests/property.
    return *Patient::make(body.ageYears, body.sex, Cm{body.statureCm}, Kg{body.weightKg}, side);
}

BodyValues between(const BodyValues& a, const BodyValues& b, double t)
{
    if (!(t > 0.0))
        return a;
    const double share = std::min(t, 1.0);
    return {std::lerp(a.ageYears, b.ageYears, share), b.sex, std::lerp(a.statureCm, b.statureCm, share),
            std::lerp(a.weightKg, b.weightKg, share)};
}

BodyValues withStoutness(BodyValues values, Stoutness stoutness)
{
    values = held(values);
    values.weightKg = weightAt(indexOf(stoutness), values.statureCm);
    return held(values);
}

std::string_view wordOf(Stoutness stoutness)
{
    switch (stoutness) {
    case Stoutness::Lean: return "lean";
    case Stoutness::Average: return "average";
    case Stoutness::Heavy: return "heavy";
    }
    return {};
}

}  // namespace fb
