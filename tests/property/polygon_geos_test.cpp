// Containment, signed distance and clipping of random polygons, judged by GEOS.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/geometry/clip.h"
#include "core/geometry/polygon.h"
#include "tests/property/geos_oracle.h"
#include "tests/property/sampling.h"

namespace fb::test::polygon_geos_test {

namespace polygon_geos_detail {

constexpr double kAgreed = 1e-9;  // cm, cm2

// Corners in order of their angle about the middle: simple whatever the radii; convex when the
// radius is the same for all.
Polygon randomPolygon(SeedStream& stream, bool convex)
{
    const int count = 3 + stream.below(30);
    const Point middle{stream.between(-20.0, 20.0), stream.between(-30.0, 10.0)};
    const double radius = stream.between(0.5, 12.0);
    std::vector<Point> corners;
    for (int i = 0; i < count; ++i) {
        const double turn = 2.0 * std::numbers::pi * (i + stream.between(0.0, 0.9)) / count;
        const double reach = convex ? radius : radius * stream.between(0.15, 1.0);
        corners.push_back(middle + Point{reach * std::cos(turn), reach * std::sin(turn)});
    }
    return Polygon::make(std::move(corners)).value();
}

Bounds roomy(const Polygon& polygon)
{
    const Bounds b = polygon.bounds();
    return {b.low - Point{2.0, 2.0}, b.high + Point{2.0, 2.0}};
}

Point onBorder(SeedStream& stream, const Polygon& polygon)
{
    const auto& corners = polygon.corners();
    const auto i = static_cast<std::size_t>(stream.below(static_cast<int>(corners.size())));
    return lerp(corners[i], corners[(i + 1) % corners.size()], stream.unit());
}

HalfPlane randomCut(SeedStream& stream, const Polygon& polygon)
{
    const double turn = stream.between(0.0, 2.0 * std::numbers::pi);
    const Point normal = Point{std::cos(turn), std::sin(turn)} * stream.between(0.5, 2.0);
    return {normal, dot(normal, pointIn(stream, roomy(polygon)))};
}

// The half-plane as a square of 400 cm, as GEOS needs it.
GeosGeometry geosHalfPlane(const HalfPlane& keep)
{
    constexpr double kFar = 400.0;
    const double size = length(keep.normal);
    const Point out = keep.normal * (1.0 / size);
    const Point along{-out.y, out.x};
    const Point foot = out * (keep.offset / size);
    return geosPolygon({foot + along * kFar, foot - along * kFar, foot - along * kFar - out * (2.0 * kFar),
                        foot + along * kFar - out * (2.0 * kFar)});
}

double geosArea(const GEOSGeometry* geometry)
{
    double area = 0.0;
    GEOSArea_r(geos(), geometry, &area);
    return area;
}

}  // namespace polygon_geos_detail

TEST(PolygonAgainstGeos, ContainmentAndSignedDistanceAgreeOnRandomPolygons)
{
    using namespace polygon_geos_detail;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(400)); ++seed) {
        SCOPED_TRACE(seed);
        SeedStream stream(seed);
        const Polygon polygon = randomPolygon(stream, seed % 2 == 0);
        const GeosOracle oracle(polygon);
        ASSERT_TRUE(oracle.isValid());
        for (int i = 0; i < 50; ++i) {
            const Point p = pointIn(stream, roomy(polygon));
            ASSERT_LE(geosDisagreement(polygon, oracle, p), kAgreed) << p.x << "," << p.y;
            ASSERT_TRUE(geosAgreesOnContainment(polygon, oracle, p)) << p.x << "," << p.y;
        }
    }
}

TEST(PolygonAgainstGeos, BorderPointsCountAsInsideAtNoDistance)
{
    using namespace polygon_geos_detail;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(400)); ++seed) {
        SCOPED_TRACE(seed);
        SeedStream stream(seed + 1'000'000);
        const Polygon polygon = randomPolygon(stream, seed % 2 == 0);
        const GeosOracle oracle(polygon);
        for (int i = 0; i < 25; ++i) {
            const Point p = onBorder(stream, polygon);
            ASSERT_LE(oracle.distanceToBorder(p), 1e-12);
            ASSERT_TRUE(polygon.contains(p));
            ASSERT_EQ(polygon.signedDistance(p), 0.0);
        }
        for (const Point corner : polygon.corners())
            ASSERT_TRUE(polygon.contains(corner));
    }
}

TEST(PolygonAgainstGeos, NearestBorderPointIsOnTheBorderAtTheDistance)
{
    using namespace polygon_geos_detail;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(200)); ++seed) {
        SCOPED_TRACE(seed);
        SeedStream stream(seed + 2'000'000);
        const Polygon polygon = randomPolygon(stream, seed % 2 == 0);
        const GeosOracle oracle(polygon);
        for (int i = 0; i < 20; ++i) {
            const Point p = pointIn(stream, roomy(polygon));
            const Point nearest = polygon.nearestBorderPoint(p);
            ASSERT_LE(oracle.distanceToBorder(nearest), kAgreed);
            ASSERT_NEAR(distance(p, nearest), oracle.distanceToBorder(p), kAgreed);
        }
    }
}

TEST(PolygonAgainstGeos, AreaAndCentroidAgree)
{
    using namespace polygon_geos_detail;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(1000)); ++seed) {
        SCOPED_TRACE(seed);
        SeedStream stream(seed + 3'000'000);
        const Polygon polygon = randomPolygon(stream, seed % 2 == 0);
        const GeosOracle oracle(polygon);
        const GeosGeometry centre(GEOSGetCentroid_r(geos(), oracle.area()));
        Point expected;
        GEOSGeomGetX_r(geos(), centre.get(), &expected.x);
        GEOSGeomGetY_r(geos(), centre.get(), &expected.y);
        ASSERT_NEAR(polygon.area(), geosArea(oracle.area()), kAgreed);
        ASSERT_LE(distance(polygon.centroid(), expected), kAgreed);
    }
}

TEST(ClipAgainstGeos, ConvexPolygonsAreCutAlike)
{
    using namespace polygon_geos_detail;
    int cut = 0;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(10'000)); ++seed) {
        SCOPED_TRACE(seed);
        SeedStream stream(seed + 4'000'000);
        const Polygon polygon = randomPolygon(stream, true);
        const HalfPlane keep = randomCut(stream, polygon);
        const GeosGeometry half = geosHalfPlane(keep);
        const GeosGeometry expected(GEOSIntersection_r(geos(), GeosOracle(polygon).area(), half.get()));
        const auto part = clipped(polygon, keep);
        if (!part) {
            ASSERT_LE(geosArea(expected.get()), kAgreed);
            continue;
        }
        ++cut;
        ASSERT_LE(geosDifference(GeosOracle(*part).area(), expected.get()), kAgreed);
    }
    EXPECT_GT(cut, rounds(10'000) / 2);
}

TEST(ClipAgainstGeos, AreaAndContainmentOfBentPolygonsStayRight)
{
    using namespace polygon_geos_detail;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(2'000)); ++seed) {
        SCOPED_TRACE(seed);
        SeedStream stream(seed + 5'000'000);
        const Polygon polygon = randomPolygon(stream, false);
        const HalfPlane keep = randomCut(stream, polygon);
        const GeosOracle whole(polygon);
        const GeosGeometry half = geosHalfPlane(keep);
        const GeosGeometry expected(GEOSIntersection_r(geos(), whole.area(), half.get()));
        const auto part = clipped(polygon, keep);
        ASSERT_NEAR(part ? part->area() : 0.0, geosArea(expected.get()), kAgreed);
        for (int i = 0; part && i < 20; ++i) {
            const Point p = pointIn(stream, roomy(polygon));
            const double beyond = dot(keep.normal, p) - keep.offset;
            if (std::abs(beyond) > 1e-6 && whole.distanceToBorder(p) > 1e-6) {
                ASSERT_EQ(part->contains(p), whole.covers(p) && beyond < 0.0) << p.x << "," << p.y;
            }
        }
    }
}

}  // namespace fb::test::polygon_geos_test
