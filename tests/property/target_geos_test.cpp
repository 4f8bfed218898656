// Ten thousand random marks over real targets: every region and hazard judged by GEOS.
#include <gtest/gtest.h>

#include "core/grade/grade.h"
#include "tests/property/geos_oracle.h"
#include "tests/property/sampling.h"

namespace fb::test {

namespace target_geos_detail {

constexpr double kAgreed = 1e-9;  // cm

struct NamedPolygon {
    std::string name;
    Polygon polygon;
};

std::vector<NamedPolygon> polygonsOf(const Target& target)
{
    std::vector<NamedPolygon> all{{"region", target.region}, {"region on the skin", target.regionSkin}};
    for (const Hazard& hazard : target.hazards) {
        all.push_back({std::string(wordOf(hazard.code)) + " on the skin", hazard.skin});
        all.push_back({std::string(wordOf(hazard.code)), hazard.plane});
    }
    return all;
}

Target sampledTarget(int number)
{
    return targetOf(sampledPatient(20, number),
                    kConventions[static_cast<std::size_t>(number) % kConventions.size()]);
}

// Marks about the shoulder and the arm, in the picture as on the skin.
constexpr Bounds kMarks{{-14.0, -38.0}, {14.0, 6.0}};

}  // namespace target_geos_detail

TEST(TargetAgainstGeos, EveryPolygonIsSimple)
{
    using namespace target_geos_detail;
    for (int number = 0; number < rounds(500); ++number) {
        for (const NamedPolygon& one : polygonsOf(sampledTarget(number)))
            ASSERT_TRUE(GeosOracle(one.polygon).isValid()) << one.name << ", request " << number;
    }
}

TEST(TargetAgainstGeos, TenThousandMarksAgreeOnContainmentAndDistance)
{
    using namespace target_geos_detail;
    SeedStream stream(2);
    for (int number = 0; number < rounds(200); ++number) {
        std::vector<Point> marks;
        for (int i = 0; i < 50; ++i)
            marks.push_back(pointIn(stream, kMarks));
        for (const NamedPolygon& one : polygonsOf(sampledTarget(number))) {
            const GeosOracle oracle(one.polygon);
            for (const Point mark : marks) {
                ASSERT_LE(geosDisagreement(one.polygon, oracle, mark), kAgreed)
                    << one.name << ", request " << number << ", mark " << mark.x << "," << mark.y;
                ASSERT_TRUE(geosAgreesOnContainment(one.polygon, oracle, mark))
                    << one.name << ", request " << number << ", mark " << mark.x << "," << mark.y;
            }
        }
    }
}

TEST(TargetAgainstGeos, GradesSayInsideWhereGeosDoes)
{
    using namespace target_geos_detail;
    SeedStream stream(3);
    int inside = 0;
    for (int number = 0; number < rounds(200); ++number) {
        const Target target = sampledTarget(number);
        const GeosOracle oracle(target.regionSkin);
        const Bounds near{target.regionSkin.bounds().low - Point{2.0, 2.0},
                          target.regionSkin.bounds().high + Point{2.0, 2.0}};
        for (int i = 0; i < 50; ++i) {
            const Point viewer = target.toViewer(pointIn(stream, near));
            const Grade grade = gradeMark(target, defaultPolicy(), viewer, MarkedLimb::Arm);
            const Point skin = target.toSkin(viewer);
            const double away = oracle.distanceToBorder(skin);
            ASSERT_EQ(grade.inside, oracle.covers(skin) || away <= kBorderTolerance) << "request " << number;
            ASSERT_NEAR(grade.distanceToBorder.value(), grade.inside ? -away : away, 1e-6)
                << "request " << number;
            inside += grade.inside;
        }
    }
    EXPECT_GT(inside, rounds(1000));
}

}  // namespace fb::test
