#include "app/practice/watched.h"

#include <gtest/gtest.h>

#include "app/scene/by_hand_scene.h"
#include "core/build/laying.h"
#include "tests/support/hand_learner.h"

namespace watched_test {

namespace {

using namespace fb;
using namespace fb::test;

StepCode shownCode(const HandRun& hand)
{
    const Steps steps = watchedTarget(*hand.state().target, hand.now().builder).construction;
    return steps[static_cast<std::size_t>(*hand.now().watching)].code;
}

TEST(WatchedTest, OnAnArmTheFingersAreLaidByTheHandThatDoesNotWriteUntilTheRegionIsTold)
{
    HandRun hand(Convention::DeltoidStrip);
    hand.learner.hand().watch();
    int laid = 0;
    for (int step = 0; step < hand.now().watchSteps; ++step) {
        const StepCode code = shownCode(hand);
        const auto fingers = watchedFingers(hand.state());
        const bool isFelt = code == StepCode::FeelAcromion;
        const bool isTold = code == StepCode::Region || code == StepCode::IdealPoint;
        EXPECT_EQ(fingers.has_value(), !isFelt && !isTold) << wordOf(code);
        if (fingers) {
            ++laid;
            EXPECT_EQ(fingers->hand, opposite(hand.state().own.handedness));
            EXPECT_EQ(fingers->count, flawlessBuild(*hand.state().target, hand.now().builder).fingers->count);
        }
        hand.learner.hand().showStep(1);
    }
    EXPECT_GE(laid, 5) << "fingers, base, armpit level, apex, triangle";
    hand.learner.hand().endWatching();
    EXPECT_FALSE(watchedFingers(hand.state())) << "taken away with the showing";
}

TEST(WatchedTest, EveryStepOfEverySiteHasItsSceneAndOnAHipNoFingersLie)
{
    for (const Convention convention : kConventions) {
        HandRun hand(convention);
        hand.learner.hand().watch();
        const Target watched = watchedTarget(*hand.state().target, hand.now().builder);
        EXPECT_EQ(hand.now().watchSteps, watchStepCount(watched)) << wordOf(convention);
        for (int step = 0; step < hand.now().watchSteps; ++step) {
            EXPECT_FALSE(hand.state().scene.isEmpty()) << wordOf(convention) << ' ' << step;
            EXPECT_FALSE(watchCaption(watched, step).isEmpty()) << wordOf(convention) << ' ' << step;
            EXPECT_FALSE(siteOf(convention) != Site::Deltoid && watchedFingers(hand.state()))
                << wordOf(convention) << ' ' << step;
            hand.learner.hand().showStep(1);
        }
    }
}

}  // namespace

}  // namespace watched_test
