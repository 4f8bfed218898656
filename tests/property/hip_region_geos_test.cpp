// Regions of hip and thigh built anew by GEOS from the target's own landmarks: what is left of the
// triangle of the fingers, or of the medians' disc, clear of bone; and the band on the thigh.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/geometry/disc.h"
#include "core/site/ventrogluteal.h"
#include "tests/property/geos_oracle.h"
#include "tests/property/sampling.h"

namespace fb::test::hip_region_geos_test {

namespace hip_region_detail {

constexpr double kFar = 100.0;

// Right-sided: the hip is built in the frame of a right side.
Target hipOf(int number, Convention convention)
{
    return targetIn(sampledPatient(161, number).withSide(Side::Right), {convention, View::HipSide});
}

std::vector<Point> crestOf(const Target& target)
{
    for (const Step& step : target.construction) {
        if (step.code == StepCode::FeelCrest)
            return step.points;
    }
    return {};
}

GeosGeometry lineOf(const std::vector<Point>& points)
{
    GEOSCoordSequence* chain = GEOSCoordSeq_create_r(geos(), static_cast<unsigned>(points.size()), 2);
    for (unsigned i = 0; i < points.size(); ++i)
        GEOSCoordSeq_setXY_r(geos(), chain, i, points[i].x, points[i].y);
    return GeosGeometry(GEOSGeom_createLineString_r(geos(), chain));
}

GeosGeometry buffered(const GEOSGeometry* from, double margin)
{
    return GeosGeometry(GEOSBuffer_r(geos(), from, margin, 64));
}

GeosGeometry less(const GEOSGeometry* a, const GEOSGeometry* b)
{
    return GeosGeometry(GEOSDifference_r(geos(), a, b));
}

double area(const GEOSGeometry* geometry)
{
    double size = 0.0;
    GEOSArea_r(geos(), geometry, &size);
    return size;
}

// Bone and its margins: everything beyond the crest, the crest's band, spine and trochanter.
GeosGeometry boneAndMargins(const Target& target)
{
    const double margin = defaultPolicy().value(PolicyKey::VgBoneMargin) * target.scale;
    const double round = defaultPolicy().value(PolicyKey::VgTrochanterMargin) * target.scale;
    const std::vector<Point> crest = crestOf(target);
    std::vector<Point> beyond = crest;
    beyond.push_back({crest.back().x, -kFar});
    beyond.push_back({-kFar, -kFar});
    beyond.push_back({-kFar, kFar});
    beyond.push_back({crest.front().x, kFar});
    GeosGeometry all = geosPolygon(beyond);
    const auto join = [&all](const GeosGeometry& other) {
        all = GeosGeometry(GEOSUnion_r(geos(), all.get(), other.get()));
    };
    join(buffered(lineOf(crest).get(), margin));
    join(buffered(geosPoint(target.landmarks.at("asis")).get(), margin));
    join(buffered(geosPoint(target.landmarks.at("greater_trochanter")).get(), round));
    return all;
}

// The triangle less half a finger's width along either finger.
GeosGeometry fingersOf(const HandPose& pose)
{
    const double half = defaultPolicy().value(PolicyKey::DeltoidFingerWidth) / 2.0;
    const GeosGeometry triangle = geosPolygon({pose.fork, pose.indexTip, pose.middleTip});
    const auto finger = [&](Point tip) {
        const Point way = (tip - pose.fork) * (kFar / distance(tip, pose.fork));
        return buffered(lineOf({pose.fork - way, pose.fork + way}).get(), half);
    };
    return less(less(triangle.get(), finger(pose.indexTip).get()).get(), finger(pose.middleTip).get());
}

}  // namespace hip_region_detail

TEST(HipRegionAgainstGeos, TriangleOfTheFingersIsClearOfBoneAsGeosHasIt)
{
    // A tenth of a square centimetre: what the drawn crest's hair-thin dents hold.
    using namespace hip_region_detail;
    for (int number = 0; number < rounds(2'000); ++number) {
        const Target target = hipOf(number, Convention::VentroglutealHand);
        const GeosGeometry expected = less(fingersOf(*target.hand).get(), boneAndMargins(target).get());
        ASSERT_LE(geosDifference(GeosOracle(target.region).area(), expected.get()), 0.1)
            << target.region.area() << " against " << area(expected.get()) << ", seed 161, request "
            << number;
    }
}

TEST(HipRegionAgainstGeos, MediansDiscIsClearOfBoneAsGeosHasIt)
{
    // A buffer's round is drawn in chords of GEOS's own: a hundredth of a square centimetre.
    using namespace hip_region_detail;
    for (int number = 0; number < rounds(2'000); ++number) {
        const Target target = hipOf(number, Convention::VentroglutealMedians);
        const Point crossing =
            mediansCrossing(target.landmarks.at("greater_trochanter"), target.landmarks.at("iliac_tubercle"),
                            target.landmarks.at("asis"));
        const double radius = defaultPolicy().value(PolicyKey::VgMediansRadius) * target.scale;
        const GeosGeometry disc = geosPolygon(discPolygon({crossing, radius}).corners());
        const GeosGeometry expected = less(disc.get(), boneAndMargins(target).get());
        ASSERT_LE(geosDifference(GeosOracle(target.region).area(), expected.get()), 0.02)
            << target.region.area() << " against " << area(expected.get()) << ", seed 161, request "
            << number;
    }
}

TEST(HipRegionAgainstGeos, SkinOfTheHipIsItsPlaneTurned)
{
    using namespace hip_region_detail;
    for (int number = 0; number < rounds(500); ++number) {
        const Target target = hipOf(number, conventionInTurn(Site::Ventrogluteal, number));
        ASSERT_FALSE(target.surface.isSkin());
        ASSERT_NEAR(target.regionSkin.area(), target.region.area(), 1e-9);
        for (const Point p : target.region.corners())
            ASSERT_LE(std::abs(target.regionSkin.signedDistance({p.y, -p.x})), 1e-9) << number;
    }
}

TEST(HipRegionAgainstGeos, CrestIsOneConvexDomeOnEveryBody)
{
    // What lies in a dent of the crest would be cut off by the line along its neighbour.
    using namespace hip_region_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        const std::vector<Point> crest = crestOf(hipOf(number, Convention::VentroglutealMedians));
        const GeosGeometry dome = geosPolygon(crest);
        const GeosGeometry hull(GEOSConvexHull_r(geos(), dome.get()));
        ASSERT_LE(area(hull.get()) - area(dome.get()), 0.1) << "seed 161, request " << number;
    }
}

TEST(HipRegionAgainstGeos, BandOfTheThighIsAsLongAndAsWideAsItsSkin)
{
    // On the skin the region is a band between two arcs; its area is the integral of the width
    // between the two angles, found here by Simpson's rule on the limb itself.
    using namespace hip_region_detail;
    for (int number = 0; number < rounds(500); ++number) {
        for (const View view : {View::ThighSide, View::ThighFront}) {
            const Convention convention = conventionInTurn(Site::VastusLateralis, number);
            const Target target = targetIn(sampledPatient(162, number), {convention, view});
            ASSERT_TRUE(GeosOracle(target.regionSkin).isValid());
            ASSERT_TRUE(GeosOracle(target.region).isValid());
            const RoundLimb& limb = target.surface.thigh()->limb;
            const Bounds box = target.regionSkin.bounds();
            const auto width = [&](double y) {
                return limb.arcOf((90.0 - 25.0) * std::numbers::pi / 180.0, y) - limb.arcOf(0.0, y);
            };
            constexpr int kSteps = 64;
            const double step = (box.high.y - box.low.y) / kSteps;
            double sum = 0.0;
            for (int i = 0; i <= kSteps; ++i) {
                const double weight = i == 0 || i == kSteps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
                sum += weight * width(box.low.y + step * i);
            }
            const double expected = sum * step / 3.0;
            ASSERT_NEAR(area(GeosOracle(target.regionSkin).area()), expected, 0.005 * expected)
                << wordOf(view) << ", seed 162, request " << number;
        }
    }
}

TEST(HipRegionAgainstGeos, BandOfTheThighHoldsWhatLiesBetweenItsAnglesAndHeights)
{
    using namespace hip_region_detail;
    SeedStream stream(163);
    int inside = 0;
    for (int number = 0; number < rounds(500); ++number) {
        const Target target = targetOf(sampledPatient(163, number), Convention::VastusThirds);
        const RoundLimb& limb = target.surface.thigh()->limb;
        const GeosOracle oracle(target.regionSkin);
        for (int i = 0; i < 40; ++i) {
            const double degrees = stream.between(0.0, 115.0);
            const double share = stream.between(0.2, 0.8);
            const double y = -share * target.thighLength.value();
            const Point skin{limb.arcOf((90.0 - degrees) * std::numbers::pi / 180.0, y), y};
            if (oracle.distanceToBorder(skin) < 0.05)
                continue;  // the border's chords, eight a side
            const bool within = degrees > 25.0 && degrees < 90.0 && share > 1.0 / 3.0 && share < 2.0 / 3.0;
            ASSERT_EQ(oracle.covers(skin), within)
                << degrees << " degrees at " << share << ", seed 163, request " << number;
            inside += within;
        }
    }
    EXPECT_GT(inside, rounds(500));
}

}  // namespace fb::test::hip_region_geos_test
