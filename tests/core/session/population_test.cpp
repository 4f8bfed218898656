#include "core/session/population.h"

#include <gtest/gtest.h>

using namespace fb;

namespace population_test {

TEST(PopulationTest, StatureFollowsTheSurvey)
{
    // ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007): 162.85 (6.42) and 175.62 (6.86) cm.
    EXPECT_EQ(statureSpread(Sex::Female).mean, 162.85);
    EXPECT_EQ(statureSpread(Sex::Male).sd, 6.86);
    EXPECT_LT(kIndexLow, kIndexMedian);
    EXPECT_LT(kIndexMedian, kIndexHigh);
}

}  // namespace population_test
