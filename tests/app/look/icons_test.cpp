#include "app/look/icons.h"

#include <gtest/gtest.h>

#include <QImage>
#include <array>
#include <set>

namespace icons_test {

namespace {

using namespace fb;

int inked(const QImage& image)
{
    int pixels = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            pixels += qAlpha(image.pixel(x, y)) > 96 ? 1 : 0;
    return pixels;
}

// The figure alone: where there is ink, without its colour.
QImage figure(Icon icon)
{
    return pixmapFor(icon, Qt::black, 32).toImage().convertToFormat(QImage::Format_Alpha8);
}

TEST(IconsTest, EveryIconIsDrawn)
{
    for (int i = 0; i < kIconCount; ++i) {
        const QImage image = pixmapFor(static_cast<Icon>(i), Qt::black, 24).toImage();
        EXPECT_GT(inked(image), 24) << i;
        EXPECT_LT(inked(image), 24 * 24) << i;
    }
}

TEST(IconsTest, NoTwoIconsLookAlike)
{
    for (int i = 0; i < kIconCount; ++i)
        for (int k = 0; k < i; ++k)
            EXPECT_NE(figure(static_cast<Icon>(i)), figure(static_cast<Icon>(k))) << i << " " << k;
}

TEST(IconsTest, VerdictsDifferInShapeNotInColourOnly)
{
    static constexpr std::array kVerdicts{Verdict::OnTarget, Verdict::Acceptable, Verdict::OffTarget,
                                          Verdict::Unsafe};
    for (std::size_t i = 0; i < kVerdicts.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            const QImage a = figure(iconOf(kVerdicts[i]));
            const QImage b = figure(iconOf(kVerdicts[k]));
            int differing = 0;
            for (int y = 0; y < a.height(); ++y)
                for (int x = 0; x < a.width(); ++x)
                    differing += std::abs(qAlpha(a.pixel(x, y)) - qAlpha(b.pixel(x, y))) > 128 ? 1 : 0;
            EXPECT_GT(differing, 40) << i << " " << k;
        }
    }
}

TEST(IconsTest, VerdictsHaveTheirOwnColours)
{
    const Scheme light = schemeOf(PaletteKind::Light);
    std::set<QRgb> colours;
    for (int i = 0; i < kVerdictCount; ++i)
        colours.insert(colourOf(static_cast<Verdict>(i), light).rgb());
    EXPECT_EQ(colours.size(), static_cast<std::size_t>(kVerdictCount));
}

TEST(IconsTest, IconsTakeTheColourTheyAreGiven)
{
    const QImage image = pixmapFor(Icon::ZoomIn, QColor(10, 200, 30), 48).toImage();
    bool seen = false;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            seen = seen || image.pixelColor(x, y) == QColor(10, 200, 30);
    EXPECT_TRUE(seen);
}

TEST(IconsTest, ADenserScreenGetsMorePixels)
{
    const QPixmap fine = pixmapFor(Icon::Left, Qt::black, 24, 2.0);
    EXPECT_EQ(fine.width(), 48);
    EXPECT_EQ(fine.deviceIndependentSize(), QSizeF(24, 24));
}

TEST(IconsTest, ADisabledIconIsPaler)
{
    const QIcon icon = iconFor(Icon::LayerSkin, schemeOf(PaletteKind::Light));
    EXPECT_NE(icon.pixmap(24, QIcon::Disabled).toImage(), icon.pixmap(24).toImage());
}

}  // namespace

}  // namespace icons_test
