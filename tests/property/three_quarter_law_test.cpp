// The view that is only shown: the side view's target laid round the same arm.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/property/geos_oracle.h"
#include "tests/property/sampling.h"

namespace fb::test::three_quarter_law_test {

namespace three_quarter_detail {

Target shownTo(const Patient& patient, Convention convention)
{
    return locate(atlas(), defaultPolicy(), patient, convention, View::ShoulderThreeQuarter).value();
}

Convention conventionAt(int number) { return conventionInTurn(Site::Deltoid, number); }

std::vector<Point> inOrder(std::vector<Point> points)
{
    std::ranges::sort(points, [](Point a, Point b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    return points;
}

}  // namespace three_quarter_detail

TEST(ThreeQuarterLaw, SkinOfTheTargetIsThatOfTheSideView)
{
    using namespace three_quarter_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const Patient patient = sampledPatient(89, number);
        const Target front = shownTo(patient, conventionAt(number));
        const Target side = targetOf(patient, conventionAt(number));
        ASSERT_EQ(front.regionSkin, side.regionSkin) << "seed 89, request " << number;
        ASSERT_EQ(front.idealSkin, side.idealSkin) << "seed 89, request " << number;
        ASSERT_EQ(front.armLength, side.armLength) << "seed 89, request " << number;
    }
}

TEST(ThreeQuarterLaw, RegionIsSimpleAndHoldsItsIdeal)
{
    using namespace three_quarter_detail;
    for (int number = 0; number < rounds(2'000); ++number) {
        const Target target = shownTo(sampledPatient(97, number), conventionAt(number));
        ASSERT_TRUE(GeosOracle(target.region).isValid()) << "seed 97, request " << number;
        ASSERT_TRUE(GeosOracle(target.region).covers(target.ideal)) << "seed 97, request " << number;
    }
}

TEST(ThreeQuarterLaw, LeftIsTheRightMirrored)
{
    using namespace three_quarter_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const Patient patient = sampledPatient(101, number);
        const Target right = shownTo(patient.withSide(Side::Right), conventionAt(number));
        const Target left = shownTo(patient.withSide(Side::Left), conventionAt(number));
        std::vector<Point> corners = left.region.corners();
        std::ranges::transform(corners, corners.begin(), [](Point p) { return mirrored(p); });
        ASSERT_EQ(inOrder(corners), inOrder(right.region.corners())) << "seed 101, request " << number;
        ASSERT_EQ(mirrored(left.ideal), right.ideal) << "seed 101, request " << number;
    }
}

TEST(ThreeQuarterLaw, IdealIsAsHighAsInTheSideView)
{
    using namespace three_quarter_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const Patient patient = sampledPatient(103, number);
        ASSERT_NEAR(shownTo(patient, Convention::DeltoidStrip).ideal.y,
                    targetOf(patient, Convention::DeltoidStrip).ideal.y, 1e-9)
            << "seed 103, request " << number;
    }
}

}  // namespace fb::test::three_quarter_law_test
