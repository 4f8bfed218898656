// The ventrogluteal site against its texts: hands, medians, the flags of a wrong mark, and the
// worked example of the design.
#include <cmath>

#include "core/grade/grade.h"
#include "core/hand/hand_pose.h"
#include "core/site/ventrogluteal.h"
#include "tests/published/moved_plate.h"

namespace fb::test::hip_distances_test {

namespace hip_distances_detail {

constexpr const char* kOpenStax = "OpenStax, Pharmacology for Nurses";
constexpr const char* kFlags = "clinical facts of the project, section 4: derived from the sources there";

Target hipTarget(const Patient& patient, Convention convention = Convention::VentroglutealHand)
{
    return locate(atlas(), defaultPolicy(), patient, convention, View::HipSide).value();
}

Target referenceTarget(Convention convention = Convention::VentroglutealHand)
{
    return hipTarget(referenceBodyOf(View::HipSide), convention);
}

Grade graded(const Target& target, Point mark, MarkedLimb limb = MarkedLimb::Pelvis)
{
    return gradeMark(target, defaultPolicy(), mark, limb);
}

// A pelvis as people stand, of a woman of 163 cm, in the frame of the side view (head to the
// left, front up): spine 8.73 up and 0.042 H in front of the trochanter; tubercle 4.5 back and 3.0
// up of it, top of the crest 6.3 up of it and straight above the trochanter, scaled by H / 172.
Hip straightHip()
{
    constexpr double kStature = 163.0;
    const double s = kStature / 172.0;
    const Point spine{-8.73, 0.042 * kStature};
    const Point tubercle = spine + Point{-3.0 * s, -4.5 * s};
    return Hip{.trochanter = {0.0, 0.0},
               .spine = spine,
               .tubercle = tubercle,
               .crestTop = {spine.x - 6.3 * s, 0.0},
               .backSpine = spine + Point{-1.0 * s, -16.5 * s},
               .crest = {spine, tubercle},
               .dome = {spine, tubercle},
               .trochanterBone = Polygon::rectangle(-1.0, 1.0, -1.0, 1.0),
               .glutealNerve = {},
               .thighAxis = {1.0, 0.0},
               .trunkFront = {},
               .trunkBack = {},
               .thighFront = {},
               .thighBack = {},
               .scale = s};
}

HandPose handOf18()
{
    HandSize size = handSize(defaultPolicy());
    size.length = Cm{18.2};
    const Hip hip = straightHip();
    return laidHand(size, hip.trochanter, hip.spine, Degrees{40.0});
}

// Twice the area of a triangle by its corners.
double shoelace(Point a, Point b, Point c)
{
    return std::abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));
}

}  // namespace hip_distances_detail

TEST(HipDistances, MediansCrossAtTheMeanOfTheirCorners)
{
    const Point crossing = mediansCrossing({0.0, 0.0}, {6.0, 9.0}, {12.0, 9.0});
    EXPECT_NEAR(crossing.x, 6.0, 1e-9) << "plane geometry";
    EXPECT_NEAR(crossing.y, 6.0, 1e-9) << "plane geometry";
}

TEST(HipDistances, MediansOfTheDrawnHipCrossAtTheMeanOfItsLandmarks)
{
    using namespace hip_distances_detail;
    const Target target = referenceTarget(Convention::VentroglutealMedians);
    const MovedPlate side(View::HipSide);
    const Point mean =
        (side.landmark("greater-trochanter") + side.landmark("iliac-tubercle") + side.landmark("asis")) *
        (1.0 / 3.0);
    EXPECT_LE(distance(target.ideal, mean), 1e-9)
        << "Int J Nurs Stud 2015; construction: common practice, no source";
}

TEST(HipDistances, LeftHandIsLaidOnARightHipAndRightHandOnALeft)
{
    using namespace hip_distances_detail;
    const Patient body = referenceBodyOf(View::HipSide);
    EXPECT_EQ(wordOf(hipTarget(body.withSide(Side::Right)).hand->hand), "left") << kOpenStax;
    EXPECT_EQ(wordOf(hipTarget(body.withSide(Side::Left)).hand->hand), "right") << kOpenStax;
}

TEST(HipDistances, HandLiesAsTheTextSays)
{
    using namespace hip_distances_detail;
    const Target target = referenceTarget();
    const HandPose& pose = *target.hand;
    const MovedPlate side(View::HipSide);
    const Point trochanter = side.landmark("greater-trochanter");
    const Point spine = side.landmark("asis");
    // Palm over the trochanter: it lies between wrist crease and fork, on the hand's axis.
    const double onPalm = dot(trochanter - pose.wrist, pose.fork - pose.wrist) /
                          dot(pose.fork - pose.wrist, pose.fork - pose.wrist);
    expectAll({
        {"index fingertip off the spine", distance(pose.indexTip, spine), 0.0, 1e-9, kOpenStax},
        {"trochanter under the palm, share of wrist to fork", onPalm, 0.5, 0.5, kOpenStax},
        {"finger to finger, degrees", pose.opening.value(), 35.0, 10.0,
         "25 to 45: common practice, no source"},
    });
    // The middle finger is spread back along the crest: behind the index, toward the buttock.
    EXPECT_LT(pose.middleTip.y, pose.indexTip.y) << kOpenStax;
    EXPECT_LT(pose.middleTip.x, pose.fork.x) << kOpenStax << ": fingers toward the head";
}

TEST(HipDistances, WorkedExampleOfTheDesignComesOutByItsOwnGeometry)
{
    using namespace hip_distances_detail;
    const char* source = "the project's design, section 6, worked by hand: woman 163 cm, hand 18.2 cm";
    const Hip hip = straightHip();
    const HandPose pose = handOf18();
    const auto fingers = betweenFingers(pose, Cm{1.7});
    ASSERT_TRUE(fingers.has_value());
    const auto region = clearOfBone(defaultPolicy(), hip, *fingers);
    ASSERT_TRUE(region.has_value());
    const Point ideal = (pose.fork + pose.indexTip + pose.middleTip) * (1.0 / 3.0);
    expectAll({
        // 17.4 when the sides are multiplied out: 0.38 h, 0.43 h and half the sine of 40 degrees.
        {"triangle cm2", shoelace(pose.fork, pose.indexTip, pose.middleTip) / 2.0, 17.5, 0.15, source},
        // "About": the text does not say how the crest ran; counted on a grid of 0.2 mm with the
        // crest straight from spine to tubercle it is 5.0.
        {"region cm2", region->area(), 4.3, 0.75, source},
        {"region cm2, counted", region->area(), 5.01, 0.02,
         "grid of 0.2 mm, worked out apart from the program"},
        {"ideal to the medians' crossing",
         distance(ideal, mediansCrossing(hip.trochanter, hip.tubercle, hip.spine)), 1.2, 0.1, source},
    });
}

TEST(HipDistances, MarkTooCloseToTheTrochanterIsTooLow)
{
    // Flag c, asked first: under 4 cm from the trochanter's tip.
    using namespace hip_distances_detail;
    const Target target = referenceTarget();
    const Point up = target.ideal * (1.0 / length(target.ideal));
    const Grade grade = graded(target, up * 3.0);
    EXPECT_EQ(wordOf(grade.verdict), "unsafe") << kFlags;
    EXPECT_EQ(wordOf(grade.reason.direction), "low") << kFlags;
    ASSERT_TRUE(grade.hazard.has_value());
    EXPECT_EQ(wordOf(*grade.hazard), wordOf(HazardCode::RoundTrochanter)) << kFlags;
    EXPECT_EQ(wordOf(grade.reason.tissue), wordOf(Tissue::TrochanterTendons)) << kFlags;
    // The 4 cm are those of the reference stature, which this patient has.
    EXPECT_EQ(graded(target, up * 3.9).hazard, HazardCode::RoundTrochanter) << kFlags;
    EXPECT_NE(graded(target, up * 4.1).hazard, HazardCode::RoundTrochanter) << kFlags;
}

TEST(HipDistances, MarkAboveTheCrestIsTooHigh)
{
    using namespace hip_distances_detail;
    const Target target = referenceTarget();
    const Point top = target.landmarks.at("iliac_crest");
    const Grade grade = graded(target, top + Point{-2.0, 0.5});
    EXPECT_EQ(wordOf(grade.verdict), "unsafe") << kFlags;
    EXPECT_EQ(wordOf(grade.reason.tissue), wordOf(Tissue::AbdominalWall)) << kFlags;
    ASSERT_TRUE(grade.hazard.has_value());
    EXPECT_EQ(wordOf(*grade.hazard), wordOf(HazardCode::AboveCrest)) << kFlags;
}

TEST(HipDistances, MarkInFrontOfTheLineFromSpineToTrochanterIsTooFarForward)
{
    using namespace hip_distances_detail;
    const Target target = referenceTarget();
    const Point spine = target.landmarks.at("asis");
    const Point forward = Point{spine.y, -spine.x} * (-1.0 / length(spine));
    const Point mark = spine * 0.55 + (forward.y > 0.0 ? forward : forward * -1.0) * 2.5;
    const Grade grade = graded(target, mark);
    EXPECT_EQ(wordOf(grade.verdict), "off_target") << kFlags << "; no strike";
    EXPECT_EQ(wordOf(grade.reason.tissue), wordOf(Tissue::FrontOfHip)) << kFlags;
}

TEST(HipDistances, MarkBelowTheLineFromBackSpineToTrochanterIsSciaticTerritory)
{
    using namespace hip_distances_detail;
    const Target target = referenceTarget();
    const Point back = target.landmarks.at("psis");
    const Point below = Point{-back.y, back.x} * (1.0 / length(back));
    const Point mark = back * 0.6 + (below.x > 0.0 ? below : below * -1.0) * 2.0;
    const Grade grade = graded(target, mark);
    EXPECT_EQ(wordOf(grade.verdict), "unsafe") << kFlags;
    ASSERT_TRUE(grade.hazard.has_value());
    EXPECT_EQ(wordOf(*grade.hazard), wordOf(HazardCode::SciaticNerve)) << kFlags;
    EXPECT_EQ(wordOf(grade.reason.tissue), wordOf(Tissue::SciaticNerve)) << kFlags;
}

TEST(HipDistances, MarkAboveThatLineAndBehindTheFingersIsDorsogluteal)
{
    // 83 percent of punctures of the upper outer quadrant hit a branch of the nerve.
    using namespace hip_distances_detail;
    const Target target = referenceTarget();
    const Point back = target.landmarks.at("psis");
    const Point above = Point{-back.y, back.x} * (1.0 / length(back));
    const Point mark = back * 0.6 + (above.x < 0.0 ? above : above * -1.0) * 2.0;
    const Grade grade = graded(target, mark);
    EXPECT_EQ(wordOf(grade.verdict), "unsafe") << kFlags;
    ASSERT_TRUE(grade.hazard.has_value());
    EXPECT_EQ(wordOf(*grade.hazard), wordOf(HazardCode::Dorsogluteal)) << kFlags;
    EXPECT_EQ(wordOf(grade.reason.tissue), wordOf(Tissue::SuperiorGluteal))
        << "Japanese Journal of Nursing Art and Science 6(2), article 4";
}

TEST(HipDistances, SciaticNerveOfThePlateLiesInSciaticTerritory)
{
    using namespace hip_distances_detail;
    const Target target = referenceTarget();
    for (const Point p : MovedPlate(View::HipSide).line("sciatic-nerve")) {
        const Grade grade = graded(target, p);
        EXPECT_EQ(wordOf(grade.verdict), "unsafe") << p.x << "," << p.y;
    }
}

TEST(HipDistances, RegionIsNotFreeOfNervesAndSaysSo)
{
    // Branches run 4 to 8 cm above the trochanter, through the taught region: told, never marked down.
    using namespace hip_distances_detail;
    const Target target = referenceTarget(Convention::VentroglutealMedians);
    const Grade grade = graded(target, target.ideal);
    EXPECT_EQ(wordOf(grade.verdict), "on_target");
    ASSERT_TRUE(grade.reason.note.has_value());
    EXPECT_EQ(wordOf(*grade.reason.note), wordOf(HazardCode::SuperiorGluteal));
}

}  // namespace fb::test::hip_distances_test
