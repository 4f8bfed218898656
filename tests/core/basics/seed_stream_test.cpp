#include "core/basics/seed_stream.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

using namespace fb;

namespace seed_stream_test {

TEST(SeedStreamTest, GivesThePublishedStream)
{
    // First outputs of SplitMix64 for the seed 1234567, as printed with the reference code
    // (Vigna's splitmix64.c); from memory.
    SeedStream stream(1234567);
    EXPECT_EQ(stream.next(), 6457827717110365317ULL);
    EXPECT_EQ(stream.next(), 3203168211198807973ULL);
}

TEST(SeedStreamTest, TheSameSeedGivesTheSameStream)
{
    SeedStream a(42);
    SeedStream b(42);
    SeedStream other(43);
    int different = 0;
    for (int i = 0; i < 100; ++i) {
        const auto x = a.next();
        EXPECT_EQ(x, b.next());
        different += x != other.next();
    }
    EXPECT_EQ(different, 100);
}

TEST(SeedStreamTest, UniformNumbersFillTheirRange)
{
    SeedStream stream(1);
    double low = 1.0;
    double high = 0.0;
    double sum = 0.0;
    for (int i = 0; i < 100000; ++i) {
        const double u = stream.unit();
        low = std::min(low, u);
        high = std::max(high, u);
        sum += u;
    }
    EXPECT_GE(low, 0.0);
    EXPECT_LT(high, 1.0);
    EXPECT_NEAR(sum / 100000.0, 0.5, 0.005);
}

TEST(SeedStreamTest, EveryCountIsReached)
{
    SeedStream stream(1);
    std::vector<int> seen(5, 0);
    for (int i = 0; i < 1000; ++i)
        ++seen[static_cast<std::size_t>(stream.below(5))];
    for (const int n : seen)
        EXPECT_NEAR(n, 200, 60);
}

TEST(SeedStreamTest, NormalDeviatesHaveUnitSpreadAndKeepTheCut)
{
    SeedStream stream(1);
    double sum = 0.0;
    double squares = 0.0;
    constexpr int kMany = 100000;
    for (int i = 0; i < kMany; ++i) {
        const double z = stream.normal(3.0);
        EXPECT_LE(std::abs(z), 3.0);
        sum += z;
        squares += z * z;
    }
    EXPECT_NEAR(sum / kMany, 0.0, 0.02);
    EXPECT_NEAR(squares / kMany, 0.973, 0.02);  // variance of a normal cut at 3 SD
}

}  // namespace seed_stream_test
