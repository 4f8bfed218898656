#include "core/session/by_hand.h"

#include <gtest/gtest.h>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace by_hand_test {

namespace {

Target targetOf(Convention convention)
{
    return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 165, 64), convention,
                  askedViews(siteOf(convention)).front())
        .value();
}

ByHand onHip() { return {targetOf(Convention::VentroglutealHand), test::defaultPolicy()}; }

const Flag kSpineFlag{Landmark::AnteriorSuperiorIliacSpine, {-9.0, 7.0}};

}  // namespace

TEST(ByHandTest, StagesOutOfOrderSayWhatIsMissingAndKeepTheAttempt)
{
    ByHand hand = onHip();
    EXPECT_EQ(hand.goTo(ByHandStage::Building).error().problem, Problem::NoFlagPlanted);
    EXPECT_EQ(hand.ready().error().problem, Problem::NoFlagPlanted);
    hand.plant(kSpineFlag);
    EXPECT_TRUE(hand.goTo(ByHandStage::Building));
    EXPECT_EQ(hand.goTo(ByHandStage::Marking).error().problem, Problem::NothingBuilt);
    EXPECT_EQ(hand.stage(), ByHandStage::Building);
    EXPECT_EQ(hand.flags().size(), 1U);
    hand.chooseHand(Side::Left);
    EXPECT_TRUE(hand.goTo(ByHandStage::Marking));
    EXPECT_EQ(hand.ready().error().problem, Problem::NoMarkYet);
    hand.setMark(Point{1.0, 1.0});
    EXPECT_TRUE(hand.ready());
    EXPECT_TRUE(hand.goTo(ByHandStage::Feeling));
}

TEST(ByHandTest, WhatABuildStillNeedsIsNamed)
{
    ByHand arm(targetOf(Convention::DeltoidStrip), test::defaultPolicy());
    arm.plant({Landmark::Acromion, {0.0, 0.0}});
    ASSERT_TRUE(arm.setHandle(Handle::Apex, {0.0, -10.0}));
    EXPECT_EQ(arm.goTo(ByHandStage::Marking).error().what, "how_many_fingers");
    arm.chooseFingers(2, Side::Left);
    EXPECT_EQ(arm.goTo(ByHandStage::Marking).error().what, "base_front");
    ByHand thigh(targetOf(Convention::VastusThirds), test::defaultPolicy());
    thigh.plant({Landmark::Patella, {40.0, 5.0}});
    const Build wanted = flawlessBuild(targetOf(Convention::VastusThirds), thigh.builder());
    EXPECT_FALSE(thigh.chooseCell({}));
    for (const Handle handle : handlesOf(BuildKind::ThighGrid))
        ASSERT_TRUE(thigh.setHandle(handle, *wanted.point(handle)));
    EXPECT_EQ(thigh.goTo(ByHandStage::Marking).error().what, "which_cell");
    EXPECT_TRUE(thigh.chooseCell({ThighRow::Middle, ThighColumn::Between}));
    EXPECT_TRUE(thigh.goTo(ByHandStage::Marking));
}

TEST(ByHandTest, PlantingUnderATakenNameMovesThatFlag)
{
    ByHand hand = onHip();
    hand.plant(kSpineFlag);
    hand.plant({Landmark::AnteriorSuperiorIliacSpine, {-8.0, 7.5}});
    ASSERT_EQ(hand.flags().size(), 1U);
    EXPECT_EQ(hand.flags()[0].at, (Point{-8.0, 7.5}));
    EXPECT_TRUE(hand.pullOut(Landmark::AnteriorSuperiorIliacSpine));
    EXPECT_FALSE(hand.pullOut(Landmark::AnteriorSuperiorIliacSpine));
    EXPECT_TRUE(hand.flags().empty());
}

TEST(ByHandTest, EveryStepIsUndoneAndRedoneWithItsStage)
{
    ByHand hand = onHip();
    EXPECT_FALSE(hand.undo());
    hand.plant(kSpineFlag);
    ASSERT_TRUE(hand.goTo(ByHandStage::Building));
    hand.chooseHand(Side::Left);
    ASSERT_TRUE(hand.goTo(ByHandStage::Marking));
    hand.setMark(Point{1.0, 1.0});
    EXPECT_TRUE(hand.undo());
    EXPECT_FALSE(hand.mark());
    EXPECT_EQ(hand.stage(), ByHandStage::Marking);
    EXPECT_TRUE(hand.undo());
    EXPECT_TRUE(isEmpty(hand.build()));
    EXPECT_EQ(hand.stage(), ByHandStage::Building);
    EXPECT_TRUE(hand.undo());
    EXPECT_TRUE(hand.flags().empty());
    EXPECT_EQ(hand.stage(), ByHandStage::Feeling);
    EXPECT_FALSE(hand.canUndo());
    while (hand.canRedo())
        EXPECT_TRUE(hand.redo());
    EXPECT_EQ(hand.mark(), (Point{1.0, 1.0}));
    EXPECT_EQ(hand.flags().size(), 1U);
    EXPECT_FALSE(hand.redo());
}

TEST(ByHandTest, RedoGoesToTheStageOfItsStepWhereverUndoWasAskedFor)
{
    ByHand hand = onHip();
    hand.plant(kSpineFlag);
    ASSERT_TRUE(hand.goTo(ByHandStage::Building));
    hand.chooseHand(Side::Left);
    ASSERT_TRUE(hand.goTo(ByHandStage::Feeling));
    ASSERT_TRUE(hand.undo());
    EXPECT_EQ(hand.stage(), ByHandStage::Building);
    ASSERT_TRUE(hand.goTo(ByHandStage::Feeling));
    ASSERT_TRUE(hand.redo());
    EXPECT_EQ(hand.stage(), ByHandStage::Building);
    ASSERT_TRUE(hand.undo());
    ASSERT_TRUE(hand.undo());
    EXPECT_EQ(hand.stage(), ByHandStage::Feeling);
}

TEST(ByHandTest, ANewStepAfterUndoForgetsWhatWasUndone)
{
    ByHand hand = onHip();
    hand.plant(kSpineFlag);
    EXPECT_TRUE(hand.undo());
    hand.plant({Landmark::IliacCrest, {-15.0, 0.0}});
    EXPECT_FALSE(hand.canRedo());
    EXPECT_EQ(hand.flags().front().name, Landmark::IliacCrest);
}

TEST(ByHandTest, ADragIsOneStepOfUndo)
{
    ByHand hand = onHip();
    hand.plant(kSpineFlag);
    ASSERT_TRUE(hand.goTo(ByHandStage::Building));
    hand.chooseHand(Side::Left);
    const Build before = hand.build();
    hand.beginDrag();
    for (int i = 1; i <= 20; ++i)
        EXPECT_TRUE(hand.setHandle(Handle::Palm, {12.0 - i * 0.5, 0.0}));
    hand.endDrag();
    EXPECT_NE(hand.build(), before);
    EXPECT_TRUE(hand.undo());
    EXPECT_EQ(hand.build(), before);
    EXPECT_TRUE(hand.redo());
    EXPECT_EQ(hand.build().hand->palm, (Point{2.0, 0.0}));
}

TEST(ByHandTest, WhatChangesNothingIsNoStep)
{
    ByHand hand = onHip();
    EXPECT_FALSE(hand.setHandle(Handle::Palm, {0.0, 0.0}));
    EXPECT_FALSE(hand.setHandle(Handle::Apex, {0.0, 0.0}));
    EXPECT_FALSE(hand.canUndo());
    hand.plant(kSpineFlag);
    hand.plant(kSpineFlag);
    EXPECT_TRUE(hand.undo());
    EXPECT_FALSE(hand.canUndo());
}

TEST(ByHandTest, ItIsShownOnce)
{
    ByHand hand = onHip();
    EXPECT_FALSE(hand.watched());
    EXPECT_TRUE(hand.watch());
    EXPECT_FALSE(hand.watch());
    EXPECT_TRUE(hand.watched());
}

TEST(ByHandTest, AStageIsClearedInOneStepOfUndo)
{
    ByHand hand = onHip();
    EXPECT_FALSE(hand.clear());
    hand.plant(kSpineFlag);
    hand.plant({Landmark::IliacCrest, {3.0, 12.0}});
    ASSERT_TRUE(hand.goTo(ByHandStage::Building));
    hand.chooseHand(Side::Left);
    EXPECT_TRUE(hand.clear());
    EXPECT_FALSE(hand.build().hand);
    EXPECT_EQ(hand.flags().size(), 2U) << "of this stage alone";
    EXPECT_TRUE(hand.undo());
    EXPECT_TRUE(hand.build().hand);
    ASSERT_TRUE(hand.goTo(ByHandStage::Feeling));
    EXPECT_TRUE(hand.clear());
    EXPECT_TRUE(hand.flags().empty());
}

}  // namespace by_hand_test
