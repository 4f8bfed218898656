#include "app/canvas/held_layer.h"

#include <gtest/gtest.h>

#include <QLineF>
#include <QPainter>
#include <array>

#include "app/canvas/hand_painter.h"
#include "tests/support/core_atlas.h"

namespace held_layer_test {

namespace {

using namespace fb;

const std::atomic_bool kNever = false;

HandLook look(QPointF wrist = {0, 0}, double degrees = 90, double opening = 30, Side side = Side::Left)
{
    HandLook made;
    made.art = {std::shared_ptr<const Plate>(), &test::plateOf(View::OpenHand)};
    const QPointF fork = wrist + QTransform().rotate(degrees).map(QPointF(11, 0));
    made.pose.hand = side;
    made.pose.wrist = {wrist.x(), wrist.y()};
    made.pose.fork = {fork.x(), fork.y()};
    made.pose.length = Cm{18.0};
    made.pose.opening = Degrees{opening};
    return made;
}

Held held(const HandLook& of) { return heldOf(of).value(); }

HeldLayer layer(const HandLook& of, double fineness = 10, bool quick = false)
{
    return madeLayer(held(of), schemeOf(PaletteKind::Light), fineness, quick, kNever).value();
}

QImage painted(const HeldImage& image, double pixelsPerCm)
{
    QImage sheet(500, 500, QImage::Format_ARGB32_Premultiplied);
    sheet.fill(Qt::transparent);
    QPainter painter(&sheet);
    paintHeld(painter, image, QTransform(pixelsPerCm, 0, 0, -pixelsPerCm, 250, 350));
    return sheet;
}

// Share of the pixels in which two hands differ much, of those either covers.
double apart(const QImage& a, const QImage& b)
{
    int covered = 0;
    int other = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            const int alphas[] = {qAlpha(a.pixel(x, y)), qAlpha(b.pixel(x, y))};
            covered += alphas[0] > 20 || alphas[1] > 20 ? 1 : 0;
            other += std::abs(alphas[0] - alphas[1]) > 100 ? 1 : 0;
        }
    }
    EXPECT_GT(covered, 1000);
    return static_cast<double>(other) / covered;
}

TEST(HeldLayerTest, WithoutArtNothingIsHeld)
{
    HandLook none = look();
    none.art = nullptr;
    EXPECT_FALSE(heldOf(none));
    EXPECT_FALSE(heldOf(FingersLook{}));
}

TEST(HeldLayerTest, MovedAndTurnedItIsTheSameFormOpenedOrOfTheOtherHandItIsNot)
{
    const Held one = held(look());
    EXPECT_TRUE(sameForm(one, held(look({5, -3}, 210))));
    EXPECT_FALSE(sameTurn(one, held(look({5, -3}, 210))));
    EXPECT_TRUE(sameTurn(one, held(look({5, -3}, 90))));
    EXPECT_FALSE(sameForm(one, held(look({0, 0}, 90, 31))));
    EXPECT_FALSE(sameForm(one, held(look({0, 0}, 90, 30, Side::Right))));
    FingersLook two{one.art, {}, 1.6};
    EXPECT_FALSE(sameForm(one, heldOf(two).value()));
    FingersLook three = two;
    three.fingers.count = 3;
    EXPECT_FALSE(sameForm(heldOf(two).value(), heldOf(three).value()));
    three = two;
    three.fingers.top = {3, 4};
    three.fingers.turn = Degrees{20.0};
    EXPECT_TRUE(sameForm(heldOf(two).value(), heldOf(three).value()));
}

// What the worker would have drawn there is what is laid there.
TEST(HeldLayerTest, ALaidLayerIsTheHandDrawnInThatPlace)
{
    const HeldLayer drawn = layer(look());
    for (const HandLook& there : {look(), look({3.13, -2.4}), look({-4, 1}, 140), look({1, 2}, -35)}) {
        const QImage laidThere = painted(laid(drawn, held(there)), 10);
        QImage wanted(laidThere.size(), QImage::Format_ARGB32_Premultiplied);
        wanted.fill(Qt::transparent);
        QPainter painter(&wanted);
        paintHand(painter, *handPicture(there.art, there.pose), schemeOf(PaletteKind::Light),
                  QTransform(10, 0, 0, -10, 250, 350));
        painter.end();
        EXPECT_LT(apart(laidThere, wanted), 0.03);
    }
}

TEST(HeldLayerTest, SlidByWholePixelsItIsCopiedAsItWas)
{
    const HeldLayer drawn = layer(look());
    const QImage here = painted(laid(drawn, held(look())), 10);
    const QImage there = painted(laid(drawn, held(look({2, -1}))), 10);
    EXPECT_EQ(here.copy(100, 50, 300, 300), there.copy(120, 60, 300, 300));
}

TEST(HeldLayerTest, AQuickLayerIsHalfAsFineAndLiesInTheSamePlace)
{
    const HeldLayer sharp = layer(look());
    const HeldLayer quick = layer(look(), 10, true);
    EXPECT_NEAR(quick.image.width(), sharp.image.width() / 2.0, 4.0);
    EXPECT_LT(apart(painted(laid(sharp, held(look())), 10), painted(laid(quick, held(look())), 10)), 0.06);
}

TEST(HeldLayerTest, SeenVeryCloseItStaysWithinItsMemory)
{
    const HeldLayer close = layer(look(), 300);
    EXPECT_LT(close.image.sizeInBytes(), 24'000'000);
}

TEST(HeldLayerTest, AQuickLayerIsAsDarkAsASharpOneWithFewerSteps)
{
    const QImage sharp = painted(laid(layer(look(), 20), held(look())), 10);
    const QImage quick = painted(laid(layer(look(), 20, true), held(look())), 10);
    std::array<double, 3> gray{};  // sharp, quick, between them
    for (int y = 0; y < sharp.height(); ++y) {
        for (int x = 0; x < sharp.width(); ++x) {
            const int of[] = {qGray(sharp.pixel(x, y)), qGray(quick.pixel(x, y))};
            gray[0] += of[0];
            gray[1] += of[1];
            gray[2] += std::abs(of[0] - of[1]);
        }
    }
    EXPECT_NEAR(gray[1] / gray[0], 1.0, 0.02);
    EXPECT_LT(gray[2] / gray[0], 0.048);
}

TEST(HeldLayerTest, AQuickLayerIsSmallHoweverCloseItIsSeen)
{
    EXPECT_LT(layer(look(), 300, true).image.sizeInBytes(), 560'000);
}

TEST(HeldLayerTest, ACancelledLayerIsNone)
{
    const std::atomic_bool cancelled = true;
    EXPECT_FALSE(madeLayer(held(look()), schemeOf(PaletteKind::Light), 10, false, cancelled));
}

TEST(HeldLayerTest, FingersWithoutArtAreOutlinesWithinTheirBox)
{
    FingersLook fingers{nullptr, {}, 1.6};
    fingers.fingers.count = 3;
    fingers.fingers.top = {2, 3};
    fingers.fingers.turn = Degrees{15.0};
    const QTransform toWidget(20, 0, 0, -20, 250, 250);
    QImage sheet(500, 500, QImage::Format_ARGB32_Premultiplied);
    sheet.fill(Qt::transparent);
    QPainter painter(&sheet);
    paintFingerOutlines(painter, fingers, schemeOf(PaletteKind::Light), toWidget, 1.0);
    painter.end();
    const QRect box = toWidget.mapRect(outlinesBox(fingers)).toAlignedRect();
    int inside = 0;
    for (int y = 0; y < 500; ++y) {
        for (int x = 0; x < 500; ++x) {
            const bool inked = qAlpha(sheet.pixel(x, y)) > 0;
            inside += inked ? 1 : 0;
            if (!box.contains(x, y)) {
                ASSERT_FALSE(inked) << x << "," << y;
            }
        }
    }
    EXPECT_GT(inside, 2000);
    // Every line between fingers is painted where core says it lies.
    for (int edge = 0; edge <= 3; ++edge) {
        const auto line = edgeLine(fingers.fingers, Cm{1.6}, edge);
        const Point middle = lerp(line[0], line[1], 0.5);
        const QPoint at = toWidget.map(QPointF(middle.x, middle.y)).toPoint();
        EXPECT_GT(qAlpha(sheet.pixel(at)), 200) << edge;
    }
}

}  // namespace

}  // namespace held_layer_test
