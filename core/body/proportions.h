// From age, sex, stature and weight to the lengths, breadths and depths of a body.
//
// Coefficients and their sources stand in resources/proportions/adult.json, their only home:
// value = intercept + stature * cm + bmi * (kg/m2) + sqrtBmi * sqrt(kg/m2) + age * years.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "core/basics/problem.h"
#include "core/basics/units.h"
#include "core/body/patient.h"

namespace fb {

enum class Measure {
    AcromialHeight,
    AcromionToAxilla,
    ArmLength,  // acromion to radiale
    BiacromialBreadth,
    BideltoidBreadth,
    BicepsGirthFlexed,
    MidArmGirth,  // relaxed
    ForearmGirthFlexed,
    ForearmLength,  // radiale to stylion
    NeckGirth,
    ChestBreadth,
    ChestDepth,
    WaistBreadth,
    WaistDepth,
    WaistHeight,       // navel
    TrochanterHeight,  // above the sole, standing, likewise the next two
    IliacCrestHeight,
    LateralEpicondyleHeight,
    CrestAboveTrochanter,
    ThighLength,  // trochanter to lateral femoral epicondyle
    HipBreadth,
    ButtockDepth,
    ThighGirth,       // at the gluteal fold
    LowerThighGirth,  // just above the patella
    CalfGirth,
    HandLength,
    PalmLength,
    HandBreadth,
    TricepsSkinfold  // mm, double fold
};

inline constexpr std::size_t kMeasureCount = static_cast<std::size_t>(Measure::TricepsSkinfold) + 1;

[[nodiscard]] std::string_view wordOf(Measure measure);  // key in the file

class Proportions {
public:
    // Every measure must be there for both sexes, finite, with a source; the growth of fat over the
    // hip, what it starts from and where it goes straight must be above zero.
    [[nodiscard]] static Result<Proportions> parse(std::string_view text);

    // The regression's value at the mean, cm (mm for the skinfold). Above the body-mass index
    // named in the file a breadth goes on along its square-root curve, joined without a step.
    // From 65 years limb lengths are those of the patient's younger stature.
    [[nodiscard]] double mean(Measure measure, const Patient& patient) const;
    // Residual standard deviation about that mean, same unit.
    [[nodiscard]] double residualSd(Measure measure, Sex sex) const;
    [[nodiscard]] const std::string& source(Measure measure, Sex sex) const;

    // Skin and fat over the muscle of the thigh: straight in the body-mass index, with a floor.
    struct ThighFat {
        double mm = 0.0;  // at this index
        double atIndex = 0.0;
        double perIndex = 0.0;  // mm
        double least = 0.0;     // mm
        std::string source;
    };
    [[nodiscard]] const ThighFat& thighFat(Sex sex) const { return m_thighFat[sex == Sex::Male ? 1 : 0]; }
    // The same of the hip: rising by a constant share with the index, straight above a thickness.
    struct HipFat {
        double mm = 0.0;  // at this index
        double atIndex = 0.0;
        double growth = 0.0;        // share a point of the index, compounding without a step
        double straightFrom = 0.0;  // mm
        double perIndex = 0.0;      // mm, above it
        std::string source;
    };
    [[nodiscard]] const HipFat& hipFat(Sex sex) const { return m_hipFat[sex == Sex::Male ? 1 : 0]; }

    // Depth of the axilla as a share of the arm length.
    struct Share {
        double mean = 0.0;
        double sd = 0.0;
    };
    [[nodiscard]] Share axillaShare(Sex sex) const;
    [[nodiscard]] Mm leastArmFat() const { return m_leastArmFat; }
    // Height of the anterior superior iliac spine, as a share of the way from trochanter to crest.
    [[nodiscard]] double spineShare(Sex sex) const { return m_spineShare[sex == Sex::Male ? 1 : 0]; }
    // How far the hip joint's centre lies above the trochanter, as a share of the stature.
    [[nodiscard]] double hipCentreShare() const { return m_hipCentreShare; }
    // Stature as the bones of the lower body know it: from 65 years that of younger days.
    [[nodiscard]] Cm boneStature(const Patient& patient) const;

private:
    struct Row {
        double intercept = 0.0;
        double stature = 0.0;
        double bmi = 0.0;
        double sqrtBmi = 0.0;
        double age = 0.0;
        double highFrom = 0.0;     // body-mass index where the square-root slope takes over; 0: never
        double highSqrtBmi = 0.0;  // slope per sqrt(bmi) above it
        double residualSd = 0.0;
        std::string source;
    };
    friend class ProportionsReader;
    Proportions() = default;
    [[nodiscard]] const Row& row(Measure measure, Sex sex) const;

    std::array<std::array<Row, 2>, kMeasureCount> m_rows;
    std::array<Share, 2> m_axillaShare;
    std::array<double, 2> m_olderStature{1.0, 1.0};
    double m_olderFrom = 0.0;
    Mm m_leastArmFat;
    std::array<ThighFat, 2> m_thighFat;
    std::array<HipFat, 2> m_hipFat;
    std::array<double, 2> m_spineShare{};
    double m_hipCentreShare = 0.0;
};

// Everything the plates need of one body, with the individual's deviations in it.
struct BodyMeasures {
    Cm armLength;     // acromion to radiale
    Cm axillaDepth;   // acromion level to axilla level, held within 3 SD of its share of the arm
    Cm midArmDepth;   // relaxed girth over pi
    Cm forearmDepth;  // girth over pi
    Cm forearmLength;
    Cm neckDepth;        // girth over pi
    Cm shoulderBreadth;  // acromion to acromion
    Cm chestDepth, chestBreadth;
    Cm waistDepth, waistBreadth;
    Cm acromionToWaist;  // along the trunk
    Cm headAndNeck;      // acromion level to the crown
    Mm armFat;           // skin and fat over the deltoid: half the triceps skinfold, at least 1 mm
    // Hip and thigh.
    Cm trochanterHeight;  // above the sole, standing
    Cm spineAboveTrochanter, crestAboveTrochanter, hipCentreAboveTrochanter;
    Cm thighLength;
    Cm hipBreadth, buttockDepth;
    Cm thighDepth, lowerThighDepth, calfDepth;  // girths over pi
    Cm boneStature;                             // breadth of the bones of the lower body goes with it
    double boneSize = 1.0;  // breadth of bones: the hand's breadth stands for them, by stature and sex alone
};

[[nodiscard]] BodyMeasures measured(const Proportions& proportions, const Patient& patient);

// Hand of a nurse, from sex and stature at the mean.
struct HandMeasures {
    Cm length, palm, breadth;
};
// Stature as a patient's: 130 to 215 cm.
[[nodiscard]] Result<HandMeasures> measuredHand(const Proportions& proportions, Sex sex, Cm stature);

}  // namespace fb
