#include "core/session/json_fields.h"

#include <gtest/gtest.h>

#include <functional>

#include "core/basics/enums.h"

using namespace fb;

namespace json_fields_test {

namespace {

// Any four that differ.
constexpr JsonProblems kProblems{Problem::SheetNotReadable, Problem::SheetUnknownKey,
                                 Problem::SheetMissingKey, Problem::SheetWrongValue};

Fault faultOf(
    const std::string& text, const std::function<void(JsonFields&)>& read = [](JsonFields&) {})
{
    JsonText parsed(text, kProblems);
    JsonFields fields(parsed);
    read(fields);
    return parsed.fault().value_or(Fault{});
}

}  // namespace

TEST(JsonFieldsTest, ReadsWhatIsThere)
{
    JsonText text(R"({"n":2.5,"w":-3,"u":9007199254740992,"f":true,"t":"Grüße","p":[1,-2.5],"s":"left",
                      "o":{"a":1},"l":[{"a":2},{"a":3}]})",
                  kProblems);
    JsonFields fields(text);
    EXPECT_EQ(fields.number("n", 0.0, 3.0), 2.5);
    EXPECT_EQ(fields.whole("w", -3, 3), -3);
    EXPECT_EQ(fields.natural("u", 1ULL << 53), 1ULL << 53);
    EXPECT_TRUE(fields.flag("f"));
    EXPECT_EQ(fields.text("t"), "Grüße");
    EXPECT_EQ(fields.point("p", 10.0), (Point{1.0, -2.5}));
    EXPECT_EQ(fields.word("s", sideFrom), Side::Left);
    EXPECT_EQ(fields.object("o").whole("a", 0, 9), 1);
    auto list = fields.objects("l");
    ASSERT_EQ(list.size(), 2U);
    EXPECT_EQ(list[1].whole("a", 0, 9), 3);
    EXPECT_TRUE(fields.has("n"));
    EXPECT_FALSE(fields.has("m"));
    fields.noMore();
    EXPECT_FALSE(text.fault());
}

TEST(JsonFieldsTest, SaysWhereATextIsBroken)
{
    EXPECT_EQ(faultOf("{\n  \"a\": 1,\n  \"b\": }"), (Fault{Problem::SheetNotReadable, "3:8", "", 0, 0}));
    EXPECT_EQ(faultOf("").problem, Problem::SheetNotReadable);
    EXPECT_EQ(faultOf("[1]"), (Fault{Problem::SheetNotReadable, "1:1", "array", 0, 0}));
    EXPECT_EQ(faultOf("{\"a\":1e999}").problem, Problem::SheetNotReadable);
    EXPECT_EQ(faultOf("{\"a\":\"\xff\"}").problem, Problem::SheetNotReadable);
}

TEST(JsonFieldsTest, AKeyThatStandsTwiceIsRefused)
{
    const Fault doubled = faultOf(R"({"a":1,"b":{"c":1,"c":2}})");
    EXPECT_EQ(doubled.problem, Problem::SheetWrongValue);
    EXPECT_EQ(doubled.where, "c");
    // The same key in two objects is none.
    EXPECT_EQ(faultOf(R"({"a":{"c":1},"b":[{"c":1},{"c":2}],"c":1})"), Fault{});
}

TEST(JsonFieldsTest, EachFaultNamesItsKey)
{
    const auto number = [](JsonFields& f) { (void)f.number("n", 0.0, 5.0); };
    EXPECT_EQ(faultOf("{}", number), (Fault{Problem::SheetMissingKey, "n", "", 0, 0}));
    EXPECT_EQ(faultOf(R"({"n":7})", number), (Fault{Problem::SheetWrongValue, "n", "7", 0, 5}));
    EXPECT_EQ(faultOf(R"({"n":"x"})", number), (Fault{Problem::SheetWrongValue, "n", "\"x\"", 0, 0}));
    EXPECT_EQ(faultOf(R"({"n":[]})", number), (Fault{Problem::SheetWrongValue, "n", "array", 0, 0}));
    EXPECT_EQ(faultOf(R"({"n":1.5})", [](JsonFields& f) { (void)f.whole("n", 0, 5); }),
              (Fault{Problem::SheetWrongValue, "n", "1.5", 0, 5}));
    for (const char* value : {"-1", "1.0", "9", "\"1\"", "18446744073709551616"})
        EXPECT_EQ(
            faultOf(std::string("{\"n\":") + value + "}", [](JsonFields& f) { (void)f.natural("n", 8); })
                .problem,
            Problem::SheetWrongValue)
            << value;
    EXPECT_EQ(faultOf(R"({"n":1})", [](JsonFields& f) { (void)f.flag("n"); }).where, "n");
    EXPECT_EQ(faultOf(R"({"n":1})", [](JsonFields& f) { (void)f.text("n"); }).what, "1");
    EXPECT_EQ(faultOf(R"({"n":"up"})", [](JsonFields& f) { (void)f.word("n", sideFrom); }),
              (Fault{Problem::SheetWrongValue, "n", "up", 0, 0}));
    EXPECT_EQ(faultOf("{}", [](JsonFields& f) { f.wrong("n", "why", 1, 2); }),
              (Fault{Problem::SheetWrongValue, "n", "why", 1, 2}));
}

TEST(JsonFieldsTest, APointIsTwoNumbersOnAPlate)
{
    for (const char* value : {"1", "[1]", "[1,2,3]", "[1,\"2\"]", "[1,11]", "[-11,1]", "[null,1]"})
        EXPECT_EQ(
            faultOf(std::string("{\"p\":") + value + "}", [](JsonFields& f) { (void)f.point("p", 10.0); })
                .where,
            "p")
            << value;
}

TEST(JsonFieldsTest, InnerKeysAreToldWithTheWayToThem)
{
    const auto inner = [](JsonFields& f) { (void)f.object("o").flag("x"); };
    EXPECT_EQ(faultOf(R"({"o":{}})", inner), (Fault{Problem::SheetMissingKey, "o.x", "", 0, 0}));
    EXPECT_EQ(faultOf(R"({"o":1})", inner), (Fault{Problem::SheetWrongValue, "o", "1", 0, 0}));
    const auto each = [](JsonFields& f) {
        for (JsonFields& one : f.objects("l"))
            (void)one.flag("x");
    };
    EXPECT_EQ(faultOf(R"({"l":[{"x":true},{"x":2}]})", each).where, "l[2].x");
    EXPECT_EQ(faultOf(R"({"l":{}})", each), (Fault{Problem::SheetWrongValue, "l", "object", 0, 0}));
    EXPECT_EQ(faultOf(R"({"l":[3]})", each), (Fault{Problem::SheetWrongValue, "l[1]", "3", 0, 0}));
}

TEST(JsonFieldsTest, TheFirstFaultStays)
{
    const auto two = [](JsonFields& f) {
        (void)f.flag("a");
        (void)f.flag("b");
        f.noMore();
    };
    EXPECT_EQ(faultOf(R"({"c":1})", two).where, "a");
    EXPECT_EQ(faultOf(R"({"a":true,"b":true,"c":1})", two), (Fault{Problem::SheetUnknownKey, "c", "", 0, 0}));
}

TEST(JsonFieldsTest, ALongValueIsToldCutAndWhole)
{
    std::string umlauts;
    for (int i = 0; i < 100; ++i)
        umlauts += "ü";
    const Fault fault = faultOf("{\"n\":\"" + umlauts + "\"}", [](JsonFields& f) { (void)f.flag("n"); });
    EXPECT_EQ(fault.what.substr(0, 5), "\"üü");
    EXPECT_LE(fault.what.size(), 60U);
    // Whole letters only: after the quotation mark two bytes each.
    EXPECT_EQ(fault.what.size() % 2, 1U);
}

TEST(JsonFieldsTest, WritingNeverThrows)
{
    EXPECT_EQ(lineOf({{"b", 1}, {"a", "x\xff"}}), "{\"b\":1,\"a\":\"x\xef\xbf\xbd\"}");
    EXPECT_EQ(pageOf({{"b", 1}}), "{\n  \"b\": 1\n}\n");
}

TEST(JsonFieldsTest, AnEnumeratorIsFoundByItsWord)
{
    EXPECT_EQ(enumFrom<Side>("right", 2), Side::Right);
    EXPECT_FALSE(enumFrom<Side>("right", 1));
    EXPECT_FALSE(enumFrom<Side>("", 2));
}

}  // namespace json_fields_test
