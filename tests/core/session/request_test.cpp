#include "core/session/request.h"

#include <gtest/gtest.h>

#include <set>

#include "core/session/population.h"

using namespace fb;

TEST(RequestTest, TheSameSeedAsksTheSame)
{
    for (int i = 0; i < 20; ++i) {
        EXPECT_EQ(requestFrom(77, i).patient, requestFrom(77, i).patient);
        EXPECT_EQ(requestFrom(77, i).skinTone, requestFrom(77, i).skinTone);
        EXPECT_EQ(requestFrom(77, i).number, i);
    }
}

TEST(RequestTest, SeedsAndNumbersDiffer)
{
    std::set<double> weights;
    for (int i = 0; i < 20; ++i) {
        weights.insert(requestFrom(77, i).patient.individual().armLength);
        weights.insert(requestFrom(78, i).patient.individual().armLength);
    }
    EXPECT_EQ(weights.size(), 40U);
}

TEST(RequestTest, ManyRequestsMeetBothSidesBothSexesAndEveryTone)
{
    int left = 0;
    int women = 0;
    std::set<int> tones;
    for (int i = 0; i < 2000; ++i) {
        const Request request = requestFrom(5, i);
        left += request.patient.side() == Side::Left;
        women += request.patient.sex() == Sex::Female;
        tones.insert(request.skinTone);
        const double index = request.patient.bodyMassIndex();
        EXPECT_GT(index, kIndexLow - 1.0);
        EXPECT_LT(index, kIndexHigh + 1.0);
    }
    EXPECT_NEAR(left, 1000, 120);
    EXPECT_NEAR(women, 1000, 120);
    EXPECT_EQ(tones.size(), static_cast<std::size_t>(kSkinToneCount));
}

TEST(RequestTest, ASeedIsDecimalDigits)
{
    EXPECT_EQ(*seedFromText("0"), 0U);
    EXPECT_EQ(*seedFromText("9007199254740992"), kLargestSeed);
    for (const char* text :
         {"", " 1", "1 ", "-1", "1.5", "abc", "9007199254740993", "99999999999999999999999", "0x10"})
        EXPECT_EQ(seedFromText(text).error().problem, Problem::SeedNotANumber) << text;
}
