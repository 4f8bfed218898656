#include "app/practice/by_hand_column.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "tests/support/hand_learner.h"

namespace by_hand_column_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(ByHandColumnTest, ShowsThePanelOfTheStageAlone)
{
    HandRun hand(Convention::VentroglutealHand);
    ByHandColumn column(hand.learner.hand());
    const auto shown = [&](const char* name) {
        return column.findChild<QWidget*>(name)->isVisibleTo(&column);
    };
    column.showState(hand.state());
    EXPECT_TRUE(shown("flagName"));
    EXPECT_FALSE(shown("handles"));
    hand.learner.plant();
    hand.learner.hand().goTo(ByHandStage::Building);
    column.showState(hand.state());
    EXPECT_FALSE(shown("flagName"));
    EXPECT_TRUE(shown("handles"));
    hand.learner.hand().watch();
    column.showState(hand.state());
    EXPECT_FALSE(shown("handles"));
    EXPECT_TRUE(shown("watchCaption"));
}

TEST(ByHandColumnTest, TakesTheKeysForAChoiceOnly)
{
    HandRun hand(Convention::VentroglutealHand);
    ByHandColumn column(hand.learner.hand());
    column.showState(hand.state());
    EXPECT_FALSE(column.takesFocus(hand.state()));
    hand.learner.plant();
    hand.learner.hand().goTo(ByHandStage::Building);
    column.showState(hand.state());
    EXPECT_TRUE(column.takesFocus(hand.state()));
    hand.learner.choose();
    EXPECT_FALSE(column.takesFocus(hand.state()));
}

}  // namespace

}  // namespace by_hand_column_test
