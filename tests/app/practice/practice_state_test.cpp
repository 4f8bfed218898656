#include "app/practice/practice_state.h"

#include <gtest/gtest.h>

namespace fb::test {

TEST(PracticeStateTest, EveryLayerBelongsToExactlyOnePeel)
{
    for (const Layer layer : kLayers) {
        int owners = 0;
        for (const Peel peel : kPeels)
            owners += layersOf(peel).contains(layer) ? 1 : 0;
        EXPECT_EQ(owners, 1) << wordOf(layer);
        EXPECT_TRUE(allLayers().contains(layer));
    }
}

}  // namespace fb::test
