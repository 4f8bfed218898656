// The Wilson interval against tabled values and against its definition.
#include <gtest/gtest.h>

#include <cmath>

#include "core/scoring/wilson.h"

namespace fb::test::wilson_oracle_test {

namespace wilson_oracle_detail {

constexpr double kZ95 = 1.959963984540054;  // standard normal quantile at 0.975

// Definition (Wilson 1927, J Am Stat Assoc 22:209): the shares p at which the observed share lies
// exactly z standard errors of p away. Found by halving, not by the closed form.
double root(double share, double n, double from, double to)
{
    const auto excess = [&](double p) { return (share - p) * (share - p) - kZ95 * kZ95 * p * (1.0 - p) / n; };
    const bool rising = excess(to) > excess(from);
    for (int i = 0; i < 200; ++i) {
        const double middle = 0.5 * (from + to);
        ((excess(middle) > 0.0) == rising ? to : from) = middle;
    }
    return 0.5 * (from + to);
}

struct Row {
    int hits, trials;
    double low, high;
    const char* source;
};

}  // namespace wilson_oracle_detail

TEST(WilsonOracle, MatchesTabledValues)
{
    using namespace wilson_oracle_detail;
    constexpr Row kRows[]{
        {8, 10, 0.4901625, 0.9433178,
         "closed form of Wilson 1927 at z = 1.959964, worked out apart from the program"},
        {18, 20, 0.698966, 0.972134,
         "closed form of Wilson 1927 at z = 1.959964, worked out apart from the program"},
        {81, 263, 0.2553, 0.3662, "Newcombe 1998, Stat Med 17:857, table I, method 3 (from memory)"},
        {15, 148, 0.0624, 0.1605, "Newcombe 1998, Stat Med 17:857, table I, method 3 (from memory)"},
        {0, 20, 0.0, 0.1611, "Newcombe 1998, Stat Med 17:857, table I, method 3 (from memory)"},
        {1, 29, 0.0061, 0.1718, "Newcombe 1998, Stat Med 17:857, table I, method 3 (from memory)"},
    };
    for (const Row& row : kRows) {
        SCOPED_TRACE(row.source);
        const double digit = row.trials > 20 || row.hits == 0 ? 0.5e-4 : 0.6e-6;
        EXPECT_NEAR(wilsonInterval(row.hits, row.trials).low, row.low, digit);
        EXPECT_NEAR(wilsonInterval(row.hits, row.trials).high, row.high, digit);
    }
}

TEST(WilsonOracle, BoundsLieTheAskedStandardErrorsAway)
{
    using namespace wilson_oracle_detail;
    for (const int n : {1, 2, 3, 7, 10, 25, 100, 200}) {
        for (int hits = 0; hits <= n; ++hits) {
            const double share = static_cast<double>(hits) / n;
            const Interval interval = wilsonInterval(hits, n);
            SCOPED_TRACE(std::to_string(hits) + " of " + std::to_string(n));
            ASSERT_NEAR(interval.low, hits == 0 ? 0.0 : root(share, n, 0.0, share), 1e-9);
            ASSERT_NEAR(interval.high, hits == n ? 1.0 : root(share, n, share, 1.0), 1e-9);
        }
    }
}

TEST(WilsonOracle, HitsAndMissesMirrorEachOther)
{
    for (int hits = 0; hits <= 17; ++hits) {
        const Interval a = wilsonInterval(hits, 17);
        const Interval b = wilsonInterval(17 - hits, 17);
        EXPECT_NEAR(a.low, 1.0 - b.high, 1e-12);
        EXPECT_NEAR(a.high, 1.0 - b.low, 1e-12);
    }
}

TEST(WilsonOracle, NothingTriedSaysNothing)
{
    EXPECT_EQ(wilsonInterval(0, 0).low, 0.0);
    EXPECT_EQ(wilsonInterval(0, 0).high, 1.0);
}

}  // namespace fb::test::wilson_oracle_test
