// Laws of skin coordinates on sampled arms.
#include <gtest/gtest.h>

#include <numbers>

#include "tests/property/sampling.h"

namespace fb::test::cross_section_law_test {

namespace cross_law_detail {

CrossSection sampledSection(int number)
{
    return *targetOf(sampledPatient(83, number), Convention::DeltoidStrip).surface.arm();
}

constexpr Bounds kAround{{-9.0, -30.0}, {9.0, 1.5}};

}  // namespace cross_law_detail

TEST(CrossSectionLaw, TurnOfAPlaceIsTheSameFromThePictureAsFromTheSkin)
{
    using namespace cross_law_detail;
    SeedStream stream(83);
    for (int number = 0; number < rounds(500); ++number) {
        const CrossSection section = sampledSection(number);
        for (int i = 0; i < 20; ++i) {
            const Point p = pointIn(stream, kAround);
            // Where the outline turns away a hair of skin is a wide angle: compare where it is seen.
            ASSERT_NEAR(std::sin(section.turnAt(p)), std::sin(section.turnOf(section.toSkin(p))), 1e-9)
                << p.x << "," << p.y << ", seed 83, request " << number;
        }
    }
}

TEST(CrossSectionLaw, SkinRunsOnWithThePictureAndIsNothingOnTheMidLateralLine)
{
    using namespace cross_law_detail;
    SeedStream stream(84);
    for (int number = 0; number < rounds(500); ++number) {
        const CrossSection section = sampledSection(number);
        const double y = stream.between(-30.0, 1.5);
        ASSERT_EQ(section.toSkin({0.0, y}), (Point{0.0, y}));
        double before = section.toSkin({-10.0, y}).x;
        for (double x = -9.9; x < 10.0; x += 0.1) {
            const double s = section.toSkin({x, y}).x;
            ASSERT_GT(s, before) << x << ", seed 84, request " << number;
            before = s;
        }
    }
}

TEST(CrossSectionLaw, SideViewShowsAPlaceWhereTheFrameHasIt)
{
    using namespace cross_law_detail;
    SeedStream stream(85);
    for (int number = 0; number < rounds(500); ++number) {
        const CrossSection section = sampledSection(number);
        for (int i = 0; i < 20; ++i) {
            const Point p = pointIn(stream, {{-2.5, -30.0}, {2.5, 1.0}});
            ASSERT_NEAR(section.seenAt(section.turnAt(p), p.y, {0.0, 1.0}), p.x, 1e-12)
                << p.x << "," << p.y << ", seed 85, request " << number;
        }
    }
}

}  // namespace fb::test::cross_section_law_test
