// The tools of a real view under real mouse, touch and key events.
#include <gtest/gtest.h>

#include <QLineF>
#include <QSignalSpy>
#include <QTest>

#include "app/canvas/plate_view.h"
#include "app/canvas/plate_voice.h"
#include "tests/support/core_atlas.h"
#include "tests/support/sample_picture.h"

namespace plate_view_tools_test {

namespace {

using namespace fb;

QPointingDevice* screen()
{
    static QPointingDevice* device = QTest::createTouchDevice();
    return device;
}

class PlateViewToolsTest : public ::testing::Test {
protected:
    PlateViewToolsTest()
    {
        view.resize(520, 480);
        view.setPicture(test::samplePicture());
        view.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
        EXPECT_TRUE(QTest::qWaitFor([this] { return view.isSharp(); }));
        QObject::connect(&view, &PlateView::handleMoved, &view, [this](int id, QPointF cm) {
            for (HandleLook& handle : handles)
                if (handle.id == id)
                    handle.cm = cm;
            view.setHandles(handles);
        });
    }
    QPoint pixel(double x, double y) { return view.toWidget({x, y}).toPoint(); }
    double pixelCm() const { return 1.5 / view.pixelsPerCm(); }

    void useHandles()
    {
        view.setTool(PlateTool::Handles);
        handles = {{4, {1, 1}, "Palm", HandleShape::Grip}, {9, {-3, 2}, "Tip", HandleShape::Turn}};
        view.setHandles(handles);
    }

    PlateView view;
    QVector<HandleLook> handles;
};

TEST_F(PlateViewToolsTest, ThePressIsWhereTheFingerIsAndLiftedWhenItLeaves)
{
    view.setTool(PlateTool::Press);
    QSignalSpy pressed(&view, &PlateView::pressed);
    QSignalSpy lifted(&view, &PlateView::lifted);
    QSignalSpy marked(&view, &PlateView::marked);
    QTest::mousePress(&view, Qt::LeftButton, {}, pixel(2, 3));
    ASSERT_EQ(pressed.count(), 1);
    EXPECT_LT(QLineF(pressed[0][0].toPointF(), QPointF(2, 3)).length(), pixelCm());
    QTest::mouseMove(&view, pixel(4, -1));
    ASSERT_EQ(pressed.count(), 2);
    EXPECT_LT(QLineF(pressed[1][0].toPointF(), QPointF(4, -1)).length(), pixelCm());
    EXPECT_EQ(lifted.count(), 0);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, pixel(4, -1));
    EXPECT_EQ(lifted.count(), 1);
    EXPECT_EQ(marked.count(), 0);
}

TEST_F(PlateViewToolsTest, KeysPressAndEnterPlantsWhereThePressIs)
{
    view.setTool(PlateTool::Press);
    QSignalSpy pressed(&view, &PlateView::pressed);
    QSignalSpy marked(&view, &PlateView::marked);
    QTest::keyClick(&view, Qt::Key_Right);
    QTest::keyClick(&view, Qt::Key_Up, Qt::ShiftModifier);
    ASSERT_EQ(pressed.count(), 2);
    EXPECT_LT(QLineF(pressed[1][0].toPointF(), QPointF(0.5, 0.1)).length(), 1e-9);
    QTest::keyClick(&view, Qt::Key_Return);
    ASSERT_EQ(marked.count(), 1);
    EXPECT_LT(QLineF(marked[0][0].toPointF(), QPointF(0.5, 0.1)).length(), 1e-9);
    QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(-3, 2));
    QTest::keyClick(&view, Qt::Key_Return);
    EXPECT_LT(QLineF(marked[1][0].toPointF(), QPointF(-3, 2)).length(), pixelCm());
}

TEST_F(PlateViewToolsTest, APressOnTheVeryEdgeAndBeyondIsHeldOnThePicture)
{
    view.setTool(PlateTool::Press);
    QSignalSpy pressed(&view, &PlateView::pressed);
    QTest::mousePress(&view, Qt::LeftButton, {}, {1, 1});
    QTest::mouseMove(&view, {519, 479});
    QTest::mouseRelease(&view, Qt::LeftButton, {}, {519, 479});
    ASSERT_EQ(pressed.count(), 2);
    EXPECT_EQ(pressed[0][0].toPointF(), QPointF(-10, 10));
    EXPECT_EQ(pressed[1][0].toPointF(), QPointF(10, -10));
}

TEST_F(PlateViewToolsTest, TheRingStaysUntilItIsTakenAwayAndLeavesNoTrace)
{
    view.setTool(PlateTool::Press);
    const QImage bare = view.grab().toImage();
    PressLook press;
    press.cm = {3, 2};
    press.words = "Soft";
    view.setPress(press);
    const QImage ringed = view.grab().toImage();
    EXPECT_NE(ringed, bare);
    QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(3, 2));
    EXPECT_EQ(view.grab().toImage(), ringed);
    view.setPress(std::nullopt);
    EXPECT_EQ(view.grab().toImage(), bare);
}

TEST_F(PlateViewToolsTest, AHandleIsDraggedByMouseWithItsOffset)
{
    useHandles();
    QSignalSpy grabbed(&view, &PlateView::handleGrabbed);
    QSignalSpy released(&view, &PlateView::handleReleased);
    QTest::mousePress(&view, Qt::LeftButton, {}, pixel(1, 1) + QPoint(6, 5));
    QTest::mouseMove(&view, pixel(4, -2) + QPoint(6, 5));
    QTest::mouseRelease(&view, Qt::LeftButton, {}, pixel(4, -2) + QPoint(6, 5));
    ASSERT_EQ(grabbed.count(), 1);
    EXPECT_EQ(grabbed[0][0].toInt(), 4);
    EXPECT_EQ(released.count(), 1);
    EXPECT_LT(QLineF(handles[0].cm, QPointF(4, -2)).length(), 2 * pixelCm());
}

TEST_F(PlateViewToolsTest, AHandleIsDraggedByAFingerThatOnlyNearlyMeetsIt)
{
    useHandles();
    QTest::touchEvent(&view, screen()).press(0, pixel(-3, 2) + QPoint(18, 0), &view);
    QTest::touchEvent(&view, screen()).move(0, pixel(-3, -4) + QPoint(18, 0), &view);
    QTest::touchEvent(&view, screen()).release(0, pixel(-3, -4) + QPoint(18, 0), &view);
    EXPECT_LT(QLineF(handles[1].cm, QPointF(-3, -4)).length(), 2 * pixelCm());
}

TEST_F(PlateViewToolsTest, EscapePutsAHandleBack)
{
    useHandles();
    QTest::mousePress(&view, Qt::LeftButton, {}, pixel(1, 1));
    QTest::mouseMove(&view, pixel(4, -2));
    EXPECT_GT(QLineF(handles[0].cm, QPointF(1, 1)).length(), 1.0);
    QTest::keyClick(&view, Qt::Key_Escape);
    EXPECT_EQ(handles[0].cm, QPointF(1, 1));
    QTest::mouseMove(&view, pixel(5, 5));
    QTest::mouseRelease(&view, Qt::LeftButton, {}, pixel(5, 5));
    EXPECT_EQ(handles[0].cm, QPointF(1, 1));
}

TEST_F(PlateViewToolsTest, ArrowsMoveTheCurrentHandleOnceForAKey)
{
    useHandles();
    view.setCurrentHandle(9);
    QSignalSpy grabbed(&view, &PlateView::handleGrabbed);
    QSignalSpy moved(&view, &PlateView::handleMoved);
    QSignalSpy released(&view, &PlateView::handleReleased);
    QTest::keyClick(&view, Qt::Key_Right);
    QTest::keyClick(&view, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(grabbed.count(), 2);
    EXPECT_EQ(moved.count(), 2);
    EXPECT_EQ(released.count(), 2);
    EXPECT_LT(QLineF(handles[1].cm, QPointF(-2.5, 1.9)).length(), 1e-9);
}

TEST_F(PlateViewToolsTest, EnterGoesOnAndBackAndPlacesWhatIsNotSetYet)
{
    useHandles();
    view.setCurrentHandle(9);
    QSignalSpy stepped(&view, &PlateView::handleStepped);
    QSignalSpy marked(&view, &PlateView::marked);
    QTest::keyClick(&view, Qt::Key_Return);
    QTest::keyClick(&view, Qt::Key_Return, Qt::ShiftModifier);
    ASSERT_EQ(stepped.count(), 2);
    EXPECT_EQ(stepped[0][0].toInt(), 1);
    EXPECT_EQ(stepped[1][0].toInt(), -1);
    EXPECT_EQ(marked.count(), 0);
    view.setCurrentHandle(12);  // not among those set
    QTest::keyClick(&view, Qt::Key_Up);
    QTest::keyClick(&view, Qt::Key_Return);
    EXPECT_EQ(stepped.count(), 2);
    ASSERT_EQ(marked.count(), 1);
    EXPECT_LT(QLineF(marked[0][0].toPointF(), QPointF(-3, 2.5)).length(), 1e-9);
}

TEST_F(PlateViewToolsTest, AClickThatMeetsNoHandleSaysWhere)
{
    useHandles();
    QSignalSpy marked(&view, &PlateView::marked);
    QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(6, 6));
    ASSERT_EQ(marked.count(), 1);
    EXPECT_LT(QLineF(marked[0][0].toPointF(), QPointF(6, 6)).length(), pixelCm());
    QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(1, 1));
    EXPECT_EQ(marked.count(), 1);
}

TEST_F(PlateViewToolsTest, PressHandlesAndFlagsAreSpokenOf)
{
    useHandles();
    view.setCurrentHandle(4);
    PressLook press;
    press.words = "Hard";
    press.spokenWords = "Hard, an edge";
    view.setPress(press);
    view.setFlags({{{2, 2}, "Acromion", "Your flag, acromion"}, {{3, 2}, "Armpit level", {}}});
    QStringList words;
    for (const SpokenItem& item : view.spokenItems()) {
        words += item.words;
        EXPECT_FALSE(item.box.isEmpty());
    }
    EXPECT_EQ(words,
              (QStringList{"Hard, an edge",
                           "Palm, current handle, 1.0 cm right of and 1.0 cm above the middle of the picture",
                           "Tip", "Your flag, acromion", "Armpit level"}));
}

TEST_F(PlateViewToolsTest, ASweepIsSpokenOfWhenItsWordsChangeAndNoOftener)
{
    view.setTool(PlateTool::Press);
    QStringList said;
    QObject::connect(&view, &PlateView::spoke, &view, [&](const QString& words) { said += words; });
    PressLook press;
    press.words = "Soft";
    for (int i = 0; i < 20; ++i) {
        press.cm = {0.1 * i, 0};
        view.setPress(press);
    }
    EXPECT_EQ(said, (QStringList{"Soft"}));
    press.words = "Hard";
    view.setPress(press);
    press.words = "Firm";
    view.setPress(press);
    EXPECT_TRUE(QTest::qWaitFor([&] { return said.size() > 1; }));
    QTest::qWait(PlateVoice::kRestMs + 50);
    EXPECT_EQ(said, (QStringList{"Soft", "Firm"}));
    // A new press is news, whatever it feels.
    QTest::mouseClick(&view, Qt::LeftButton, {}, pixel(1, 1));
    view.setPress(press);
    EXPECT_EQ(said.size(), 3);
}

TEST_F(PlateViewToolsTest, AHandleMovedByKeysTellsWhereItIs)
{
    useHandles();
    QStringList said;
    QObject::connect(&view, &PlateView::spoke, &view, [&](const QString& words) { said += words; });
    view.setCurrentHandle(4);
    QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_TRUE(QTest::qWaitFor([&] { return said.size() > 1; }));
    ASSERT_EQ(said.size(), 2);
    EXPECT_TRUE(said[1].startsWith("Palm, current handle, 1.5 cm right of"));
}

TEST_F(PlateViewToolsTest, TheHeldHandLiesAboveTheDrawingAndGoesWithoutATrace)
{
    view.setTool(PlateTool::Handles);
    const QImage bare = view.grab().toImage();
    HandLook look;
    look.art = {std::shared_ptr<const Plate>(), &test::plateOf(View::OpenHand)};
    look.pose.hand = Side::Left;
    look.pose.wrist = {0, -8};
    look.pose.fork = {0, 2};
    look.pose.opening = Degrees{30.0};
    view.setHeldHand(std::make_shared<const HandLook>(look));
    EXPECT_NE(view.grab().toImage(), bare);
    EXPECT_TRUE(QTest::qWaitFor([this] { return view.isHeldSharp(); }, 2000));
    view.setHeldHand(nullptr);
    EXPECT_EQ(view.grab().toImage(), bare);
}

TEST_F(PlateViewToolsTest, EveryToolTellsItsKeys)
{
    const QString marks = view.accessibleDescription();
    view.setTool(PlateTool::Press);
    const QString presses = view.accessibleDescription();
    view.setTool(PlateTool::Handles);
    EXPECT_NE(marks, presses);
    EXPECT_NE(presses, view.accessibleDescription());
    EXPECT_TRUE(view.hasMouseTracking());
    view.setTool(PlateTool::Mark);
    EXPECT_EQ(view.accessibleDescription(), marks);
    EXPECT_FALSE(view.hasMouseTracking());
}

}  // namespace

}  // namespace plate_view_tools_test
