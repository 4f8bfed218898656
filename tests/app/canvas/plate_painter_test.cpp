#include "app/canvas/plate_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "tests/support/sample_picture.h"

namespace plate_painter_test {

namespace {

using namespace fb;

PlateFace face(PaletteKind kind = PaletteKind::Light)
{
    PlateFace made;
    made.widget = QRectF(0, 0, 500, 400);
    made.frame = ViewFrame::whole(sheetOf(made.widget), QRectF(-10, -10, 20, 20));
    made.scheme = schemeOf(kind);
    made.hasPicture = true;
    InkJob job;
    job.picture = test::samplePicture();
    job.frame = made.frame;
    job.scheme = made.scheme;
    job.layers = {kLayers.begin(), kLayers.end()};
    const auto ready = std::make_shared<const ReadyInk>(*job.picture);
    const std::atomic_bool never = false;
    made.drawn = InkResult{job, ready, paintedImage(job, *ready, never).value()};
    return made;
}

QImage painted(const PlateFace& made)
{
    QImage image(made.widget.size().toSize(), QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    paintFace(painter, made);
    return image;
}

int differing(const QImage& a, const QImage& b, const QRect& where)
{
    int pixels = 0;
    for (int y = where.top(); y <= where.bottom(); ++y)
        for (int x = where.left(); x <= where.right(); ++x)
            pixels += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
    return pixels;
}

const QRect kAll(0, 0, 500, 400);

TEST(PlatePainterTest, EveryPixelIsPainted)
{
    for (const bool hasPicture : {true, false}) {
        PlateFace made = face();
        made.hasPicture = hasPicture;
        if (!hasPicture)
            made.drawn.reset();
        const QImage image = painted(made);
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                ASSERT_NE(image.pixelColor(x, y), QColor(Qt::magenta)) << x << "," << y;
    }
}

TEST(PlatePainterTest, WindowAroundPaperAroundDrawing)
{
    for (const PaletteKind kind : kPaletteKinds) {
        const PlateFace made = face(kind);
        const QImage image = painted(made);
        EXPECT_EQ(image.pixelColor(2, 2), made.scheme.window);
        EXPECT_EQ(image.pixelColor(14, 200), made.scheme.paper);
        EXPECT_EQ(image.pixel(made.frame.toWidget({3, 0}).toPoint()),
                  toneColours(*made.drawn->job.picture->plate, made.scheme, 1)[0].rgb());
    }
}

TEST(PlatePainterTest, WithoutAPictureThereAreWordsAndNoScene)
{
    PlateFace empty = face();
    empty.hasPicture = false;
    empty.drawn.reset();
    const QImage blank = painted(empty);
    empty.placeholder = "The plate will lie here.";
    EXPECT_GT(differing(painted(empty), blank, kAll), 50);
    PlateFace withScene = empty;
    withScene.scene = {{Role::Landmark, Figure::Point, {{0, 0}}, "Acromion", {}}};
    withScene.mark = QPointF(0, 0);
    EXPECT_EQ(painted(withScene), painted(empty));
}

TEST(PlatePainterTest, TheMarkIsWhereItWasMadeAndNowhereElse)
{
    PlateFace made = face();
    const QImage before = painted(made);
    made.mark = QPointF(2, 3);
    const QImage after = painted(made);
    const QRect box = markBox(made.frame.toWidget({2, 3}), 1.0).toAlignedRect();
    EXPECT_GT(differing(before, after, box), 40);
    EXPECT_EQ(differing(before, after, kAll), differing(before, after, box));
}

TEST(PlatePainterTest, TheMarkCanBeToldFromEveryGround)
{
    for (const PaletteKind kind : kPaletteKinds) {
        for (const QColor& ground : {QColor(Qt::white), QColor(Qt::black), QColor(0x80, 0x50, 0x38)}) {
            QImage image(60, 60, QImage::Format_RGB32);
            image.fill(ground);
            QPainter painter(&image);
            paintMark(painter, {30, 30}, schemeOf(kind), 1.0);
            int darkest = 255;
            int lightest = 0;
            for (int y = 15; y < 45; ++y) {
                for (int x = 15; x < 45; ++x) {
                    darkest = std::min(darkest, qGray(image.pixel(x, y)));
                    lightest = std::max(lightest, qGray(image.pixel(x, y)));
                }
            }
            EXPECT_GT(lightest - darkest, 150);
        }
    }
}

TEST(PlatePainterTest, TheCrosshairLeavesItsMiddleFree)
{
    PlateFace made = face();
    const QImage before = painted(made);
    made.crosshair = QPointF(0, 0);
    const QImage after = painted(made);
    const QPoint at = made.frame.toWidget({0, 0}).toPoint();
    EXPECT_EQ(differing(before, after, QRect(at - QPoint(3, 3), QSize(7, 7))), 0);
    EXPECT_GT(differing(before, after, QRect(at - QPoint(40, 2), QSize(30, 5))), 50);
}

TEST(PlatePainterTest, TheLoupeShowsThePlaceLargerAndNotUnderTheFinger)
{
    PlateFace made = face();
    const QImage before = painted(made);
    const QPoint finger = made.frame.toWidget({0, -5}).toPoint();
    made.loupe = finger;
    const QImage after = painted(made);
    EXPECT_EQ(differing(before, after, QRect(finger - QPoint(20, 20), QSize(40, 40))), 0);
    EXPECT_GT(differing(before, after, kAll), 1500);
}

TEST(PlatePainterTest, TheLoupeStaysOnTheSheetInEveryCorner)
{
    PlateFace made = face();
    const QImage before = painted(made);
    for (const QPointF corner : {QPointF(9, 9), QPointF(490, 9), QPointF(9, 390), QPointF(490, 390)}) {
        made.loupe = corner;
        const QImage after = painted(made);
        EXPECT_EQ(differing(before, after, QRect(0, 0, 500, 6)), 0);
        EXPECT_EQ(differing(before, after, QRect(0, 394, 500, 6)), 0);
        EXPECT_GT(differing(before, after, kAll), 1500);
    }
}

TEST(PlatePainterTest, FocusIsARingAroundTheSheet)
{
    PlateFace made = face();
    made.focused = true;
    EXPECT_EQ(painted(made).pixelColor(4, 200), made.scheme.focus);
    EXPECT_EQ(painted(made).pixelColor(250, 4), made.scheme.focus);
}

TEST(PlatePainterTest, ADrawingOfAnotherFrameStandsInUntilTheRightOneComes)
{
    PlateFace made = face();
    made.frame = made.frame.zoomedAt(made.frame.toWidget({0, 0}), 2.0);
    const QImage image = painted(made);
    const QColor skin = toneColours(*made.drawn->job.picture->plate, made.scheme, 1)[0];
    EXPECT_EQ(image.pixelColor(made.frame.toWidget({3, 2}).toPoint()), skin);
}

}  // namespace

}  // namespace plate_painter_test
