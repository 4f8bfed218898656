#include "app/canvas/plaque.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "app/look/type.h"

namespace plaque_test {

namespace {

using namespace fb;

const QRectF kPaper(10, 10, 500, 400);
const QSizeF kSize(120, 30);

QRectF thingAt(double x, double y) { return {x - 20, y - 20, 40, 40}; }

TEST(PlaqueTest, ItIsNeverOverTheThingNorOffThePaper)
{
    for (const Qt::LayoutDirection direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        for (double x = 10; x <= 510; x += 50) {
            for (double y = 10; y <= 410; y += 50) {
                const QRectF box = placeBeside(thingAt(x, y), kSize, kPaper, {}, direction);
                EXPECT_TRUE(kPaper.contains(box)) << x << "," << y;
                EXPECT_FALSE(box.intersects(thingAt(x, y))) << x << "," << y;
            }
        }
    }
}

TEST(PlaqueTest, ItStandsWhereAReaderLooksNext)
{
    EXPECT_GT(placeBeside(thingAt(250, 200), kSize, kPaper, {}, Qt::LeftToRight).left(), 270);
    EXPECT_LT(placeBeside(thingAt(250, 200), kSize, kPaper, {}, Qt::RightToLeft).right(), 230);
}

TEST(PlaqueTest, ItKeepsClearOfWhatIsTakenWhereItCan)
{
    const QVector<QRectF> right{QRectF(280, 150, 200, 100)};
    EXPECT_LT(placeBeside(thingAt(250, 200), kSize, kPaper, right, Qt::LeftToRight).right(), 230);
    const QVector<QRectF> all{kPaper};
    EXPECT_FALSE(
        placeBeside(thingAt(250, 200), kSize, kPaper, all, Qt::LeftToRight).intersects(thingAt(250, 200)));
}

TEST(PlaqueTest, WhereItCannotKeepClearItHidesTheLeast)
{
    // Beside, above and below all is taken; to the lower left a strip is free.
    const QVector<QRectF> taken{QRectF(275, 100, 235, 310), QRectF(10, 185, 220, 40),
                                QRectF(190, 100, 120, 75), QRectF(210, 225, 80, 80)};
    const QRectF box = placeBeside(thingAt(250, 200), kSize, kPaper, taken, Qt::LeftToRight);
    for (const QRectF& other : taken)
        EXPECT_FALSE(box.intersects(other) && other.width() > 100) << other.x();
}

TEST(PlaqueTest, LongWordsAreBrokenIntoLines)
{
    const QFont font = fontOf(Type::Body, 1.0);
    const QString words = "Hard, an edge, felt through much fat";
    const QSizeF wide = plaqueSize(words, font, 1000);
    const QSizeF narrow = plaqueSize(words, font, 140);
    EXPECT_LE(narrow.width(), 144);
    EXPECT_GT(narrow.height(), 1.7 * wide.height());
}

TEST(PlaqueTest, ItCoversItsBoxAndNothingElse)
{
    QImage image(200, 100, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    paintPlaque(painter, QRectF(20, 20, 120, 40), "Hard", fontOf(Type::Body, 1.0),
                schemeOf(PaletteKind::Dark));
    painter.end();
    EXPECT_EQ(image.pixelColor(30, 40), schemeOf(PaletteKind::Dark).paper);
    EXPECT_EQ(image.pixelColor(19, 40), QColor(Qt::magenta));
    EXPECT_EQ(image.pixelColor(141, 40), QColor(Qt::magenta));
}

}  // namespace

}  // namespace plaque_test
