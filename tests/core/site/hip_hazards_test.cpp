#include "core/site/hip_hazards.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/grade/grade.h"
#include "core/site/ventrogluteal.h"
#include "tests/support/core_atlas.h"
#include "tests/support/hip_by_hand.h"

using namespace fb;
using test::defaultPolicy;
using test::hipByHand;

namespace hip_hazards_test {

namespace {

Grade at(Point frame, Convention convention = Convention::VentroglutealHand)
{
    const Target target = ventroglutealTarget(convention, defaultPolicy(), hipByHand());
    return gradeMark(target, defaultPolicy(), frame, MarkedLimb::Pelvis);
}

}  // namespace

TEST(HipHazardsTest, BoneComesFirstThenStrikesInTheOrderOfTheFlags)
{
    const auto hazards = hipHazards(defaultPolicy(), hipByHand(), {{-12.0, 2.0}, {-4.5, 3.0}});
    std::vector<HazardCode> codes;
    for (const Hazard& hazard : hazards)
        codes.push_back(hazard.code);
    EXPECT_EQ(codes, (std::vector<HazardCode>{HazardCode::Trochanter, HazardCode::CrestBone,
                                              HazardCode::RoundTrochanter, HazardCode::AboveCrest,
                                              HazardCode::FrontOfHipLine, HazardCode::SciaticNerve,
                                              HazardCode::Dorsogluteal, HazardCode::SuperiorGluteal}));
}

TEST(HipHazardsTest, EachFlagIsNamed)
{
    const Grade low = at({-3.0, 1.0});
    EXPECT_EQ(low.verdict, Verdict::Unsafe);
    EXPECT_EQ(low.hazard, HazardCode::RoundTrochanter);
    EXPECT_EQ(low.reason.direction, Direction::Low);
    EXPECT_EQ(low.reason.tissue, Tissue::TrochanterTendons);
    const Grade high = at({-17.0, 1.0});
    EXPECT_EQ(high.verdict, Verdict::Unsafe);
    EXPECT_EQ(high.hazard, HazardCode::AboveCrest);
    EXPECT_EQ(high.reason.direction, Direction::High);
    const Grade front = at({-4.0, 8.0});
    EXPECT_EQ(front.verdict, Verdict::OffTarget);
    EXPECT_FALSE(front.hazard);
    EXPECT_EQ(front.reason.tissue, Tissue::FrontOfHip);
    const Grade sciatic = at({0.0, -8.0});
    EXPECT_EQ(sciatic.verdict, Verdict::Unsafe);
    EXPECT_EQ(sciatic.hazard, HazardCode::SciaticNerve);
    const Grade behind = at({-11.0, -5.0});
    EXPECT_EQ(behind.verdict, Verdict::Unsafe);
    EXPECT_EQ(behind.hazard, HazardCode::Dorsogluteal);
    EXPECT_EQ(behind.reason.tissue, Tissue::SuperiorGluteal);
}

TEST(HipHazardsTest, BoneStrikesWhateverLiesOverIt)
{
    EXPECT_EQ(at({0.0, 0.0}).hazard, HazardCode::Trochanter);
    EXPECT_EQ(at({-12.6, 2.7}).hazard, HazardCode::CrestBone);
}

TEST(HipHazardsTest, TheBranchesOfTheNerveAreToldAndNeverStrike)
{
    const Target medians =
        ventroglutealTarget(Convention::VentroglutealMedians, defaultPolicy(), hipByHand());
    const Grade grade = gradeMark(medians, defaultPolicy(), medians.ideal, MarkedLimb::Pelvis);
    EXPECT_EQ(grade.verdict, Verdict::OnTarget);
    EXPECT_EQ(grade.reason.note, HazardCode::SuperiorGluteal);
}

TEST(HipHazardsTest, DorsoglutealBeginsBehindTheTaughtRegion)
{
    for (const Convention convention : conventionsOf(Site::Ventrogluteal)) {
        const Target target = ventroglutealTarget(convention, defaultPolicy(), hipByHand());
        const auto it = std::ranges::find(target.hazards, HazardCode::Dorsogluteal, &Hazard::code);
        ASSERT_NE(it, target.hazards.end());
        EXPECT_FALSE(it->skin.contains(target.idealSkin)) << wordOf(convention);
    }
}

}  // namespace hip_hazards_test
