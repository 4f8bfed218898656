// Ten thousand random marks over real targets: every region and hazard judged by GEOS.
#include <gtest/gtest.h>

#include "core/grade/grade.h"
#include "tests/property/geos_oracle.h"
#include "tests/property/sampling.h"

namespace fb::test::target_geos_test {

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

// Every convention in every view of its site, in turn.
Target sampledTarget(int number)
{
    static const std::vector<Shown> all = everyShown();
    return targetIn(sampledPatient(20, number), all[static_cast<std::size_t>(number) % all.size()]);
}

// Marks about the site, in the picture as on the skin.
Bounds marksFor(const Target& target)
{
    if (target.site == Site::Deltoid)
        return {{-14.0, -38.0}, {14.0, 6.0}};
    return {{-45.0, -45.0}, {45.0, 45.0}};
}

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
        const Target target = sampledTarget(number);
        std::vector<Point> marks;
        for (int i = 0; i < 50; ++i)
            marks.push_back(pointIn(stream, marksFor(target)));
        for (const NamedPolygon& one : polygonsOf(target)) {
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

}  // namespace fb::test::target_geos_test
