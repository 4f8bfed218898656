#include "core/body/patient.h"

#include <gtest/gtest.h>

#include <limits>

using namespace fb;

namespace patient_test {

namespace {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

Problem problemOf(double age, double stature, double weight)
{
    const auto patient = Patient::make(age, Sex::Female, Cm{stature}, Kg{weight}, Side::Left);
    EXPECT_FALSE(patient) << age << ' ' << stature << ' ' << weight;
    return patient ? Problem::SeedNotANumber : patient.error().problem;
}

}  // namespace

TEST(PatientTest, AnAdultIsValidFromBirth)
{
    const auto patient = Patient::make(34, Sex::Female, Cm{163}, Kg{71}, Side::Left);
    ASSERT_TRUE(patient);
    EXPECT_NEAR(patient->bodyMassIndex(), 26.72, 0.01);
    EXPECT_EQ(patient->withSide(Side::Right).side(), Side::Right);
    EXPECT_EQ(patient->withSide(Side::Left), *patient);
}

TEST(PatientTest, WhatIsNoBodyIsNamed)
{
    EXPECT_EQ(problemOf(kNan, 163, 71), Problem::AgeNotANumber);
    EXPECT_EQ(problemOf(-1, 163, 71), Problem::AgeOutOfRange);
    EXPECT_EQ(problemOf(17.9, 163, 71), Problem::AgeOutOfRange);
    EXPECT_EQ(problemOf(111, 163, 71), Problem::AgeOutOfRange);
    EXPECT_EQ(problemOf(34, kNan, 71), Problem::StatureNotANumber);
    EXPECT_EQ(problemOf(34, 20, 71), Problem::StatureOutOfRange);
    EXPECT_EQ(problemOf(34, 400, 71), Problem::StatureOutOfRange);
    EXPECT_EQ(problemOf(34, -163, 71), Problem::StatureOutOfRange);
    EXPECT_EQ(problemOf(34, 163, kNan), Problem::WeightNotANumber);
    EXPECT_EQ(problemOf(34, 163, 0), Problem::WeightOutOfRange);
    EXPECT_EQ(problemOf(34, 163, 251), Problem::WeightOutOfRange);
    EXPECT_EQ(problemOf(34, 210, 40), Problem::BodyImplausible);
    EXPECT_EQ(problemOf(34, 140, 200), Problem::BodyImplausible);
}

TEST(PatientTest, TheRangeIsToldAndItsEndsBelongToIt)
{
    const auto tall = Patient::make(34, Sex::Male, Cm{216}, Kg{100}, Side::Left);
    ASSERT_FALSE(tall);
    EXPECT_EQ(tall.error().low, 130.0);
    EXPECT_EQ(tall.error().high, 215.0);
    EXPECT_EQ(tall.error().what, "216");
    EXPECT_TRUE(Patient::make(18, Sex::Male, Cm{215}, Kg{100}, Side::Left));
    EXPECT_TRUE(Patient::make(110, Sex::Male, Cm{130}, Kg{30}, Side::Left));
}

TEST(PatientTest, DeviationsAreHeldToThreeSd)
{
    const auto patient = Patient::make(34, Sex::Male, Cm{175}, Kg{75}, Side::Left, {9.0, -9.0, kNan});
    ASSERT_TRUE(patient);
    EXPECT_EQ(patient->individual(), (Individual{3.0, -3.0, 0.0}));
}

TEST(PatientTest, AgesAreReadInYearsMonthsAndDays)
{
    EXPECT_EQ(*ageFromText("34y"), 34.0);
    EXPECT_EQ(*ageFromText("6mo"), 0.5);
    EXPECT_NEAR(*ageFromText("14d"), 0.0383, 0.0001);
    for (const char* text : {"", "y", "34", "34 y", "34yy", "y34", "nany", "infy", "3.5.1y", "34Y", "--3y"})
        EXPECT_FALSE(ageFromText(text)) << text;
}

}  // namespace patient_test
