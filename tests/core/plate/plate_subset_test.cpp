#include "core/plate/plate_subset.h"

#include <gtest/gtest.h>

using namespace fb;

namespace plate_subset_test {

namespace {

Result<bool> checked(const std::string& svg)
{
    pugi::xml_document document;
    document.load_buffer(svg.data(), svg.size(),
                         pugi::parse_default | pugi::parse_doctype | pugi::parse_pi |
                             pugi::parse_declaration);
    return checkSubset(document, "plate.svg");
}

std::string inside(const std::string& content)
{
    return R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">)" + content + "</svg>";
}

}  // namespace

TEST(PlateSubsetTest, AllowsWhatAPlateNeeds)
{
    EXPECT_TRUE(
        checked(inside(R"(<title>T</title><defs><linearGradient id="w" gradientUnits="userSpaceOnUse" x1="0"
        y1="0" x2="1" y2="1" data-limb="arm"><stop offset="0" stop-color="#ffffff"/></linearGradient></defs>
        <g id="skin"><g id="skin.arm"><path d="M0 0L1 1Z" fill="#ffffff" data-ink="stroke"/></g></g>)")));
}

TEST(PlateSubsetTest, RefusesScriptsLinksEntitiesAndStyles)
{
    for (const char* content : {
             "<script>alert(1)</script>",
             R"(<a href="x"><path d="M0 0"/></a>)",
             R"(<image href="x.png"/>)",
             R"(<use href="#x"/>)",
             "<style>path{}</style>",
             "<foreignObject/>",
             R"(<path d="M0 0" style="fill:red"/>)",
             R"(<path d="M0 0" class="a"/>)",
             R"-(<path d="M0 0" onclick="x()"/>)-",
             R"(<path d="M0 0" stroke="#000000"/>)",
             R"-(<path d="M0 0" transform="scale(2)"/>)-",
             R"(<g opacity="0.5"/>)",
             R"-(<g filter="url(#f)"/>)-",
             "<clipPath/>",
             "<text>x</text>",
         }) {
        const auto result = checked(inside(content));
        ASSERT_FALSE(result) << content;
        EXPECT_EQ(result.error().problem, Problem::PlateForbidden) << content;
        EXPECT_FALSE(result.error().what.empty()) << content;
    }
}

TEST(PlateSubsetTest, RefusesADocumentTypeAndItsEntities)
{
    const auto result = checked(R"(<!DOCTYPE svg [<!ENTITY a "b">]>)" + inside(""));
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().what, "<!DOCTYPE>");
    EXPECT_FALSE(checked(R"(<?xml-stylesheet href="x.css"?>)" + inside("")));
}

TEST(PlateSubsetTest, RefusesDepthAndNumbersBeyondSense)
{
    std::string deep;
    for (int i = 0; i < 50; ++i)
        deep += "<g>";
    for (int i = 0; i < 50; ++i)
        deep += "</g>";
    EXPECT_FALSE(checked(inside(deep)));
    std::string many;
    for (int i = 0; i < 20001; ++i)
        many += "<g/>";
    EXPECT_FALSE(checked(inside(many)));
}

TEST(PlateSubsetTest, SomethingElseIsNoPlate)
{
    EXPECT_EQ(checked("<html/>").error().problem, Problem::PlateNotReadable);
}

}  // namespace plate_subset_test
