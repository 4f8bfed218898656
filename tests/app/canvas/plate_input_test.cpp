#include "app/canvas/plate_input.h"

#include <gtest/gtest.h>

#include <QTest>
#include <QWheelEvent>
#include <QWidget>
#include <vector>

namespace plate_input_test {

namespace {

using namespace fb;

// Writes down every wish.
class NotingHands : public PlateHands {
public:
    bool isMarkable() const override { return markable; }
    void carry(std::optional<QPointF> at) override { carried = at; }
    void markAt(QPointF at) override { marks.push_back(at); }
    void loupe(std::optional<QPointF> at) override
    {
        looked = looked || at.has_value();
        looking = at;
    }
    void panBy(QPointF pixels) override { panned += pixels; }
    void zoomAt(QPointF at, double factor) override
    {
        zoomedAt = at;
        zoomed *= factor;
    }
    void zoom(double factor) override { zoomed *= factor; }
    void whole() override { ++wholes; }
    void stepCrosshair(QPointF cm) override { stepped += cm; }
    void enter() override { ++enters; }
    void withdraw() override { ++withdrawals; }
    void setByKeyboard(bool now) override { keyboard = now; }
    void setMoving(bool now) override { moving = now; }

    bool markable = true;
    std::optional<QPointF> carried;
    std::optional<QPointF> looking;
    bool looked = false;
    std::vector<QPointF> marks;
    QPointF panned;
    QPointF zoomedAt;
    double zoomed = 1.0;
    int wholes = 0;
    QPointF stepped;
    int enters = 0;
    int withdrawals = 0;
    bool keyboard = false;
    bool moving = false;
};

class Pad : public QWidget {
public:
    Pad() : input(hands)
    {
        setAttribute(Qt::WA_AcceptTouchEvents);
        setFocusPolicy(Qt::StrongFocus);
        resize(400, 400);
        show();
        setFocus();
    }
    bool event(QEvent* event) override { return input.handle(event) || QWidget::event(event); }

    NotingHands hands;
    PlateInput input;
};

QPointingDevice* screen()
{
    static QPointingDevice* device = QTest::createTouchDevice();
    return device;
}

TEST(PlateInputTest, AClickMarksWhereTheButtonWentDown)
{
    Pad pad;
    QTest::mousePress(&pad, Qt::LeftButton, {}, {100, 120});
    QTest::mouseMove(&pad, {102, 121});
    QTest::mouseRelease(&pad, Qt::LeftButton, {}, {102, 121});
    ASSERT_EQ(pad.hands.marks.size(), 1U);
    EXPECT_EQ(pad.hands.marks[0], QPointF(100, 120));
    EXPECT_FALSE(pad.hands.looked);
}

TEST(PlateInputTest, ADragCarriesTheMarkToWhereItEnds)
{
    Pad pad;
    QTest::mousePress(&pad, Qt::LeftButton, {}, {100, 120});
    QTest::mouseMove(&pad, {140, 160});
    ASSERT_TRUE(pad.hands.carried);
    EXPECT_EQ(*pad.hands.carried, QPointF(140, 160));
    QTest::mouseRelease(&pad, Qt::LeftButton, {}, {150, 170});
    ASSERT_EQ(pad.hands.marks.size(), 1U);
    EXPECT_EQ(pad.hands.marks[0], QPointF(150, 170));
    EXPECT_FALSE(pad.hands.carried);
}

TEST(PlateInputTest, AHeldButtonShowsTheLoupeUntilItIsLetGo)
{
    Pad pad;
    QTest::mousePress(&pad, Qt::LeftButton, {}, {100, 120});
    ASSERT_TRUE(QTest::qWaitFor([&] { return pad.hands.looking.has_value(); }, PlateInput::kHoldMs + 1000));
    QTest::mouseMove(&pad, {110, 130});
    EXPECT_EQ(*pad.hands.looking, QPointF(110, 130));
    QTest::mouseRelease(&pad, Qt::LeftButton, {}, {110, 130});
    EXPECT_FALSE(pad.hands.looking);
    EXPECT_EQ(pad.hands.marks.back(), QPointF(110, 130));
}

TEST(PlateInputTest, EscapeGivesUpADrag)
{
    Pad pad;
    QTest::mousePress(&pad, Qt::LeftButton, {}, {100, 120});
    QTest::mouseMove(&pad, {150, 160});
    QTest::keyClick(&pad, Qt::Key_Escape);
    EXPECT_FALSE(pad.hands.carried);
    QTest::mouseRelease(&pad, Qt::LeftButton, {}, {150, 160});
    EXPECT_TRUE(pad.hands.marks.empty());
}

TEST(PlateInputTest, OtherButtonsAndSpaceDragThePaper)
{
    for (const Qt::MouseButton button : {Qt::MiddleButton, Qt::RightButton, Qt::LeftButton}) {
        Pad pad;
        if (button == Qt::LeftButton)
            QTest::keyPress(&pad, Qt::Key_Space);
        QTest::mousePress(&pad, button, {}, {100, 100});
        EXPECT_TRUE(pad.hands.moving);
        QTest::mouseMove(&pad, {130, 90});
        QTest::mouseRelease(&pad, button, {}, {130, 90});
        EXPECT_EQ(pad.hands.panned, QPointF(30, -10));
        EXPECT_FALSE(pad.hands.moving);
        EXPECT_TRUE(pad.hands.marks.empty());
        QTest::keyRelease(&pad, Qt::Key_Space);
    }
}

TEST(PlateInputTest, TheWheelZoomsAtThePointer)
{
    Pad pad;
    QWheelEvent turn(QPointF(70, 80), pad.mapToGlobal(QPointF(70, 80)), {}, {0, 120}, Qt::NoButton,
                     Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&pad, &turn);
    EXPECT_NEAR(pad.hands.zoomed, 1.2, 1e-9);
    EXPECT_EQ(pad.hands.zoomedAt, QPointF(70, 80));
}

TEST(PlateInputTest, ArrowsStepFiveMillimetresAndWithShiftOne)
{
    Pad pad;
    QTest::keyClick(&pad, Qt::Key_Right);
    QTest::keyClick(&pad, Qt::Key_Up);
    EXPECT_EQ(pad.hands.stepped, QPointF(0.5, 0.5));
    QTest::keyClick(&pad, Qt::Key_Left, Qt::ShiftModifier);
    QTest::keyClick(&pad, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_NEAR(pad.hands.stepped.x(), 0.4, 1e-12);
    EXPECT_NEAR(pad.hands.stepped.y(), 0.4, 1e-12);
    EXPECT_TRUE(pad.hands.keyboard);
}

TEST(PlateInputTest, ControlWithArrowsMovesThePaper)
{
    Pad pad;
    QTest::keyClick(&pad, Qt::Key_Right, Qt::ControlModifier);
    EXPECT_LT(pad.hands.panned.x(), 0.0);
    QTest::keyClick(&pad, Qt::Key_Down, Qt::ControlModifier);
    EXPECT_LT(pad.hands.panned.y(), 0.0);
    EXPECT_TRUE(pad.hands.stepped.isNull());
}

TEST(PlateInputTest, KeysPlaceWithdrawAndZoom)
{
    Pad pad;
    QTest::keyClick(&pad, Qt::Key_Return);
    QTest::keyClick(&pad, Qt::Key_Enter);
    EXPECT_EQ(pad.hands.enters, 2);
    QTest::keyClick(&pad, Qt::Key_Backspace);
    QTest::keyClick(&pad, Qt::Key_Delete);
    EXPECT_EQ(pad.hands.withdrawals, 2);
    QTest::keyClick(&pad, Qt::Key_Plus);
    EXPECT_GT(pad.hands.zoomed, 1.0);
    QTest::keyClick(&pad, Qt::Key_Minus);
    EXPECT_NEAR(pad.hands.zoomed, 1.0, 1e-12);
    QTest::keyClick(&pad, Qt::Key_0);
    EXPECT_EQ(pad.hands.wholes, 1);
}

TEST(PlateInputTest, APlateThatIsOnlyShownTakesNoMark)
{
    Pad pad;
    pad.hands.markable = false;
    QTest::mouseClick(&pad, Qt::LeftButton, {}, {50, 50});
    QTest::keyClick(&pad, Qt::Key_Return);
    QTest::keyClick(&pad, Qt::Key_Delete);
    QTest::keyClick(&pad, Qt::Key_Left);
    EXPECT_TRUE(pad.hands.marks.empty());
    EXPECT_EQ(pad.hands.enters + pad.hands.withdrawals, 0);
    EXPECT_TRUE(pad.hands.stepped.isNull());
    EXPECT_GT(pad.hands.panned.x(), 0.0);
}

TEST(PlateInputTest, OneFingerLooksAndMarksWhereItLifts)
{
    Pad pad;
    QTest::touchEvent(&pad, screen()).press(0, QPoint(60, 200), &pad);
    ASSERT_TRUE(pad.hands.looking);
    QTest::touchEvent(&pad, screen()).move(0, QPoint(90, 220), &pad);
    EXPECT_EQ(*pad.hands.looking, QPointF(90, 220));
    EXPECT_TRUE(pad.hands.marks.empty());
    QTest::touchEvent(&pad, screen()).release(0, QPoint(90, 220), &pad);
    ASSERT_EQ(pad.hands.marks.size(), 1U);
    EXPECT_EQ(pad.hands.marks[0], QPointF(90, 220));
    EXPECT_FALSE(pad.hands.looking);
}

TEST(PlateInputTest, TwoFingersPanAndZoomAndNeverMark)
{
    Pad pad;
    auto fingers = QTest::touchEvent(&pad, screen(), false);
    fingers.press(0, QPoint(100, 200), &pad);
    fingers.commit();
    fingers.stationary(0).press(1, QPoint(200, 200), &pad);
    fingers.commit();
    EXPECT_FALSE(pad.hands.looking);
    fingers.move(0, QPoint(60, 210), &pad).move(1, QPoint(260, 210), &pad);
    fingers.commit();
    EXPECT_NEAR(pad.hands.zoomed, 2.0, 1e-6);
    EXPECT_NEAR(pad.hands.panned.y(), 10.0, 1e-6);
    fingers.release(0, QPoint(60, 210), &pad).stationary(1);
    fingers.commit();
    fingers.release(1, QPoint(260, 210), &pad);
    fingers.commit();
    EXPECT_TRUE(pad.hands.marks.empty());
    EXPECT_FALSE(pad.hands.moving);
}

TEST(PlateInputTest, OtherKeysAreLeftToOthers)
{
    Pad pad;
    QKeyEvent letter(QEvent::KeyPress, Qt::Key_G, Qt::NoModifier, "g");
    QKeyEvent tab(QEvent::KeyPress, Qt::Key_Tab, Qt::NoModifier);
    QKeyEvent escape(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
    EXPECT_FALSE(pad.input.handle(&letter));
    EXPECT_FALSE(pad.input.handle(&tab));
    EXPECT_FALSE(pad.input.handle(&escape));
}

}  // namespace

}  // namespace plate_input_test
