#include "core/basics/problem.h"

#include <gtest/gtest.h>

using namespace fb;

namespace problem_test {

TEST(ProblemTest, AFaultCarriesWhatWhereAndTheRange)
{
    const Result<int> result = fault(Problem::StatureOutOfRange, "stature", "20", 130.0, 215.0);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error(), (Fault{Problem::StatureOutOfRange, "stature", "20", 130.0, 215.0}));
}

TEST(ProblemTest, AValueIsNoFault)
{
    const Result<int> result = 7;
    ASSERT_TRUE(result);
    EXPECT_EQ(*result, 7);
}

}  // namespace problem_test
