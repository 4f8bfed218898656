#include "core/policy/policy.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <set>

#include "tests/support/core_atlas.h"

using namespace fb;
using nlohmann::json;

namespace policy_test {

namespace {

std::string shipped() { return test::sourceFile("resources/policy/default.json"); }

Fault faultOf(const std::string& text)
{
    const auto read = Policy::parseOver(text, test::defaultPolicy());
    return read ? Fault{} : read.error();
}

}  // namespace

TEST(PolicyTest, TheShippedPolicyIsCompleteAndEveryNumberHasASource)
{
    for (const PolicyField& field : policyFields()) {
        EXPECT_FALSE(test::defaultPolicy().source(field.key).empty()) << field.name;
        EXPECT_GE(test::defaultPolicy().value(field.key), field.low) << field.name;
        EXPECT_LE(test::defaultPolicy().value(field.key), field.high) << field.name;
    }
    EXPECT_EQ(test::defaultPolicy().convention(Site::Deltoid), Convention::DeltoidStrip);
}

TEST(PolicyTest, FieldsStandAtTheirOwnIndexAndHaveNamesOfTheirOwn)
{
    std::set<std::string> names;
    for (std::size_t i = 0; i < policyFields().size(); ++i) {
        const PolicyField& field = policyFields()[i];
        EXPECT_EQ(static_cast<std::size_t>(field.key), i);
        EXPECT_TRUE(names.insert(std::string(field.group) + "." + std::string(field.name)).second);
    }
}

TEST(PolicyTest, ALabsFileChangesOnlyWhatItNames)
{
    const auto lab = Policy::parseOver(
        R"({"name": "Lab", "conventions": {"deltoid": "deltoid.fingers"},
            "deltoid": {"finger_width_cm": {"value": 1.9, "source": "lab's choice"}}})",
        test::defaultPolicy());
    ASSERT_TRUE(lab);
    EXPECT_EQ(lab->convention(Site::Deltoid), Convention::DeltoidFingers);
    EXPECT_EQ(lab->value(PolicyKey::DeltoidFingerWidth), 1.9);
    EXPECT_EQ(lab->source(PolicyKey::DeltoidFingerWidth), "lab's choice");
    EXPECT_EQ(lab->value(PolicyKey::BursaEdge), test::defaultPolicy().value(PolicyKey::BursaEdge));
    EXPECT_EQ(lab->name(), "Lab");
}

TEST(PolicyTest, EveryBadFileIsNamedForWhatItIs)
{
    struct Row {
        const char* text;
        Problem problem;
        const char* where;
    };
    const std::vector<Row> rows{
        {"", Problem::PolicyCutShort, "1"},
        {"{\n\"deltoid\": {", Problem::PolicyCutShort, "2"},
        {"[1]", Problem::PolicyWrongType, "the file"},
        {R"({"deltoid": 3})", Problem::PolicyWrongType, "deltoid"},
        {R"({"name": 3})", Problem::PolicyWrongType, "name"},
        {R"({"conventions": 3})", Problem::PolicyWrongType, "conventions"},
        {R"({"conventions": {"deltoid": 3}})", Problem::PolicyWrongType, "conventions.deltoid"},
        {R"({"conventions": {"elbow": "x"}})", Problem::PolicyUnknownKey, "conventions.elbow"},
        {R"({"conventions": {"deltoid": "deltoid.other"}})", Problem::ConventionUnknown,
         "conventions.deltoid"},
        {R"({"colour": 3})", Problem::PolicyUnknownKey, "colour"},
        {R"({"deltoid": {"wrong": {}}})", Problem::PolicyUnknownKey, "deltoid.wrong"},
        {R"({"deltoid": {"strip_top": 0.1}})", Problem::PolicyWrongType, "deltoid.strip_top"},
        {R"({"deltoid": {"strip_top": {"source": "x"}}})", Problem::PolicyMissingKey,
         "deltoid.strip_top.value"},
        {R"({"deltoid": {"strip_top": {"value": "a", "source": "x"}}})", Problem::PolicyWrongType,
         "deltoid.strip_top"},
        {R"({"deltoid": {"strip_top": {"value": 9, "source": "x"}}})", Problem::PolicyOutOfRange,
         "deltoid.strip_top"},
        {R"({"deltoid": {"strip_top": {"value": 1e999, "source": "x"}}})", Problem::PolicyWrongType,
         "the file"},
        {R"({"deltoid": {"strip_top": {"value": 0.1}}})", Problem::PolicyNoSource, "deltoid.strip_top"},
        {R"({"deltoid": {"strip_top": {"value": 0.1, "source": ""}}})", Problem::PolicyNoSource,
         "deltoid.strip_top"},
        {R"({"deltoid": {"strip_top": {"value": 0.1, "source": "x", "more": 1}}})", Problem::PolicyUnknownKey,
         "deltoid.strip_top.more"},
        {R"({"deltoid": {"strip_top": {"value": 0.19, "source": "x"}}})", Problem::PolicyOutOfRange,
         "deltoid.strip_ideal"},
    };
    for (const Row& row : rows) {
        const Fault fault = faultOf(row.text);
        EXPECT_EQ(fault.problem, row.problem) << row.text;
        EXPECT_EQ(fault.where, row.where) << row.text;
    }
}

TEST(PolicyTest, ADefaultThatLacksAFieldIsRefused)
{
    for (const PolicyField& field : policyFields()) {
        json document = json::parse(shipped());
        document[std::string(field.group)].erase(std::string(field.name));
        const auto read = Policy::parse(document.dump());
        ASSERT_FALSE(read) << field.name;
        EXPECT_EQ(read.error().problem, Problem::PolicyMissingKey) << field.name;
    }
}

TEST(PolicyTest, CutShortAnywhereItIsRefusedAndNeverCrashes)
{
    const std::string whole = shipped();
    const std::size_t end = whole.find_last_of('}');
    for (std::size_t length = 0; length < end; length += 7)
        EXPECT_FALSE(Policy::parse(whole.substr(0, length))) << length;
}

TEST(PolicyTest, OneNumberCanBeReplaced)
{
    const Policy changed = test::defaultPolicy().with(PolicyKey::DeltoidFingerWidth, 2.0);
    EXPECT_EQ(changed.value(PolicyKey::DeltoidFingerWidth), 2.0);
    EXPECT_NE(changed, test::defaultPolicy());
    EXPECT_EQ(test::defaultPolicy().withConvention(Convention::DeltoidHalfway).convention(Site::Deltoid),
              Convention::DeltoidHalfway);
}

TEST(PolicyTest, EverySiteHasAConventionOfItsOwn)
{
    for (const Site site : kSites)
        EXPECT_EQ(siteOf(test::defaultPolicy().convention(site)), site);
    const Policy changed = test::defaultPolicy().withConvention(Convention::VentroglutealMedians);
    EXPECT_EQ(changed.convention(Site::Ventrogluteal), Convention::VentroglutealMedians);
    EXPECT_EQ(changed.convention(Site::Deltoid), test::defaultPolicy().convention(Site::Deltoid));
}

TEST(PolicyTest, AConventionOfAnotherSiteIsRefused)
{
    const Fault fault = faultOf(R"({"conventions": {"ventrogluteal": "vl.thirds"}})");
    EXPECT_EQ(fault.problem, Problem::ConventionOfAnotherSite);
    EXPECT_EQ(fault.where, "conventions.ventrogluteal");
    EXPECT_EQ(fault.what, "vl.thirds");
}

TEST(PolicyTest, AHandOutsideHumanRangeIsRefused)
{
    const Fault fault = faultOf(R"({"hand": {"length_cm": {"value": 25, "source": "lab's choice"}}})");
    EXPECT_EQ(fault.problem, Problem::PolicyOutOfRange);
    EXPECT_EQ(fault.where, "hand.length_cm");
    EXPECT_EQ(fault.high, 24.0);
}

}  // namespace policy_test
