#include "core/site/ventrogluteal.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/core_atlas.h"
#include "tests/support/hip_by_hand.h"

using namespace fb;
using test::defaultPolicy;
using test::hipByHand;

namespace ventrogluteal_test {

namespace {

Target target(Convention convention, double hand = 18.2)
{
    return ventroglutealTarget(convention, defaultPolicy().with(PolicyKey::HandLength, hand), hipByHand());
}

double crestDistance(const Hip& hip, Point p)
{
    double nearest = 1e9;
    for (std::size_t i = 0; i + 1 < hip.crest.size(); ++i) {
        for (int k = 0; k <= 50; ++k)
            nearest = std::min(nearest, distance(p, lerp(hip.crest[i], hip.crest[i + 1], k / 50.0)));
    }
    return nearest;
}

}  // namespace

TEST(VentroglutealTest, MediansCrossAtTheMeanOfTheCorners)
{
    // Geometry: the crossing of a triangle's medians.
    EXPECT_EQ(mediansCrossing({0.0, 0.0}, {6.0, 9.0}, {12.0, 9.0}), (Point{6.0, 6.0}));
}

TEST(VentroglutealTest, TheRegionLiesBetweenTheFingers)
{
    const Target hand = target(Convention::VentroglutealHand);
    ASSERT_TRUE(hand.hand);
    const auto triangle = Polygon::make({hand.hand->fork, hand.hand->indexTip, hand.hand->middleTip});
    const double half = defaultPolicy().value(PolicyKey::DeltoidFingerWidth) / 2.0;
    for (const Point p : hand.region.corners()) {
        EXPECT_LE(triangle->signedDistance(p), 1e-9);
        for (const Point tip : {hand.hand->indexTip, hand.hand->middleTip}) {
            const Point along = tip - hand.hand->fork;
            EXPECT_GE(std::abs(cross(along, p - hand.hand->fork)) / length(along), half - 1e-9);
        }
    }
}

TEST(VentroglutealTest, EveryRegionKeepsClearOfBone)
{
    const Hip hip = hipByHand();
    for (const Convention convention : conventionsOf(Site::Ventrogluteal)) {
        const Target t = target(convention);
        for (const Point p : t.region.corners()) {
            EXPECT_GE(crestDistance(hip, p), 1.0 - 0.01) << wordOf(convention);
            EXPECT_GE(distance(p, hip.trochanter), 4.0 - 0.01) << wordOf(convention);
        }
        EXPECT_TRUE(t.region.contains(t.ideal));
        EXPECT_EQ(t.idealSkin, planeSkin(t.ideal));
        EXPECT_FALSE(t.surface.isSkin());
    }
}

TEST(VentroglutealTest, MediansAreADiscAboutTheirCrossing)
{
    const Hip hip = hipByHand();
    const Target medians = target(Convention::VentroglutealMedians);
    const Point crossing = mediansCrossing(hip.trochanter, hip.tubercle, hip.spine);
    EXPECT_LT(distance(medians.ideal, crossing), 1e-9);
    for (const Point p : medians.region.corners())
        EXPECT_LE(distance(p, crossing), 2.0 + 1e-9);
    EXPECT_FALSE(medians.hand);
}

TEST(VentroglutealTest, AnyHandLeavesARegion)
{
    for (double hand = 13.0; hand <= 24.0; hand += 0.5) {
        const Target t = target(Convention::VentroglutealHand, hand);
        EXPECT_GT(t.region.area(), 0.5) << hand;
        EXPECT_TRUE(t.region.contains(t.ideal)) << hand;
    }
}

TEST(VentroglutealTest, AHandThatLeavesNothingLeavesTheMediansDisc)
{
    // A margin so wide that no place between the fingers is clear of the trochanter.
    const Policy wide = defaultPolicy().with(PolicyKey::VgTrochanterMargin, 30.0);
    EXPECT_FALSE(clearOfBone(wide, hipByHand(), Polygon::rectangle(-9.0, -7.0, 2.0, 4.0)));
    const Target t = ventroglutealTarget(Convention::VentroglutealHand, wide, hipByHand());
    EXPECT_NEAR(t.region.area(), 12.5, 0.2);
}

TEST(VentroglutealTest, TheFigureIsTheConventionsOwn)
{
    const auto has = [](const Target& t, StepCode code) {
        return std::ranges::any_of(t.construction, [&](const Step& s) { return s.code == code; });
    };
    const Target hand = target(Convention::VentroglutealHand);
    const Target medians = target(Convention::VentroglutealMedians);
    for (const StepCode code : {StepCode::LayPalm, StepCode::IndexOnSpine, StepCode::MiddleAlongCrest}) {
        EXPECT_TRUE(has(hand, code));
        EXPECT_FALSE(has(medians, code));
    }
    EXPECT_EQ(std::ranges::count(medians.construction, StepCode::Median, &Step::code), 3);
    EXPECT_EQ(hand.construction.front().code, StepCode::FeelTrochanter);
    EXPECT_EQ(hand.construction.back().code, StepCode::IdealPoint);
}

TEST(VentroglutealTest, TheHandIsThePolicys)
{
    const HandSize size = handSize(defaultPolicy());
    EXPECT_EQ(size.length.value(), defaultPolicy().value(PolicyKey::HandLength));
    EXPECT_NEAR(size.palm().value(), 0.60 * size.length.value(), 1e-12);
    EXPECT_NEAR(size.breadth().value(), 0.44 * size.length.value(), 1e-12);
}

}  // namespace ventrogluteal_test
