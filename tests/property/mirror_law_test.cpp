// The left side is the right side in a mirror: target, grade and ink.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/body/moved_ink.h"
#include "core/grade/grade.h"
#include "tests/property/sampling.h"

namespace fb::test::mirror_law_test {

namespace mirror_law_detail {

// Corners in an order of their own: a mirrored ring starts elsewhere and runs on the same way.
std::vector<Point> sorted(std::vector<Point> points)
{
    std::ranges::sort(points, [](Point a, Point b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    return points;
}

std::vector<Point> mirroredAll(std::vector<Point> points)
{
    std::ranges::transform(points, points.begin(), [](Point p) { return mirrored(p); });
    return points;
}

bool mirrorEachOther(const std::vector<Point>& a, const std::vector<Point>& b)
{
    return sorted(mirroredAll(a)) == sorted(b);
}

// Every convention in every view of its site, in turn.
Shown shownInTurn(int number)
{
    static const std::vector<Shown> all = everyShown();
    return all[static_cast<std::size_t>(number) % all.size()];
}

struct BothSides {
    Target right, left;
};

BothSides bothSides(std::uint64_t seed, int number)
{
    const Patient patient = sampledPatient(seed, number);
    return {targetIn(patient.withSide(Side::Right), shownInTurn(number)),
            targetIn(patient.withSide(Side::Left), shownInTurn(number))};
}

// Levels of a limb that lies are places along the picture, of one that hangs heights in it.
bool lies(View view) { return view == View::HipSide || view == View::ThighFront || view == View::ThighSide; }

constexpr std::array kLimbs{MarkedLimb::Arm,    MarkedLimb::Forearm, MarkedLimb::Trunk,
                            MarkedLimb::Pelvis, MarkedLimb::Thigh,   MarkedLimb::Leg};

}  // namespace mirror_law_detail

TEST(MirrorLaw, LeftTargetIsTheRightOneMirrored)
{
    using namespace mirror_law_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        SCOPED_TRACE(shown(shownInTurn(number)) + ", seed 17, request " + std::to_string(number));
        const auto [right, left] = bothSides(17, number);
        ASSERT_TRUE(mirrorEachOther(left.region.corners(), right.region.corners()));
        ASSERT_EQ(mirrored(left.ideal), right.ideal);
        ASSERT_EQ(left.regionSkin, right.regionSkin);
        ASSERT_EQ(left.idealSkin, right.idealSkin);
        for (const auto& [name, at] : left.levels)
            ASSERT_EQ(lies(left.view) ? -at : at, right.levels.at(name)) << name;
        ASSERT_EQ(left.heights, right.heights);
        ASSERT_EQ(left.hand ? std::optional(mirrored(*left.hand)) : std::nullopt, right.hand);
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
        const auto [right, left] = bothSides(19, number);
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
        SCOPED_TRACE(shown(shownInTurn(number)) + ", seed 23, request " + std::to_string(number));
        const auto [right, left] = bothSides(23, number);
        const Bounds paper = plateOf(right.view).paper;
        for (int i = 0; i < 10; ++i) {
            const Point mark = pointIn(stream, paper);
            const MarkedLimb limb = kLimbs[static_cast<std::size_t>(stream.below(6))];
            const Grade a = gradeMark(right, defaultPolicy(), mark, limb);
            const Grade b = gradeMark(left, defaultPolicy(), mirrored(mark), limb);
            ASSERT_EQ(right.toSkin(mark), left.toSkin(mirrored(mark)));
            ASSERT_EQ(a.verdict, b.verdict);
            ASSERT_EQ(a.distanceToBorder, b.distanceToBorder);
            ASSERT_EQ(a.offAnterior, b.offAnterior);
            ASSERT_EQ(a.offDistal, b.offDistal);
            ASSERT_EQ(a.hazard, b.hazard);
            ASSERT_EQ(a.reason.tissue, b.reason.tissue);
            ASSERT_EQ(a.reason.direction, b.reason.direction);
            ASSERT_EQ(a.reason.amount, b.reason.amount);
            ASSERT_EQ(a.reason.note, b.reason.note);
            ASSERT_EQ(a.points, b.points);
        }
    }
}

TEST(MirrorLaw, LeftInkIsTheRightInkMirrored)
{
    for (int number = 0; number < rounds(60); ++number) {
        const View view = kViews[static_cast<std::size_t>(number) % kViews.size()];
        const Plate& plate = plateOf(view);
        const Patient patient = sampledPatient(29, number);
        const BodyMap map = bodyMap(atlas(), view, patient).value();
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
    SeedStream stream(31);
    for (int number = 0; number < rounds(120); ++number) {
        const View view = kViews[static_cast<std::size_t>(number) % kViews.size()];
        const Plate& plate = plateOf(view);
        const BodyMap map = bodyMap(atlas(), view, sampledPatient(31, number)).value();
        for (int i = 0; i < 20; ++i) {
            const Point mark = pointIn(stream, plate.paper);
            ASSERT_EQ(limbAt(plate, map, Side::Right, mark), limbAt(plate, map, Side::Left, mirrored(mark)));
        }
    }
}

}  // namespace fb::test::mirror_law_test
