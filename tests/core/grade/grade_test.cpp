#include "core/grade/grade.h"

#include <gtest/gtest.h>

#include <limits>
#include <set>
#include <string>

#include "core/site/deltoid.h"
#include "core/site/locate.h"
#include "tests/support/arm_by_hand.h"
#include "tests/support/core_atlas.h"

using namespace fb;
using test::armByHand;
using test::defaultPolicy;

namespace grade_test {

namespace {

Target strip()
{
    Target target = deltoidTarget(Convention::DeltoidStrip, defaultPolicy(), armByHand(30.4, 10.0));
    target.side = Side::Right;
    return target;
}

// d below the acromion, and forward of the mid-lateral line, cm of skin.
Grade at(double d, double forward, MarkedLimb limb = MarkedLimb::Arm)
{
    const Target target = strip();
    return gradeMark(target, defaultPolicy(), target.toViewer({forward, -d}), limb);
}

}  // namespace

TEST(GradeTest, EverySiteDirectionAndHazardHasItsReason)
{
    struct Row {
        double d, forward;
        MarkedLimb limb;
        Verdict verdict;
        Direction direction;
        Tissue tissue;
    };
    using enum Direction;
    const std::vector<Row> rows{
        {4.25, 0.0, MarkedLimb::Arm, Verdict::OnTarget, None, Tissue::ThickMuscle},
        {2.5, 0.0, MarkedLimb::Arm, Verdict::Unsafe, High, Tissue::SubacromialBursa},
        {0.4 - 0.8, 0.0, MarkedLimb::Arm, Verdict::Unsafe, High, Tissue::AcromionBone},
        {-0.4, 0.0, MarkedLimb::Trunk, Verdict::Unsafe, High, Tissue::AcromionBone},
        {5.5, 0.0, MarkedLimb::Arm, Verdict::Acceptable, Low, Tissue::AxillaryNerve},
        {5.6, 0.0, MarkedLimb::Arm, Verdict::OffTarget, Low, Tissue::AxillaryNerve},
        {7.5, 0.0, MarkedLimb::Arm, Verdict::OffTarget, Low, Tissue::ThinMuscle},
        {10.5, 0.0, MarkedLimb::Arm, Verdict::Unsafe, Low, Tissue::RadialNerve},
        {4.25, 1.9, MarkedLimb::Arm, Verdict::Acceptable, Forward, Tissue::ThinMuscle},
        {4.25, 3.0, MarkedLimb::Arm, Verdict::OffTarget, Forward, Tissue::ThinMuscle},
        {4.25, -2.0, MarkedLimb::Arm, Verdict::Acceptable, Back, Tissue::AxillaryNerve},
        {4.25, -3.0, MarkedLimb::Arm, Verdict::OffTarget, Back, Tissue::AxillaryNerve},
        {9.8, -3.0, MarkedLimb::Arm, Verdict::Unsafe, Low, Tissue::RadialNerve},
        {5.0, 14.0, MarkedLimb::Trunk, Verdict::OffTarget, Forward, Tissue::Trunk},
        {-8.0, 3.0, MarkedLimb::Trunk, Verdict::Unsafe, High, Tissue::Trunk},
        {36.0, 12.0, MarkedLimb::Forearm, Verdict::Unsafe, Low, Tissue::Forearm},
    };
    for (const Row& row : rows) {
        const Grade grade = at(row.d, row.forward, row.limb);
        const std::string where =
            std::to_string(row.d) + " down, " + std::to_string(row.forward) + " forward";
        EXPECT_EQ(wordOf(grade.verdict), wordOf(row.verdict)) << where;
        EXPECT_EQ(wordOf(grade.reason.direction), wordOf(row.direction)) << where;
        EXPECT_EQ(wordOf(grade.reason.tissue), wordOf(row.tissue)) << where;
    }
}

TEST(GradeTest, TheExactBorderCountsAsInside)
{
    const Bounds b = strip().regionSkin.bounds();
    for (const Point corner : {b.low, b.high, Point{b.low.x, b.high.y}, Point{b.high.x, b.low.y}}) {
        const Grade grade = at(-corner.y, corner.x);
        EXPECT_TRUE(grade.inside);
        EXPECT_EQ(grade.verdict, Verdict::OnTarget);
        EXPECT_EQ(grade.distanceToBorder.value(), 0.0);
    }
}

TEST(GradeTest, OffsetsNameTheirDirections)
{
    const Grade low = at(strip().idealSkin.y * -1.0 + 2.0, 0.0);
    EXPECT_NEAR(low.offDistal.value(), 2.0, 1e-6);
    EXPECT_NEAR(low.offAnterior.value(), 0.0, 1e-6);
    const Grade front = at(-strip().idealSkin.y, 1.0);
    EXPECT_NEAR(front.offAnterior.value(), 1.0, 1e-6);
    EXPECT_NEAR(front.distanceToIdeal.value(), 1.0, 1e-6);
    EXPECT_LT(front.distanceToBorder.value(), 0.0);
}

TEST(GradeTest, InsideTheRegionAStrikeIsSilentButANoteIsTold)
{
    // D0 overlaps the bursa's zone and the back nerve band: a note never changes the mark.
    const Grade high = at(3.2, 0.0);
    EXPECT_EQ(high.verdict, Verdict::OnTarget);
    EXPECT_EQ(high.reason.note, HazardCode::BursaEdge);
    EXPECT_EQ(high.reason.clearance.value(), 0.0);
    const Grade back = at(4.5, -1.0);
    EXPECT_EQ(back.verdict, Verdict::OnTarget);
    EXPECT_EQ(back.reason.note, HazardCode::AxillaryNerveBack);
    EXPECT_FALSE(back.hazard);
}

TEST(GradeTest, BoneOverridesTheRegion)
{
    Target target = strip();
    target.hazards.front().skin = Polygon::rectangle(-5, 5, -10, 5);
    const Grade grade = gradeMark(target, defaultPolicy(), target.ideal, MarkedLimb::Arm);
    EXPECT_TRUE(grade.inside);
    EXPECT_EQ(grade.verdict, Verdict::Unsafe);
    EXPECT_EQ(grade.hazard, HazardCode::Acromion);
    EXPECT_EQ(grade.points, 0.0);
}

TEST(GradeTest, PointsAndMarginAreThePolicys)
{
    const Policy strict =
        defaultPolicy().with(PolicyKey::AcceptableMargin, 0.0).with(PolicyKey::PointsOnTarget, 3.0);
    const Target target = strip();
    EXPECT_EQ(gradeMark(target, strict, target.ideal, MarkedLimb::Arm).points, 3.0);
    EXPECT_EQ(gradeMark(target, strict, target.toViewer({1.6, -4.25}), MarkedLimb::Arm).verdict,
              Verdict::OffTarget);
    EXPECT_EQ(at(4.25, 1.6).verdict, Verdict::Acceptable);
}

TEST(GradeTest, LeftEqualsMirroredRight)
{
    const auto grade = [](Side side, Point viewer) {
        const Target target = locate(test::atlas(), defaultPolicy(), test::adult(Sex::Female, 163, 71, side),
                                     Convention::DeltoidStrip, View::ShoulderSide)
                                  .value();
        return gradeMark(target, defaultPolicy(), viewer, MarkedLimb::Arm);
    };
    for (const Point p : {Point{1, -4}, Point{-2, -6}, Point{0, -1}, Point{3, -11}}) {
        const Grade right = grade(Side::Right, p);
        const Grade left = grade(Side::Left, mirrored(p));
        EXPECT_EQ(right.verdict, left.verdict);
        EXPECT_EQ(right.offAnterior, left.offAnterior);
        EXPECT_EQ(right.distanceToBorder, left.distanceToBorder);
        EXPECT_EQ(right.reason.direction, left.reason.direction);
    }
}

TEST(GradeTest, AMarkOffTheBodyOrOnAShowOnlyPlateIsNoMark)
{
    const Patient patient = test::adult(Sex::Male, 172, 70);
    const BodyMap map = bodyMap(test::atlas(), View::ShoulderSide, patient).value();
    EXPECT_EQ(markedLimb(test::sidePlate(), map, Side::Right, {0, -5}).value(), MarkedLimb::Arm);
    EXPECT_EQ(markedLimb(test::sidePlate(), map, Side::Right, {-23, 19}).error().problem,
              Problem::MarkOutsideBody);
    EXPECT_EQ(markedLimb(test::sidePlate(), map, Side::Right, {std::numeric_limits<double>::quiet_NaN(), 0})
                  .error()
                  .problem,
              Problem::MarkOutsideBody);
    const BodyMap quarter = bodyMap(test::atlas(), View::ShoulderThreeQuarter, patient).value();
    EXPECT_EQ(markedLimb(test::threeQuarterPlate(), quarter, Side::Right, {0, -5}).error().problem,
              Problem::ViewShowOnly);
}

TEST(GradeTest, EveryCodeHasAWordOfItsOwn)
{
    std::set<std::string> words;
    for (int i = 0; i < kVerdictCount; ++i)
        EXPECT_TRUE(words.insert(std::string(wordOf(static_cast<Verdict>(i)))).second);
    words.clear();
    for (int i = 0; i < kDirectionCount; ++i)
        EXPECT_TRUE(words.insert(std::string(wordOf(static_cast<Direction>(i)))).second);
    words.clear();
    for (int i = 0; i < kTissueCount; ++i)
        EXPECT_TRUE(words.insert(std::string(wordOf(static_cast<Tissue>(i)))).second);
    EXPECT_FALSE(words.contains(""));
}

}  // namespace grade_test
