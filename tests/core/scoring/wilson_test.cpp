#include "core/scoring/wilson.h"

#include <gtest/gtest.h>

using namespace fb;

namespace wilson_test {

TEST(WilsonTest, NoTrialsKnowNothing)
{
    EXPECT_EQ(wilsonInterval(0, 0).low, 0.0);
    EXPECT_EQ(wilsonInterval(0, 0).high, 1.0);
}

TEST(WilsonTest, AgreesWithPublishedIntervals)
{
    // Newcombe 1998, Statistics in Medicine 17:857, method 3, table I.
    struct Row {
        int hits, trials;
        double low, high;
    };
    for (const Row& row : {Row{81, 263, 0.2553, 0.3662}, Row{15, 148, 0.0624, 0.1605},
                           Row{0, 20, 0.0, 0.1611}, Row{1, 29, 0.0061, 0.1718}}) {
        const Interval interval = wilsonInterval(row.hits, row.trials);
        EXPECT_NEAR(interval.low, row.low, 5e-5) << row.hits << '/' << row.trials;
        EXPECT_NEAR(interval.high, row.high, 5e-5) << row.hits << '/' << row.trials;
    }
}

TEST(WilsonTest, MoreConfidenceIsWider)
{
    EXPECT_LT(wilsonInterval(7, 10, 0.99).low, wilsonInterval(7, 10, 0.95).low);
    EXPECT_GT(wilsonInterval(7, 10, 0.99).high, wilsonInterval(7, 10, 0.95).high);
}

}  // namespace wilson_test
