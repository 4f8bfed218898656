#include "app/demonstrate/lecture_painter_areas.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

namespace fb::test::lecture_painter_areas_test {

SceneShape square(Role role, double left, double right)
{
    return {role, Figure::Closed, {{left, 20}, {right, 20}, {right, 180}, {left, 180}}, {}, {}};
}

QImage painted(const Scene& scene, double unit = 1.0, double fineness = 1.0)
{
    QImage image(QSizeF(300 * fineness, 200 * fineness).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(fineness);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintAreas(painter, scene, schemeOf(PaletteKind::Projector), QTransform(), unit);
    paintVerdicts(painter, scene, schemeOf(PaletteKind::Projector), QTransform(), unit);
    return image;
}

// Of the inside of a square between two columns: how many rows begin a line there.
int linesAcross(const QImage& image, int x, int top, int bottom)
{
    int lines = 0;
    bool isDark = false;
    for (int y = top; y < bottom; ++y) {
        const bool dark = qGray(image.pixel(x, y)) < 190;
        lines += dark && !isDark ? 1 : 0;
        isDark = dark;
    }
    return lines;
}

TEST(LecturePainterAreasTest, EachRoleIsToldWithoutColour)
{
    const QImage strike = painted({square(Role::Strike, 40, 260)});
    const QImage near = painted({square(Role::Near, 40, 260)});
    const QImage region = painted({square(Role::Region, 40, 260)});
    const int ofStrike = linesAcross(strike, 150, 30, 170);
    const int ofRegion = linesAcross(region, 150, 30, 170);
    EXPECT_GE(ofStrike, 3);
    EXPECT_GT(ofRegion, 2 * ofStrike);
    EXPECT_EQ(linesAcross(near, 150, 30, 170), 0);
}

TEST(LecturePainterAreasTest, RulingsKeepTheirSpacingOnFinerScreens)
{
    const QImage plain = painted({square(Role::Strike, 40, 260)});
    const QImage fine = painted({square(Role::Strike, 40, 260)}, 1.0, 2.0);
    EXPECT_NEAR(linesAcross(plain, 150, 30, 170), linesAcross(fine, 300, 60, 340), 1);
}

TEST(LecturePainterAreasTest, OfTwoStrikesOverEachOtherOneIsRuled)
{
    const int alone = linesAcross(painted({square(Role::Strike, 40, 260)}), 150, 30, 170);
    const int both =
        linesAcross(painted({square(Role::Strike, 40, 200), square(Role::Strike, 100, 260)}), 150, 30, 170);
    EXPECT_EQ(both, alone);
}

TEST(LecturePainterAreasTest, VerdictsDifferInShape)
{
    QVector<QImage> signs;
    for (const Role role :
         {Role::MarkOnTarget, Role::MarkAcceptable, Role::MarkOffTarget, Role::MarkUnsafe}) {
        const SceneShape shape{role, Figure::Point, {{150, 100}}, {}, {}};
        EXPECT_TRUE(isVerdict(shape));
        QImage grey = painted({shape}, 2.0).convertToFormat(QImage::Format_Grayscale8);
        for (int y = 0; y < grey.height(); ++y)
            for (int x = 0; x < grey.width(); ++x)
                grey.setPixel(x, y, qGray(grey.pixel(x, y)) < 160 ? qRgb(0, 0, 0) : qRgb(255, 255, 255));
        for (const QImage& other : signs)
            EXPECT_NE(grey, other);
        signs.push_back(grey);
    }
}

TEST(LecturePainterAreasTest, LinesAndPointsAreLeftToTheScenesPainter)
{
    const SceneShape line{Role::Newest, Figure::Line, {{0, 0}, {9, 9}}, {}, {}};
    const SceneShape figure{Role::Construction, Figure::Closed, {{0, 0}, {9, 9}, {0, 9}}, {}, {}};
    for (const SceneShape& shape : {line, figure}) {
        EXPECT_FALSE(isArea(shape));
        EXPECT_FALSE(isVerdict(shape));
    }
    EXPECT_EQ(painted({line, figure}), painted({}));
    EXPECT_TRUE(isArea(square(Role::Near, 0, 9)));
}

}  // namespace fb::test::lecture_painter_areas_test
