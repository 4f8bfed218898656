#include "app/canvas/press_painter.h"

#include <gtest/gtest.h>

#include <algorithm>

#include <QImage>
#include <QPainter>
#include <cmath>

namespace press_painter_test {

namespace {

using namespace fb;

constexpr QSize kSize(400, 400);

PressLook feel(Firmness firmness, BoneShape shape = BoneShape::None, Clearness clearness = Clearness::Plain)
{
    PressLook press;
    press.firmness = firmness;
    press.shape = shape;
    press.clearness = clearness;
    press.along = QPointF(0, 1);
    return press;
}

PressPlace place(QPointF at = {200, 200}, double pixelsPerCm = 20)
{
    return {at, pixelsPerCm, QRectF(8, 8, 384, 384), 1.0};
}

QImage painted(const PressLook& press, const PressPlace& where = place(),
               PaletteKind kind = PaletteKind::Light, const QColor& ground = QColor(0x7a, 0x50, 0x39))
{
    QImage image(kSize, QImage::Format_RGB32);
    image.fill(ground);
    QPainter painter(&image);
    painter.setClipRect(QRectF(0, 0, 400, 400));
    paintPress(painter, press, where, schemeOf(kind));
    return image;
}

// How many times ink begins on the way from the middle outward.
int ringsToward(const QImage& image, double degrees)
{
    int rings = 0;
    bool inked = false;
    for (double r = 6; r < 80; r += 0.5) {
        const QPointF at =
            QPointF(200, 200) + QPointF(std::cos(degrees * M_PI / 180), -std::sin(degrees * M_PI / 180)) * r;
        const bool dark = qGray(image.pixel(at.toPoint())) < 62;
        rings += dark && !inked ? 1 : 0;
        inked = dark;
    }
    return rings;
}

// Of 360 directions above the finger, how many meet a ring.
double ringed(const QImage& image)
{
    int met = 0;
    for (int degrees = 0; degrees < 360; ++degrees)
        met += ringsToward(image, degrees) > 0 ? 1 : 0;
    return met / 360.0;
}

TEST(PressPainterTest, SoftIsWideAndBrokenFirmOneRingHardTwo)
{
    const QImage soft = painted(feel(Firmness::Soft));
    const QImage firm = painted(feel(Firmness::Firm));
    const QImage hard = painted(feel(Firmness::Hard));
    EXPECT_EQ(ringsToward(firm, 80), 1);
    EXPECT_EQ(ringsToward(hard, 80), 2);
    EXPECT_LT(ringed(soft), 0.85);
    EXPECT_GT(ringed(firm), 0.97);
    const PressPlace where = place();
    EXPECT_GT(ringBox(feel(Firmness::Soft), where).width(), ringBox(feel(Firmness::Firm), where).width());
    EXPECT_GT(ringBox(feel(Firmness::Firm), where).width(), ringBox(feel(Firmness::Hard), where).width());
}

TEST(PressPainterTest, DullHasAGapAndFaintIsDots)
{
    for (const Firmness firmness : {Firmness::Firm, Firmness::Hard}) {
        const double plain = ringed(painted(feel(firmness)));
        const double dull = ringed(painted(feel(firmness, BoneShape::None, Clearness::Dull)));
        const double faint = ringed(painted(feel(firmness, BoneShape::None, Clearness::Faint)));
        EXPECT_LT(dull, plain - 0.05);
        EXPECT_GT(dull, 0.7);
        EXPECT_LT(faint, 0.85);
    }
}

TEST(PressPainterTest, EveryFeelLooksOtherThanEveryOtherInGrey)
{
    std::vector<QImage> all;
    for (const Firmness firmness : {Firmness::Soft, Firmness::Firm, Firmness::Hard})
        for (const BoneShape shape : {BoneShape::None, BoneShape::Point, BoneShape::Edge, BoneShape::Broad})
            for (const Clearness clearness : {Clearness::Plain, Clearness::Dull, Clearness::Faint})
                all.push_back(
                    painted(feel(firmness, shape, clearness)).convertToFormat(QImage::Format_Grayscale8));
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t k = i + 1; k < all.size(); ++k) {
            int far = 0;
            for (int y = 0; y < 400; ++y)
                for (int x = 0; x < 400; ++x)
                    far += std::abs(all[i].constScanLine(y)[x] - all[k].constScanLine(y)[x]) > 60 ? 1 : 0;
            EXPECT_GT(far, 20) << i << "," << k;
        }
    }
}

TEST(PressPainterTest, TwoLinesRunAlongTheEdgeAndTheTickLooksToTheBone)
{
    const QImage ridge = painted(feel(Firmness::Hard, BoneShape::Edge));
    const auto darkestBetween = [&](int from, int to) {
        int darkest = 255;
        for (int x = from; x <= to; ++x)
            darkest = std::min(darkest, qGray(ridge.pixel(x, 190)));
        return darkest;
    };
    EXPECT_LT(darkestBetween(193, 199), 62);
    EXPECT_LT(darkestBetween(201, 207), 62);
    EXPECT_GT(qGray(ridge.pixel(200, 190)), 100) << "one bar would read as a sign that forbids";
    PressLook beside = feel(Firmness::Firm);
    beside.toward = QPointF(0, 1);  // up, as centimetres go
    const QImage tick = painted(beside);
    const int rim = static_cast<int>(ringBox(beside, place()).top());
    const QImage plain = painted(feel(Firmness::Firm));
    int above = 0;
    int below = 0;
    for (int y = 0; y < 400; ++y)
        for (int x = 190; x < 210; ++x)
            (y < 200 ? above : below) += tick.pixel(x, y) != plain.pixel(x, y) ? 1 : 0;
    EXPECT_GT(above, 40);
    EXPECT_EQ(below, 0);
    EXPECT_GT(rim, 100);
}

TEST(PressPainterTest, TheFingerHasItsTrueBreadthAndIsSeenThrough)
{
    PressLook press = feel(Firmness::Firm);
    press.fingerCm = 2.0;
    const QImage ground = painted(press, place({200, 200}, 40), PaletteKind::Light, Qt::white);
    const QImage wide = painted(press, place({200, 200}, 40), PaletteKind::Light, Qt::black);
    int same = 0;
    for (int x = 190; x < 210; ++x)
        same += qGray(ground.pixel(x, 215)) - qGray(wide.pixel(x, 215)) > 100 ? 1 : 0;
    EXPECT_GT(same, 12);  // light ground stays light, dark stays dark
    const PressPlace far = place({200, 200}, 40);
    EXPECT_GT(pressBox(press, far, {}, Qt::LeftToRight).height(), 2.0 * 40);
}

TEST(PressPainterTest, WordsAreNeverOffThePaperNorOverTheRing)
{
    PressLook press = feel(Firmness::Soft);
    press.words = "Soft, and a bone beside, felt dully";
    for (const double textScale : {1.0, 2.0}) {
        for (const QPointF at : {QPointF(0, 0), QPointF(400, 0), QPointF(0, 400), QPointF(400, 400),
                                 QPointF(200, 200), QPointF(8, 200), QPointF(392, 200)}) {
            PressPlace where = place(at);
            where.textScale = textScale;
            const QRectF words = pressWordsBox(press, where, {}, Qt::LeftToRight);
            EXPECT_TRUE(where.paper.contains(words));
            EXPECT_FALSE(words.intersects(ringBox(press, where)));
        }
    }
    EXPECT_TRUE(pressWordsBox(feel(Firmness::Soft), place(), {}, Qt::LeftToRight).isEmpty());
}

TEST(PressPainterTest, ItReadsFromRightToLeftToo)
{
    PressLook press = feel(Firmness::Hard);
    press.words = "Hard";
    EXPECT_GT(pressWordsBox(press, place(), {}, Qt::LeftToRight).left(), 200);
    EXPECT_LT(pressWordsBox(press, place(), {}, Qt::RightToLeft).right(), 200);
}

TEST(PressPainterTest, NothingIsPaintedOutsideItsBox)
{
    PressLook press = feel(Firmness::Soft, BoneShape::Edge);
    press.words = "Soft";
    press.toward = QPointF(1, 0);
    QImage image = painted(press);
    const QRect box = pressBox(press, place(), {}, Qt::LeftToRight).toAlignedRect();
    for (int y = 0; y < 400; ++y)
        for (int x = 0; x < 400; ++x)
            if (!box.contains(x, y)) {
                ASSERT_EQ(image.pixelColor(x, y), QColor(0x7a, 0x50, 0x39)) << x << "," << y;
            }
}

TEST(PressPainterTest, TheRingCanBeToldFromEveryGround)
{
    for (const PaletteKind kind : kPaletteKinds) {
        for (const QColor& ground : {QColor(Qt::white), QColor(Qt::black), QColor(0x80, 0x50, 0x38)}) {
            const QImage image = painted(feel(Firmness::Hard), place(), kind, ground);
            int darkest = 255;
            int lightest = 0;
            for (int x = 200; x < 235; ++x) {
                darkest = std::min(darkest, qGray(image.pixel(x, 190)));
                lightest = std::max(lightest, qGray(image.pixel(x, 190)));
            }
            EXPECT_GT(lightest - darkest, 120);
        }
    }
}

}  // namespace

}  // namespace press_painter_test
