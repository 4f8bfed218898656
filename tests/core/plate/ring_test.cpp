#include "core/plate/ring.h"

#include <gtest/gtest.h>

#include "core/plate/path_reader.h"

using namespace fb;

namespace ring_test {

namespace {

Ring square() { return ringsFrom("M0 0L10 0L10 10L0 10Z")->front(); }

}  // namespace

TEST(RingTest, CuttingKeepsTheCurveAndShortensThePieces)
{
    const Ring whole = ringsFrom("M0 0C0 8 8 8 8 0Z")->front();
    const Ring parts = cut(whole, 1.0);
    EXPECT_GT(pieceCount(parts), pieceCount(whole));
    for (std::size_t i = 0; i < pieceCount(parts); ++i)
        EXPECT_LE(piece(parts, i).span(), 1.2);
    EXPECT_LT(distance(piece(parts, 0).a, {0, 0}), 1e-12);
    for (const Point p : flattened(parts)) {
        double nearest = 1e9;
        for (const Point q : flattened(whole, 400))
            nearest = std::min(nearest, distance(p, q));
        EXPECT_LT(nearest, 0.05);
    }
}

TEST(RingTest, CoversByEvenOdd)
{
    EXPECT_TRUE(covers({square()}, {5, 5}));
    EXPECT_FALSE(covers({square()}, {15, 5}));
    const Ring hole = ringsFrom("M4 4L6 4L6 6L4 6Z")->front();
    EXPECT_FALSE(covers({square(), hole}, {5, 5}));
    EXPECT_TRUE(covers({square(), hole}, {3, 5}));
}

TEST(RingTest, CoversIsTheEvenOddTestOfTheChords)
{
    const std::vector<Ring> rings =
        *ringsFrom("M0 0C9 -6 3 12 8 8C14 2 -4 9 -3 4C-8 0 -2 1 0 0Z M1 2L5 2L3 7Z");
    const auto plainly = [&](Point p) {
        bool inside = false;
        for (const Ring& ring : rings) {
            Point a = flattened(ring).back();
            for (const Point b : flattened(ring)) {
                if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
                    inside = !inside;
                a = b;
            }
        }
        return inside;
    };
    int covered = 0;
    for (double y = -4.0; y < 12.0; y += 0.25) {
        for (double x = -9.0; x < 15.0; x += 0.25) {
            EXPECT_EQ(covers(rings, {x, y}), plainly({x, y})) << x << ' ' << y;
            covered += covers(rings, {x, y}) ? 1 : 0;
        }
    }
    EXPECT_GT(covered, 100);
}

TEST(RingTest, AnOpenChainKeepsItsLastPoint)
{
    const Ring open = ringsFrom("M0 0L3 0")->front();
    EXPECT_EQ(flattened(open, 2).back(), (Point{3, 0}));
    EXPECT_EQ(flattened(square(), 2).size(), 8U);
}

}  // namespace ring_test
