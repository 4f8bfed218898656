#include "app/canvas/tool_hands.h"

#include <gtest/gtest.h>

#include <QTest>
#include <QWidget>

#include "app/canvas/plate_input.h"

namespace tool_hands_test {

namespace {

using namespace fb;

// Writes down the wishes of the tools; handles are met left of x = 200.
class NotingHands : public PlateHands {
public:
    bool isMarkable() const override { return markable; }
    void carry(std::optional<QPointF>) override {}
    void markAt(QPointF at) override { note("mark", at); }
    void loupe(std::optional<QPointF>) override {}
    void panBy(QPointF pixels) override { panned += pixels; }
    void zoomAt(QPointF, double) override {}
    void zoom(double) override {}
    void whole() override {}
    void stepCrosshair(QPointF) override { said += "step"; }
    void enter() override { said += "enter"; }
    void withdraw() override { said += "withdraw"; }
    void setByKeyboard(bool) override {}
    void setMoving(bool) override {}

    PlateTool tool() const override { return used; }
    void press(QPointF at) override { note("press", at); }
    void lift() override { lifted(); }
    bool grab(QPointF at, double reach) override
    {
        if (at.x() >= 200)
            return false;
        said += QString("grab within %1").arg(reach);
        return true;
    }
    void drag(QPointF at) override { note("drag", at); }
    void letGo() override { said += "let go"; }
    void putBack() override { said += "put back"; }
    void hover(std::optional<QPointF> at) override { hovered = at; }
    void endStep() override { ++endedSteps; }
    void enterBack() override { said += "enter back"; }
    void undo() override { said += "undo"; }
    void redo() override { said += "redo"; }

    void note(const char* what, QPointF at)
    {
        said += QString("%1 %2 %3").arg(QLatin1String(what)).arg(at.x()).arg(at.y());
    }
    void lifted() { said += "lift"; }

    PlateTool used = PlateTool::Mark;
    bool markable = true;
    QStringList said;
    QPointF panned;
    std::optional<QPointF> hovered;
    int endedSteps = 0;
};

class Pad : public QWidget {
public:
    explicit Pad(PlateTool tool) : input(hands)
    {
        hands.used = tool;
        setAttribute(Qt::WA_AcceptTouchEvents);
        setFocusPolicy(Qt::StrongFocus);
        setMouseTracking(true);
        resize(400, 400);
        show();
        setFocus();
        EXPECT_TRUE(QTest::qWaitForWindowActive(this));
        hands.said.clear();
    }
    ~Pad() override { removeInput = true; }
    bool event(QEvent* event) override
    {
        return (!removeInput && input.handle(event)) || QWidget::event(event);
    }

    bool removeInput = false;
    NotingHands hands;
    PlateInput input;
};

QPointingDevice* screen()
{
    static QPointingDevice* device = QTest::createTouchDevice();
    return device;
}

TEST(ToolHandsTest, AFingerPressesAtOnceAndOnEveryMoveUntilItIsLifted)
{
    Pad pad(PlateTool::Press);
    QTest::mousePress(&pad, Qt::LeftButton, {}, {100, 120});
    QTest::mouseMove(&pad, {101, 120});
    QTest::mouseMove(&pad, {140, 160});
    QTest::mouseRelease(&pad, Qt::LeftButton, {}, {140, 160});
    EXPECT_EQ(pad.hands.said, (QStringList{"press 100 120", "press 101 120", "press 140 160", "lift"}));
}

TEST(ToolHandsTest, OneFingerOnGlassPressesAndTwoLiftIt)
{
    Pad pad(PlateTool::Press);
    QTest::touchEvent(&pad, screen()).press(0, QPoint(60, 200), &pad);
    QTest::touchEvent(&pad, screen()).move(0, QPoint(90, 220), &pad);
    QTest::touchEvent(&pad, screen()).release(0, QPoint(90, 220), &pad);
    EXPECT_EQ(pad.hands.said, (QStringList{"press 60 200", "press 90 220", "lift"}));
    pad.hands.said.clear();
    auto fingers = QTest::touchEvent(&pad, screen(), false);
    fingers.press(0, QPoint(100, 200), &pad);
    fingers.commit();
    fingers.stationary(0).press(1, QPoint(200, 200), &pad);
    fingers.commit();
    fingers.move(0, QPoint(60, 210), &pad).move(1, QPoint(260, 210), &pad);
    fingers.commit();
    fingers.release(0, QPoint(60, 210), &pad).release(1, QPoint(260, 210), &pad);
    fingers.commit();
    EXPECT_EQ(pad.hands.said, (QStringList{"press 100 200", "lift"}));
    EXPECT_FALSE(pad.hands.panned.isNull());
}

TEST(ToolHandsTest, OtherButtonsAndSpaceStillDragThePaper)
{
    for (const PlateTool tool : {PlateTool::Press, PlateTool::Handles}) {
        for (const Qt::MouseButton button : {Qt::MiddleButton, Qt::RightButton, Qt::LeftButton}) {
            Pad pad(tool);
            if (button == Qt::LeftButton)
                QTest::keyPress(&pad, Qt::Key_Space);
            QTest::mousePress(&pad, button, {}, {100, 100});
            QTest::mouseMove(&pad, {130, 90});
            QTest::mouseRelease(&pad, button, {}, {130, 90});
            EXPECT_EQ(pad.hands.panned, QPointF(30, -10));
            EXPECT_TRUE(pad.hands.said.isEmpty());
            QTest::keyRelease(&pad, Qt::Key_Space);
        }
    }
}

TEST(ToolHandsTest, AHandleIsTakenDraggedAndLetGo)
{
    Pad pad(PlateTool::Handles);
    QTest::mousePress(&pad, Qt::LeftButton, {}, {100, 100});
    QTest::mouseMove(&pad, {102, 100});
    QTest::mouseMove(&pad, {130, 90});
    QTest::mouseRelease(&pad, Qt::LeftButton, {}, {130, 90});
    EXPECT_EQ(pad.hands.said, (QStringList{"grab within 12", "drag 130 90", "let go"}));
}

TEST(ToolHandsTest, AClickThatMeetsNoHandleMarks)
{
    Pad pad(PlateTool::Handles);
    QTest::mouseClick(&pad, Qt::LeftButton, {}, {300, 100});
    EXPECT_EQ(pad.hands.said, (QStringList{"mark 300 100"}));
    pad.hands.said.clear();
    QTest::touchEvent(&pad, screen()).press(0, QPoint(310, 200), &pad);
    QTest::touchEvent(&pad, screen()).release(0, QPoint(310, 200), &pad);
    EXPECT_EQ(pad.hands.said, (QStringList{"mark 310 200"}));
}

TEST(ToolHandsTest, AFingerReachesFartherThanAMouse)
{
    Pad pad(PlateTool::Handles);
    QTest::touchEvent(&pad, screen()).press(0, QPoint(60, 200), &pad);
    QTest::touchEvent(&pad, screen()).move(0, QPoint(90, 220), &pad);
    QTest::touchEvent(&pad, screen()).release(0, QPoint(90, 220), &pad);
    EXPECT_EQ(pad.hands.said, (QStringList{"grab within 22", "drag 90 220", "let go"}));
}

TEST(ToolHandsTest, EscapePutsBackWhatIsDraggedAndNothingElseIsDoneMeanwhile)
{
    Pad pad(PlateTool::Handles);
    QTest::mousePress(&pad, Qt::LeftButton, {}, {100, 100});
    QTest::mouseMove(&pad, {130, 90});
    pad.hands.said.clear();
    for (const int key : {Qt::Key_Return, Qt::Key_Delete, Qt::Key_Left})
        QTest::keyClick(&pad, static_cast<Qt::Key>(key));
    QTest::keyClick(&pad, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(pad.hands.said.isEmpty());
    QTest::keyClick(&pad, Qt::Key_Escape);
    QTest::mouseRelease(&pad, Qt::LeftButton, {}, {130, 90});
    EXPECT_EQ(pad.hands.said, (QStringList{"put back"}));
}

TEST(ToolHandsTest, UndoAndRedoInEveryToolButNotWhereNothingCanBeMarked)
{
    for (const PlateTool tool : {PlateTool::Mark, PlateTool::Press, PlateTool::Handles}) {
        Pad pad(tool);
        QTest::keyClick(&pad, Qt::Key_Z, Qt::ControlModifier);
        QTest::keyClick(&pad, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        QTest::keyClick(&pad, Qt::Key_Y, Qt::ControlModifier);
        EXPECT_EQ(pad.hands.said, (QStringList{"undo", "redo", "redo"}));
        pad.hands.said.clear();
        pad.hands.markable = false;
        QTest::keyClick(&pad, Qt::Key_Z, Qt::ControlModifier);
        EXPECT_TRUE(pad.hands.said.isEmpty());
    }
}

TEST(ToolHandsTest, ShiftWithEnterGoesBackAmongHandlesOnly)
{
    for (const PlateTool tool : {PlateTool::Mark, PlateTool::Press, PlateTool::Handles}) {
        Pad pad(tool);
        QTest::keyClick(&pad, Qt::Key_Return);
        QTest::keyClick(&pad, Qt::Key_Return, Qt::ShiftModifier);
        QTest::keyClick(&pad, Qt::Key_Backspace);
        EXPECT_EQ(pad.hands.said,
                  (QStringList{"enter", tool == PlateTool::Handles ? "enter back" : "enter", "withdraw"}));
    }
}

TEST(ToolHandsTest, AnArrowLetGoEndsItsStepAndThePointerIsFollowed)
{
    Pad pad(PlateTool::Handles);
    pad.hands.endedSteps = 0;
    QTest::keyPress(&pad, Qt::Key_Left);
    EXPECT_EQ(pad.hands.endedSteps, 0);
    QTest::keyRelease(&pad, Qt::Key_Left);
    EXPECT_EQ(pad.hands.endedSteps, 1);
    QTest::mouseMove(&pad, {50, 60});
    ASSERT_TRUE(pad.hands.hovered);
    EXPECT_EQ(*pad.hands.hovered, QPointF(50, 60));
    QEvent leaves(QEvent::Leave);
    QCoreApplication::sendEvent(&pad, &leaves);
    EXPECT_FALSE(pad.hands.hovered);
}

TEST(ToolHandsTest, WhoOnlyMarksNeedsNoTool)
{
    class : public ToolHands {
    } bare;
    EXPECT_EQ(bare.tool(), PlateTool::Mark);
    EXPECT_FALSE(bare.grab({1, 1}, 100));
}

}  // namespace

}  // namespace tool_hands_test
