#include "core/feel/feel.h"

#include <gtest/gtest.h>

#include <limits>
#include <set>

#include "core/body/fat.h"
#include "core/site/places.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace feel_test {

namespace {

constexpr Cm kFinger{1.6};

Patient woman(double index, Side side = Side::Right)
{
    return test::adult(Sex::Female, 163, test::weightOf(index, 163), side);
}

FeelMap mapOf(View view, const Patient& patient, const Policy& policy = test::defaultPolicy())
{
    return FeelMap::make(test::atlas(), policy, patient, view).value();
}

Point landmarkOf(View view, const Patient& patient, std::string_view id)
{
    const BodyMap map = bodyMap(test::atlas(), view, patient).value();
    return Places(test::plateOf(view), map).landmark(id);
}

// The lean woman's hip, with its places.
struct LeanHip {
    Patient patient = woman(20);
    FeelMap map = mapOf(View::HipSide, patient);
    Point spine = landmarkOf(View::HipSide, patient, "landmark.asis");
    Point tubercle = landmarkOf(View::HipSide, patient, "landmark.iliac-tubercle");
    Point crest = landmarkOf(View::HipSide, patient, "landmark.iliac-crest");
    Point trochanter = landmarkOf(View::HipSide, patient, "landmark.greater-trochanter");

    [[nodiscard]] Feel at(Point p) const { return map.at(p, kFinger).value(); }
};

}  // namespace

TEST(FeelTest, ReachSinksStraightFromLeanToThickAndStaysThere)
{
    const FeelMap map = mapOf(View::HipSide, woman(25));
    EXPECT_EQ(map.reach(Mm{0}), Cm{2.0});
    EXPECT_EQ(map.reach(Mm{10}), Cm{2.0});
    EXPECT_NEAR(map.reach(Mm{25}).value(), 1.5, 1e-12);
    EXPECT_EQ(map.reach(Mm{40}), Cm{1.0});
    EXPECT_EQ(map.reach(Mm{90}), Cm{1.0});
    const Policy other = test::defaultPolicy().with(PolicyKey::FeelReachLean, 3.0);
    EXPECT_EQ(mapOf(View::HipSide, woman(25), other).reach(Mm{5}), Cm{3.0});
}

TEST(FeelTest, AViewThatIsOnlyShownIsRefused)
{
    for (const View view : {View::ShoulderThreeQuarter, View::HipBehind}) {
        const auto map = FeelMap::make(test::atlas(), test::defaultPolicy(), woman(25), view);
        ASSERT_FALSE(map);
        EXPECT_EQ(map.error().problem, Problem::ViewShowOnly);
        EXPECT_EQ(map.error().what, wordOf(view));
    }
}

TEST(FeelTest, APressOutsideTheBodyOrNowhereIsRefused)
{
    const FeelMap map = mapOf(View::HipSide, woman(25));
    EXPECT_EQ(map.at({0.0, 200.0}, kFinger).error().problem, Problem::MarkOutsideBody);
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    EXPECT_EQ(map.at({nan, 0.0}, kFinger).error().problem, Problem::MarkNotAPoint);
    EXPECT_EQ(map.at({0.0, infinite}, kFinger).error().problem, Problem::MarkNotAPoint);
}

TEST(FeelTest, OverACornerItIsHardAndAPoint)
{
    const LeanHip hip;
    for (const Point corner : {hip.spine, hip.tubercle}) {
        const Feel feel = hip.at(corner);
        EXPECT_EQ(feel.firmness, Firmness::Hard);
        EXPECT_EQ(feel.shape, BoneShape::Point);
        EXPECT_NEAR(feel.away.value(), 0.0, 1e-9);
        EXPECT_FALSE(feel.toward);
    }
}

// Only there does nothing of it lie to one side.
TEST(FeelTest, AKnobIsBroadToItsVeryTop)
{
    const LeanHip hip;
    const Feel top = hip.at(hip.trochanter);
    EXPECT_EQ(top.firmness, Firmness::Hard);
    EXPECT_EQ(top.shape, BoneShape::Broad);
    EXPECT_FALSE(top.toward);
    const Feel beside = hip.at(hip.trochanter + Point{0.9, 0.0});
    EXPECT_EQ(beside.shape, BoneShape::Broad);
    EXPECT_TRUE(beside.toward);
    EXPECT_EQ(beside.bone, top.bone);
}

TEST(FeelTest, TheTubercleIsFeltOnItsCrestWhileUnderTheFinger)
{
    const LeanHip hip;
    const Feel on = hip.at(hip.tubercle);
    ASSERT_TRUE(on.along);
    const Feel near = hip.at(hip.tubercle + *on.along * 0.6);
    EXPECT_EQ(near.shape, BoneShape::Point);
    const Feel past = hip.at(hip.tubercle + *on.along * 1.2);
    EXPECT_EQ(past.shape, BoneShape::Edge);
    EXPECT_EQ(past.firmness, Firmness::Hard);
    EXPECT_EQ(on.bone, past.bone);
}

TEST(FeelTest, AlongTheCrestItIsAnEdgeThatRunsOn)
{
    const LeanHip hip;
    const Feel feel = hip.at(hip.crest);
    EXPECT_EQ(feel.firmness, Firmness::Hard);
    EXPECT_EQ(feel.shape, BoneShape::Edge);
    ASSERT_TRUE(feel.along);
    // At its top, the farthest to the head, the crest runs straight across the trunk.
    EXPECT_LT(std::abs(feel.along->x), 0.35);
}

TEST(FeelTest, BesideABoneTheFingerIsToldTheWay)
{
    const LeanHip hip;
    const Feel feel = hip.at(hip.crest + Point{-1.4, 0.0});
    EXPECT_EQ(feel.firmness, Firmness::Soft);  // the flank
    EXPECT_EQ(feel.shape, BoneShape::Edge);
    ASSERT_TRUE(feel.toward);
    EXPECT_GT(feel.toward->x, 0.9);
    EXPECT_GT(feel.away, Cm{0.8});
}

TEST(FeelTest, OutOfReachThereIsNoBone)
{
    const LeanHip hip;
    const Feel flank = hip.at(hip.crest + Point{-4.0, 0.0});
    EXPECT_EQ(flank.firmness, Firmness::Soft);
    EXPECT_EQ(flank.shape, BoneShape::None);
    EXPECT_FALSE(flank.toward);
    EXPECT_FALSE(flank.along);
    EXPECT_EQ(flank.bone, -1);
    const Feel site = hip.at((hip.spine + hip.tubercle + hip.trochanter) * (1.0 / 3.0));
    EXPECT_EQ(site.firmness, Firmness::Firm);
    EXPECT_EQ(site.shape, BoneShape::None);
}

TEST(FeelTest, AKnobIsBroadAndLeadsToItsTop)
{
    const LeanHip hip;
    const Feel beside = hip.at(hip.trochanter + Point{1.6, 0.6});
    EXPECT_EQ(beside.firmness, Firmness::Hard);
    EXPECT_EQ(beside.shape, BoneShape::Broad);
    EXPECT_EQ(beside.away, Cm{0.0});
    ASSERT_TRUE(beside.toward);
    EXPECT_LT(beside.toward->x, -0.9);
    EXPECT_EQ(beside.bone, hip.at(hip.trochanter).bone);
}

TEST(FeelTest, TheDeltoidTuberosityIsADullSpotInFirmMuscle)
{
    const Patient patient = woman(20);
    const FeelMap map = mapOf(View::ShoulderSide, patient);
    const Point end = landmarkOf(View::ShoulderSide, patient, "landmark.deltoid-tuberosity");
    const Feel feel = map.at(end, kFinger).value();
    EXPECT_EQ(feel.firmness, Firmness::Firm);
    EXPECT_EQ(feel.shape, BoneShape::Point);
    EXPECT_EQ(feel.clearness, Clearness::Dull);
    EXPECT_EQ(map.at(end + Point{0.0, -0.95}, kFinger)->shape, BoneShape::Point);
    EXPECT_EQ(map.at(end + Point{0.0, -1.05}, kFinger)->shape, BoneShape::None);
}

TEST(FeelTest, TheAcromionIsAnEdgeBelowAndBroadAbove)
{
    const Patient patient = woman(20);
    const FeelMap map = mapOf(View::ShoulderSide, patient);
    const Point edge = landmarkOf(View::ShoulderSide, patient, "landmark.acromion.lateral");
    EXPECT_EQ(map.at(edge, kFinger)->shape, BoneShape::Edge);
    EXPECT_EQ(map.at(edge, kFinger)->firmness, Firmness::Hard);
    EXPECT_EQ(map.at(edge + Point{-1.0, 0.9}, kFinger)->shape, BoneShape::Broad);
    EXPECT_EQ(map.at(edge + Point{0.0, -4.0}, kFinger)->firmness, Firmness::Firm);
}

TEST(FeelTest, FatMakesMuscleSoftAndBoneFaint)
{
    const Patient heavy = woman(45);
    const FeelMap map = mapOf(View::HipSide, heavy);
    const Point spine = landmarkOf(View::HipSide, heavy, "landmark.asis");
    const Point trochanter = landmarkOf(View::HipSide, heavy, "landmark.greater-trochanter");
    EXPECT_EQ(map.at((spine + trochanter) * 0.5, kFinger)->firmness, Firmness::Soft);
    const Feel over = map.at(spine, kFinger).value();
    EXPECT_EQ(over.firmness, Firmness::Hard);
    EXPECT_EQ(over.clearness, Clearness::Faint);
    EXPECT_EQ(over.fat, fatOver(Site::Ventrogluteal, test::proportions(), heavy));
    EXPECT_EQ(map.at(spine + Point{0.0, 1.05}, kFinger)->shape, BoneShape::None);
    EXPECT_EQ(mapOf(View::HipSide, woman(27)).at(spine, kFinger)->clearness, Clearness::Dull);
    EXPECT_EQ(LeanHip().at(LeanHip().spine).clearness, Clearness::Plain);
}

TEST(FeelTest, AWiderFingerLiesOnMoreBone)
{
    const LeanHip hip;
    const Point beside = hip.crest + Point{-0.9, 0.0};
    EXPECT_EQ(hip.map.at(beside, Cm{1.4})->firmness, Firmness::Soft);
    EXPECT_EQ(hip.map.at(beside, Cm{2.0})->firmness, Firmness::Hard);
}

TEST(FeelTest, ALeftSideIsTheMirrorOfTheRight)
{
    const FeelMap right = mapOf(View::HipSide, woman(20));
    const FeelMap left = mapOf(View::HipSide, woman(20, Side::Left));
    const Point p = LeanHip().crest + Point{-1.2, 0.3};
    const Feel there = right.at(p, kFinger).value();
    Feel here = left.at(mirrored(p), kFinger).value();
    ASSERT_TRUE(here.toward && here.along);
    EXPECT_NE(here.toward, there.toward);
    here.toward = mirrored(*here.toward);
    here.along = mirrored(*here.along);
    EXPECT_EQ(here, there);
}

TEST(SweepTest, ItFollowsAnEdgeWhileItIsUnderTheFinger)
{
    const LeanHip hip;
    Sweep sweep;
    EXPECT_EQ(sweep.followed(), Cm{0.0});
    const Point way = *hip.at(hip.crest).along;
    sweep.add(hip.crest, hip.at(hip.crest));
    EXPECT_EQ(sweep.followed(), Cm{0.0});
    const Point on = hip.crest + way * 1.0;
    sweep.add(on, hip.at(on));
    EXPECT_NEAR(sweep.followed().value(), 1.0, 0.1);
    const double soFar = sweep.followed().value();
    // Back again adds nothing.
    sweep.add(hip.crest, hip.at(hip.crest));
    EXPECT_EQ(sweep.followed().value(), soFar);
    // Off the edge nothing is followed, though the press goes on.
    const Point off = hip.crest + Point{-2.0, 0.0};
    sweep.add(off, hip.at(off));
    EXPECT_EQ(sweep.followed(), Cm{0.0});
    sweep.add(on, hip.at(on));
    EXPECT_EQ(sweep.followed(), Cm{0.0});
}

TEST(SweepTest, ALiftedFingerOrALeapBeginsAnew)
{
    const LeanHip hip;
    const Feel spine = hip.at(hip.spine);
    const Feel crest = hip.at(hip.crest);
    Sweep leap;
    leap.add(hip.spine, spine);
    leap.add(hip.crest, crest);
    EXPECT_EQ(leap.followed(), Cm{0.0});
    const Point way = *crest.along;
    const Point on = hip.crest + way * 0.8;
    Sweep lifted;
    lifted.add(hip.crest, crest);
    lifted.lift();
    lifted.add(on, hip.at(on));
    EXPECT_EQ(lifted.followed(), Cm{0.0});
}

TEST(FeelTest, EveryValueHasItsWord)
{
    std::set<std::string_view> words;
    for (int i = 0; i < kFirmnessCount; ++i)
        words.insert(wordOf(static_cast<Firmness>(i)));
    for (int i = 0; i < kBoneShapeCount; ++i)
        words.insert(wordOf(static_cast<BoneShape>(i)));
    for (int i = 0; i < kClearnessCount; ++i)
        words.insert(wordOf(static_cast<Clearness>(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kFirmnessCount + kBoneShapeCount + kClearnessCount));
}

}  // namespace feel_test
