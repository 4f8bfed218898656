#include "core/body/proportions.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fb {

namespace proportions_detail {

constexpr std::array<std::string_view, kMeasureCount> kWords{"acromial_height",
                                                             "acromion_to_axilla",
                                                             "arm_length",
                                                             "biacromial_breadth",
                                                             "bideltoid_breadth",
                                                             "biceps_girth_flexed",
                                                             "mid_arm_girth",
                                                             "forearm_girth_flexed",
                                                             "forearm_length",
                                                             "neck_girth",
                                                             "chest_breadth",
                                                             "chest_depth",
                                                             "waist_breadth",
                                                             "waist_depth",
                                                             "waist_height",
                                                             "trochanter_height",
                                                             "iliac_crest_height",
                                                             "lateral_epicondyle_height",
                                                             "crest_above_trochanter",
                                                             "thigh_length",
                                                             "hip_breadth",
                                                             "buttock_depth",
                                                             "thigh_girth",
                                                             "lower_thigh_girth",
                                                             "calf_girth",
                                                             "hand_length",
                                                             "palm_length",
                                                             "hand_breadth",
                                                             "triceps_skinfold"};

std::size_t at(Measure measure) { return static_cast<std::size_t>(measure); }
std::size_t at(Sex sex) { return sex == Sex::Female ? 0 : 1; }

bool isLimbLength(Measure measure)
{
    switch (measure) {
    case Measure::ArmLength:
    case Measure::ForearmLength:
    case Measure::TrochanterHeight:
    case Measure::IliacCrestHeight:
    case Measure::LateralEpicondyleHeight:
    case Measure::CrestAboveTrochanter:
    case Measure::ThighLength: return true;
    default: return false;
    }
}

void measureLowerBody(BodyMeasures& body, const Proportions& proportions, const Patient& patient)
{
    const auto varied = [&](Measure measure, double z) {
        return proportions.mean(measure, patient) + z * proportions.residualSd(measure, patient.sex());
    };
    const auto depth = [](double girth) { return Cm{girth / std::numbers::pi}; };
    const Individual& own = patient.individual();
    body.boneStature = proportions.boneStature(patient);
    body.trochanterHeight = Cm{proportions.mean(Measure::TrochanterHeight, patient)};
    body.crestAboveTrochanter = Cm{varied(Measure::CrestAboveTrochanter, own.crestGap)};
    body.spineAboveTrochanter = body.crestAboveTrochanter * proportions.spineShare(patient.sex());
    body.hipCentreAboveTrochanter = body.boneStature * proportions.hipCentreShare();
    body.thighLength = Cm{varied(Measure::ThighLength, own.thighLength)};
    body.hipBreadth = Cm{proportions.mean(Measure::HipBreadth, patient)};
    body.buttockDepth = Cm{proportions.mean(Measure::ButtockDepth, patient)};
    body.thighDepth = depth(varied(Measure::ThighGirth, own.thighGirth));
    body.lowerThighDepth = depth(varied(Measure::LowerThighGirth, own.thighGirth));
    body.calfDepth = depth(proportions.mean(Measure::CalfGirth, patient));
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
    const double stature = isLimbLength(measure) ? boneStature(patient).value() : patient.stature().value();
    const double linear = r.highFrom > 0.0 ? std::min(index, r.highFrom) : index;
    double value = r.intercept + r.stature * stature + r.bmi * linear + r.sqrtBmi * std::sqrt(index) +
                   r.age * patient.ageYears();
    if (r.highFrom > 0.0 && index > r.highFrom)
        value += r.highSqrtBmi * (std::sqrt(index) - std::sqrt(r.highFrom));
    return value;
}

Cm Proportions::boneStature(const Patient& patient) const
{
    if (patient.ageYears() < m_olderFrom)
        return patient.stature();
    return patient.stature() * m_olderStature[at(patient.sex())];
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
    measureLowerBody(body, proportions, patient);
    return body;
}

Result<HandMeasures> measuredHand(const Proportions& proportions, Sex sex, Cm stature)
{
    // Any weight will do: a hand's bones know stature and sex alone.
    constexpr double kAge = 30.0;
    constexpr double kIndex = 22.0;
    const Kg weight{kIndex * stature.value() * stature.value() / 10000.0};
    return Patient::make(kAge, sex, stature, weight, Side::Right).map([&](const Patient& nurse) {
        return HandMeasures{Cm{proportions.mean(Measure::HandLength, nurse)},
                            Cm{proportions.mean(Measure::PalmLength, nurse)},
                            Cm{proportions.mean(Measure::HandBreadth, nurse)}};
    });
}

}  // namespace fb
