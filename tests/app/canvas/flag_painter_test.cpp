#include "app/canvas/flag_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

namespace flag_painter_test {

namespace {

using namespace fb;

const QRectF kPaper(8, 8, 184, 184);

QImage painted(QPointF foot, PaletteKind kind = PaletteKind::Light, const QColor& ground = Qt::gray)
{
    QImage image(200, 200, QImage::Format_RGB32);
    image.fill(ground);
    QPainter painter(&image);
    paintFlag(painter, foot, kPaper, schemeOf(kind), 1.0);
    return image;
}

TEST(FlagPainterTest, AFlagIsAPlaceOfTheSceneNamedAsTheLearnerNamedIt)
{
    const Scene scene = flagScene({{{1, 2}, "Iliac crest", "Your flag, iliac crest"}});
    ASSERT_EQ(scene.size(), 1);
    EXPECT_EQ(scene[0].points, (QVector<QPointF>{{1, 2}}));
    EXPECT_EQ(scene[0].label, QString("Iliac crest"));
    EXPECT_EQ(spoken(scene[0]), QString("Your flag, iliac crest"));
    EXPECT_EQ(scene[0].figure, Figure::Point);
}

TEST(FlagPainterTest, ItFliesAboveItsFootAndNeverLeavesThePaper)
{
    EXPECT_LT(flagBox({100, 100}, kPaper, 1.0).center().y(), 100);
    for (const double scale : {1.0, 2.0}) {
        for (const QPointF foot :
             {QPointF(100, 100), QPointF(186, 100), QPointF(186, 14), QPointF(14, 14), QPointF(100, 186)}) {
            const QRectF box = flagBox(foot, kPaper.adjusted(-8, -8, 8, 8), scale);
            EXPECT_TRUE(kPaper.adjusted(-8, -8, 8, 8).contains(box)) << foot.x() << "," << foot.y();
            EXPECT_TRUE(box.contains(foot));
        }
    }
}

TEST(FlagPainterTest, NothingIsPaintedOutsideItsBox)
{
    for (const QPointF foot : {QPointF(100, 100), QPointF(190, 12)}) {
        const QImage image = painted(foot);
        const QRect box = flagBox(foot, kPaper, 1.0).toAlignedRect();
        int inside = 0;
        for (int y = 0; y < 200; ++y) {
            for (int x = 0; x < 200; ++x) {
                const bool changed = image.pixelColor(x, y) != QColor(Qt::gray);
                inside += changed ? 1 : 0;
                if (!box.contains(x, y)) {
                    ASSERT_FALSE(changed) << x << "," << y;
                }
            }
        }
        EXPECT_GT(inside, 150);
    }
}

TEST(FlagPainterTest, ItCanBeToldFromEveryGround)
{
    for (const PaletteKind kind : kPaletteKinds) {
        for (const QColor& ground :
             {QColor(0xfb, 0xea, 0xdd), QColor(0x11, 0x08, 0x05), QColor(0x80, 0x50, 0x38)}) {
            const QImage image = painted({100, 100}, kind, ground);
            int darkest = 255;
            int lightest = 0;
            for (int y = 70; y < 90; ++y) {
                for (int x = 96; x < 122; ++x) {
                    darkest = std::min(darkest, qGray(image.pixel(x, y)));
                    lightest = std::max(lightest, qGray(image.pixel(x, y)));
                }
            }
            EXPECT_GT(lightest - darkest, 120);
        }
    }
}

}  // namespace

}  // namespace flag_painter_test
