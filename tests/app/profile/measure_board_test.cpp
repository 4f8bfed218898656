#include "app/profile/measure_board.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QTest>

#include "tests/support/layout_audit.h"

namespace fb::test::measure_board_tests {

namespace measure_board_test {

// On screen, with four pixels to a millimetre.
struct Shown {
    explicit Shown(Laid laid)
    {
        board.resize(1000, 420);
        board.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&board));
        board.setFocus();
        board.lay(laid, PixelsPerMm{4.0});
    }

    void drag(QPointF from, QPointF by, Qt::MouseButton button = Qt::LeftButton)
    {
        QTest::mousePress(&board, button, {}, from.toPoint());
        QTest::mouseMove(&board, (from + by / 2.0).toPoint());
        QTest::mouseMove(&board, (from + by).toPoint());
        QTest::mouseRelease(&board, button, {}, (from + by).toPoint());
    }

    MeasureBoard board;
};

}  // namespace measure_board_test

using measure_board_test::Shown;

TEST(MeasureBoardTest, ACardKeepsItsShapeWhateverItsSize)
{
    Shown shown(Laid::Card);
    EXPECT_NEAR(shown.board.value(), 342, 1) << "85.60 mm";
    for (const int pixels : {150, 342, 520}) {
        shown.board.setValue(pixels);
        const QRectF card = shown.board.figure();
        EXPECT_NEAR(card.width() / card.height(), 85.60 / 53.98, 1e-9) << pixels;
        EXPECT_TRUE(QRectF(shown.board.rect()).contains(card)) << pixels;
    }
}

TEST(MeasureBoardTest, AnyCornerIsDraggedAndTheOtherSideStays)
{
    Shown shown(Laid::Card);
    const QRectF first = shown.board.figure();
    shown.drag(first.bottomRight(), {30, 18});
    EXPECT_EQ(shown.board.figure().topLeft(), first.topLeft());
    EXPECT_NEAR(shown.board.figure().width(), first.width() + 30, 1.1);
    const QRectF second = shown.board.figure();
    shown.drag(second.topLeft(), {-20, 0});
    EXPECT_NEAR(shown.board.figure().right(), second.right(), 1.1);
    EXPECT_NEAR(shown.board.figure().width(), second.width() + 20, 1.1);
    const QRectF third = shown.board.figure();
    shown.drag(third.center(), {15, 10});
    EXPECT_EQ(shown.board.figure().size(), third.size()) << "held in the middle it moves as a whole";
    EXPECT_NEAR(shown.board.figure().left(), third.left() + 15, 1.1);
    const QRectF fourth = shown.board.figure();
    shown.drag(fourth.bottomRight(), {30, 0}, Qt::RightButton);
    shown.drag(QPointF(12, 12), {30, 0});
    EXPECT_EQ(shown.board.figure(), fourth) << "another button, an empty place";
}

TEST(MeasureBoardTest, KeysMoveASideByAPixelOrTen)
{
    for (const Laid laid : {Laid::Card, Laid::Ruler, Laid::Hand, Laid::Finger}) {
        Shown shown(laid);
        const int first = shown.board.value();
        const QPointF corner = shown.board.figure().topLeft();
        QTest::keyClick(&shown.board, Qt::Key_Plus, Qt::ShiftModifier);
        EXPECT_EQ(shown.board.value(), first + 1);
        QTest::keyClick(&shown.board, Qt::Key_Right, Qt::ShiftModifier);
        EXPECT_EQ(shown.board.value(), first + 11);
        QTest::keyClick(&shown.board, Qt::Key_Minus);
        QTest::keyClick(&shown.board, Qt::Key_Left);
        QTest::keyClick(&shown.board, Qt::Key_Down);
        EXPECT_EQ(shown.board.value(), first + 8);
        QTest::keyClick(&shown.board, Qt::Key_Up);
        EXPECT_EQ(shown.board.value(), first + 9);
        EXPECT_EQ(shown.board.figure().topLeft(), corner);
    }
}

TEST(MeasureBoardTest, KeysMeanTheSameFromRightToLeft)
{
    Shown shown(Laid::Hand);
    shown.board.setLayoutDirection(Qt::RightToLeft);
    const int first = shown.board.value();
    QTest::keyClick(&shown.board, Qt::Key_Right);
    EXPECT_EQ(shown.board.value(), first + 1) << "the side on the right moves to the right";
}

TEST(MeasureBoardTest, ItNeverGrowsOutOfThePaper)
{
    for (const Laid laid : {Laid::Card, Laid::Ruler, Laid::Hand, Laid::Finger}) {
        Shown shown(laid);
        const QRectF first = shown.board.figure();
        shown.drag({first.right(), first.bottom()}, {5000, 0});
        EXPECT_TRUE(QRectF(shown.board.rect()).contains(shown.board.figure()));
        EXPECT_GT(shown.board.value(), 100);
        const QRectF wide = shown.board.figure();
        shown.drag({wide.left(), wide.bottom()}, {5000, 0});
        EXPECT_TRUE(QRectF(shown.board.rect()).contains(shown.board.figure()));
        EXPECT_EQ(shown.board.value(), shown.board.minimum());
        shown.board.resize(500, 260);
        EXPECT_TRUE(QRectF(shown.board.rect()).contains(shown.board.figure())) << "made smaller";
    }
}

TEST(MeasureBoardTest, AHandIsReadOffInCentimetres)
{
    Shown shown(Laid::Hand);
    shown.board.setValue(4 * 187);
    EXPECT_DOUBLE_EQ(shown.board.length().value(), 18.7);
    const QRectF lines = shown.board.figure();
    shown.drag({lines.right(), lines.center().y()}, {40, 0});
    EXPECT_NEAR(shown.board.length().value(), 19.7, 0.03);
    EXPECT_TRUE(shown.board.accessibleDescription().contains(QStringLiteral("19.7")))
        << shown.board.accessibleDescription().toStdString();
}

TEST(MeasureBoardTest, AFingerOnTheGlassMovesASideAtItsGripAlone)
{
    QScopedPointer<QPointingDevice> glass(QTest::createTouchDevice());
    Shown shown(Laid::Hand);
    const QRectF lines = shown.board.figure();
    const auto touch = [&](QPointF from, QPointF by) {
        QTest::touchEvent(&shown.board, glass.data()).press(1, from.toPoint(), &shown.board);
        QTest::touchEvent(&shown.board, glass.data()).move(1, (from + by).toPoint(), &shown.board);
        QTest::touchEvent(&shown.board, glass.data()).release(1, (from + by).toPoint(), &shown.board);
    };
    touch({lines.right(), lines.center().y()}, {40, 0});
    EXPECT_EQ(shown.board.figure(), lines) << "the hand that is measured lies there";
    touch({lines.center().x(), lines.center().y()}, {40, 0});
    EXPECT_EQ(shown.board.figure(), lines);
    touch(lines.bottomRight(), {40, 0});
    EXPECT_NEAR(shown.board.figure().width(), lines.width() + 40, 1.1);
}

TEST(MeasureBoardTest, OfTwoLinesThatLieCloseTheNearerOneIsTaken)
{
    Shown shown(Laid::Finger);
    shown.board.setValue(24);
    const QRectF lines = shown.board.figure();
    shown.drag({lines.right() - 2, lines.center().y()}, {36, 0});
    EXPECT_EQ(shown.board.figure().left(), lines.left());
    EXPECT_NEAR(shown.board.figure().width(), 60, 1.1);
}

TEST(MeasureBoardTest, AScreenReaderIsToldWhatItIs)
{
    QStringList names;
    for (const Laid laid : {Laid::Card, Laid::Ruler, Laid::Hand, Laid::Finger}) {
        Shown shown(laid);
        const QAccessibleInterface* told = QAccessible::queryAccessibleInterface(&shown.board);
        ASSERT_NE(told, nullptr);
        EXPECT_EQ(told->role(), QAccessible::Slider);
        names << told->text(QAccessible::Name);
        EXPECT_FALSE(told->text(QAccessible::Description).isEmpty());
    }
    EXPECT_EQ(names.removeDuplicates(), 0) << names.join('\n').toStdString();
    EXPECT_FALSE(names.contains(QString()));
}

}  // namespace fb::test::measure_board_tests
