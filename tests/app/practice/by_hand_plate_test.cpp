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

TEST(ByHandPlateTest, AFlagThatMissedItsBoneDoesNotTakeTheBoneOutOfSight)
{
    for (const Convention convention : {Convention::DeltoidStrip, Convention::VentroglutealHand}) {
        HandRun hand(convention);
        const Point missed = hand.state().target->toViewer(hand.state().target->idealSkin + Point{0.0, -4.0});
        hand.learner.hand().feel(pointOf(missed));
        const Landmark bone = askedLandmarks(convention).front();
        hand.learner.hand().plant(landmarkName(bone));
        hand.learner.hand().goTo(ByHandStage::Building);
        const auto place = placeOf(*hand.state().target, bone).value();
        EXPECT_TRUE(workArea(hand.state()).contains(pointOf(place.points.front()))) << wordOf(convention);
    }
}

TEST(ByHandPlateTest, AGradedFlagBesideItsLandmarkIsToldFromTheLandmark)
{
    const QString name = landmarkName(Landmark::AnteriorSuperiorIliacSpine);
    for (const double off : {0.3, 2.5}) {
        HandRun hand(Convention::VentroglutealHand);
        hand.learner.plant();
        const Point spine =
            placeOf(*hand.state().target, Landmark::AnteriorSuperiorIliacSpine).value().points.front();
        hand.learner.hand().feel(pointOf(spine + Point{0.0, -off}));
        hand.learner.hand().plant(name);
        hand.learner.build();
        hand.learner.hand().goTo(ByHandStage::Marking);
        hand.learner.grade();
        ASSERT_TRUE(QTest::qWaitFor([&] { return hand.state().picture != nullptr; }, 20000));
        PlateView plate;
        plate.resize(600, 600);
        plate.setPicture(hand.state().picture);
        showHands(plate, hand.state());
        bool told = false;
        for (const SpokenItem& item : plate.spokenItems())
            told = told || item.words.contains(QStringLiteral("Your flag: ") + name);
        EXPECT_EQ(told, off > 1.0) << off;
    }
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
