// The left side is the right side in a mirror: target, grade and ink.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/body/moved_ink.h"
#include "core/grade/grade.h"
#include "tests/property/sampling.h"

namespace fb::test {

namespace mirror_law_detail {

// Corners in an order of their own: a mirrored ring starts elsewhere and runs on the same way.
std::vector<Point> sorted(std::vector<Point> points)
{
    std::ranges::sort(points, [](Point a, Point b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    return points;
}

std::vector<Point> mirroredAll(std::vector<Point> points)
{
    std::ranges::transform(points, points.begin(), mirrored);
    return points;
}

bool mirrorEachOther(const std::vector<Point>& a, const std::vector<Point>& b)
{
    return sorted(mirroredAll(a)) == sorted(b);
}

Convention conventionOf(int number)
{
    return kConventions[static_cast<std::size_t>(number) % kConventions.size()];
}

}  // namespace mirror_law_detail

TEST(MirrorLaw, LeftTargetIsTheRightOneMirrored)
{
    using namespace mirror_law_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        SCOPED_TRACE(number);
        const Patient patient = sampledPatient(17, number);
        const Target right = targetOf(patient.withSide(Side::Right), conventionOf(number));
        const Target left = targetOf(patient.withSide(Side::Left), conventionOf(number));
        ASSERT_TRUE(mirrorEachOther(left.region.corners(), right.region.corners()));
        ASSERT_EQ(mirrored(left.ideal), right.ideal);
        ASSERT_EQ(left.regionSkin, right.regionSkin);
        ASSERT_EQ(left.idealSkin, right.idealSkin);
        ASSERT_EQ(left.levels, right.levels);
        ASSERT_EQ(left.hazards.size(), right.hazards.size());
        for (std::size_t i = 0; i < left.hazards.size(); ++i) {
            ASSERT_EQ(left.hazards[i].skin, right.hazards[i].skin);
            ASSERT_TRUE(mirrorEachOther(left.hazards[i].plane.corners(), right.hazards[i].plane.corners()));
        }
        ASSERT_EQ(left.landmarks.size(), right.landmarks.size());
        for (const auto& [name, at] : left.landmarks)
            ASSERT_EQ(mirrored(at), right.landmarks.at(name)) << name;
    }
}

TEST(MirrorLaw, LeftConstructionIsTheRightOneMirrored)
{
    using namespace mirror_law_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const Patient patient = sampledPatient(19, number);
        const Target right = targetOf(patient.withSide(Side::Right), conventionOf(number));
        const Target left = targetOf(patient.withSide(Side::Left), conventionOf(number));
        ASSERT_EQ(left.construction.size(), right.construction.size());
        for (std::size_t i = 0; i < left.construction.size(); ++i) {
            ASSERT_EQ(left.construction[i].code, right.construction[i].code);
            ASSERT_TRUE(mirrorEachOther(left.construction[i].points, right.construction[i].points))
                << wordOf(left.construction[i].code) << ", seed 19, request " << number;
        }
    }
}

TEST(MirrorLaw, MirroredMarkGetsTheSameGrade)
{
    using namespace mirror_law_detail;
    SeedStream stream(23);
    for (int number = 0; number < rounds(1'000); ++number) {
        const Patient patient = sampledPatient(23, number);
        const Target right = targetOf(patient.withSide(Side::Right), conventionOf(number));
        const Target left = targetOf(patient.withSide(Side::Left), conventionOf(number));
        for (int i = 0; i < 10; ++i) {
            const Point mark = pointIn(stream, {{-8.0, -20.0}, {8.0, 3.0}});
            const Grade a = gradeMark(right, defaultPolicy(), mark, MarkedLimb::Arm);
            const Grade b = gradeMark(left, defaultPolicy(), mirrored(mark), MarkedLimb::Arm);
            ASSERT_EQ(a.verdict, b.verdict);
            ASSERT_EQ(a.distanceToBorder, b.distanceToBorder);
            ASSERT_EQ(a.offAnterior, b.offAnterior);
            ASSERT_EQ(a.offDistal, b.offDistal);
            ASSERT_EQ(a.hazard, b.hazard);
            ASSERT_EQ(a.reason.tissue, b.reason.tissue);
            ASSERT_EQ(a.reason.direction, b.reason.direction);
        }
    }
}

TEST(MirrorLaw, LeftInkIsTheRightInkMirrored)
{
    const Plate& plate = sidePlate();
    for (int number = 0; number < rounds(20); ++number) {
        const Patient patient = sampledPatient(29, number);
        const BodyMap map = bodyMap(sideAtlas(), View::ShoulderSide, patient).value();
        const MovedInk right = movedInk(plate, map, patient.withSide(Side::Right));
        const MovedInk left = movedInk(plate, map, patient.withSide(Side::Left));
        ASSERT_EQ(left.shapes.size(), right.shapes.size());
        for (std::size_t s = 0; s < left.shapes.size(); ++s) {
            for (std::size_t r = 0; r < left.shapes[s].rings.size(); ++r)
                ASSERT_EQ(mirror_law_detail::mirroredAll(left.shapes[s].rings[r].points),
                          right.shapes[s].rings[r].points);
        }
        EXPECT_EQ(-left.paper.low.x, right.paper.high.x);
        EXPECT_EQ(-left.paper.high.x, right.paper.low.x);
    }
}

TEST(MirrorLaw, SameLimbLiesUnderAMirroredMark)
{
    const Plate& plate = sidePlate();
    SeedStream stream(31);
    for (int number = 0; number < rounds(40); ++number) {
        const BodyMap map = bodyMap(sideAtlas(), View::ShoulderSide, sampledPatient(31, number)).value();
        for (int i = 0; i < 20; ++i) {
            const Point mark = pointIn(stream, plate.paper);
            ASSERT_EQ(limbAt(plate, map, Side::Right, mark), limbAt(plate, map, Side::Left, mirrored(mark)));
        }
    }
}

}  // namespace fb::test
