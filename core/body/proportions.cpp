#include "core/body/proportions.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fb {

namespace proportions_detail {

constexpr std::array<std::string_view, kMeasureCount> kWords{
    "acromial_height",   "acromion_to_axilla",  "arm_length",    "biacromial_breadth",
    "bideltoid_breadth", "biceps_girth_flexed", "mid_arm_girth", "forearm_girth_flexed",
    "forearm_length",    "neck_girth",          "chest_breadth", "chest_depth",
    "waist_breadth",     "waist_depth",         "waist_height",  "hand_breadth",
    "triceps_skinfold"};

std::size_t at(Measure measure) { return static_cast<std::size_t>(measure); }
std::size_t at(Sex sex) { return sex == Sex::Female ? 0 : 1; }

bool isLimbLength(Measure measure)
{
    return measure == Measure::ArmLength || measure == Measure::ForearmLength;
}

}  // namespace proportions_detail

using namespace proportions_detail;

std::string_view wordOf(Measure measure) { return kWords[at(measure)]; }

const Proportions::Row& Proportions::row(Measure measure, Sex sex) const
{
    return m_rows[at(measure)][at(sex)];
}

double Proportions::mean(Measure measure, const Patient& patient) const
{
    const Row& r = row(measure, patient.sex());
    const double index = patient.bodyMassIndex();
    double stature = patient.stature().value();
    if (isLimbLength(measure) && patient.ageYears() >= m_olderFrom)
        stature *= m_olderStature[at(patient.sex())];
    const double linear = r.highFrom > 0.0 ? std::min(index, r.highFrom) : index;
    double value = r.intercept + r.stature * stature + r.bmi * linear + r.sqrtBmi * std::sqrt(index) +
                   r.age * patient.ageYears();
    if (r.highFrom > 0.0 && index > r.highFrom)
        value += r.highSqrtBmi * (std::sqrt(index) - std::sqrt(r.highFrom));
    return value;
}

double Proportions::residualSd(Measure measure, Sex sex) const { return row(measure, sex).residualSd; }

const std::string& Proportions::source(Measure measure, Sex sex) const { return row(measure, sex).source; }

Proportions::Share Proportions::axillaShare(Sex sex) const { return m_axillaShare[at(sex)]; }

BodyMeasures measured(const Proportions& proportions, const Patient& patient)
{
    const auto mean = [&](Measure measure) { return proportions.mean(measure, patient); };
    const auto varied = [&](Measure measure, double z) {
        return mean(measure) + z * proportions.residualSd(measure, patient.sex());
    };
    const auto depth = [](double girth) { return Cm{girth / std::numbers::pi}; };

    BodyMeasures body;
    body.armLength = Cm{varied(Measure::ArmLength, patient.individual().armLength)};
    const Proportions::Share share = proportions.axillaShare(patient.sex());
    body.axillaDepth = Cm{std::clamp(varied(Measure::AcromionToAxilla, patient.individual().axillaGap),
                                     (share.mean - 3.0 * share.sd) * body.armLength.value(),
                                     (share.mean + 3.0 * share.sd) * body.armLength.value())};
    body.midArmDepth = depth(varied(Measure::MidArmGirth, patient.individual().armGirth));
    body.forearmDepth = depth(mean(Measure::ForearmGirthFlexed));
    body.forearmLength = Cm{mean(Measure::ForearmLength)};
    body.neckDepth = depth(mean(Measure::NeckGirth));
    body.shoulderBreadth = Cm{mean(Measure::BiacromialBreadth)};
    body.chestDepth = Cm{mean(Measure::ChestDepth)};
    body.chestBreadth = Cm{mean(Measure::ChestBreadth)};
    body.waistDepth = Cm{mean(Measure::WaistDepth)};
    body.waistBreadth = Cm{mean(Measure::WaistBreadth)};
    body.acromionToWaist = Cm{mean(Measure::AcromialHeight) - mean(Measure::WaistHeight)};
    body.headAndNeck = Cm{patient.stature().value() - mean(Measure::AcromialHeight)};
    body.armFat = std::max(Mm{mean(Measure::TricepsSkinfold) / 2.0}, proportions.leastArmFat());
    body.boneSize = mean(Measure::HandBreadth);
    return body;
}

}  // namespace fb
