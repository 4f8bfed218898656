#include "app/practice/by_hand_bar.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "tests/support/hand_learner.h"

namespace by_hand_bar_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(ByHandBarTest, OffersOnlyWhatCanBeDone)
{
    HandRun hand(Convention::DeltoidHalfway);
    ByHandBar bar;
    bar.showState(hand.state());
    const auto enabled = [&](const char* name) { return bar.findChild<QToolButton*>(name)->isEnabled(); };
    EXPECT_FALSE(enabled("undo"));
    EXPECT_FALSE(enabled("redo"));
    EXPECT_FALSE(enabled("clearStage"));
    EXPECT_TRUE(enabled("watchOnce"));
    hand.learner.plant(1);
    bar.showState(hand.state());
    EXPECT_TRUE(enabled("undo"));
    EXPECT_TRUE(enabled("clearStage"));
    hand.learner.hand().undo();
    hand.learner.hand().watch();
    bar.showState(hand.state());
    EXPECT_FALSE(enabled("redo")) << "not while it is shown how";
    hand.learner.hand().endWatching();
    bar.showState(hand.state());
    EXPECT_TRUE(enabled("redo"));
    EXPECT_FALSE(enabled("watchOnce"));
}

TEST(ByHandBarTest, IsHiddenWhereNothingIsFoundByHand)
{
    SampleRun marks;
    ByHandBar bar;
    bar.showState(marks.state());
    EXPECT_TRUE(bar.isHidden());
}

}  // namespace

}  // namespace by_hand_bar_test
