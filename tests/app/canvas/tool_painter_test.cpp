#include "app/canvas/tool_painter.h"

#include <gtest/gtest.h>

#include <QPainter>

#include "app/canvas/scene_layer.h"
#include "tests/support/sample_picture.h"

namespace tool_painter_test {

namespace {

using namespace fb;

PlateFace face()
{
    PlateFace made;
    made.widget = QRectF(0, 0, 500, 400);
    made.frame = ViewFrame::whole(sheetOf(made.widget), QRectF(-10, -10, 20, 20));
    made.scheme = schemeOf(PaletteKind::Light);
    made.hasPicture = true;
    made.tools.tool = PlateTool::Press;
    return made;
}

PressLook press(QPointF cm)
{
    PressLook made;
    made.cm = cm;
    made.firmness = Firmness::Soft;
    made.words = "Soft";
    return made;
}

FingersLook fingers()
{
    FingersLook made;
    made.fingers.top = {4, 4};
    return made;
}

QImage painted(const PlateFace& made)
{
    QImage image(made.widget.size().toSize(), QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setLayoutDirection(made.tools.direction);
    paintFace(painter, made);
    return image;
}

// Where two pictures differ.
QRect difference(const QImage& a, const QImage& b)
{
    QRect box;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            if (a.pixel(x, y) != b.pixel(x, y))
                box |= QRect(x, y, 1, 1);
    return box;
}

TEST(ToolPainterTest, TheirBoxHoldsAllThatMoves)
{
    PlateFace made = face();
    const QImage bare = painted(made);
    EXPECT_TRUE(toolsBox(made).isEmpty());
    std::vector<PlateFace> all(3, made);
    all[0].tools.press = press({2, 3});
    all[1].tools.handles = {{0, {1, 1}, "Palm", HandleShape::Grip}, {1, {-3, 2}, {}, HandleShape::Turn}};
    all[1].tools.current = 0;
    all[2].tools.outlines = fingers();
    for (const PlateFace& one : all) {
        const QRect changed = difference(painted(one), bare);
        EXPECT_FALSE(changed.isEmpty());
        EXPECT_TRUE(toolsBox(one).toAlignedRect().contains(changed));
    }
}

TEST(ToolPainterTest, NothingIsPaintedOffThePaperWhereverItIsPressed)
{
    PlateFace made = face();
    const QImage bare = painted(made);
    made.frame = made.frame.zoomedAt({250, 200}, 3.0);
    const QRect sheet = made.frame.sheet().toAlignedRect();
    const QImage zoomed = painted(made);
    EXPECT_EQ(difference(bare, zoomed).intersected(sheet), difference(bare, zoomed));
    for (const QPointF at : {sheet.topLeft(), sheet.topRight(), sheet.bottomLeft(), sheet.bottomRight()}) {
        made.tools.press = press(made.frame.toCm(at));
        made.tools.handles = {{0, made.frame.toCm(at), "Palm", HandleShape::Grip}};
        made.tools.current = 0;
        const QRect changed = difference(painted(made), zoomed);
        EXPECT_FALSE(changed.isEmpty());
        EXPECT_TRUE(sheet.contains(changed));
    }
}

TEST(ToolPainterTest, WordsMirrorInRightToLeft)
{
    PlateFace made = face();
    made.tools.press = press({0, 0});
    const double middle = made.frame.toWidget({0, 0}).x();
    const double ahead = toolsBox(made).right() - middle;
    EXPECT_GT(ahead, middle - toolsBox(made).left() + 30);
    made.tools.direction = Qt::RightToLeft;
    EXPECT_NEAR(middle - toolsBox(made).left(), ahead, 1.0);
    EXPECT_LT(toolsBox(made).right() - middle, ahead - 10);
}

TEST(ToolPainterTest, WordsOfAPressKeepClearOfFlags)
{
    PlateFace made = face();
    made.tools.press = press({0, 0});
    const QRectF before = toolsBox(made);
    made.tools.flags = {
        {made.frame.toCm({before.right() - 25, made.frame.toWidget({0, 0}).y() + 10}), "Acromion", {}}};
    EXPECT_LT(toolsBox(made).right(), before.right() - 5);
}

TEST(ToolPainterTest, WordsOfAPressKeepClearOfTheNamesOfFlags)
{
    PlateFace made = face();
    made.tools.flags = {{{1, 0}, "Greater trochanter", {}}};
    const QVector<QRectF> names = labelBoxes(made);
    ASSERT_EQ(names.size(), 1);
    for (const QPointF at : {QPointF(2, 0), QPointF(3, 1), QPointF(-3, 0), QPointF(4, -1)}) {
        made.tools.press = press(at);
        const QRectF ring = pressedBox(made);
        if (ring.intersects(names[0]))
            continue;
        PlateFace bare = made;
        bare.tools.press.reset();
        const QImage without = painted(bare);
        const QImage with = painted(made);
        EXPECT_EQ(without.copy(names[0].toRect()), with.copy(names[0].toRect())) << at.x();
    }
}

TEST(ToolPainterTest, WhatIsLaidLiesUnderTheScene)
{
    PlateFace made = face();
    made.scene = {{Role::Ideal, Figure::Point, {{4, 3.2}}, {}, {}}};
    const QImage without = painted(made);
    made.tools.outlines = fingers();
    const QImage with = painted(made);
    const QPoint ring = made.frame.toWidget({4, 3.2}).toPoint();
    EXPECT_EQ(with.pixel(ring + QPoint(6, 0)), without.pixel(ring + QPoint(6, 0)));
    EXPECT_NE(with, without);
}

}  // namespace

}  // namespace tool_painter_test
