#include "core/hand/laid_bars.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <utility>

#include "core/hand/free_hand.h"
#include "core/hand/posed_hand.h"
#include "tests/support/core_atlas.h"

namespace fb::test::laid_bars_test {

double beyond(Point p, const LaidBar& bar)
{
    const Point way = bar.to - bar.from;
    const double t = std::clamp(dot(p - bar.from, way) / std::max(1e-9, dot(way, way)), 0.0, 1.0);
    return distance(p, bar.from + way * t) - bar.half.value();
}

double beyond(Point p, const std::vector<LaidBar>& bars)
{
    double least = 1e9;
    for (const LaidBar& bar : bars)
        least = std::min(least, beyond(p, bar));
    return least;
}

HandPose pose(Side side, double length, double turn, double opening)
{
    const HandSize size{Cm{length}, Cm{1.6}, 0.6, 0.57, 0.95, 0.05, 0.44};
    return poseOf({side, {3.0, -2.0}, Degrees{turn}, Degrees{opening}}, size);
}

TEST(LaidBarsTest, WhatIsDrawnOfAHandLiesWithinItsBars)
{
    const Plate& art = plateOf(View::OpenHand);
    for (const Side side : kSides) {
        for (const double length : {13.0, 18.1, 24.0}) {
            for (const double turn : {0.0, 70.0, 200.0}) {
                for (const double opening : {kClosedOpening, 25.0, 40.0, 45.0}) {
                    const HandPose laid = pose(side, length, turn, opening);
                    const auto bars = barsOf(laid);
                    ASSERT_EQ(bars.size(), 6U);
                    const Point along = (laid.fork - laid.wrist) * (1.0 / distance(laid.fork, laid.wrist));
                    for (const MovedShape& shape : posedHand(art, laid).shapes)
                        for (const Ring& ring : shape.rings)
                            for (const Point p : ring.points)
                                if (dot(p - laid.wrist, along) > 0.0) {  // else it is the forearm
                                    EXPECT_LT(beyond(p, bars), 0.04 * length)
                                        << p.x << ", " << p.y << " opened by " << opening;
                                }
                }
            }
        }
    }
}

TEST(LaidBarsTest, TheyReachTheFingertips)
{
    for (const Side side : kSides) {
        const HandPose laid = pose(side, 18.1, 30.0, 45.0);
        const auto bars = barsOf(laid);
        for (const auto& [tip, bar] :
             {std::pair(laid.indexTip, bars[2]), std::pair(laid.middleTip, bars[3])}) {
            EXPECT_LT(beyond(tip, bar), 0.0);
            EXPECT_GT(beyond(tip, bar), -bar.half.value());
        }
        EXPECT_LT(beyond(laid.wrist, bars), 0.0);
        EXPECT_GT(beyond(lerp(laid.indexTip, laid.middleTip, 0.5), bars), 0.5) << "between them is nothing";
    }
}

TEST(LaidBarsTest, LaidFingersHaveABarEachAndTheBackOfTheHand)
{
    for (const Side side : kSides) {
        for (const int count : {2, 3}) {
            const LaidFingers fingers{count, side, {1.0, 0.5}, Degrees{20.0}};
            const auto bars = barsOf(fingers, Cm{1.6});
            ASSERT_EQ(bars.size(), static_cast<std::size_t>(count) + 1);
            for (int i = 0; i <= count; ++i)
                for (const Point end : edgeLine(fingers, Cm{1.6}, i))
                    EXPECT_LT(beyond(end, bars), 0.1) << "edge " << i;
            const Plate& art = plateOf(count == 2 ? View::TwoFingers : View::ThreeFingers);
            for (const MovedShape& shape : posedFingers(art, fingers, Cm{1.6}).shapes)
                for (const Ring& ring : shape.rings)
                    for (const Point p : ring.points) {
                        const Point from = p - fingers.top;
                        if (length(from) < 12.0) {  // farther away is the wrist
                            EXPECT_LT(beyond(p, bars), 0.7) << from.x << ", " << from.y;
                        }
                    }
        }
    }
}

}  // namespace fb::test::laid_bars_test
