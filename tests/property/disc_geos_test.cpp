// Discs taken away from polygons, judged by GEOS: the difference of the polygon and a circle of the
// same corners.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/geometry/disc.h"
#include "tests/property/geos_oracle.h"
#include "tests/property/sampling.h"

namespace fb::test::disc_geos_test {

namespace disc_geos_detail {

// Between a circle and its 72 chords there is a sliver of this share of the radius.
const double kSagitta = 1.0 - std::cos(std::numbers::pi / kDiscCorners);

double area(const GEOSGeometry* geometry)
{
    double size = 0.0;
    GEOSArea_r(geos(), geometry, &size);
    return size;
}

// Star-shaped about its middle; convex when all radii are one.
Polygon randomPolygon(SeedStream& stream, bool convex)
{
    const int count = 3 + stream.below(12);
    const double radius = stream.between(1.0, 10.0);
    std::vector<Point> corners;
    for (int i = 0; i < count; ++i) {
        const double turn = 2.0 * std::numbers::pi * (i + stream.between(0.0, 0.9)) / count;
        const double reach = convex ? radius : radius * stream.between(0.3, 1.0);
        corners.push_back({reach * std::cos(turn), reach * std::sin(turn)});
    }
    return Polygon::make(std::move(corners)).value();
}

Disc randomDisc(SeedStream& stream)
{
    return {pointIn(stream, {{-12.0, -12.0}, {12.0, 12.0}}), stream.between(0.3, 9.0)};
}

struct Parts {
    int count = 0;
    double largest = 0.0;
    bool holed = false;
};

Parts partsOf(const GEOSGeometry* geometry)
{
    Parts parts;
    const int n = GEOSGetNumGeometries_r(geos(), geometry);
    for (int i = 0; i < n; ++i) {
        const GEOSGeometry* part = GEOSGetGeometryN_r(geos(), geometry, i);
        if (area(part) < 1e-9)
            continue;
        ++parts.count;
        parts.largest = std::max(parts.largest, area(part));
        parts.holed = parts.holed || GEOSGetNumInteriorRings_r(geos(), part) > 0;
    }
    return parts;
}

// What the disc cuts off, between circles that every chord of it lies outside or inside of.
struct Cut {
    GeosGeometry inner, outer;  // the polygon less the larger circle, and less the smaller
};

GeosGeometry circle(const Disc& disc, double grown)
{
    return geosPolygon(discPolygon({disc.centre, disc.radius * grown}).corners());
}

Cut cutsOf(const Polygon& polygon, const Disc& disc)
{
    const GeosOracle whole(polygon);
    const GeosGeometry large = circle(disc, 1.0 / (1.0 - kSagitta) + 1e-9);
    const GeosGeometry small = circle(disc, 1.0 - kSagitta);
    return {GeosGeometry(GEOSDifference_r(geos(), whole.area(), large.get())),
            GeosGeometry(GEOSDifference_r(geos(), whole.area(), small.get()))};
}

}  // namespace disc_geos_detail

TEST(DiscAgainstGeos, DiscIsACircleOfItsCorners)
{
    using namespace disc_geos_detail;
    SeedStream stream(151);
    for (int i = 0; i < rounds(1'000); ++i) {
        const Disc disc = randomDisc(stream);
        const GeosGeometry centre = geosPoint(disc.centre);
        const GeosGeometry buffered(GEOSBuffer_r(geos(), centre.get(), disc.radius, kDiscCorners / 4));
        ASSERT_NEAR(discPolygon(disc).area(), area(buffered.get()), 1e-9);
        ASSERT_LE(geosDifference(GeosOracle(discPolygon(disc)).area(), buffered.get()), 1e-9);
    }
}

TEST(DiscAgainstGeos, LargestPieceOfWhatIsLeftIsTheDifference)
{
    using namespace disc_geos_detail;
    int cut = 0;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(10'000)); ++seed) {
        SCOPED_TRACE(seed);
        SeedStream stream(seed + 8'000'000);
        const Polygon polygon = randomPolygon(stream, seed % 2 == 0);
        const Disc disc = randomDisc(stream);
        const auto left = without(polygon, disc);
        const Cut geosCut = cutsOf(polygon, disc);
        const Parts least = partsOf(geosCut.inner.get());
        const Parts most = partsOf(geosCut.outer.get());
        if (most.holed || least.holed) {
            ASSERT_EQ(left, std::optional(polygon)) << "a disc inside is not cut out";
            continue;
        }
        const double size = left ? left->area() : 0.0;
        ASSERT_GE(size, least.largest - 1e-9);
        ASSERT_LE(size, most.largest + 1e-9);
        if (!left)
            continue;
        ASSERT_TRUE(GeosOracle(*left).isValid());
        cut += size < polygon.area() - 1e-6;
    }
    EXPECT_GT(cut, rounds(10'000) / 4);
}

TEST(DiscAgainstGeos, WhatIsLeftIsOfThePolygonAndOutsideTheDisc)
{
    using namespace disc_geos_detail;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(2'000)); ++seed) {
        SCOPED_TRACE(seed);
        SeedStream stream(seed + 9'000'000);
        const Polygon polygon = randomPolygon(stream, seed % 2 == 0);
        const Disc disc = randomDisc(stream);
        const auto left = without(polygon, disc);
        if (!left || left == polygon)
            continue;
        const GeosOracle whole(polygon);
        for (int i = 0; i < 20; ++i) {
            const Point p = pointIn(stream, polygon.bounds());
            if (left->signedDistance(p) < -1e-6) {
                ASSERT_TRUE(whole.covers(p)) << p.x << "," << p.y;
                ASSERT_GE(distance(p, disc.centre), disc.radius * (1.0 - kSagitta) - 1e-9)
                    << p.x << "," << p.y;
            }
        }
    }
}

TEST(DiscAgainstGeos, CornersOnTheCircleDoNotUpsetIt)
{
    // A square whose corner, side or middle touches the circle.
    using namespace disc_geos_detail;
    const Polygon square = Polygon::rectangle(0.0, 4.0, 0.0, 4.0);
    for (const Disc& disc :
         {Disc{{-1.0, 0.0}, 1.0}, Disc{{-2.0, 2.0}, 2.0}, Disc{{0.0, 0.0}, 4.0}, Disc{{2.0, -2.0}, 2.0},
          Disc{{4.0, 4.0}, std::sqrt(32.0)}, Disc{{2.0, 2.0}, std::sqrt(8.0)}, Disc{{5.0, 2.0}, 1.0}}) {
        const auto left = without(square, disc);
        const Cut geosCut = cutsOf(square, disc);
        const double size = left ? left->area() : 0.0;
        EXPECT_GE(size, partsOf(geosCut.inner.get()).largest - 1e-9) << disc.centre.x << "," << disc.centre.y;
        EXPECT_LE(size, partsOf(geosCut.outer.get()).largest + 1e-9) << disc.centre.x << "," << disc.centre.y;
    }
}

}  // namespace fb::test::disc_geos_test
