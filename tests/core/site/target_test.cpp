#include "core/site/target.h"

#include <gtest/gtest.h>

#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace target_test {

TEST(TargetTest, SkinAndViewerLeadThereAndBackOnBothSides)
{
    for (const Side side : kSides) {
        const Target target =
            locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 163, 71, side),
                   Convention::DeltoidStrip, View::ShoulderSide)
                .value();
        for (const Point skin : {Point{1.2, -4.0}, Point{-2.0, -7.0}, Point{0.0, -3.0}})
            EXPECT_LT(distance(target.toSkin(target.toViewer(skin)), skin), 1e-7);
        EXPECT_LT(distance(target.toViewer(target.idealSkin), target.ideal), 1e-9);
    }
}

TEST(TargetTest, FrontIsPositiveOnBothSides)
{
    const auto target = [](Side side) {
        return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 163, 71, side),
                      Convention::DeltoidStrip, View::ShoulderSide)
            .value();
    };
    EXPECT_GT(target(Side::Right).toSkin({2.0, -5.0}).x, 0.0);
    EXPECT_GT(target(Side::Left).toSkin({-2.0, -5.0}).x, 0.0);
}

}  // namespace target_test
