// A pen line keeps its weight: within a quarter of the drawn weight on any body.
#include <gtest/gtest.h>

#include <cmath>

#include "core/body/moved_ink.h"
#include "core/plate/ring.h"
#include "tests/property/sampling.h"

namespace fb::test::pen_weight_law_test {

namespace pen_weight_detail {

// The weight of the pen in the middle of a piece: how far apart the two sides are there, square
// to the way the line runs.
double weightAt(const Ring& ring, std::size_t index)
{
    const std::size_t out = (pieceCount(ring) - 1) / 2;
    const Cubic one = piece(ring, index);
    const Cubic other = piece(ring, 2 * out - index);
    const Point along = one.at(0.6) + other.at(0.4) - one.at(0.4) - other.at(0.6);
    return std::abs(cross(one.at(0.5) - other.at(0.5), along)) / length(along);
}

double heaviest(const Ring& ring)
{
    double most = 0.0;
    for (std::size_t i = 0; i < (pieceCount(ring) - 1) / 2; ++i)
        most = std::max(most, weightAt(ring, i));
    return most;
}

// The plate with nothing but its pen strokes, drawn on every body.
Plate strokesOnly()
{
    Plate plate = sidePlate();
    for (Structure& structure : plate.structures) {
        std::erase_if(structure.shapes, [](const InkShape& shape) { return !shape.penStroke; });
        for (InkShape& shape : structure.shapes)
            shape.cue = Cue::Always;
    }
    return plate;
}

std::vector<Ring> ringsOf(const Plate& plate)
{
    std::vector<Ring> rings;
    for (const Structure& structure : plate.structures) {
        for (const InkShape& shape : structure.shapes)
            rings.push_back(shape.rings.front());
    }
    return rings;
}

struct Spread {
    double least = 1.0;
    double most = 1.0;
    int structure = -1;
};

// Every piece that carries at least a quarter of its line's weight; the fine ends are left out.
void widen(Spread& spread, const Ring& drawn, const MovedShape& moved)
{
    const double full = heaviest(drawn);
    for (std::size_t i = 0; i < (pieceCount(drawn) - 1) / 2; ++i) {
        const double weight = weightAt(drawn, i);
        if (weight < 0.25 * full)
            continue;
        const double ratio = weightAt(moved.rings.front(), i) / weight;
        if (ratio < spread.least || ratio > spread.most)
            spread.structure = moved.structure;
        spread.least = std::min(spread.least, ratio);
        spread.most = std::max(spread.most, ratio);
    }
}

}  // namespace pen_weight_detail

TEST(PenWeightLaw, LinesStayWithinAQuarterOfTheirDrawnWeightOnAThousandBodies)
{
    using namespace pen_weight_detail;
    const Plate plate = strokesOnly();
    const std::vector<Ring> drawn = ringsOf(plate);
    ASSERT_GT(drawn.size(), 200U);
    constexpr std::size_t kStep = 7;  // every body looks at a seventh of the lines, in turn
    for (int number = 0; number < rounds(1'000); ++number) {
        const Patient patient = sampledPatient(79, number);
        const MovedInk ink = movedInk(plate, bodyMap(atlas(), View::ShoulderSide, patient).value(), patient);
        ASSERT_EQ(ink.shapes.size(), drawn.size());
        Spread spread;
        for (std::size_t i = static_cast<std::size_t>(number) % kStep; i < drawn.size(); i += kStep)
            widen(spread, drawn[i], ink.shapes[i]);
        const auto& id = plate.structures[static_cast<std::size_t>(std::max(0, spread.structure))].id;
        ASSERT_GE(spread.least, 0.75) << id << ", seed 79, request " << number << ": " << shown(patient);
        ASSERT_LE(spread.most, 1.25) << id << ", seed 79, request " << number << ": " << shown(patient);
    }
}

}  // namespace fb::test::pen_weight_law_test
