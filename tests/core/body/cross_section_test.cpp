#include "core/body/cross_section.h"

#include <gtest/gtest.h>

#include <numbers>

using namespace fb;

namespace cross_section_test {

namespace {

CrossSection section()
{
    std::vector<LevelRow> rows{{-2, {-5, -2, 2, 5}}, {10, {-5, -1.3, 1.3, 6}}, {33, {-4, -2, 2, 4}}};
    return {LimbMap::make(rows, rows).value(), {0, 0}, 0.92};
}

}  // namespace

TEST(CrossSectionTest, TheMidLateralLineHasNoArc)
{
    for (double y = 1; y > -33; y -= 2.3)
        EXPECT_EQ(section().toSkin({0, y}).x, 0.0);
}

TEST(CrossSectionTest, SkinIsLongerThanThePictureAndRisesWithIt)
{
    for (double y = 0; y > -30; y -= 3) {
        double before = -100;
        for (double x = -9; x <= 9; x += 0.25) {
            const double s = section().toSkin({x, y}).x;
            EXPECT_GT(s, before);
            // A flat patch near the middle is seen almost true; toward the edge skin runs away.
            EXPECT_GE(std::abs(s) + 1e-9, 0.92 * std::abs(x));
            before = s;
        }
    }
}

TEST(CrossSectionTest, TheFrameLeadsBackFromTheSkin)
{
    for (double y = 0; y > -30; y -= 3) {
        for (double x = -8; x <= 8; x += 0.37) {
            const Point back = section().toFrame(section().toSkin({x, y}));
            EXPECT_NEAR(back.x, x, 1e-7) << x << ',' << y;
            EXPECT_EQ(back.y, y);
        }
    }
}

TEST(CrossSectionTest, AQuarterTurnReachesTheEdge)
{
    const double y = -10;
    const double quarter = section().quarterArc(y, true);
    EXPECT_NEAR(section().toFrame({quarter, y}).x, 6.0, 1e-9);
    EXPECT_NEAR(section().turnOf({quarter + 1, y}), std::numbers::pi / 2, 1e-12);
}

TEST(CrossSectionTest, TheSameSkinIsSeenFromTheSideAndFromTheFront)
{
    const double y = -10;
    const Point fromSide{0, 1};
    const Point fromFront{1, 0};
    EXPECT_NEAR(section().seenAt(0.4, y, fromSide), 6.0 * std::sin(0.4), 1e-12);
    EXPECT_NEAR(section().seenAt(0.4, y, fromFront), -0.92 * 5.5 * std::cos(0.4), 1e-12);
}

}  // namespace cross_section_test
