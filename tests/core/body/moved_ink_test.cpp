#include "core/body/moved_ink.h"

#include <gtest/gtest.h>

#include <functional>

#include "core/plate/ring.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

using namespace fb;
using test::adult;
using test::atlas;
using test::sidePlate;

namespace moved_ink_test {

namespace {

MovedInk inkOf(const Patient& patient)
{
    return movedInk(sidePlate(), bodyMap(atlas(), View::ShoulderSide, patient).value(), patient);
}

double weightAt(const Ring& stroke, std::size_t j)
{
    const std::size_t out = (pieceCount(stroke) - 1) / 2;
    return distance(stroke.points[j], stroke.points[6 * out + 3 - j]);
}

}  // namespace

namespace {

// The plate with the ink that shows on every body, so that drawn and moved shapes pair up.
const Plate& steadyPlate()
{
    static const Plate plate = [] {
        Plate steady = sidePlate();
        for (Structure& structure : steady.structures)
            std::erase_if(structure.shapes, [](const InkShape& shape) {
                return shape.cue != Cue::Always || shape.opacity == 0.0;
            });
        return steady;
    }();
    return plate;
}

void forEachStroke(const Patient& patient,
                   const std::function<void(const Ring& drawn, const Ring& moved)>& visit)
{
    const BodyMap map = bodyMap(atlas(), View::ShoulderSide, patient).value();
    const MovedInk ink = movedInk(steadyPlate(), map, patient);
    std::size_t at = 0;
    for (const Structure& structure : steadyPlate().structures) {
        for (const InkShape& shape : structure.shapes) {
            ASSERT_LT(at, ink.shapes.size());
            if (shape.penStroke)
                visit(shape.rings.front(), ink.shapes[at].rings.front());
            ++at;
        }
    }
    EXPECT_EQ(at, ink.shapes.size());
}

}  // namespace

TEST(MovedInkTest, TheReferenceBodyIsDrawnAsItWasDrawn)
{
    const Patient reference = adult(Sex::Male, 172, 70);
    EXPECT_LT(distance(inkOf(reference).paper.low, sidePlate().paper.low), 1e-9);
    EXPECT_LT(distance(inkOf(reference).paper.high, sidePlate().paper.high), 1e-9);
    int strokes = 0;
    forEachStroke(reference, [&](const Ring& drawn, const Ring& moved) {
        ++strokes;
        for (std::size_t i = 0; i < drawn.points.size(); i += 3)
            EXPECT_LT(distance(drawn.points[i], moved.points[i]), 1e-9);
    });
    EXPECT_GT(strokes, 100);
}

TEST(MovedInkTest, ThePenKeepsItsWeight)
{
    for (const Patient& patient : {adult(Sex::Male, 195, 130), adult(Sex::Female, 150, 45)}) {
        forEachStroke(patient, [](const Ring& drawn, const Ring& moved) {
            const std::size_t out = (pieceCount(drawn) - 1) / 2;
            for (std::size_t j = 0; j <= 3 * out; ++j)
                EXPECT_NEAR(weightAt(moved, j), weightAt(drawn, j), 0.25 * weightAt(drawn, j) + 1e-9);
        });
    }
}

TEST(MovedInkTest, LeftIsTheMirrorOfRight)
{
    const MovedInk right = inkOf(adult(Sex::Female, 163, 71, Side::Right));
    const MovedInk left = inkOf(adult(Sex::Female, 163, 71, Side::Left));
    ASSERT_EQ(left.shapes.size(), right.shapes.size());
    for (std::size_t i = 0; i < right.shapes.size(); ++i)
        EXPECT_EQ(left.shapes[i].rings.front().points.front(),
                  mirrored(right.shapes[i].rings.front().points.front()));
    EXPECT_EQ(left.paper.low.x, -right.paper.high.x);
}

TEST(MovedInkTest, CuesFollowTheBody)
{
    Plate plate = sidePlate();
    Structure& structure = plate.structures.front();
    structure.shapes.resize(1);
    plate.structures.resize(1);
    const auto opacity = [&plate](Cue cue, double index, double age) {
        plate.structures.front().shapes.front().cue = cue;
        plate.structures.front().shapes.front().opacity = 1.0;
        const Patient patient = adult(Sex::Male, 172, test::weightOf(index, 172), Side::Right, age);
        const MovedInk ink = movedInk(plate, bodyMap(atlas(), View::ShoulderSide, patient).value(), patient);
        return ink.shapes.empty() ? 0.0 : ink.shapes.front().opacity;
    };
    EXPECT_GT(opacity(Cue::Lean, 20, 30), opacity(Cue::Lean, 33, 30));
    EXPECT_LT(opacity(Cue::Full, 27, 30), opacity(Cue::Full, 36, 30));
    EXPECT_EQ(opacity(Cue::Full, 24, 30), 0.0);
    EXPECT_EQ(opacity(Cue::Older, 24, 40), 0.0);
    EXPECT_GT(opacity(Cue::Older, 24, 80), 0.9);
    EXPECT_EQ(opacity(Cue::Always, 40, 80), 1.0);
}

TEST(MovedInkTest, AMarkBelongsToTheTopmostLimb)
{
    const Patient patient = adult(Sex::Male, 172, 70);
    const BodyMap map = bodyMap(atlas(), View::ShoulderSide, patient).value();
    EXPECT_EQ(limbAt(sidePlate(), map, Side::Right, {0, -12}), sidePlate().limbNamed("arm"));
    EXPECT_EQ(limbAt(sidePlate(), map, Side::Right, {9, -6}), sidePlate().limbNamed("trunk"));
    EXPECT_EQ(limbAt(sidePlate(), map, Side::Right, {13, -37.5}), sidePlate().limbNamed("forearm"));
    EXPECT_EQ(limbAt(sidePlate(), map, Side::Right, {-23, 19}), -1);
    EXPECT_EQ(limbAt(sidePlate(), map, Side::Left, {-9, -6}), sidePlate().limbNamed("trunk"));
}

}  // namespace moved_ink_test
