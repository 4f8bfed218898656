#include "app/cli/json.h"

#include <gtest/gtest.h>

#include <limits>
#include <nlohmann/json.hpp>
#include <vector>

namespace fb::json_tests {

namespace json_test {

template <class Write>
std::string written(Write write)
{
    std::string out;
    JsonWriter json(out);
    write(json);
    return out;
}

}  // namespace json_test

using json_test::written;

TEST(JsonWriterTest, NestsObjectsAndArraysInTheOrderWritten)
{
    const std::string out = written([](JsonWriter& json) {
        json.beginObject();
        json.key("a").number(1.5);
        json.key("b").beginArray().endArray();
        json.key("c").beginObject().endObject();
        json.key("d").beginArray().boolean(true).null().text("x").point({1, -2}).endArray();
        json.endObject();
    });
    EXPECT_EQ(out, R"({"a":1.5,"b":[],"c":{},"d":[true,null,"x",[1,-2]]})");
}

TEST(JsonWriterTest, NumbersKeepAMillionthAndNoMore)
{
    const std::vector<std::pair<double, std::string>> rows{
        {0.0, "0"},
        {-0.0, "0"},
        {3.04, "3.04"},
        {-4.256, "-4.256"},
        {1.23456789, "1.234568"},
        {-0.0000001, "0"},
        {0.000001, "0.000001"},
        {1e9, "1000000000"},
    };
    for (const auto& [value, text] : rows)
        EXPECT_EQ(written([&, v = value](JsonWriter& json) { json.number(v); }), text);
}

TEST(JsonWriterTest, WhatIsNoNumberIsNull)
{
    for (const double value :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
          -std::numeric_limits<double>::infinity()})
        EXPECT_EQ(written([&](JsonWriter& json) { json.number(value); }), "null");
}

TEST(JsonWriterTest, TheLargestNumberIsWrittenInFull)
{
    const double most = std::numeric_limits<double>::max();
    const std::string out = written([&](JsonWriter& json) { json.point({most, -most}); });
    EXPECT_TRUE(nlohmann::json::accept(out)) << out;
}

TEST(JsonWriterTest, AnyTextComesBackFromAnotherReader)
{
    std::string text = "quote \" backslash \\ slash / umlaut \xc3\xbc end";
    for (char c = 1; c < 0x20; ++c)
        text += c;
    const std::string out = written([&](JsonWriter& json) { json.text(text); });
    EXPECT_EQ(nlohmann::json::parse(out).get<std::string>(), text);
}

TEST(JsonWriterTest, PointsAreListsOfTwo)
{
    const std::vector<Point> points{{0, 0}, {1.5, 2}};
    EXPECT_EQ(written([&](JsonWriter& json) { json.points(points); }), "[[0,0],[1.5,2]]");
    EXPECT_EQ(written([&](JsonWriter& json) { json.points({}); }), "[]");
}

}  // namespace fb::json_tests
