#include "app/canvas/plate_tool.h"

#include <gtest/gtest.h>

namespace plate_tool_test {

namespace {

using namespace fb;

TEST(PlateToolTest, APressIsSpokenAsItIsPaintedUnlessItHasWordsOfItsOwn)
{
    PressLook press;
    press.words = "Hard";
    EXPECT_EQ(spoken(press), QString("Hard"));
    press.spokenWords = "Hard, an edge that runs up and down";
    EXPECT_EQ(spoken(press), press.spokenWords);
}

TEST(PlateToolTest, LooksAreEqualOnlyWhenAllOfThemIs)
{
    PressLook press;
    PressLook other = press;
    other.toward = QPointF(1, 0);
    EXPECT_EQ(press, press);
    EXPECT_NE(press, other);
    EXPECT_NE((HandleLook{1, {0, 0}, "Palm", HandleShape::Grip}),
              (HandleLook{1, {0, 0}, "Palm", HandleShape::Turn}));
    EXPECT_NE((FlagLook{{0, 0}, "Acromion", {}}), (FlagLook{{0, 1}, "Acromion", {}}));
}

}  // namespace

}  // namespace plate_tool_test
