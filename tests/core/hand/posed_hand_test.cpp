#include "core/hand/posed_hand.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace posed_hand_test {

namespace {

const Plate& art() { return test::plateOf(View::OpenHand); }

HandPose pose(double length, double opening = 40.0)
{
    const HandSize size{Cm{length}, Cm{1.7}, 0.60, 0.57, 0.95, 0.05, 0.44};
    return laidHand(size, {0.0, 0.0}, {-9.0, 6.0}, Degrees{opening});
}

// How near the drawn hand comes to a point.
double reach(const MovedInk& ink, Point to)
{
    double nearest = 1e9;
    for (const MovedShape& shape : ink.shapes) {
        for (const Ring& ring : shape.rings) {
            for (const Point p : ring.points)
                nearest = std::min(nearest, distance(p, to));
        }
    }
    return nearest;
}

double width(const MovedInk& ink) { return distance(ink.paper.low, ink.paper.high); }

}  // namespace

TEST(PosedHandTest, TheDrawnFingertipsLieWhereThePoseHasThem)
{
    for (const double length : {15.0, 18.2, 22.0}) {
        for (const double opening : {25.0, 32.0, 40.0, 45.0}) {
            const HandPose laid = pose(length, opening);
            const MovedInk ink = posedHand(art(), laid);
            EXPECT_LT(reach(ink, laid.indexTip), 0.3) << length << " cm, " << opening;
            EXPECT_LT(reach(ink, laid.middleTip), 0.3) << length << " cm, " << opening;
            EXPECT_LT(reach(ink, laid.wrist), 1.5) << length << " cm, " << opening;
        }
    }
}

TEST(PosedHandTest, ALargerHandIsDrawnLargerInProportion)
{
    EXPECT_NEAR(width(posedHand(art(), pose(22.0))) / width(posedHand(art(), pose(16.5))), 22.0 / 16.5, 1e-9);
}

TEST(PosedHandTest, TheRightHandIsTheMirrorOfTheLeft)
{
    const MovedInk left = posedHand(art(), pose(18.0));
    const MovedInk right = posedHand(art(), mirrored(pose(18.0)));
    ASSERT_EQ(left.shapes.size(), right.shapes.size());
    for (std::size_t i = 0; i < left.shapes.size(); ++i) {
        ASSERT_EQ(left.shapes[i].rings.size(), right.shapes[i].rings.size());
        for (std::size_t r = 0; r < left.shapes[i].rings.size(); ++r) {
            const auto& a = left.shapes[i].rings[r].points;
            const auto& b = right.shapes[i].rings[r].points;
            for (std::size_t p = 0; p < a.size(); ++p)
                ASSERT_LT(distance(mirrored(a[p]), b[p]), 1e-9);
        }
    }
}

TEST(PosedHandTest, OpeningTurnsTheMiddleFingerAndLeavesTheIndex)
{
    const MovedInk narrow = posedHand(art(), pose(18.0, 25.0));
    const MovedInk wide = posedHand(art(), pose(18.0, 45.0));
    ASSERT_EQ(narrow.shapes.size(), wide.shapes.size());
    int turned = 0;
    int kept = 0;
    for (std::size_t i = 0; i < narrow.shapes.size(); ++i) {
        const Structure& structure = art().structures[static_cast<std::size_t>(narrow.shapes[i].structure)];
        const std::string& limb = art().limbs[static_cast<std::size_t>(structure.limb)].name;
        const bool same = narrow.shapes[i].rings.front().points == wide.shapes[i].rings.front().points;
        if (limb == "index" || limb == "thumb" || limb == "palm") {
            EXPECT_TRUE(same) << limb;
            ++kept;
        } else {
            EXPECT_FALSE(same) << limb;
            ++turned;
        }
    }
    EXPECT_GT(turned, 10);
    EXPECT_GT(kept, 10);
}

}  // namespace posed_hand_test
