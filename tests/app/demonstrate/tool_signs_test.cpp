#include "app/demonstrate/tool_signs.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPixmap>
#include <vector>

namespace fb::test::tool_signs_test {

int inked(const QImage& image, const QColor& colour)
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            count += image.pixelColor(x, y) == colour ? 1 : 0;
    return count;
}

TEST(ToolSignsTest, EachSignIsDrawnAndLikeNoOther)
{
    std::vector<QImage> seen;
    for (int i = 0; i < kToolSignCount; ++i) {
        const QImage image = toolIcon(static_cast<ToolSign>(i), Qt::black, Qt::gray).pixmap(48, 48).toImage();
        EXPECT_GT(inked(image, Qt::black), 40) << i;
        for (const QImage& other : seen)
            EXPECT_NE(image, other) << i;
        seen.push_back(image);
    }
}

TEST(ToolSignsTest, WhatCannotBePressedIsFaint)
{
    const QColor faint(200, 200, 200);
    const QImage image =
        toolIcon(ToolSign::Wipe, Qt::black, faint).pixmap(QSize(48, 48), QIcon::Disabled).toImage();
    EXPECT_EQ(inked(image, Qt::black), 0);
    EXPECT_GT(inked(image, faint), 40);
}

}  // namespace fb::test::tool_signs_test
