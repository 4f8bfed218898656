#include "app/practice/by_hand_panel.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/words/by_hand_words.h"
#include "tests/support/hand_learner.h"

namespace by_hand_panel_test {

namespace {

using namespace fb;
using namespace fb::test;

int shownDetails(const ByHandPanel& panel)
{
    int shown = 0;
    for (const QLabel* label : panel.findChildren<QLabel*>("detail"))
        shown += label->isHidden() ? 0 : 1;
    return shown;
}

TEST(ByHandPanelTest, TellsThreePartsTheFirstCauseAndEveryDetail)
{
    HandRun hand(Convention::VentroglutealHand);
    hand.learner.plant();
    hand.learner.build();
    hand.learner.set(Handle::IndexTip, {0.0, 6.0});
    hand.learner.grade();
    ASSERT_TRUE(hand.state().graded && hand.state().graded->byHand);
    const Attempt& attempt = *hand.state().graded;
    ASSERT_TRUE(attempt.byHand->first);
    ByHandPanel panel;
    panel.showAttempt(attempt, *hand.state().target, *hand.state().policy);
    EXPECT_EQ(panel.findChild<QLabel*>("firstCause")->text(), firstCauseSentence(*attempt.byHand));
    EXPECT_EQ(panel.findChild<QLabel*>("buildVerdict")->text(),
              partVerdict(*attempt.byHand, attempt.grade, Cause::Part::Build));
    EXPECT_FALSE(panel.findChild<QLabel*>("luckyMark")->isHidden());
    EXPECT_TRUE(panel.findChild<QLabel*>("watchedNote")->isHidden());
    EXPECT_EQ(shownDetails(panel),
              static_cast<int>(attempt.byHand->flags.size() + attempt.byHand->steps.size()));
}

TEST(ByHandPanelTest, ShowsNoLineOfAnEarlierAttempt)
{
    ByHandPanel panel;
    HandRun thigh(Convention::VastusThirds);
    HandRun arm(Convention::DeltoidHalfway);
    for (HandRun* hand : {&thigh, &arm}) {
        hand->learner.plant();
        hand->learner.build();
        hand->learner.grade();
        ASSERT_TRUE(hand->state().graded);
        const Attempt& attempt = *hand->state().graded;
        panel.showAttempt(attempt, *hand->state().target, *hand->state().policy);
        EXPECT_EQ(shownDetails(panel),
                  static_cast<int>(attempt.byHand->flags.size() + attempt.byHand->steps.size()));
        EXPECT_TRUE(panel.findChild<QLabel*>("luckyMark")->isHidden());
    }
}

}  // namespace

}  // namespace by_hand_panel_test
