// The whole walk of a run, by mouse and by keyboard alone, on the real window.
#include "app/practice/practice_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>

#include "app/canvas/side_picker.h"
#include "tests/support/page_steps.h"

namespace fb::test::practice_page_test {

TEST(PracticePageTest, TheWholeWalkByMouse)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    EXPECT_FALSE(open.find("grade")->isEnabled());
    auto* plate = open.find<PlateView>("plate");
    ASSERT_TRUE(QTest::qWaitFor([&] { return plate->isSharp(); }));
    QTest::mouseClick(plate, Qt::LeftButton, {}, idealOnScreen(open) + QPoint(0, 60));
    ASSERT_TRUE(open.state().mark.has_value());
    click(open, "withdraw");
    EXPECT_FALSE(open.state().mark.has_value());
    QTest::mouseClick(plate, Qt::LeftButton, {}, idealOnScreen(open));
    click(open, "grade");
    ASSERT_EQ(open.state().phase, Phase::Graded);
    EXPECT_EQ(open.find<QLabel>("verdict")->text(), QStringLiteral("On target"));
    EXPECT_FALSE(open.find<QLabel>("reason")->text().isEmpty());
    click(open, "why");
    EXPECT_TRUE(open.find("whyRule")->isVisible());
    click(open, "peelSkin");
    EXPECT_FALSE(open.state().layers.contains(Layer::Skin));
    click(open, "companion");
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.state().companion != nullptr; }));
    EXPECT_TRUE(open.find("companionPlate")->isVisible());
    click(open, "next");
    EXPECT_EQ(open.state().request->number, 1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.state().picture && plate->isSharp(); }));
    QTest::mouseClick(plate, Qt::LeftButton, {}, idealOnScreen(open));
    click(open, "grade");
    click(open, "next");
    ASSERT_EQ(open.state().phase, Phase::Summary);
    EXPECT_TRUE(open.find("hits")->isVisible());
    click(open, "repeat");
    EXPECT_EQ(open.state().phase, Phase::Marking);
    EXPECT_EQ(open.state().request->number, 0);
}

TEST(PracticePageTest, TheWholeWalkByKeyboardAlone)
{
    Preferences asks = plainPreferences();
    asks.asksSide = true;
    OpenWindow open(asks);
    ASSERT_TRUE(open.isReady);
    for (int request = 0; request < 2; ++request) {
        ASSERT_EQ(open.state().phase, Phase::PickingSide);
        const bool left = open.state().request->patient.side() == Side::Left;
        // The figure that shows the patient's left arm may stand on either side: try the one
        // that has the focus, then the other.
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClick(QApplication::focusWidget(), left ? Qt::Key_L : Qt::Key_R);
        if (open.state().phase == Phase::PickingSide)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        if (open.state().phase == Phase::PickingSide) {
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        }
        ASSERT_EQ(open.state().phase, Phase::Marking);
        auto* plate = open.find<PlateView>("plate");
        ASSERT_TRUE(QTest::qWaitFor([&] { return open.state().picture && plate->isSharp(); }));
        ASSERT_EQ(QApplication::focusWidget(), plate) << "the plate has the focus when it is to be marked";
        const QPointF before = plate->crosshair();
        QTest::keyClick(plate, Qt::Key_Down);
        EXPECT_NEAR(before.y() - plate->crosshair().y(), 0.5, 1e-9);
        QTest::keyClick(plate, Qt::Key_Up, Qt::ShiftModifier);
        QTest::keyClick(plate, Qt::Key_Return);
        ASSERT_TRUE(open.state().mark.has_value());
        QTest::keyClick(plate, Qt::Key_Backspace);
        EXPECT_FALSE(open.state().mark.has_value());
        QTest::keyClick(plate, Qt::Key_Return);
        QTest::keyClick(plate, Qt::Key_Return);
        ASSERT_EQ(open.state().phase, Phase::Graded);
        ASSERT_EQ(QApplication::focusWidget(), open.find("next"));
        ASSERT_TRUE(tabTo(open, "why"));
        QTest::keyClick(open.find("why"), Qt::Key_Space);
        EXPECT_EQ(open.find("whyRule")->isVisible(), request == 0) << "Why stays as the learner left it";
        ASSERT_TRUE(tabTo(open, "peelSkin"));
        QTest::keyClick(open.find("peelSkin"), Qt::Key_Space);
        EXPECT_FALSE(open.state().layers.contains(Layer::Skin));
        ASSERT_TRUE(tabTo(open, "next"));
        QTest::keyClick(open.find("next"), Qt::Key_Return);
    }
    ASSERT_EQ(open.state().phase, Phase::Summary);
    ASSERT_TRUE(QApplication::focusWidget());
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("newRunFromSummary"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(open.state().phase, Phase::PickingSide);
}

TEST(PracticePageTest, AWrongSideIsExplainedAndCanBePickedAgain)
{
    Preferences asks = plainPreferences();
    asks.asksSide = true;
    OpenWindow open(asks);
    ASSERT_TRUE(open.isReady);
    auto* picker = open.window().findChild<SidePicker*>();
    ASSERT_NE(picker, nullptr);
    EXPECT_TRUE(picker->isVisible());
    EXPECT_FALSE(open.find("plate")->isVisible());
    const Side asked = open.state().request->patient.side();
    Q_EMIT picker->picked(asked == Side::Left ? Side::Right : Side::Left);
    EXPECT_TRUE(open.find<QLabel>("hint")->text().contains(QLatin1String("faces you")));
    Q_EMIT picker->picked(asked);
    EXPECT_TRUE(open.find("plate")->isVisible());
}

TEST(PracticePageTest, ABadSeedIsACalmNoticeAndNothingIsLost)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    open.practice().placeMark({0.0, -4.0});
    auto* seed = open.find<QLineEdit>("seed");
    seed->selectAll();
    QTest::keyClicks(seed, QStringLiteral("over there"));
    QTest::keyClick(seed, Qt::Key_Return);
    EXPECT_TRUE(open.find("notice")->isVisible());
    EXPECT_EQ(open.find<QLabel>("noticeText")->text().count(QLatin1Char('.')), 1);
    EXPECT_TRUE(open.state().mark.has_value());
    EXPECT_EQ(seed->text(), QStringLiteral("over there")) << "what was typed stays to be mended";
    QTest::mouseClick(open.find("dismissNotice"), Qt::LeftButton);
    EXPECT_FALSE(open.find("notice")->isVisible());
    seed->selectAll();
    QTest::keyClicks(seed, QStringLiteral("4711"));
    QTest::keyClick(seed, Qt::Key_Return);
    EXPECT_EQ(open.state().setup.seed, 4711U);
}

TEST(PracticePageTest, LayersAreShutWhereTheyWouldGiveTheAnswerAway)
{
    Preferences blind = plainPreferences();
    blind.help = HelpLevel::Nothing;
    OpenWindow open(blind);
    ASSERT_TRUE(open.isReady);
    EXPECT_FALSE(open.find("peelBone")->isEnabled());
    open.practice().placeMark({0.0, -4.0});
    open.practice().grade();
    EXPECT_TRUE(open.find("peelBone")->isEnabled());
}

}  // namespace fb::test::practice_page_test
