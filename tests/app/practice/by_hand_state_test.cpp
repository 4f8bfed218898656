#include "app/practice/by_hand_state.h"

#include <gtest/gtest.h>

namespace by_hand_state_test {

namespace {

using namespace fb;

TEST(ByHandStateTest, AStageIsDoneByWhatItLeavesBehind)
{
    ByHandState state;
    for (const ByHandStage stage : {ByHandStage::Feeling, ByHandStage::Building, ByHandStage::Marking})
        EXPECT_FALSE(state.isDone(stage));
    state.flags.push_back({Landmark::Acromion, {}});
    EXPECT_TRUE(state.isDone(ByHandStage::Feeling));
    EXPECT_FALSE(state.isDone(ByHandStage::Building));
    state.isWhole = true;
    EXPECT_TRUE(state.isDone(ByHandStage::Building));
    EXPECT_FALSE(state.isDone(ByHandStage::Marking));
    state.hasMark = true;
    EXPECT_TRUE(state.isDone(ByHandStage::Marking));
}

}  // namespace

}  // namespace by_hand_state_test
