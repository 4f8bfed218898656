#include "app/practice/by_hand_plate.h"

#include <gtest/gtest.h>

#include <QTest>

#include "app/canvas/plate_view.h"
#include "tests/support/hand_learner.h"

namespace by_hand_plate_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(ByHandPlateTest, EveryStageHasItsTool)
{
    HandRun hand(Convention::DeltoidHalfway);
    PlateView plate;
    showHands(plate, hand.state());
    EXPECT_EQ(plate.tool(), PlateTool::Press);
    hand.learner.plant();
    hand.learner.build();
    showHands(plate, hand.state());
    EXPECT_EQ(plate.tool(), PlateTool::Handles);
    hand.learner.hand().watch();
    showHands(plate, hand.state());
    EXPECT_EQ(plate.tool(), PlateTool::Mark) << "nothing to take hold of while it is shown how";
    hand.learner.hand().endWatching();
    hand.learner.hand().goTo(ByHandStage::Marking);
    showHands(plate, hand.state());
    EXPECT_EQ(plate.tool(), PlateTool::Mark);
}

TEST(ByHandPlateTest, FlagsAreSpokenOfByTheNameTheyWereGiven)
{
    HandRun hand(Convention::DeltoidHalfway);
    hand.learner.press(Landmark::Acromion);
    hand.learner.hand().plant(landmarkName(Landmark::Clavicle));
    ASSERT_TRUE(QTest::qWaitFor([&] { return hand.state().picture != nullptr; }, 20000));
    PlateView plate;
    plate.resize(600, 600);
    plate.setPicture(hand.state().picture);
    showHands(plate, hand.state());
    bool spoken = false;
    for (const SpokenItem& item : plate.spokenItems())
        spoken = spoken || item.words.contains(landmarkName(Landmark::Clavicle));
    EXPECT_TRUE(spoken);
}

}  // namespace

}  // namespace by_hand_plate_test
