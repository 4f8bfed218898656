#include "app/canvas/ink_painter.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <atomic>
#include <cmath>

#include "app/look/palette.h"
#include "tests/support/sample_picture.h"

namespace ink_painter_test {

namespace {

using namespace fb;

const std::atomic_bool kNever = false;
const QTransform kTwenty(20, 0, 0, -20, 200, 200);  // 20 pixels a cm, the origin in the middle of 400 by 400

QSet<Layer> all() { return {kLayers.begin(), kLayers.end()}; }

QSet<Layer> without(Layer layer)
{
    QSet<Layer> layers = all();
    layers.remove(layer);
    return layers;
}

std::vector<QColor> tones()
{
    return toneColours(*test::samplePicture()->plate, schemeOf(PaletteKind::Light), 1);
}

QImage painted(const InkManner& manner)
{
    QImage image(400, 400, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    EXPECT_TRUE(paintInk(painter, ReadyInk(*test::samplePicture()), tones(), manner, kNever));
    return image;
}

QColor at(const QImage& image, double x, double y)
{
    return image.pixelColor(kTwenty.map(QPointF(x, y)).toPoint());
}

TEST(InkPainterTest, ARingDrawnOnOneSpotIsPassedOver)
{
    auto picture = std::make_shared<Picture>(*test::samplePicture());
    for (MovedShape& shape : picture->ink.shapes)
        shape.rings.insert(shape.rings.begin(), Ring{std::vector<Point>(4, Point{1.0, 1.0}), true});
    const ReadyInk ready(*picture);
    for (const ReadyInk::Shape& shape : ready.shapes()) {
        ASSERT_EQ(shape.starts, std::vector<qsizetype>{0});
        EXPECT_TRUE(shape.path.elementAt(0).isMoveTo());
    }
}

TEST(InkPainterTest, SkinHidesWhatLiesUnderIt)
{
    const QImage image = painted({kTwenty, all(), 0.7, {}});
    EXPECT_EQ(at(image, 0, 0), tones()[0]);
    EXPECT_EQ(at(image, 3, 0), tones()[0]);
}

TEST(InkPainterTest, PeeledSkinShowsMuscleAndBone)
{
    const QImage image = painted({kTwenty, without(Layer::Skin), 0.7, {}});
    EXPECT_EQ(at(image, 0, 0), tones()[3]);
    EXPECT_EQ(at(image, 3, 0), tones()[4]);
    EXPECT_EQ(at(image, -3, 0), QColor(Qt::white));
    EXPECT_EQ(at(image, 0, -9), tones()[5]);  // cloth has a layer of its own
}

TEST(InkPainterTest, NoLayersNoInk)
{
    QImage white(400, 400, QImage::Format_RGB32);
    white.fill(Qt::white);
    EXPECT_EQ(painted({kTwenty, {}, 0.7, {}}), white);
}

TEST(InkPainterTest, HatchesThatAreTooFineAreLeftOutAndContoursNever)
{
    const QImage fine = painted({kTwenty, all(), 0.1, {}});
    const QImage coarse = painted({kTwenty, all(), 50.0, {}});
    EXPECT_NE(at(fine, -3, 3), tones()[0]);
    EXPECT_EQ(at(coarse, -3, 3), tones()[0]);
    EXPECT_EQ(at(coarse, 0, 7.5), tones()[1]);
}

TEST(InkPainterTest, AGhostOfTheContoursMayStayWhenSkinIsPeeled)
{
    const QColor ghost(200, 10, 10);
    EXPECT_EQ(at(painted({kTwenty, without(Layer::Skin), 0.7, ghost}), 0, 7.5), ghost);
    EXPECT_EQ(at(painted({kTwenty, all(), 0.7, ghost}), 0, 7.5), tones()[1]);
}

TEST(InkPainterTest, CancelledPaintingSaysSo)
{
    const std::atomic_bool cancelled = true;
    QImage image(40, 40, QImage::Format_RGB32);
    QPainter painter(&image);
    EXPECT_FALSE(paintInk(painter, *test::samplePicture(), tones(), kTwenty, all(), 0.7, cancelled));
}

TEST(InkPainterTest, ThePainterIsHandedBackAsItWas)
{
    QImage image(400, 400, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setOpacity(0.5);
    painter.setPen(Qt::red);
    const QTransform before = painter.transform();
    ASSERT_TRUE(paintInk(painter, *test::samplePicture(), tones(), kTwenty, all(), 0.7, kNever));
    EXPECT_EQ(painter.opacity(), 0.5);
    EXPECT_EQ(painter.pen().color(), QColor(Qt::red));
    EXPECT_EQ(painter.transform(), before);
}

// The raster engine's own way with curves is the reference for our chords.
TEST(InkPainterTest, ChordsLieOnTheCurves)
{
    Picture picture = *test::samplePicture();
    Ring round;
    const double k = 0.5522847498 * 7;
    round.points = {{7, 0},   {7, k},   {k, 7},  {0, 7},  {-k, 7}, {-7, k}, {-7, 0},
                    {-7, -k}, {-k, -7}, {0, -7}, {k, -7}, {7, -k}, {7, 0}};
    picture.ink.shapes = {test::sampleShape(Layer::Skin, 1, round)};
    QImage ours(400, 400, QImage::Format_RGB32);
    ours.fill(Qt::white);
    QImage reference = ours;
    const ReadyInk ink(picture);
    {
        QPainter painter(&ours);
        ASSERT_TRUE(paintInk(painter, ink, tones(), {kTwenty, all(), 0.7, {}}, kNever));
    }
    {
        QPainter painter(&reference);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setTransform(kTwenty);
        painter.fillPath(ink.shapes()[0].path, tones()[1]);
    }
    int worst = 0;
    for (int y = 0; y < 400; ++y)
        for (int x = 0; x < 400; ++x)
            worst = std::max(worst, std::abs(qGray(ours.pixel(x, y)) - qGray(reference.pixel(x, y))));
    EXPECT_LT(worst, 48);
}

TEST(InkPainterTest, FilesKeepTheTrueCurves)
{
    Picture picture = *test::samplePicture();
    Ring leaf;
    leaf.points = {{-5, 0}, {-5, 4}, {5, 4}, {5, 0}, {5, -4}, {-5, -4}, {-5, 0}};
    picture.ink.shapes = {test::sampleShape(Layer::Skin, 0, leaf)};
    QBuffer svg;
    {
        QSvgGenerator generator;
        generator.setOutputDevice(&svg);
        generator.setViewBox(QRect(0, 0, 400, 400));
        QPainter painter(&generator);
        EXPECT_TRUE(paintInk(painter, picture, tones(), kTwenty, all(), 0.0, kNever));
    }
    EXPECT_TRUE(svg.data().contains("C"));
    QBuffer pdf;
    ASSERT_TRUE(pdf.open(QIODevice::WriteOnly));
    {
        QPdfWriter writer(&pdf);
        QPainter painter(&writer);
        EXPECT_TRUE(paintInk(painter, picture, tones(), kTwenty, all(), 0.0, kNever));
    }
    EXPECT_TRUE(pdf.data().startsWith("%PDF"));
}

TEST(InkPainterTest, AWashRunsFromToneToTone)
{
    Picture picture = *test::samplePicture();
    Gradient wash;
    wash.from = {-5, 0};
    wash.to = {5, 0};
    wash.stops = {{0.0, 0, 1.0}, {1.0, 1, 1.0}};
    picture.ink.gradients = {wash};
    picture.ink.shapes = {test::sampleShape(Layer::Skin, -1, test::oblong(-5, 5, -5, 5))};
    picture.ink.shapes[0].gradient = 0;
    QImage image(400, 400, QImage::Format_RGB32);
    QPainter painter(&image);
    ASSERT_TRUE(paintInk(painter, picture, tones(), kTwenty, all(), 0.7, kNever));
    EXPECT_NEAR(at(image, -4.9, 0).red(), tones()[0].red(), 6);
    EXPECT_NEAR(at(image, 4.9, 0).red(), tones()[1].red(), 6);
}

TEST(InkPainterTest, TheSilhouetteIsTheRowsOfSkinAndCloth)
{
    const ReadyInk ink(*test::samplePicture());
    ASSERT_FALSE(ink.silhouette().empty());
    for (const QRectF& row : ink.silhouette()) {
        EXPECT_GE(row.left(), -5.0);
        EXPECT_LE(row.right(), 5.0);
    }
    EXPECT_TRUE(ReadyInk(*test::samplePicture(), ReadyInk::Rows::None).silhouette().empty());
}

}  // namespace

}  // namespace ink_painter_test
