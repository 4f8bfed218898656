#include "app/report/item_picture.h"

#include <gtest/gtest.h>

#include <QPainter>

#include "tests/support/report_sample.h"

namespace fb::test::item_picture_tests {

namespace item_picture_test {

constexpr double kWide = 1.5;

const FeedbackSheet& usualSheet()
{
    static const FeedbackSheet kSheet = sheetOf(usualSample());
    return kSheet;
}

QImage painted(const SheetItemFound& item, const Scene& scene, const std::optional<Point>& mark, bool withInk)
{
    const QRectF area = itemArea(*item.target, item.answer.mark, kWide);
    const QSize size(600, 400);
    QImage ink = itemInk(*item.picture, area, size);
    if (!withInk)
        ink.fill(Qt::white);
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    paintItem(painter, QRectF(QPointF(), QSizeF(size)), ink, area, scene, mark);
    return image;
}

int darkNear(const QImage& image, QPointF at, int reach)
{
    int dark = 0;
    for (int y = std::max(0, int(at.y()) - reach); y < std::min(image.height(), int(at.y()) + reach); ++y)
        for (int x = std::max(0, int(at.x()) - reach); x < std::min(image.width(), int(at.x()) + reach); ++x)
            dark += qGray(image.pixel(x, y)) < 100 ? 1 : 0;
    return dark;
}

}  // namespace item_picture_test

using namespace item_picture_test;

TEST(ItemPictureTest, RegionIdealPointAndMarkLieInsideWithRoom)
{
    for (const SheetItemFound& item : usualSheet().findings.items) {
        const QRectF area = itemArea(*item.target, item.answer.mark, kWide);
        EXPECT_NEAR(area.width() / area.height(), kWide, 1e-9);
        const QRectF inner = area.adjusted(2.0, 2.0, -2.0, -2.0);
        for (const Point corner : item.target->region.corners())
            EXPECT_TRUE(inner.contains(QPointF(corner.x, corner.y)));
        EXPECT_TRUE(inner.contains(QPointF(item.target->ideal.x, item.target->ideal.y)));
        EXPECT_TRUE(inner.contains(QPointF(item.answer.mark->x, item.answer.mark->y)));
    }
}

TEST(ItemPictureTest, AMarkFarAwayIsStillInThePicture)
{
    const Target& target = *usualSheet().findings.items.front().target;
    const QRectF area = itemArea(target, Point{30.0, -40.0}, kWide);
    EXPECT_TRUE(area.contains(QPointF(30.0, -40.0)));
    EXPECT_NEAR(area.width() / area.height(), kWide, 1e-9);
}

TEST(ItemPictureTest, TheDrawingIsGreyAndPaleForEverySkinTone)
{
    const SheetItemFound& item = usualSheet().findings.items.front();
    const QRectF area = itemArea(*item.target, item.answer.mark, kWide);
    for (int tone = 0; tone < kSkinToneCount; ++tone) {
        Picture picture = *item.picture;
        picture.skinTone = tone;
        const QImage ink = itemInk(picture, area, {300, 200});
        ASSERT_EQ(ink.format(), QImage::Format_Grayscale8);
        int darkest = 255;
        int drawn = 0;
        for (int y = 0; y < ink.height(); ++y) {
            for (int x = 0; x < ink.width(); ++x) {
                darkest = std::min(darkest, qGray(ink.pixel(x, y)));
                drawn += qGray(ink.pixel(x, y)) < 250 ? 1 : 0;
            }
        }
        EXPECT_GE(darkest, 120) << "tone " << tone;
        EXPECT_GT(drawn, ink.width() * ink.height() / 5) << "tone " << tone;
    }
}

TEST(ItemPictureTest, TheMarkStandsWhereItWasSet)
{
    const SheetItemFound& item = usualSheet().findings.items[1];
    const QRectF area = itemArea(*item.target, item.answer.mark, kWide);
    const QPointF at((item.answer.mark->x - area.left()) / area.width() * 600.0,
                     (area.bottom() - item.answer.mark->y) / area.height() * 400.0);
    EXPECT_EQ(darkNear(painted(item, {}, std::nullopt, false), at, 8), 0);
    EXPECT_GT(darkNear(painted(item, {}, item.answer.mark, false), at, 8), 10);
}

TEST(ItemPictureTest, RegionAndIdealPointAreDrawnOver)
{
    const SheetItemFound& item = usualSheet().findings.items[1];
    const SheetItemWords& words = usualSheet().words.items[1];
    EXPECT_NE(painted(item, words.scene, std::nullopt, true), painted(item, {}, std::nullopt, true));
}

TEST(ItemPictureTest, PaperIsWhiteAndInkIsBlack)
{
    EXPECT_EQ(paperScheme().paper, QColor(Qt::white));
    EXPECT_EQ(paperScheme().ink, QColor(Qt::black));
}

}  // namespace fb::test::item_picture_tests
