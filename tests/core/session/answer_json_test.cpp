#include "core/session/answer_json.h"

#include <gtest/gtest.h>

#include <functional>

#include "tests/support/random_answer.h"

using namespace fb;
using nlohmann::json;

namespace answer_json_test {

namespace {

json markedText(Convention convention = Convention::DeltoidStrip, bool byHand = false)
{
    for (std::uint64_t seed = 1;; ++seed) {
        SeedStream stream(seed);
        const auto answered = test::answeredAt(seed, 2, convention, byHand, stream);
        if (answered && answered->answer.mark)
            return json::parse(textOf(answered->answer));
    }
}

// Where the fault lies; empty: none.
std::string faultIn(json text, const std::function<void(json&)>& change)
{
    change(text);
    const auto read = answerFrom(text.dump());
    if (read)
        return {};
    EXPECT_EQ(read.error().problem, Problem::AnswerNotReadable);
    EXPECT_FALSE(read.error().where.empty());
    return read.error().where;
}

}  // namespace

TEST(AnswerJsonTest, WhatIsMissingOrUnknownIsNamed)
{
    const json text = markedText();
    for (const auto& [key, value] : text.items()) {
        const bool mayBeMissing = key == "hazard";
        EXPECT_EQ(faultIn(text, [&](json& t) { t.erase(key); }), mayBeMissing ? "" : key);
    }
    EXPECT_EQ(faultIn(text, [](json& t) { t["more"] = 1; }), "more");
    EXPECT_EQ(faultIn(text, [](json& t) { t["request"]["patient"].erase("age"); }), "request.patient.age");
    EXPECT_EQ(faultIn(text, [](json& t) { t["request"]["patient"]["x"] = 1; }), "request.patient.x");
}

TEST(AnswerJsonTest, NobodyIsMadeUpWhoCannotBe)
{
    const json text = markedText();
    EXPECT_EQ(faultIn(text, [](json& t) { t["request"]["patient"]["age"] = 12; }), "request.patient");
    EXPECT_EQ(faultIn(text, [](json& t) { t["request"]["patient"]["weight"] = 0; }), "request.patient");
    EXPECT_EQ(faultIn(text, [](json& t) { t["request"]["patient"]["arm_girth"] = 3.5; }),
              "request.patient.arm_girth");
    EXPECT_EQ(faultIn(text, [](json& t) { t["request"]["view"] = "hip-side"; }), "request.view");
    EXPECT_EQ(faultIn(text, [](json& t) { t["request"]["tone"] = 5; }), "request.tone");
    EXPECT_EQ(faultIn(text, [](json& t) { t["convention"] = "vl.thirds"; }), "convention");
    EXPECT_EQ(faultIn(text,
                      [](json& t) {
                          t["request"]["finding"] = {{"code", "flu"}};
                      }),
              "request.finding.code");
}

// A mark, a refusal or time that was up: one of them, and a hand only with a mark.
TEST(AnswerJsonTest, OneThingWasGiven)
{
    const json text = markedText();
    EXPECT_EQ(faultIn(text, [](json& t) { t["refusal"] = "rash"; }), "mark");
    EXPECT_EQ(faultIn(text, [](json& t) { t["time_up"] = true; }), "mark");
    EXPECT_EQ(faultIn(text,
                      [](json& t) {
                          t.erase("mark");
                          t["refusal"] = "rash";
                      }),
              "");
    const json byHand = markedText(Convention::VastusThirds, true);
    EXPECT_EQ(faultIn(byHand,
                      [](json& t) {
                          t.erase("mark");
                          t["refusal"] = "rash";
                      }),
              "mark");
    EXPECT_EQ(faultIn(byHand, [](json& t) { t.erase("flags"); }), "flags");
    EXPECT_EQ(faultIn(byHand, [](json& t) { t.erase("build"); }), "build");
}

TEST(AnswerJsonTest, ABuildIsWholeAndAHandHasItsLimits)
{
    const json thigh = markedText(Convention::VastusThirds, true);
    EXPECT_EQ(faultIn(thigh, [](json& t) { t["build"].erase("cell"); }), "build");
    EXPECT_EQ(faultIn(thigh, [](json& t) { t["build"].erase("upper_line"); }), "build");
    EXPECT_EQ(faultIn(thigh, [](json& t) { t["build"]["cell"]["row"] = "top"; }), "build.cell.row");
    EXPECT_EQ(faultIn(thigh, [](json& t) { t["build"]["elbow"] = {0, 0}; }), "build.elbow");
    const json hip = markedText(Convention::VentroglutealHand, true);
    EXPECT_EQ(faultIn(hip, [](json& t) { t["build"]["hand"]["opening"] = 90; }), "build.hand.opening");
    EXPECT_EQ(faultIn(hip, [](json& t) { t["build"]["hand"]["palm"] = {0, 5000}; }), "build.hand.palm");
    const json arm = markedText(Convention::DeltoidFingers, true);
    EXPECT_EQ(faultIn(arm, [](json& t) { t["build"]["fingers"]["count"] = 4; }), "build.fingers.count");
    EXPECT_EQ(faultIn(arm, [](json& t) { t["build"]["fingers"]["turn"] = 61; }), "build.fingers.turn");
}

TEST(AnswerJsonTest, AFlagStandsOnceUnderAName)
{
    const json text = markedText(Convention::DeltoidStrip, true);
    EXPECT_EQ(faultIn(text, [](json& t) { t["flags"].push_back(t["flags"][0]); }),
              "flags[" + std::to_string(text["flags"].size() + 1) + "].name");
    EXPECT_EQ(faultIn(text, [](json& t) { t["flags"][0]["name"] = "nose"; }), "flags[1].name");
    EXPECT_EQ(faultIn(text, [](json& t) { t["flags"][0]["at"] = {1}; }), "flags[1].at");
}

TEST(AnswerJsonTest, StandsInAnotherTextAsAnObject)
{
    SeedStream stream(6);
    const Answer answer = unanswered(0, requestFrom(3, 0), Convention::DeltoidStrip);
    const std::string outer = lineOf({{"answer", jsonOf(answer)}});
    JsonText text(outer, {});
    JsonFields fields(text);
    EXPECT_EQ(textOf(answerIn(fields.object("answer"))), textOf(answer));
    EXPECT_FALSE(text.fault());
}

}  // namespace answer_json_test
