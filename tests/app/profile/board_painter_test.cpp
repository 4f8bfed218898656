#include "app/profile/board_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

namespace fb::test::board_painter_tests {

namespace board_painter_test {

const QRectF kFigure(100, 80, 342.4, 215.92);

QImage painted(Laid laid, const Scheme& scheme, const QRectF& figure = kFigure)
{
    QImage image(700, 400, QImage::Format_RGB32);
    QPainter painter(&image);
    paintBoard(painter, image.rect(), {laid, figure, 4.0, QStringLiteral("85.60 mm"), {}, 1.0}, scheme);
    return image;
}

// Pixels that are not the paper's colour.
int inkIn(const QImage& image, const QRect& part, const QColor& paper)
{
    int count = 0;
    for (int y = part.top(); y <= part.bottom(); ++y) {
        for (int x = part.left(); x <= part.right(); ++x)
            count += image.pixelColor(x, y) != paper ? 1 : 0;
    }
    return count;
}

}  // namespace board_painter_test

using namespace board_painter_test;

TEST(BoardPainterTest, ACardsOutlineLiesWhereItsFigureSays)
{
    const Scheme scheme = schemeOf(PaletteKind::Light);
    const QImage image = painted(Laid::Card, scheme);
    const int middle = 188;
    // One pixel of line at the edge, paper a little outside, the card's own colour inside.
    EXPECT_NE(image.pixelColor(100, middle), scheme.paper);
    EXPECT_EQ(image.pixelColor(96, middle), scheme.paper);
    EXPECT_EQ(image.pixelColor(104, middle), scheme.panel);
    EXPECT_NE(image.pixelColor(442, middle), scheme.panel);
    EXPECT_EQ(image.pixelColor(446, middle), scheme.paper);
}

TEST(BoardPainterTest, EveryLaidThingLooksDifferentInEveryScheme)
{
    for (const PaletteKind kind : kPaletteKinds) {
        const Scheme scheme = schemeOf(kind);
        std::vector<QImage> seen;
        for (const Laid laid : {Laid::Card, Laid::Ruler, Laid::Hand, Laid::Finger}) {
            const QImage image = painted(laid, scheme);
            EXPECT_GT(inkIn(image, image.rect(), scheme.paper), 400);
            for (const QImage& other : seen)
                EXPECT_NE(image, other);
            seen.push_back(image);
        }
    }
}

TEST(BoardPainterTest, WordsThatDoNotFitBetweenTheLinesStandBeside)
{
    const Scheme scheme = schemeOf(PaletteKind::Light);
    const QRectF narrow(300, 60, 40, 280);
    const QImage image = painted(Laid::Finger, scheme, narrow);
    const QRect beside(370, 290, 120, 40);
    EXPECT_GT(inkIn(image, beside, scheme.paper), 40);
    EXPECT_EQ(inkIn(painted(Laid::Hand, scheme, QRectF(100, 60, 260, 280)), beside, scheme.paper), 0);
}

TEST(BoardPainterTest, ACardIsHeldByItsCornersAndLinesByTheirLowerEnds)
{
    EXPECT_EQ(gripsOf(Laid::Card, kFigure).size(), 4U);
    const auto grips = gripsOf(Laid::Hand, kFigure);
    ASSERT_EQ(grips.size(), 2U);
    EXPECT_EQ(grips[0], kFigure.bottomLeft());
    EXPECT_EQ(grips[1], kFigure.bottomRight());
}

}  // namespace fb::test::board_painter_tests
