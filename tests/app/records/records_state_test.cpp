#include "app/records/records_state.h"

#include <gtest/gtest.h>

namespace fb::test::records_state_test {

TEST(RecordsStateTest, IsShutAndEmptyFromBirth)
{
    const RecordsState state;
    EXPECT_EQ(state.gate, RecordsGate::Reading);
    EXPECT_EQ(state.area, RecordsArea::Board);
    EXPECT_FALSE(state.board || state.found || state.history || state.opened || state.replay || state.item);
    EXPECT_FALSE(state.task || state.done || state.notice || state.who);
    EXPECT_EQ(kRecordsAreaCount, 4);
}

}  // namespace fb::test::records_state_test
