#include "app/canvas/hand_painter.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

#include "tests/support/core_atlas.h"

namespace hand_painter_test {

namespace {

using namespace fb;

constexpr QSize kSheet(400, 400);
const QTransform kTenPerCm(10, 0, 0, -10, 200, 200);

std::shared_ptr<const Plate> art()
{
    return {std::shared_ptr<const Plate>(), &test::plateOf(View::OpenHand)};
}

// A hand pointing up the middle of the sheet, wrist at the origin.
HandPose pose(Side hand)
{
    HandPose made;
    made.hand = hand;
    made.length = Cm{18.0};
    made.opening = Degrees{40.0};
    made.fork = {0.0, 10.0};
    made.indexTip = {0.0, 17.0};
    made.middleTip = {hand == Side::Left ? -4.5 : 4.5, 16.0};
    return made;
}

std::shared_ptr<const Picture> handOf(Side hand) { return handPicture(art(), pose(hand)); }

QImage painted(const Picture& hand, const QColor& ground)
{
    QImage image(kSheet, QImage::Format_RGB32);
    image.fill(ground);
    QPainter painter(&image);
    paintHand(painter, hand, schemeOf(PaletteKind::Light), kTenPerCm);
    return image;
}

int changed(const QImage& image, const QColor& ground, const QRect& where)
{
    int pixels = 0;
    for (int y = where.top(); y <= where.bottom(); ++y)
        for (int x = where.left(); x <= where.right(); ++x)
            pixels += image.pixelColor(x, y) == ground ? 0 : 1;
    return pixels;
}

TEST(HandPainterTest, NoHandWithoutAPoseOrArt)
{
    EXPECT_EQ(handPicture(art(), std::nullopt), nullptr);
    EXPECT_EQ(handPicture(nullptr, pose(Side::Left)), nullptr);
}

TEST(HandPainterTest, TheHandLiesWhereItsPoseSays)
{
    const QImage image = painted(*handOf(Side::Left), Qt::white);
    EXPECT_GT(changed(image, Qt::white, QRect(190, 110, 20, 60)), 600);  // the palm
    EXPECT_GT(changed(image, Qt::white, QRect(190, 35, 20, 60)), 200);   // the index finger
    EXPECT_EQ(changed(image, Qt::white, QRect(0, 300, 400, 100)), 0);
}

TEST(HandPainterTest, LeftAndRightHandAreMirrored)
{
    const QImage left = painted(*handOf(Side::Left), Qt::white);
    const QImage right = painted(*handOf(Side::Right), Qt::white).mirrored(true, false);
    int apart = 0;
    for (int y = 0; y < kSheet.height(); y += 4)
        for (int x = 8; x < kSheet.width() - 8; x += 4)
            apart += std::abs(qGray(left.pixel(x, y)) - qGray(right.pixel(x, y))) > 60 ? 1 : 0;
    EXPECT_LT(apart, 60);
}

TEST(HandPainterTest, TheBodyShowsThroughTheHandEvenly)
{
    const QImage onDark = painted(*handOf(Side::Left), Qt::black);
    const QImage onLight = painted(*handOf(Side::Left), Qt::white);
    // Palm and finger, where several washes lie over each other: the ground counts as much at each.
    for (const QPoint at : {QPoint(200, 150), QPoint(200, 60)}) {
        const double through = (qRed(onLight.pixel(at)) - qRed(onDark.pixel(at))) / 255.0;
        EXPECT_NEAR(through, 1.0 - kHandOpacity, 0.13) << at.x() << ' ' << at.y();
    }
}

TEST(HandPainterTest, AClipIsKept)
{
    QImage image(kSheet, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setClipRect(QRect(0, 0, 400, 100));
    paintHand(painter, *handOf(Side::Left), schemeOf(PaletteKind::Light), kTenPerCm);
    painter.end();
    EXPECT_GT(changed(image, Qt::white, QRect(0, 0, 400, 100)), 200);
    EXPECT_EQ(changed(image, Qt::white, QRect(0, 100, 400, 300)), 0);
}

TEST(HandPainterTest, ACancelledHandLeavesNoTrace)
{
    QImage image(kSheet, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    const auto hand = handOf(Side::Right);
    const std::atomic_bool cancelled{true};
    EXPECT_FALSE(paintHand(painter, ReadyInk(*hand),
                           toneColours(*hand->plate, schemeOf(PaletteKind::Light), 0), kTenPerCm, cancelled));
    painter.end();
    EXPECT_EQ(changed(image, Qt::white, image.rect()), 0);
}

TEST(HandPainterTest, AFileWithoutPixelsCarriesTheHandToo)
{
    QByteArray svg;
    QBuffer out(&svg);
    QSvgGenerator generator;
    generator.setOutputDevice(&out);
    generator.setSize(kSheet);
    QPainter painter(&generator);
    paintHand(painter, *handOf(Side::Left), schemeOf(PaletteKind::Light), kTenPerCm);
    painter.end();
    EXPECT_TRUE(svg.contains("<image"));

    QByteArray pdf;
    QBuffer page(&pdf);
    ASSERT_TRUE(page.open(QIODevice::WriteOnly));
    QPdfWriter writer(&page);
    QPainter onPage(&writer);
    paintHand(onPage, *handOf(Side::Left), schemeOf(PaletteKind::Light), kTenPerCm);
    onPage.end();
    EXPECT_TRUE(pdf.contains("/Image"));
}

}  // namespace

}  // namespace hand_painter_test
