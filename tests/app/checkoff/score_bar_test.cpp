#include "app/checkoff/score_bar.h"

#include <gtest/gtest.h>

#include <QImage>

#include "tests/support/manikin_sample.h"

namespace score_bar_test {

namespace {

using namespace fb;
using namespace fb::test;

// Of a row through the track: how many pixels are as dark as the ink.
int inked(ScoreBar& bar)
{
    const QImage image = bar.grab().toImage().convertToFormat(QImage::Format_Grayscale8);
    const int y = image.height() - 4;
    int dark = 0;
    for (int x = 0; x < image.width(); ++x)
        dark += qGray(image.pixel(x, y)) < 80 ? 1 : 0;
    return dark;
}

TEST(ScoreBarTest, IsFilledAsFarAsTheScoreGoes)
{
    ScoreBar bar;
    bar.setScheme(dressed());
    bar.resize(200, 20);
    bar.showScore(0.0, 80.0);
    const int none = inked(bar);
    bar.showScore(40.0, 80.0);
    EXPECT_NEAR(inked(bar) - none, 80, 4);
    bar.showScore(400.0, 80.0);
    EXPECT_LE(inked(bar), 200) << "never farther than its end";
}

TEST(ScoreBarTest, TheCutIsSeenOverAFullBarInEveryPalette)
{
    for (const PaletteKind kind : kPaletteKinds) {
        ScoreBar bar;
        bar.setScheme(dressed(kind));
        bar.resize(200, 20);
        bar.showScore(100.0, 50.0);
        const QImage with = bar.grab().toImage();
        bar.showScore(100.0, 90.0);
        EXPECT_NE(with, bar.grab().toImage());
    }
    dressed();
}

TEST(ScoreBarTest, RunsTheOtherWayWhereTheLanguageDoes)
{
    ScoreBar bar;
    bar.setScheme(dressed());
    bar.resize(200, 20);
    bar.showScore(30.0, 80.0);
    const QImage image = bar.grab().toImage();
    bar.setLayoutDirection(Qt::RightToLeft);
    const QImage turned = bar.grab().toImage();
    const int y = image.height() - 4;
    EXPECT_LT(qGray(image.pixel(10, y)), 100);
    EXPECT_GT(qGray(turned.pixel(10, y)), 100);
    EXPECT_LT(qGray(turned.pixel(190, y)), 100);
}

}  // namespace

}  // namespace score_bar_test
