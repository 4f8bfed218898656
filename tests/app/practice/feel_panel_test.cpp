#include "app/practice/feel_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/words/feel_words.h"
#include "tests/support/hand_learner.h"

namespace feel_panel_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(FeelPanelTest, TellsWhatIsFeltAndThatNothingIs)
{
    HandRun hand(Convention::VentroglutealHand);
    FeelPanel panel;
    panel.showState(hand.state());
    auto* felt = panel.findChild<QLabel*>("felt");
    const QString nothing = felt->text();
    EXPECT_TRUE(felt->isHidden()) << "before the first press the name has the room";
    hand.learner.press(Landmark::GreaterTrochanter);
    panel.showFelt(hand.state());
    EXPECT_EQ(felt->text(), feelName(*hand.now().feel));
    EXPECT_FALSE(felt->isHidden());
    hand.learner.hand().feel({500.0, 500.0});
    panel.showFelt(hand.state());
    EXPECT_NE(felt->text(), nothing);
    EXPECT_NE(felt->text(), QString());
}

TEST(FeelPanelTest, OffersEveryNameOfTheSiteAndChoosesNone)
{
    HandRun hand(Convention::VentroglutealHand);
    FeelPanel panel;
    panel.showState(hand.state());
    auto* name = panel.findChild<QComboBox*>("flagName");
    EXPECT_EQ(name->count(), static_cast<int>(offeredLandmarks(Site::Ventrogluteal).size()));
    EXPECT_EQ(name->currentIndex(), -1);
    EXPECT_TRUE(name->currentText().isEmpty());
}

TEST(FeelPanelTest, WhatIsTypedStaysAsItWasTyped)
{
    HandRun hand(Convention::VentroglutealHand);
    FeelPanel panel;
    panel.show();
    panel.showState(hand.state());
    QSignalSpy asked(&panel, &FeelPanel::plantAsked);
    auto* name = panel.findChild<QComboBox*>("flagName");
    QTest::keyClicks(name, QStringLiteral("greater troc"));
    QTest::keyClick(name, Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1) << "asked once";
    EXPECT_EQ(asked[0][0].toString(), QStringLiteral("greater troc"));
}

TEST(FeelPanelTest, WithoutANameTheNameIsAskedFor)
{
    HandRun hand(Convention::VentroglutealHand);
    FeelPanel panel;
    panel.show();
    panel.showState(hand.state());
    const QSignalSpy asked(&panel, &FeelPanel::plantAsked);
    panel.plantOrAskName();
    EXPECT_EQ(asked.size(), 0);
    panel.findChild<QComboBox*>("flagName")->setCurrentIndex(2);
    panel.plantOrAskName();
    EXPECT_EQ(asked.size(), 1);
}

TEST(FeelPanelTest, AFlagThatStandsIsListedWithAWayToRemoveIt)
{
    HandRun hand(Convention::VentroglutealHand);
    FeelPanel panel;
    panel.showState(hand.state());
    panel.findChild<QComboBox*>("flagName")->setEditText(QStringLiteral("typed"));
    hand.learner.plant(2);
    panel.showState(hand.state());
    EXPECT_TRUE(panel.findChild<QComboBox*>("flagName")->currentText().isEmpty());
    const auto& flags = hand.now().flags;
    ASSERT_EQ(flags.size(), 2U);
    const QString id = QString::fromLatin1(wordOf(flags[1].name).data());
    auto* remove = panel.findChild<QPushButton*>(QStringLiteral("removeFlag.") + id);
    ASSERT_NE(remove, nullptr);
    EXPECT_TRUE(remove->accessibleName().contains(landmarkName(flags[1].name)));
    QSignalSpy asked(&panel, &FeelPanel::pullOutAsked);
    QTest::mouseClick(remove, Qt::LeftButton);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].value<Landmark>(), flags[1].name);
}

}  // namespace

}  // namespace feel_panel_test
