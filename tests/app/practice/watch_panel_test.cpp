#include "app/practice/watch_panel.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QProxyStyle>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/hand_learner.h"

namespace watch_panel_test {

namespace {

using namespace fb;
using namespace fb::test;

// A platform that moves things, or does not.
class MovingStyle : public QProxyStyle {
public:
    explicit MovingStyle(bool moves) : m_moves(moves) {}
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* returned) const override
    {
        if (hint == SH_Widget_Animate)
            return m_moves ? 1 : 0;
        return QProxyStyle::styleHint(hint, option, widget, returned);
    }

private:
    bool m_moves;
};

TEST(WatchPanelTest, ShowsWhichStepAndItsWords)
{
    HandRun hand(Convention::VentroglutealHand);
    hand.learner.hand().watch();
    WatchPanel panel;
    panel.showState(hand.state());
    const QString first = panel.findChild<QLabel*>("watchCaption")->text();
    EXPECT_FALSE(first.isEmpty());
    EXPECT_FALSE(panel.findChild<QPushButton*>("watchBack")->isEnabled());
    hand.learner.hand().showStep(1);
    panel.showState(hand.state());
    EXPECT_NE(panel.findChild<QLabel*>("watchCaption")->text(), first);
    EXPECT_TRUE(panel.findChild<QPushButton*>("watchBack")->isEnabled());
    hand.learner.hand().showStep(1000);
    panel.showState(hand.state());
    EXPECT_FALSE(panel.findChild<QPushButton*>("watchNext")->isEnabled());
}

TEST(WatchPanelTest, GoesOnByItselfUntilItIsHeld)
{
    HandRun hand(Convention::VentroglutealHand);
    hand.learner.hand().watch();
    MovingStyle moving(true);
    WatchPanel panel;
    panel.setStyle(&moving);
    QSignalSpy asked(&panel, &WatchPanel::stepAsked);
    panel.showState(hand.state());
    EXPECT_TRUE(asked.wait(2 * WatchPanel::kStepMs));
    QTest::mouseClick(panel.findChild<QPushButton*>("watchRun"), Qt::LeftButton);
    asked.clear();
    EXPECT_FALSE(asked.wait(WatchPanel::kStepMs + 500));
}

TEST(WatchPanelTest, WhereThePlatformAsksForCalmItWaitsForTheLearner)
{
    HandRun hand(Convention::VentroglutealHand);
    hand.learner.hand().watch();
    MovingStyle calm(false);
    WatchPanel panel;
    panel.setStyle(&calm);
    QSignalSpy asked(&panel, &WatchPanel::stepAsked);
    panel.showState(hand.state());
    EXPECT_TRUE(asksForCalm(panel));
    EXPECT_FALSE(asked.wait(WatchPanel::kStepMs + 500));
    QTest::mouseClick(panel.findChild<QPushButton*>("watchNext"), Qt::LeftButton);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].toInt(), 1);
}

}  // namespace

}  // namespace watch_panel_test
