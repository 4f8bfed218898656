#include "app/canvas/handle_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

namespace handle_painter_test {

namespace {

using namespace fb;

const QTransform kTenPerCm(10, 0, 0, -10, 200, 200);

HandlesPlace place(int current = -1, bool focused = false)
{
    HandlesPlace made;
    made.cmToWidget = kTenPerCm;
    made.paper = QRectF(8, 8, 384, 384);
    made.current = current;
    made.focused = focused;
    return made;
}

QImage painted(const QVector<HandleLook>& handles, const HandlesPlace& where)
{
    QImage image(400, 400, QImage::Format_Grayscale8);
    image.fill(128);
    QPainter painter(&image);
    paintHandles(painter, handles, where, schemeOf(PaletteKind::Light));
    return image;
}

int differing(const QImage& a, const QImage& b)
{
    int pixels = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            pixels += std::abs(a.constScanLine(y)[x] - b.constScanLine(y)[x]) > 60 ? 1 : 0;
    return pixels;
}

TEST(HandlePainterTest, TheNearestWithinReachIsMetAndNoneBeyond)
{
    const QVector<HandleLook> two{{3, {0, 0}, {}, HandleShape::Grip}, {7, {1, 0}, {}, HandleShape::Point}};
    EXPECT_EQ(nearestHandle(two, kTenPerCm, {203, 200}, 12), 3);
    EXPECT_EQ(nearestHandle(two, kTenPerCm, {208, 200}, 12), 7);
    EXPECT_EQ(nearestHandle(two, kTenPerCm, {200, 211.9}, 12), 3);
    EXPECT_EQ(nearestHandle(two, kTenPerCm, {200, 212.1}, 12), -1);
    EXPECT_EQ(nearestHandle(two, kTenPerCm, {200, 221}, 22), 3);
    EXPECT_EQ(nearestHandle({}, kTenPerCm, {200, 200}, 12), -1);
    const QVector<HandleLook> over{{3, {0, 0}, {}, HandleShape::Grip}, {7, {0, 0}, {}, HandleShape::Point}};
    EXPECT_EQ(nearestHandle(over, kTenPerCm, {200, 200}, 12), 7);
}

TEST(HandlePainterTest, EveryShapeLooksOtherInGrey)
{
    QVector<QImage> all;
    for (const HandleShape shape :
         {HandleShape::Grip, HandleShape::Turn, HandleShape::Point, HandleShape::Line})
        for (const int current : {-1, 0})
            all.push_back(painted({{0, {0, 0}, {}, shape}}, place(current)));
    for (int i = 0; i < all.size(); ++i)
        for (int k = i + 1; k < all.size(); ++k)
            EXPECT_GT(differing(all[i], all[k]), 25) << i << "," << k;
}

TEST(HandlePainterTest, FocusIsSeenWithoutColour)
{
    const QVector<HandleLook> one{{0, {0, 0}, {}, HandleShape::Grip}};
    EXPECT_GT(differing(painted(one, place(0, false)), painted(one, place(0, true))), 40);
    EXPECT_EQ(differing(painted(one, place(-1, false)), painted(one, place(-1, true))), 0);
}

TEST(HandlePainterTest, NamesShowForTheCurrentOneAndTheOneUnderThePointer)
{
    const QVector<HandleLook> two{{0, {0, 0}, "Palm", HandleShape::Grip},
                                  {1, {4, 6}, "Index fingertip", HandleShape::Turn}};
    HandlesPlace where = place();
    const double bare = handlesBox(two, where).width();
    where.current = 1;
    const double named = handlesBox(two, where).width();
    EXPECT_GT(named, bare + 20);
    where.current = -1;
    where.hovered = 1;
    EXPECT_NEAR(handlesBox(two, where).width(), named, 1e-9);
    where.current = 1;
    EXPECT_NEAR(handlesBox(two, where).width(), named, 1e-9);
}

TEST(HandlePainterTest, NamesStayOnThePaperAndMirrorInRightToLeft)
{
    for (const QPointF cm : {QPointF(-17, 17), QPointF(17, 17), QPointF(17, -17), QPointF(-17, -17)}) {
        const QVector<HandleLook> one{{0, cm, "Greater trochanter", HandleShape::Point}};
        const HandlesPlace where = place(0);
        EXPECT_TRUE(QRectF(0, 0, 400, 400).contains(handlesBox(one, where))) << cm.x();
    }
    const QVector<HandleLook> one{{0, {0, 0}, "Palm", HandleShape::Grip}};
    HandlesPlace where = place(0);
    EXPECT_GT(handlesBox(one, where).right(), 230);
    where.direction = Qt::RightToLeft;
    EXPECT_LT(handlesBox(one, where).left(), 170);
    EXPECT_LT(handlesBox(one, where).right(), 230);
}

TEST(HandlePainterTest, NothingIsPaintedOutsideTheirBox)
{
    for (const HandleShape shape :
         {HandleShape::Grip, HandleShape::Turn, HandleShape::Point, HandleShape::Line}) {
        const QVector<HandleLook> one{{0, {2, 3}, "Palm", shape}};
        const QImage image = painted(one, place(0, true));
        const QRect box = handlesBox(one, place(0, true)).toAlignedRect();
        for (int y = 0; y < 400; ++y)
            for (int x = 0; x < 400; ++x)
                if (!box.contains(x, y)) {
                    ASSERT_EQ(image.constScanLine(y)[x], 128) << x << "," << y;
                }
    }
}

}  // namespace

}  // namespace handle_painter_test
