// PlateReader through its front door: what a broken plate is told.
#include "core/plate/plate_reader.h"

#include <gtest/gtest.h>

#include <locale.h>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace plate_reader_test {

namespace {

std::string shipped() { return test::sourceFile("resources/plates/shoulder-side.svg"); }

std::string with(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return at == std::string::npos ? text : text.replace(at, from.size(), to);
}

Fault faultOf(const std::string& svg)
{
    const auto plate = parsePlate(svg, "mine.svg");
    return plate ? Fault{} : plate.error();
}

}  // namespace

TEST(PlateReaderTest, ANameThatIsMissingIsNamed)
{
    for (const std::string& name : requiredNames(View::ShoulderSide)) {
        const Fault fault = faultOf(with(shipped(), "id=\"" + name + "\"", "id=\"other." + name + "\""));
        EXPECT_EQ(fault.problem, Problem::PlateMissingName) << name;
        EXPECT_EQ(fault.where, "mine.svg");
    }
}

TEST(PlateReaderTest, ALayerThatIsMissingIsNamed)
{
    for (const Layer layer : kLayers) {
        const std::string id(wordOf(layer));
        const Fault fault = faultOf(with(shipped(), "<g id=\"" + id + "\"", "<g id=\"x" + id + "\""));
        EXPECT_EQ(fault.problem, Problem::PlateMissingName) << id;
        EXPECT_EQ(fault.what, id);
    }
}

TEST(PlateReaderTest, ADoubledNameIsNamed)
{
    const Fault fault =
        faultOf(with(shipped(), "id=\"landmark.acromion.front\"", "id=\"landmark.acromion.back\""));
    EXPECT_EQ(fault.problem, Problem::PlateDoubledName);
    EXPECT_EQ(fault.what, "landmark.acromion.back");
}

TEST(PlateReaderTest, ARootWithoutItsDataIsTold)
{
    for (const char* attribute :
         {"data-view", "data-origin", "data-reference", "data-azimuth", "data-tones", "viewBox"}) {
        const std::string name = std::string(attribute) + "=";
        std::string text = shipped();
        const std::size_t at = text.find(name);
        ASSERT_NE(at, std::string::npos);
        const std::size_t quote = text.find('"', at);
        text.erase(quote + 1, text.find('"', quote + 1) - quote - 1);
        const Fault fault = faultOf(text);
        EXPECT_EQ(fault.problem, Problem::PlateMissingName) << attribute;
        EXPECT_EQ(fault.what, attribute);
    }
}

TEST(PlateReaderTest, AColourThatIsNoToneIsRefused)
{
    std::string text = shipped();
    const std::size_t at = text.find("fill=\"#");
    text.replace(at, 13, "fill=\"#123457");
    EXPECT_EQ(faultOf(text).problem, Problem::PlateForbidden);
}

TEST(PlateReaderTest, ABrokenPathIsRefused)
{
    std::string text = shipped();
    const std::size_t at = text.find("<path");
    const std::size_t d = text.find("d=\"M", at);
    text.replace(d, 4, "d=\"m");
    EXPECT_EQ(faultOf(text).problem, Problem::PlateBadPath);
}

TEST(PlateReaderTest, SwappedEdgesAreDisordered)
{
    std::string text = shipped();
    text = with(text, "id=\"edge.mid-arm.skin-front\"", "id=\"spare\"");
    text = with(text, "id=\"edge.mid-arm.skin-back\"", "id=\"edge.mid-arm.skin-front\"");
    text = with(text, "id=\"spare\"", "id=\"edge.mid-arm.skin-back\"");
    EXPECT_EQ(faultOf(text).problem, Problem::PlateDisordered);
}

TEST(PlateReaderTest, CutShortAnywhereItIsRefusedAndNeverCrashes)
{
    const std::string whole = shipped();
    for (std::size_t length = 0; length + 10 < whole.size(); length += whole.size() / 97)
        EXPECT_FALSE(parsePlate(whole.substr(0, length), "mine.svg")) << length;
}

TEST(PlateReaderTest, NumbersReadAlikeInACommaLocale)
{
    // Where the machine has such a locale; strtod would read 0.5 as 0 in it.
    const char* set = nullptr;
    for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8", "es_ES.UTF-8"})
        set = set ? set : setlocale(LC_NUMERIC, name);
    const auto plate = parsePlate(shipped(), "mine.svg");
    setlocale(LC_NUMERIC, "C");
    ASSERT_TRUE(plate);
    EXPECT_EQ(plate->points.at("edge.mid-arm.skin-front").at,
              test::sidePlate().points.at("edge.mid-arm.skin-front").at);
}

}  // namespace plate_reader_test
