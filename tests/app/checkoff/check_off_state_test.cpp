#include "app/checkoff/check_off_state.h"

#include <gtest/gtest.h>

namespace check_off_state_test {

namespace {

using namespace fb;

TEST(CheckOffStateTest, OnlyTheUntriedAndThoseWhoMayTryAgainStart)
{
    for (int i = 0; i < kStandingCount; ++i) {
        WhereTheyStand where;
        where.standing = static_cast<Standing>(i);
        const bool may = where.standing == Standing::NotTried || where.standing == Standing::MayRetest;
        EXPECT_EQ(mayStart(where), may) << wordOf(where.standing);
    }
}

}  // namespace

}  // namespace check_off_state_test
