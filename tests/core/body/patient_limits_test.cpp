#include "core/body/patient_limits.h"

#include <gtest/gtest.h>

#include "core/body/patient.h"

namespace fb::test::patient_limits_test {

bool isTaken(double age, double stature, double weight)
{
    return Patient::make(age, Sex::Male, Cm{stature}, Kg{weight}, Side::Left).has_value();
}

TEST(PatientLimitsTest, AreWhatAPatientIsHeldTo)
{
    constexpr double kBeyond = 1e-6;
    constexpr double kStature = 180.0;
    constexpr double kWeight = 80.0;
    EXPECT_TRUE(isTaken(kAgeLimits.first, kStature, kWeight));
    EXPECT_FALSE(isTaken(kAgeLimits.first - kBeyond, kStature, kWeight));
    EXPECT_TRUE(isTaken(kAgeLimits.second, kStature, kWeight));
    EXPECT_FALSE(isTaken(kAgeLimits.second + kBeyond, kStature, kWeight));
    EXPECT_TRUE(isTaken(40, kStatureLimits.first, 50));
    EXPECT_FALSE(isTaken(40, kStatureLimits.first - kBeyond, 50));
    EXPECT_TRUE(isTaken(40, kStatureLimits.second, 90));
    EXPECT_FALSE(isTaken(40, kStatureLimits.second + kBeyond, 90));
    EXPECT_TRUE(isTaken(40, kStatureLimits.first, kWeightLimits.first));
    EXPECT_FALSE(isTaken(40, kStatureLimits.first, kWeightLimits.first - kBeyond));
    EXPECT_TRUE(isTaken(40, 200, kWeightLimits.second));
    EXPECT_FALSE(isTaken(40, 200, kWeightLimits.second + kBeyond));
    const double square = kStature * kStature / 1e4;
    EXPECT_TRUE(isTaken(40, kStature, kBodyMassLimits.first * square + kBeyond));
    EXPECT_FALSE(isTaken(40, kStature, kBodyMassLimits.first * square - kBeyond));
    EXPECT_TRUE(isTaken(40, kStature, kBodyMassLimits.second * square - kBeyond));
    EXPECT_FALSE(isTaken(40, kStature, kBodyMassLimits.second * square + kBeyond));
}

}  // namespace fb::test::patient_limits_test
