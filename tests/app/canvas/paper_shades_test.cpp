#include "app/canvas/paper_shades.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

namespace fb::test::paper_shades_tests {

TEST(PaperShadesTest, OnlyAPdfLosesItsFading)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter pdf(&buffer);
    EXPECT_TRUE(losesFading(*std::make_unique<QPainter>(&pdf)));
    QImage image(10, 10, QImage::Format_RGB32);
    EXPECT_FALSE(losesFading(*std::make_unique<QPainter>(&image)));
    QBuffer other;
    QSvgGenerator svg;
    svg.setOutputDevice(&other);
    EXPECT_FALSE(losesFading(*std::make_unique<QPainter>(&svg)));
}

TEST(PaperShadesTest, DotsFollowTheScaleOfTheMoment)
{
    QImage image(10, 10, QImage::Format_RGB32);
    QPainter painter(&image);
    EXPECT_DOUBLE_EQ(dotsPerUnit(painter), 1.0);
    painter.scale(3.0, 3.0);
    painter.scale(0.5, 0.5);
    EXPECT_DOUBLE_EQ(dotsPerUnit(painter), 1.5);
}

TEST(PaperShadesTest, ABoxIsPaintedInItsOwnUnitsWithNothingBehindIt)
{
    const QRectF box(100.0, 50.0, 20.0, 10.0);
    const QImage image = pictureOf(
        box, 4.0, [](QPainter& painter) { painter.fillRect(QRectF(100.0, 50.0, 10.0, 10.0), Qt::black); });
    ASSERT_EQ(image.size(), QSize(80, 40));
    EXPECT_EQ(image.pixelColor(20, 20), QColor(Qt::black));
    EXPECT_EQ(image.pixelColor(60, 20).alpha(), 0);
}

TEST(PaperShadesTest, AVeryLargePictureIsDrawnLessFine)
{
    const QImage image = pictureOf(QRectF(0.0, 0.0, 4000.0, 1000.0), 10.0, [](QPainter&) {});
    EXPECT_LE(image.width() * image.height(), 4'600'000);
    EXPECT_NEAR(static_cast<double>(image.width()) / image.height(), 4.0, 0.01);
}

}  // namespace fb::test::paper_shades_tests
