#include "core/body/body_values.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <set>
#include <string>

#include "tests/support/core_atlas.h"

namespace fb::test::body_values_test {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinite = std::numeric_limits<double>::infinity();
constexpr double kHair = 1e-6;

bool isTaken(double age, double stature, double weight)
{
    return Patient::make(age, Sex::Female, Cm{stature}, Kg{weight}, Side::Left).has_value();
}

double indexOf(const BodyValues& values)
{
    return values.weightKg * 10'000.0 / (values.statureCm * values.statureCm);
}

TEST(BodyValuesTest, TheRangesAreExactlyWhatAPatientIsMadeOf)
{
    EXPECT_TRUE(isTaken(ageRange().least, 165, 65));
    EXPECT_TRUE(isTaken(ageRange().most, 165, 65));
    EXPECT_FALSE(isTaken(ageRange().least - kHair, 165, 65));
    EXPECT_FALSE(isTaken(ageRange().most + kHair, 165, 65));
    EXPECT_TRUE(isTaken(40, statureRange().least, 65));
    EXPECT_TRUE(isTaken(40, statureRange().most, 95));
    EXPECT_FALSE(isTaken(40, statureRange().least - kHair, 65));
    EXPECT_FALSE(isTaken(40, statureRange().most + kHair, 95));
}

TEST(BodyValuesTest, BothEndsOfTheWeightAreABodyAndAHairBeyondIsNone)
{
    for (double stature = statureRange().least; stature <= statureRange().most; stature += 0.125) {
        const ValueRange range = weightRange(stature);
        ASSERT_LT(range.least, range.most);
        ASSERT_TRUE(isTaken(40, stature, range.least)) << stature;
        ASSERT_TRUE(isTaken(40, stature, range.most)) << stature;
        ASSERT_FALSE(isTaken(40, stature, range.least - kHair)) << stature;
        ASSERT_FALSE(isTaken(40, stature, range.most + kHair)) << stature;
    }
}

TEST(BodyValuesTest, TheWeightsEndsFollowTheStatureByTheBodyMassIndex)
{
    EXPECT_NEAR(weightRange(170).least, 13 * 1.7 * 1.7, kHair);
    EXPECT_NEAR(weightRange(170).most, 70 * 1.7 * 1.7, kHair);
    EXPECT_DOUBLE_EQ(weightRange(130).least, 30.0);
    EXPECT_DOUBLE_EQ(weightRange(215).most, 250.0);
    EXPECT_DOUBLE_EQ(weightRange(999).most, weightRange(statureRange().most).most);
    EXPECT_DOUBLE_EQ(weightRange(kNan).least, weightRange(172.5).least);
}

TEST(BodyValuesTest, WhatIsABodyStaysAsItIs)
{
    const BodyValues body{71.5, Sex::Male, 181.25, 93.75};
    EXPECT_EQ(held(body), body);
    EXPECT_EQ(held(BodyValues{}), BodyValues{});
}

TEST(BodyValuesTest, WhatIsOutOfRangeBecomesTheNearestBody)
{
    const BodyValues young = held({5.0, Sex::Female, 120.0, 10.0});
    EXPECT_DOUBLE_EQ(young.ageYears, 18.0);
    EXPECT_DOUBLE_EQ(young.statureCm, 130.0);
    EXPECT_DOUBLE_EQ(young.weightKg, 30.0);
    const BodyValues vast = held({kInfinite, Sex::Male, 1e9, kInfinite});
    EXPECT_DOUBLE_EQ(vast.ageYears, 110.0);
    EXPECT_DOUBLE_EQ(vast.statureCm, 215.0);
    EXPECT_DOUBLE_EQ(vast.weightKg, 250.0);
    EXPECT_EQ(vast.sex, Sex::Male);
    // The weight is held to the stature that was held, not to the one that was asked.
    EXPECT_DOUBLE_EQ(held({40, Sex::Male, 100.0, 200.0}).weightKg, weightRange(130).most);
}

TEST(BodyValuesTest, NotANumberBecomesTheMiddleOfItsRange)
{
    const BodyValues middle = held({kNan, Sex::Female, kNan, kNan});
    EXPECT_DOUBLE_EQ(middle.ageYears, 64.0);
    EXPECT_DOUBLE_EQ(middle.statureCm, 172.5);
    EXPECT_DOUBLE_EQ(middle.weightKg, (weightRange(172.5).least + weightRange(172.5).most) / 2);
}

TEST(BodyValuesTest, ThePatientIsTheMeanBodyOfThoseValues)
{
    const Patient patient = patientOf({71.5, Sex::Male, 181.25, 93.75}, Side::Left);
    EXPECT_EQ(patient, adult(Sex::Male, 181.25, 93.75, Side::Left, 71.5));
    EXPECT_EQ(patient.individual(), Individual{});
    EXPECT_EQ(patientOf({kNan, Sex::Male, 1e9, -1}, Side::Right).stature(), Cm{215.0});
}

TEST(BodyValuesTest, BetweenTwoBodiesEveryValueGlidesAndTheSexChangesAtOnce)
{
    const BodyValues a{20.0, Sex::Female, 150.0, 50.0};
    const BodyValues b{80.0, Sex::Male, 190.0, 130.0};
    EXPECT_EQ(between(a, b, 0.0), a);
    EXPECT_EQ(between(a, b, 1.0), b);
    EXPECT_EQ(between(a, b, 0.25), (BodyValues{35.0, Sex::Male, 160.0, 70.0}));
    EXPECT_EQ(between(a, b, 1e-9).sex, Sex::Male);
    EXPECT_EQ(between(a, b, -3.0), a);
    EXPECT_EQ(between(a, b, 7.0), b);
    EXPECT_EQ(between(a, b, kNan), a);
}

TEST(BodyValuesTest, ABuildChangesTheWeightAlone)
{
    const BodyValues body{52.0, Sex::Male, 178.0, 60.0};
    EXPECT_NEAR(indexOf(withStoutness(body, Stoutness::Lean)), 19.0, 1e-9);
    EXPECT_NEAR(indexOf(withStoutness(body, Stoutness::Average)), 25.0, 1e-9);
    EXPECT_NEAR(indexOf(withStoutness(body, Stoutness::Heavy)), 38.0, 1e-9);
    for (const Stoutness stoutness : kStoutnesses) {
        BodyValues built = withStoutness(body, stoutness);
        built.weightKg = body.weightKg;
        EXPECT_EQ(built, body);
    }
    EXPECT_NEAR(indexOf(withStoutness({40, Sex::Female, 300.0, kNan}, Stoutness::Heavy)), 38.0, 1e-9);
}

TEST(BodyValuesTest, EveryBuildHasAWordOfItsOwn)
{
    std::set<std::string_view> words;
    for (const Stoutness stoutness : kStoutnesses)
        words.insert(wordOf(stoutness));
    EXPECT_EQ(words, (std::set<std::string_view>{"average", "heavy", "lean"}));
}

}  // namespace fb::test::body_values_test
