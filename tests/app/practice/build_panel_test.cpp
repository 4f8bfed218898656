#include "app/practice/build_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QListWidget>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "app/words/build_words.h"
#include "tests/support/hand_learner.h"

namespace build_panel_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(BuildPanelTest, SaysOneThingToDoAndAtLastThatAllIsSet)
{
    HandRun hand(Convention::VentroglutealHand);
    hand.learner.plant();
    hand.learner.hand().goTo(ByHandStage::Building);
    BuildPanel panel;
    panel.showState(hand.state());
    auto* due = panel.findChild<QLabel*>("buildDue");
    EXPECT_EQ(due->text(), choiceInstruction(BuildChoice::WhichHand));
    hand.learner.choose();
    panel.showState(hand.state());
    EXPECT_EQ(due->text(), handleInstruction(Handle::Palm, Convention::VentroglutealHand));
    hand.learner.build();
    panel.showState(hand.state());
    for (const Handle handle : handlesOf(BuildKind::HandOnHip))
        EXPECT_NE(due->text(), handleInstruction(handle, Convention::VentroglutealHand));
}

TEST(BuildPanelTest, TheChoiceFitsWhatIsBuilt)
{
    for (const Convention convention : {Convention::VentroglutealHand, Convention::DeltoidFingers,
                                        Convention::VastusThirds, Convention::DeltoidHalfway}) {
        HandRun hand(convention);
        BuildPanel panel;
        panel.showState(hand.state());
        const auto choice = choiceOf(buildKindOf(convention));
        const bool either = choice == BuildChoice::WhichHand || choice == BuildChoice::HowManyFingers;
        EXPECT_EQ(!panel.findChild<QToolButton*>("chooseFirst")->isHidden(), either) << wordOf(convention);
        EXPECT_EQ(!panel.findChild<QComboBox*>("cellRow")->isHidden(), choice == BuildChoice::WhichCell);
    }
}

TEST(BuildPanelTest, ChoosesAHandAndTheNumberOfFingers)
{
    HandRun hip(Convention::VentroglutealHand);
    BuildPanel panel;
    panel.showState(hip.state());
    QSignalSpy hands(&panel, &BuildPanel::handChosen);
    QTest::mouseClick(panel.findChild<QToolButton*>("chooseSecond"), Qt::LeftButton);
    ASSERT_EQ(hands.size(), 1);
    EXPECT_EQ(hands[0][0].value<Side>(), Side::Right);
    HandRun arm(Convention::DeltoidFingers);
    panel.showState(arm.state());
    QSignalSpy fingers(&panel, &BuildPanel::fingersChosen);
    QTest::mouseClick(panel.findChild<QToolButton*>("chooseFirst"), Qt::LeftButton);
    ASSERT_EQ(fingers.size(), 1);
    EXPECT_EQ(fingers[0][0].toInt(), 2);
}

TEST(BuildPanelTest, AFieldIsChosenOnceRowAndColumnAre)
{
    HandRun hand(Convention::VastusThirds);
    hand.learner.plant();
    hand.learner.build();
    BuildPanel panel;
    panel.showState(hand.state());
    auto* row = panel.findChild<QComboBox*>("cellRow");
    auto* column = panel.findChild<QComboBox*>("cellColumn");
    EXPECT_TRUE(row->isEnabled());
    EXPECT_EQ(row->currentIndex(), static_cast<int>(hand.now().build.cell->row));
    EXPECT_EQ(column->currentIndex(), static_cast<int>(hand.now().build.cell->column));
    QSignalSpy chosen(&panel, &BuildPanel::cellChosen);
    QTest::keyClick(row, Qt::Key_Down);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].value<ThighCell>().row, ThighRow::Lower);
}

TEST(BuildPanelTest, PartsAreListedSetAndNotSetAndCanBeTakenUpByKeys)
{
    HandRun hand(Convention::DeltoidHalfway);
    hand.learner.plant();
    hand.learner.build(2);
    BuildPanel panel;
    panel.setScheme(schemeOf(PaletteKind::Light));
    panel.showState(hand.state());
    auto* list = panel.findChild<QListWidget*>("handles");
    ASSERT_EQ(list->count(), 3);
    const auto ticked = [&](int row) {
        const QImage icon = list->item(row)->icon().pixmap(16).toImage();
        return icon.convertToFormat(QImage::Format_Alpha8) !=
               list->item(2)->icon().pixmap(16).toImage().convertToFormat(QImage::Format_Alpha8);
    };
    EXPECT_TRUE(ticked(0));
    EXPECT_TRUE(ticked(1));
    EXPECT_NE(list->item(0)->data(Qt::AccessibleTextRole), list->item(0)->text());
    EXPECT_NE(list->item(0)->data(Qt::AccessibleTextRole).toString().mid(list->item(0)->text().size()),
              list->item(2)->data(Qt::AccessibleTextRole).toString().mid(list->item(2)->text().size()));
    list->setCurrentRow(1);
    QSignalSpy chosen(&panel, &BuildPanel::handleChosen);
    QTest::keyClick(list, Qt::Key_Up);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].value<Handle>(), Handle::LineTop);
}

}  // namespace

}  // namespace build_panel_test
