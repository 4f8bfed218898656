#include "app/profile/screen_scale.h"

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QScreen>

namespace fb::test::screen_scale_test {

TEST(ScreenScaleTest, ACardIsAsLargeAsTheStandardSays)
{
    // ISO/IEC 7810, ID-1: 85.60 x 53.98 mm, corners of 2.88 to 3.48 mm.
    EXPECT_EQ(kCardWidth, Mm{85.60});
    EXPECT_EQ(kCardHeight, Mm{53.98});
    EXPECT_GE(kCardCorner, Mm{2.88});
    EXPECT_LE(kCardCorner, Mm{3.48});
}

TEST(ScreenScaleTest, AScaleNoScreenHasIsNone)
{
    EXPECT_EQ(scaleFrom(323.5, kCardWidth)->value(), 323.5 / 85.60);
    EXPECT_EQ(scaleFrom(150.0, kRulerLength), std::optional(kCoarsest)) << "the border counts";
    EXPECT_EQ(scaleFrom(4000.0, kRulerLength), std::optional(kFinest));
    for (const double pixels : {149.0, 4001.0, 0.0, -300.0, std::nan("")})
        EXPECT_EQ(scaleFrom(pixels, kRulerLength), std::nullopt) << pixels;
}

TEST(ScreenScaleTest, LengthsComeBackInCentimetres)
{
    const auto scale = scaleFrom(856.0, kCardWidth);
    EXPECT_DOUBLE_EQ(lengthOn(*scale, 1820.0).value(), 18.2);
}

TEST(ScreenScaleTest, AScreenIsKnownByNamesAndPixelsAndGuessedSensibly)
{
    const QScreen& screen = *QGuiApplication::primaryScreen();
    const QString key = screenKey(screen);
    EXPECT_TRUE(key.startsWith(screen.name())) << key.toStdString();
    EXPECT_TRUE(key.endsWith(QStringLiteral("%1x%2")
                                 .arg(screen.size().width() * screen.devicePixelRatio())
                                 .arg(screen.size().height() * screen.devicePixelRatio())))
        << key.toStdString();
    EXPECT_EQ(key, screenKey(screen));
    EXPECT_GT(guessedScale(screen), kCoarsest);
    EXPECT_LT(guessedScale(screen), kFinest);
}

}  // namespace fb::test::screen_scale_test
