#include "app/look/type.h"

#include <gtest/gtest.h>

#include <limits>

namespace type_test {

namespace {

using namespace fb;

TEST(TypeTest, LettersGrowWithTheScaleAndAreNeverTiny)
{
    for (int i = 0; i < kTypeCount; ++i) {
        const auto type = static_cast<Type>(i);
        EXPECT_GE(fontOf(type, 1.0).pixelSize(), 12);
        EXPECT_EQ(fontOf(type, 2.0).pixelSize(), 2 * fontOf(type, 1.0).pixelSize());
    }
}

TEST(TypeTest, TheScaleIsHeldBetweenOneAndTwo)
{
    EXPECT_EQ(heldTextScale(0.2), 1.0);
    EXPECT_EQ(heldTextScale(7.0), 2.0);
    EXPECT_EQ(heldTextScale(1.5), 1.5);
    EXPECT_EQ(heldTextScale(std::numeric_limits<double>::quiet_NaN()), 1.0);
}

TEST(TypeTest, TheScaleCanBeReadBackFromRunningText)
{
    for (const double scale : {1.0, 1.2, 1.4, 1.6, 2.0})
        EXPECT_NEAR(textScaleOf(fontOf(Type::Body, scale)), scale, 1e-9);
}

TEST(TypeTest, AFontInPointsIsTakenAsPlainSize)
{
    QFont font;
    font.setPointSize(30);
    EXPECT_EQ(textScaleOf(font), 1.0);
}

TEST(TypeTest, OnlyNamesOnThePlateAreItalic)
{
    for (int i = 0; i < kTypeCount; ++i)
        EXPECT_EQ(fontOf(static_cast<Type>(i), 1.0).italic(), static_cast<Type>(i) == Type::PlateLabel) << i;
}

}  // namespace

}  // namespace type_test
