#include "app/practice/stage_rail.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "tests/support/hand_learner.h"

namespace stage_rail_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(StageRailTest, TellsWhichStageIsOpenAndWhichAreDone)
{
    HandRun hand(Convention::DeltoidHalfway);
    StageRail rail;
    rail.setScheme(schemeOf(PaletteKind::Light));
    rail.showState(hand.state());
    auto* feel = rail.findChild<QToolButton*>("stageFeel");
    auto* build = rail.findChild<QToolButton*>("stageBuild");
    EXPECT_TRUE(feel->isChecked());
    EXPECT_FALSE(build->isChecked());
    EXPECT_TRUE(feel->icon().isNull());
    const QString before = build->accessibleName();
    hand.learner.plant();
    hand.learner.build();
    rail.showState(hand.state());
    EXPECT_FALSE(feel->isChecked());
    EXPECT_TRUE(build->isChecked());
    EXPECT_FALSE(feel->icon().isNull());
    EXPECT_NE(build->accessibleName(), before);
    EXPECT_NE(feel->accessibleName(), feel->text()) << "its state is said as well";
}

TEST(StageRailTest, AsksForAStageByClickAndStaysAsItIs)
{
    HandRun hand(Convention::DeltoidHalfway);
    StageRail rail;
    rail.showState(hand.state());
    QSignalSpy asked(&rail, &StageRail::stageAsked);
    QTest::mouseClick(rail.findChild<QToolButton*>("stageMark"), Qt::LeftButton);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].value<ByHandStage>(), ByHandStage::Marking);
    rail.showState(hand.state());
    EXPECT_FALSE(rail.findChild<QToolButton*>("stageMark")->isChecked());
}

}  // namespace

}  // namespace stage_rail_test
