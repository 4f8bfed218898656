#include "core/geometry/clip.h"

#include <gtest/gtest.h>

#include "tests/support/polygon_text.h"

using namespace fb;
using fb::test::polygon;

namespace clip_test {

TEST(ClipTest, KeepsTheAskedHalf)
{
    const Polygon square = polygon("0,0 10,0 10,10 0,10");
    EXPECT_DOUBLE_EQ(clipped(square, HalfPlane::below(4))->area(), 40.0);
    EXPECT_DOUBLE_EQ(clipped(square, HalfPlane::above(4))->area(), 60.0);
    EXPECT_NEAR(clipped(square, {{1, 1}, 10})->area(), 50.0, 1e-12);
}

TEST(ClipTest, WhollyInsideStaysAndWhollyOutsideGoes)
{
    const Polygon square = polygon("0,0 10,0 10,10 0,10");
    EXPECT_DOUBLE_EQ(clipped(square, HalfPlane::below(20))->area(), 100.0);
    EXPECT_FALSE(clipped(square, HalfPlane::below(-1)));
    EXPECT_FALSE(clipped(square, HalfPlane::below(0)));
}

}  // namespace clip_test
