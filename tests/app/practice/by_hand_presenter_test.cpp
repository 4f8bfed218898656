#include "app/practice/by_hand_presenter.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <algorithm>

#include "tests/support/hand_learner.h"

namespace by_hand_presenter_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(ByHandPresenterTest, OnlyARunByHandHasAHandsPartOfTheState)
{
    EXPECT_FALSE(SampleRun().state().byHand);
    HandRun hand(Convention::DeltoidHalfway);
    ASSERT_TRUE(hand.state().byHand);
    EXPECT_EQ(hand.state().phase, Phase::Feeling);
    EXPECT_TRUE(hand.state().scene.isEmpty()) << "nothing is drawn";
    EXPECT_FALSE(hand.state().canPeel);
}

TEST(ByHandPresenterTest, APressTellsOfItselfAlone)
{
    HandRun hand(Convention::VentroglutealHand);
    const QSignalSpy felt(&hand.learner.hand(), &ByHandPresenter::felt);
    const QSignalSpy changed(&hand.run.presenter, &PracticePresenter::changed);
    hand.learner.press(Landmark::GreaterTrochanter);
    EXPECT_EQ(felt.size(), 1);
    EXPECT_EQ(changed.size(), 0);
    ASSERT_TRUE(hand.now().feel);
    EXPECT_EQ(hand.now().feel->firmness, Firmness::Hard);
}

TEST(ByHandPresenterTest, WhatOnePressFollowedIsNotToldOfTheNext)
{
    HandRun hand(Convention::VentroglutealHand);
    const auto crest = placeOf(*hand.state().target, Landmark::IliacCrest).value();
    for (std::size_t i = crest.points.size() / 4;
         i + 1 < crest.points.size() && hand.now().followed < Cm{3.0}; ++i) {
        for (const double share : {0.0, 0.25, 0.5, 0.75})
            hand.learner.hand().feel(pointOf(lerp(crest.points[i], crest.points[i + 1], share)));
    }
    const double followed = hand.now().followed.value();
    ASSERT_GT(followed, 0.5);
    hand.learner.hand().lift();
    EXPECT_EQ(hand.now().followed.value(), followed) << "what was felt last stays in sight";
    hand.learner.hand().feel(pointOf(hand.state().target->ideal));
    EXPECT_EQ(hand.now().followed.value(), 0.0);
}

TEST(ByHandPresenterTest, BesideTheBodyNothingIsFelt)
{
    HandRun hand(Convention::VentroglutealHand);
    hand.learner.press(Landmark::GreaterTrochanter);
    hand.learner.hand().feel({500.0, 500.0});
    EXPECT_FALSE(hand.now().feel);
    EXPECT_TRUE(hand.now().finger);
    EXPECT_FALSE(hand.state().notice) << "a finger that slides off is no fault";
}

TEST(ByHandPresenterTest, NamesAreOfferedInTheRequestsOwnOrderTheSameAtEveryReplay)
{
    HandRun first(Convention::VentroglutealHand);
    HandRun again(Convention::VentroglutealHand);
    HandRun other(Convention::VentroglutealHand, 2, 8);
    auto offered = first.now().offered;
    EXPECT_EQ(offered, again.now().offered);
    EXPECT_NE(offered, other.now().offered);
    auto all = offeredLandmarks(Site::Ventrogluteal);
    std::ranges::sort(all);
    std::ranges::sort(offered);
    EXPECT_EQ(offered, all);
}

TEST(ByHandPresenterTest, TheNextHandleIsTheFirstThatIsNotSetByTheLearner)
{
    HandRun hand(Convention::VentroglutealHand);
    hand.learner.plant();
    hand.learner.hand().goTo(ByHandStage::Building);
    EXPECT_TRUE(hand.now().asksChoice);
    EXPECT_FALSE(hand.now().next);
    hand.learner.choose();
    EXPECT_FALSE(hand.now().asksChoice);
    EXPECT_EQ(hand.now().next, Handle::Palm) << "a hand laid ready is not laid by the learner";
    hand.learner.set(Handle::Palm);
    EXPECT_EQ(hand.now().next, Handle::IndexTip);
    hand.learner.hand().stepHandle(1);
    EXPECT_EQ(hand.now().current, Handle::IndexTip);
    hand.learner.hand().stepHandle(1);
    EXPECT_EQ(hand.now().next, Handle::MiddleTip) << "to go on is to leave it where it is";
    hand.learner.hand().stepHandle(-1);
    EXPECT_EQ(hand.now().current, Handle::IndexTip);
}

TEST(ByHandPresenterTest, AClickBesideEveryHandleSetsTheOneThatIsDue)
{
    HandRun hand(Convention::DeltoidHalfway);
    hand.learner.plant();
    hand.learner.hand().goTo(ByHandStage::Building);
    for (const Handle handle : handlesOf(BuildKind::HalvedLine)) {
        EXPECT_EQ(hand.now().next, handle);
        hand.learner.hand().place(hand.learner.flawlessAt(handle));
    }
    EXPECT_TRUE(hand.now().isWhole);
    const Build whole = hand.now().build;
    hand.learner.hand().place({0.0, 0.0});
    EXPECT_EQ(hand.now().build, whole) << "a stray click moves nothing";
}

TEST(ByHandPresenterTest, TheFieldOfTheThighIsChosenLastByAClickInIt)
{
    HandRun hand(Convention::VastusThirds);
    hand.learner.plant();
    hand.learner.hand().goTo(ByHandStage::Building);
    for (const Handle handle : handlesOf(BuildKind::ThighGrid))
        hand.learner.hand().place(hand.learner.flawlessAt(handle));
    EXPECT_TRUE(hand.now().asksChoice);
    hand.learner.hand().place(pointOf(hand.state().target->ideal));
    EXPECT_TRUE(hand.now().isWhole);
    EXPECT_FALSE(hand.now().asksChoice);
}

TEST(ByHandPresenterTest, WhileItIsShownHowNothingOfTheLearnersMoves)
{
    HandRun hand(Convention::DeltoidHalfway);
    hand.learner.plant();
    const auto flags = hand.now().flags;
    hand.learner.hand().watch();
    EXPECT_EQ(hand.now().watching, 0);
    EXPECT_FALSE(hand.state().scene.isEmpty());
    hand.learner.hand().undo();
    hand.learner.hand().clearStage();
    EXPECT_EQ(hand.now().flags, flags);
    hand.learner.hand().showStep(1000);
    EXPECT_EQ(hand.now().watching, hand.now().watchSteps - 1);
    hand.learner.hand().endWatching();
    hand.learner.hand().watch();
    EXPECT_FALSE(hand.now().watching) << "once a request";
}

TEST(ByHandPresenterTest, ARequestBegunByHandWouldBeLostByAnotherPolicy)
{
    HandRun hand(Convention::DeltoidHalfway);
    hand.learner.plant(1);
    hand.run.presenter.usePolicyFile({});
    EXPECT_TRUE(hand.state().policyOffered);
}

TEST(ByHandPresenterTest, AFlawlessHandIsGradedSo)
{
    for (const Convention convention :
         {Convention::DeltoidFingers, Convention::DeltoidHalfway, Convention::VastusThirds,
          Convention::VentroglutealHand, Convention::VentroglutealMedians}) {
        HandRun hand(convention);
        hand.learner.plant();
        hand.learner.build();
        hand.learner.grade();
        ASSERT_TRUE(hand.state().graded) << wordOf(convention);
        EXPECT_FALSE(hand.state().graded->byHand->first) << wordOf(convention);
        EXPECT_FALSE(hand.state().byHand);
    }
}

}  // namespace

}  // namespace by_hand_presenter_test
