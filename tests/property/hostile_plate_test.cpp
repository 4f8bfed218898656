// Plates that are well formed and would still eat the machine: found by the fuzzer.
#include <gtest/gtest.h>

#include "tests/property/sampling.h"

namespace fb::test::hostile_plate_test {

namespace hostile_plate_detail {

// The shipped side plate with one more shape on the skin.
std::string plateWith(const std::string& path)
{
    std::string svg = sourceFile("resources/plates/shoulder-side.svg");
    const std::string group = "<g id=\"skin.arm\">";
    svg.insert(svg.find(group) + group.size(), "<path d=\"" + path + "\" fill=\"#efd6be\"/>");
    return svg;
}

std::optional<Problem> problemOf(const std::string& svg)
{
    const auto plate = parsePlate(svg, "hostile.svg");
    return plate ? std::nullopt : std::optional(plate.error().problem);
}

}  // namespace hostile_plate_detail

TEST(HostilePlate, OneMoreShapeOnThePaperIsWelcome)
{
    using namespace hostile_plate_detail;
    EXPECT_EQ(problemOf(plateWith("M 200 300 L 240 300 L 240 340 Z")), std::nullopt);
}

TEST(HostilePlate, ShapeFarFromThePaperIsRefused)
{
    // A line to the moon would be cut into pieces of a centimetre: gigabytes.
    using namespace hostile_plate_detail;
    for (const char* path : {"M 200 300 L 1e12 300 L 240 340 Z", "M 200 300 L 240 -1e300 L 240 340 Z",
                             "M 200 300 C 1 1 9e15 9e15 240 340 Z", "M -1e7 300 L 240 300 L 240 340 Z"})
        EXPECT_EQ(problemOf(plateWith(path)), Problem::PlateBadPath) << path;
}

TEST(HostilePlate, EndlessScribbleIsRefused)
{
    using namespace hostile_plate_detail;
    std::string path = "M 0 0";
    for (int i = 0; i < 20'000; ++i)
        path += " L 560 640 L 0 0";
    EXPECT_EQ(problemOf(plateWith(path + " Z")), Problem::PlateBadPath);
}

}  // namespace fb::test::hostile_plate_test
