#include "app/scene/scene_painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <cmath>
#include <numbers>

namespace scene_painter_test {

namespace {

using namespace fb;

const QTransform kTwentyPerCm(20, 0, 0, -20, 400, 300);

QImage painted(const Scene& scene, double textScale = 1.0, PaletteKind kind = PaletteKind::Light)
{
    QImage image(800, 600, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    paintScene(painter, scene, schemeOf(kind), kTwentyPerCm, textScale);
    return image;
}

int inked(const QImage& image, const QRect& where)
{
    int pixels = 0;
    for (int y = where.top(); y <= where.bottom(); ++y)
        for (int x = where.left(); x <= where.right(); ++x)
            pixels += qAlpha(image.pixel(x, y)) > 20 ? 1 : 0;
    return pixels;
}

SceneShape closed(Role role, double half, const QString& label = {})
{
    return {role, Figure::Closed, {{-half, -half}, {half, -half}, {half, half}, {-half, half}}, label, {}};
}

TEST(ScenePainterTest, AnEmptySceneLeavesNoTrace) { EXPECT_EQ(inked(painted({}), QRect(0, 0, 800, 600)), 0); }

TEST(ScenePainterTest, EveryRoleLeavesInkOfItsOwn)
{
    std::vector<QImage> seen;
    for (int i = 0; i < kRoleCount; ++i) {
        const auto role = static_cast<Role>(i);
        SceneShape shape = closed(role, 4);
        if (role == Role::Arrow)
            shape = {role, Figure::Line, {{-4, 0}, {4, 0}}, {}, {}};
        if (role == Role::Ideal || role == Role::Other || role == Role::Landmark ||
            i >= static_cast<int>(Role::MarkOnTarget))
            shape = {role, Figure::Point, {{0, 0}}, {}, {}};
        seen.push_back(painted({shape}));
        EXPECT_GT(inked(seen.back(), QRect(0, 0, 800, 600)), 20) << i;
        // In grey they still differ: no role is told by colour alone.
        for (std::size_t k = 0; k + 1 < seen.size(); ++k)
            EXPECT_NE(seen.back().convertToFormat(QImage::Format_Alpha8),
                      seen[k].convertToFormat(QImage::Format_Alpha8))
                << i << k;
    }
}

TEST(ScenePainterTest, ShapesLieWhereTheCentimetresSay)
{
    const QImage image = painted({{Role::Landmark, Figure::Point, {{5, 3}}, {}, {}}});
    EXPECT_EQ(image.pixelColor(500, 240), schemeOf(PaletteKind::Light).ink);
    EXPECT_EQ(inked(image, QRect(0, 0, 480, 600)), 0);
}

TEST(ScenePainterTest, TheArrowStopsShortOfMarkAndIdeal)
{
    const QImage image = painted({{Role::Arrow, Figure::Line, {{-5, 0}, {5, 0}}, {}, {}}});
    EXPECT_GT(inked(image, QRect(380, 296, 40, 8)), 0);
    EXPECT_EQ(inked(image, QRect(298, 296, 4, 8)), 0);
    EXPECT_EQ(inked(image, QRect(498, 296, 4, 8)), 0);
}

TEST(ScenePainterTest, LabelsAreTheOnesThatArePainted)
{
    const Scene scene{closed(Role::Strike, 6, "Shoulder joint"),
                      {Role::Landmark, Figure::Point, {{0, 0}}, "Acromion", {}},
                      {Role::Landmark, Figure::Point, {{1, 1}}, {}, "not painted"}};
    const auto labels = sceneLabels(scene, kTwentyPerCm, 1.0, QRectF(0, 0, 800, 600));
    ASSERT_EQ(labels.size(), 2);
    const QImage image = painted(scene);
    for (const PlacedLabel& label : labels)
        EXPECT_GT(inked(image, label.box.toAlignedRect()), 30);
}

TEST(ScenePainterTest, ABrokenNameIsPaintedToItsLastLine)
{
    const Scene scene{{Role::Landmark, Figure::Point, {{0, 0}}, "Lateral femoral condyle", {}}};
    for (int width = 260; width <= 560; width += 3) {
        QImage image(width, 300, QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::transparent);
        QPainter painter(&image);
        const QTransform middle(20, 0, 0, -20, width / 2.0, 150);
        const QRectF paper(0, 0, width, 300);
        paintScene(painter, scene, schemeOf(PaletteKind::Light), middle, 1.0, paper);
        painter.end();
        const QRect box = sceneLabels(scene, middle, 1.0, paper).front().box.toAlignedRect();
        const int lines = box.height() > 30 ? 2 : 1;
        const QRect last(box.left(), box.bottom() - box.height() / lines + 2, box.width(),
                         box.height() / lines - 2);
        EXPECT_GT(inked(image, last), 60) << width;
    }
}

TEST(ScenePainterTest, ANameWithoutAPlaceIsListedAndNoPointIsPainted)
{
    const QImage image = painted({{Role::Landmark, Figure::Point, {}, "Acromion", {}}});
    EXPECT_GT(inked(image, QRect(0, 0, 400, 60)), 30);
    EXPECT_EQ(inked(image, QRect(0, 60, 800, 540)), 0);
}

TEST(ScenePainterTest, ASmallRegionIsKeptClearOfWords)
{
    const Scene scene{closed(Role::Region, 1), {Role::Arrow, Figure::Line, {{1.2, 3}, {0, 0}}, "3.5 cm", {}}};
    const QRectF region(380, 280, 40, 40);
    for (const PlacedLabel& label : sceneLabels(scene, kTwentyPerCm, 1.0, QRectF(0, 0, 800, 600)))
        EXPECT_FALSE(label.box.intersects(region));
}

TEST(ScenePainterTest, RulingStaysInsideAndKeepsItsDistance)
{
    const QPolygonF square{QPointF(0, 0), QPointF(100, 0), QPointF(100, 100), QPointF(0, 100)};
    for (const double degrees : {0.0, 30.0, 45.0, -30.0}) {
        const auto lines = ruled(square, degrees, 5.0);
        const double turn = degrees * std::numbers::pi / 180.0;
        const double across = 100.0 * (std::abs(std::cos(turn)) + std::abs(std::sin(turn)));
        EXPECT_NEAR(static_cast<double>(lines.size()), across / 5.0, 2.0);
        for (const QLineF& line : lines)
            for (const QPointF p : {line.p1(), line.p2()})
                EXPECT_TRUE(QRectF(-1e-6, -1e-6, 100 + 2e-6, 100 + 2e-6).contains(p));
    }
}

TEST(ScenePainterTest, RulingLeavesTheHollowOfAFigureFree)
{
    const QPolygonF notch{QPointF(0, 0),   QPointF(90, 0),  QPointF(90, 90), QPointF(60, 90),
                          QPointF(60, 30), QPointF(30, 30), QPointF(30, 90), QPointF(0, 90)};
    for (const QLineF& line : ruled(notch, 0.0, 7.0))
        EXPECT_LE(line.length(), (line.y1() > 30 ? 30.0 : 90.0) + 1e-9);
}

TEST(ScenePainterTest, RulingIsLeftOutWhereAnotherAreaLiesOverIt)
{
    const QPolygonF square(QRectF(0, 0, 100, 100));
    const QRectF over(20, 30, 30, 40);
    double left = 0.0;
    for (const QLineF& line : ruled(square, 0.0, 5.0, {QPolygonF(over)})) {
        left += line.length();
        EXPECT_FALSE(over.adjusted(0.1, 0.1, -0.1, -0.1).contains(line.center()));
    }
    double whole = 0.0;
    for (const QLineF& line : ruled(square, 0.0, 5.0))
        whole += line.length();
    EXPECT_NEAR(whole - left, 8 * 30.0, 1e-6);
}

TEST(ScenePainterTest, AWordOfAnAreaStandsBesideTheFigureLaidOverIt)
{
    const Scene scene{closed(Role::Strike, 8, "Sciatic"),
                      {Role::Construction, Figure::Line, {{-8, 0}, {8, 0}}, {}, {}}};
    const auto labels = sceneLabels(scene, kTwentyPerCm, 1.0, QRectF(0, 0, 800, 600));
    ASSERT_EQ(labels.size(), 1);
    EXPECT_FALSE(labels[0].box.intersects(QRectF(240, 296, 320, 8)));
    EXPECT_FALSE(labels[0].hasLeader);
}

TEST(ScenePainterTest, TheWordOfTheLaterAreaKeepsOffTheEarlierOne)
{
    const Scene scene{closed(Role::Strike, 2), closed(Role::Strike, 8, "Sciatic")};
    const auto labels = sceneLabels(scene, kTwentyPerCm, 1.0, QRectF(0, 0, 800, 600));
    ASSERT_EQ(labels.size(), 1);
    EXPECT_FALSE(labels[0].box.intersects(QRectF(360, 260, 80, 80)));
}

TEST(ScenePainterTest, WhatALearnerSetEndsInSquaresAndTheNewestInNone)
{
    const auto lineOf = [](Role role) { return painted({{role, Figure::Line, {{-5, 0}, {5, 0}}, {}, {}}}); };
    const QRect corner(302, 303, 2, 1);  // of the square round the line's first end
    EXPECT_GT(inked(lineOf(Role::Yours), corner), 0);
    EXPECT_EQ(inked(lineOf(Role::Newest), corner), 0);
    EXPECT_EQ(inked(lineOf(Role::Construction), corner), 0);
}

TEST(ScenePainterTest, AManySidedFigureOfALearnerCarriesNoSquares)
{
    QVector<QPointF> round;
    for (int i = 0; i < 24; ++i)
        round.push_back({4 * std::cos(i * 0.2618), 4 * std::sin(i * 0.2618)});
    const QImage image = painted({{Role::Yours, Figure::Closed, round, {}, {}}});
    EXPECT_EQ(inked(image, QRect(483, 298, 1, 4)), 0);
}

TEST(ScenePainterTest, ALeaderLeavesItsLabelOnTheSideOfItsShape)
{
    PlacedLabel label;
    label.box = QRectF(100, 100, 80, 20);
    label.anchor = {300, 40};
    EXPECT_EQ(leaderStart(label), QPointF(178, 110));
    label.anchor = {20, 40};
    EXPECT_EQ(leaderStart(label), QPointF(102, 110));
    label.anchor = {140, 300};
    EXPECT_EQ(leaderStart(label), QPointF(140, 119));
    label.anchor = {140, 10};
    EXPECT_EQ(leaderStart(label), QPointF(140, 101));
}

TEST(ScenePainterTest, NoRulingOfNothing)
{
    EXPECT_TRUE(ruled({}, 45, 5).isEmpty());
    EXPECT_TRUE(ruled(QPolygonF{QPointF(0, 0), QPointF(9, 0), QPointF(0, 9)}, 45, 0).isEmpty());
}

}  // namespace

}  // namespace scene_painter_test
