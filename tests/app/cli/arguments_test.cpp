#include "app/cli/arguments.h"

#include <gtest/gtest.h>

#include "tests/support/shipped.h"

namespace fb::arguments_tests {

namespace arguments_test {

std::vector<std::string_view> argumentWords(std::string_view line)
{
    std::vector<std::string_view> parts;
    for (std::size_t from = 0; from < line.size();) {
        const std::size_t end = std::min(line.find(' ', from), line.size());
        if (end > from)
            parts.push_back(line.substr(from, end - from));
        from = end + 1;
    }
    return parts;
}

constexpr std::string_view kArgumentsPatient =
    " --site deltoid --side left --age 34y --sex female --stature 163 --weight 71";

// The first fault of parsing or checking; nothing when the line is good.
std::optional<Fault> requestFault(const std::string& line)
{
    const auto arguments = parseArguments(argumentWords(line));
    if (!arguments)
        return arguments.error();
    const auto query = queryOf(*arguments, shippedLibrary().defaultPolicy());
    return query ? std::nullopt : std::optional(query.error());
}

std::string requestWith(std::string_view option, std::string_view value)
{
    std::string line(kArgumentsPatient);
    const std::size_t at = line.find("--" + std::string(option) + " ");
    if (at != std::string::npos) {
        const std::size_t end = std::min(line.find(' ', line.find(' ', at) + 1), line.size());
        line.erase(at, end - at);
    }
    line.insert(0, "locate");
    return value.empty() ? line : line + " --" + std::string(option) + " " + std::string(value);
}

struct ArgumentsRow {
    std::string line;
    Problem problem;
    std::string where;
};

}  // namespace arguments_test

using namespace arguments_test;

TEST(ArgumentsTest, EveryOptionHasAWordThatIsFoundAgain)
{
    for (std::size_t i = 0; i < kOptionCount; ++i) {
        const auto option = static_cast<Option>(i);
        EXPECT_FALSE(wordOf(option).empty());
        EXPECT_EQ(optionFrom(wordOf(option)), option);
    }
    EXPECT_EQ(optionFrom("Site"), std::nullopt);
    EXPECT_EQ(optionFrom(""), std::nullopt);
}

TEST(ArgumentsTest, AWholeRequestIsReadAsItStands)
{
    const auto arguments = parseArguments(
        argumentWords("locate --json" + std::string(kArgumentsPatient) + " --individual 1,-0.5,0"));
    ASSERT_TRUE(arguments.has_value());
    EXPECT_EQ(arguments->command, Command::Locate);
    EXPECT_TRUE(arguments->json);
    EXPECT_FALSE(arguments->lines);
    const auto query = queryOf(*arguments, shippedLibrary().defaultPolicy());
    ASSERT_TRUE(query.has_value());
    EXPECT_EQ(query->site, Site::Deltoid);
    EXPECT_EQ(query->view, View::ShoulderSide);
    EXPECT_EQ(query->convention, shippedLibrary().defaultPolicy().convention(Site::Deltoid));
    EXPECT_EQ(query->patient,
              Patient::make(34.0, Sex::Female, Cm{163.0}, Kg{71.0}, Side::Left, {1.0, -0.5, 0.0}).value());
}

TEST(ArgumentsTest, AnEqualsSignJoinsNameAndValue)
{
    const auto arguments = parseArguments(argumentWords("grade --site=deltoid --at=-1,-4.2 --side=left"));
    ASSERT_TRUE(arguments.has_value());
    EXPECT_EQ(arguments->value(Option::Site), "deltoid");
    EXPECT_EQ(arguments->value(Option::At), "-1,-4.2");
}

TEST(ArgumentsTest, HelpAndVersionWinWhereverTheyStand)
{
    EXPECT_EQ(parseArguments(argumentWords("--help"))->command, Command::Help);
    EXPECT_EQ(parseArguments(argumentWords("locate --nonsense --help"))->command, Command::Help);
    EXPECT_EQ(parseArguments(argumentWords("--version"))->command, Command::Version);
    EXPECT_EQ(parseArguments({})->command, Command::Help);
}

TEST(ArgumentsTest, BothWaysOfAskingForLinesAreTheSame)
{
    for (const char* line : {"locate --json -", "locate --lines", "grade --lines --json"})
        EXPECT_TRUE(parseArguments(argumentWords(line))->lines) << line;
}

TEST(ArgumentsTest, BadWordsAreNamed)
{
    const std::vector<ArgumentsRow> rows{
        {"measure --site deltoid", Problem::CommandUnknown, ""},
        {"--site deltoid", Problem::ArgumentUnknown, "--site"},
        {"locate --colour red", Problem::ArgumentUnknown, "--colour"},
        {"locate --out a.png", Problem::ArgumentUnknown, "--out"},
        {"locate --at 0,0", Problem::ArgumentUnknown, "--at"},
        {"draw --json", Problem::ArgumentUnknown, "--json"},
        {"draw -", Problem::ArgumentUnknown, "-"},
        {"locate deltoid", Problem::ArgumentUnknown, "deltoid"},
        {"locate -site deltoid", Problem::ArgumentUnknown, "-site"},
        {"locate --Site deltoid", Problem::ArgumentUnknown, "--Site"},
        {"locate --site", Problem::ArgumentNeedsValue, "--site"},
        {"locate --site --side left", Problem::ArgumentNeedsValue, "--site"},
        {"locate --site=", Problem::ArgumentNeedsValue, "--site"},
        {"locate --side left --side right", Problem::ArgumentDoubled, "--side"},
        {"locate --json --json", Problem::ArgumentDoubled, "--json"},
    };
    for (const ArgumentsRow& row : rows) {
        const auto fault = requestFault(row.line);
        ASSERT_TRUE(fault.has_value()) << row.line;
        EXPECT_EQ(fault->problem, row.problem) << row.line;
        EXPECT_EQ(fault->where, row.where) << row.line;
    }
}

TEST(ArgumentsTest, WhatIsMissingIsNamed)
{
    for (const char* option : {"site", "side", "age", "sex", "stature", "weight"}) {
        const auto fault = requestFault(requestWith(option, ""));
        ASSERT_TRUE(fault.has_value()) << option;
        EXPECT_EQ(fault->problem, Problem::ArgumentMissing);
        EXPECT_EQ(fault->where, std::string("--") + option);
    }
}

TEST(ArgumentsTest, ValuesAreHeldToTheirForm)
{
    const std::vector<std::tuple<std::string, std::string, std::optional<Problem>>> rows{
        {"site", "deltoid", std::nullopt},
        {"site", "gluteal", Problem::SiteUnknown},
        {"side", "right", std::nullopt},
        {"side", "Left", Problem::SideUnknown},
        {"sex", "male", std::nullopt},
        {"sex", "f", Problem::SexUnknown},
        {"age", "18y", std::nullopt},
        {"age", "110y", std::nullopt},
        {"age", "240mo", std::nullopt},
        {"age", "34", Problem::AgeNotANumber},
        {"age", "-34y", Problem::AgeOutOfRange},
        {"age", "nany", Problem::AgeNotANumber},
        {"age", "17y", Problem::AgeOutOfRange},
        {"age", "14d", Problem::AgeOutOfRange},
        {"age", "400y", Problem::AgeOutOfRange},
        {"stature", "163.5", std::nullopt},
        {"stature", "tall", Problem::StatureNotANumber},
        {"stature", "163cm", Problem::StatureNotANumber},
        {"stature", "163,5", Problem::StatureNotANumber},
        {"stature", "nan", Problem::StatureNotANumber},
        {"stature", "inf", Problem::StatureNotANumber},
        {"stature", "1e999", Problem::StatureNotANumber},
        {"stature", "20", Problem::StatureOutOfRange},
        {"stature", "400", Problem::StatureOutOfRange},
        {"stature", "-163", Problem::StatureOutOfRange},
        {"weight", "heavy", Problem::WeightNotANumber},
        {"weight", "0", Problem::WeightOutOfRange},
        {"weight", "-71", Problem::WeightOutOfRange},
        {"weight", "251", Problem::WeightOutOfRange},
        {"weight", "30", Problem::BodyImplausible},
        {"weight", "249", Problem::BodyImplausible},
        {"convention", "deltoid.halfway", std::nullopt},
        {"convention", "halfway", Problem::ConventionUnknown},
        {"view", "shoulder-three-quarter", std::nullopt},
        {"convention", "vl.thirds", Problem::ConventionOfAnotherSite},
        {"view", "thigh-front", Problem::ViewOfAnotherSite},
        {"view", "open-hand", Problem::ViewUnknown},
        {"view", "knee", Problem::ViewUnknown},
        {"hand", "18.2", std::nullopt},
        {"hand", "13", std::nullopt},
        {"hand", "24", std::nullopt},
        {"hand", "12.9", Problem::HandLengthOutOfRange},
        {"hand", "24.1", Problem::HandLengthOutOfRange},
        {"hand", "-18", Problem::HandLengthOutOfRange},
        {"hand", "large", Problem::ArgumentBadValue},
        {"hand", "nan", Problem::ArgumentBadValue},
        {"individual", "0,0,0", std::nullopt},
        {"individual", "-3,3,0.5", std::nullopt},
        {"individual", "0,0,0,1,-1,0.5", std::nullopt},
        {"individual", "0,0,0,1,-1,3.5", Problem::ArgumentBadValue},
        {"individual", "1,2", Problem::ArgumentBadValue},
        {"individual", "1,2,3,0", Problem::ArgumentBadValue},
        {"individual", "1,2,3.1", Problem::ArgumentBadValue},
        {"individual", "1,,2", Problem::ArgumentBadValue},
    };
    for (const auto& [option, value, problem] : rows) {
        const auto fault = requestFault(requestWith(option, value));
        EXPECT_EQ(fault ? std::optional(fault->problem) : std::nullopt, problem) << option << " " << value;
    }
}

TEST(ArgumentsTest, EverySiteStartsInItsUsualViewAndConvention)
{
    for (const Site site : kSites) {
        const auto arguments = parseArguments(argumentWords("locate --site " + std::string(wordOf(site)) +
                                                            std::string(kArgumentsPatient).substr(15)));
        ASSERT_TRUE(arguments) << wordOf(site);
        const auto query = queryOf(*arguments, shippedLibrary().defaultPolicy());
        ASSERT_TRUE(query) << wordOf(site);
        EXPECT_EQ(query->view, askedViews(site).front());
        EXPECT_EQ(query->convention, shippedLibrary().defaultPolicy().convention(site));
    }
}

TEST(ArgumentsTest, AHandTakesThePlaceOfThePolicys)
{
    const Policy& policy = shippedLibrary().defaultPolicy();
    const auto query = [&](const std::string& line) {
        return queryOf(parseArguments(argumentWords(line)).value(), policy).value();
    };
    EXPECT_EQ(policyOf(query(requestWith("hand", "16.5")), policy).value(PolicyKey::HandLength), 16.5);
    EXPECT_EQ(policyOf(query(requestWith("hand", "")), policy).value(PolicyKey::HandLength),
              policy.value(PolicyKey::HandLength));
}

TEST(ArgumentsTest, AMarkIsTwoNumbers)
{
    const auto mark = [](std::string_view text) {
        Arguments arguments;
        arguments.value(Option::At) = text;
        return markOf(arguments);
    };
    EXPECT_EQ(mark("0,-4.3").value(), (Point{0.0, -4.3}));
    EXPECT_EQ(mark("-1e1,2").value(), (Point{-10.0, 2.0}));
    EXPECT_EQ(mark("").error().problem, Problem::ArgumentMissing);
    for (const char* text : {"0", "0,", ",0", "0,0,0", "0;0", "a,b", "nan,0", "0,inf", "0, 1"})
        EXPECT_EQ(mark(text).error().problem, Problem::MarkNotAPoint) << text;
}

TEST(ArgumentsTest, LayersAreAListAndNothingIsAllOfThem)
{
    EXPECT_EQ(layersFrom("").value().size(), kLayers.size());
    EXPECT_EQ(layersFrom("bone,nerve").value(), (std::vector{Layer::Bone, Layer::Nerve}));
    EXPECT_EQ(layersFrom("bone,,nerve").error().problem, Problem::LayerUnknown);
    EXPECT_EQ(layersFrom("bones").error().what, "bones");
}

TEST(ArgumentsTest, ALineOverlaysWhatTheCommandLineSaid)
{
    Arguments common;
    common.command = Command::Grade;
    common.value(Option::Side) = "left";
    common.value(Option::Sex) = "male";
    const auto read = overlaidBy(common, R"({"side": "right", "stature": 163.5, "at": [0, -4.25]})");
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->value(Option::Side), "right");
    EXPECT_EQ(read->value(Option::Sex), "male");
    EXPECT_EQ(read->value(Option::Stature), "163.5");
    EXPECT_EQ(read->value(Option::At), "0,-4.25");
}

TEST(ArgumentsTest, ALineThatIsNoRequestIsRefused)
{
    Arguments common;
    common.command = Command::Locate;
    const std::vector<std::pair<std::string, Problem>> rows{
        {"", Problem::RequestNotReadable},
        {"site=deltoid", Problem::RequestNotReadable},
        {R"({"site": "deltoid")", Problem::RequestNotReadable},
        {R"(["deltoid"])", Problem::RequestNotReadable},
        {"null", Problem::RequestNotReadable},
        {std::string(100000, '['), Problem::RequestNotReadable},
        {"{\"site\": \"" + std::string(20000, 'x') + "\"}", Problem::RequestNotReadable},
        {R"({"site": "\ud800"})", Problem::RequestNotReadable},
        {R"({"colour": "red"})", Problem::ArgumentUnknown},
        {R"({"at": [0, 0]})", Problem::ArgumentUnknown},
        {R"({"policy": "/etc/passwd"})", Problem::ArgumentUnknown},
        {R"({"out": "a.png"})", Problem::ArgumentUnknown},
        {R"({"site": null})", Problem::ArgumentBadValue},
        {R"({"site": true})", Problem::ArgumentBadValue},
        {R"({"site": {"deltoid": 1}})", Problem::ArgumentBadValue},
        {R"({"individual": ["a"]})", Problem::ArgumentBadValue},
        {R"({"site": ""})", Problem::ArgumentNeedsValue},
        {R"({"individual": []})", Problem::ArgumentNeedsValue},
    };
    for (const auto& [line, problem] : rows) {
        const auto read = overlaidBy(common, line);
        ASSERT_FALSE(read.has_value()) << line.substr(0, 60);
        EXPECT_EQ(read.error().problem, problem) << line.substr(0, 60);
    }
}

}  // namespace fb::arguments_tests
