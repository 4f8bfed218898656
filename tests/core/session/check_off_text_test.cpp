// Events as lines of text: check_off.h, textOf and eventFrom.
#include <gtest/gtest.h>

#include <functional>
#include <nlohmann/json.hpp>
#include <set>

#include "tests/support/check_off_course.h"

using namespace fb;
using nlohmann::json;
using test::Course;

namespace check_off_text_test {

using enum ProcedureStep;

namespace {

// One of each kind.
std::vector<CheckOffEvent> everyKind()
{
    Course at(test::plainSheet(1, {Insert}));
    at.begin();
    at.wait(Ms{1234});
    at.keep(at.off.pause("fire \"drill\"\n", at.now));
    at.keep(at.off.resume(at.now));
    at.answer(Verdict::Acceptable, 1.0 / 3.0);
    at.keep(at.off.takeOver(at.now));
    at.wait(Ms{777});
    at.observe(Insert, Seen::Prompted, "späte Hilfe");
    at.keep(at.off.withdraw(Insert, at.now));
    at.observe(Insert);
    at.keep(at.off.hold(10.1, at.now));
    at.keep(at.off.finish(at.now));
    at.keep(at.off.rate(3, "steady", at.now));
    at.keep(at.off.sign(at.now));
    std::vector<CheckOffEvent> all = at.kept;
    Course other(test::plainSheet(1));
    all.push_back(*other.off.noShow(other.now));
    all.push_back(*other.off.voidTechnical("power cut", other.now));
    other.begin();
    all.push_back(*other.off.stopForSafety("faint", other.now));
    return all;
}

std::string faultIn(const CheckOffEvent& event, const std::function<void(json&)>& change)
{
    json text = json::parse(textOf(event));
    change(text);
    const auto read = eventFrom(text.dump());
    if (read)
        return {};
    EXPECT_EQ(read.error().problem, Problem::EventNotReadable);
    return read.error().where;
}

CheckOffEvent firstOf(CheckOffEventKind kind)
{
    for (const CheckOffEvent& event : everyKind())
        if (event.kind == kind)
            return event;
    ADD_FAILURE() << wordOf(kind);
    return {};
}

}  // namespace

TEST(CheckOffTextTest, EveryKindIsReadAgain)
{
    std::set<CheckOffEventKind> kinds;
    for (const CheckOffEvent& event : everyKind()) {
        kinds.insert(event.kind);
        const std::string text = textOf(event);
        EXPECT_EQ(text.find('\n'), std::string::npos);
        const auto read = eventFrom(text);
        ASSERT_TRUE(read) << text << " at " << read.error().where;
        EXPECT_EQ(textOf(*read), text);
        EXPECT_EQ(read->kind, event.kind);
        EXPECT_EQ(read->onScreen, event.onScreen);
        EXPECT_EQ(read->onManikin, event.onManikin);
        EXPECT_EQ(read->answer.has_value(), event.answer.has_value());
        EXPECT_EQ(read->observation, event.observation);
        EXPECT_EQ(read->held, event.held);
        EXPECT_EQ(read->rating, event.rating);
        EXPECT_EQ(read->note, event.note);
    }
    EXPECT_EQ(kinds.size(), static_cast<std::size_t>(kCheckOffEventKindCount));
}

TEST(CheckOffTextTest, TheBytesAreMeant)
{
    CheckOffEvent seen{CheckOffEventKind::Observed, Ms{61'000}, Ms{2500}};
    seen.observation = Observation{Insert, Seen::Done, 2.5, "at 90°"};
    EXPECT_EQ(textOf(seen), R"({"kind":"observed","on_screen":61000,"on_manikin":2500,"observation":)"
                            R"({"step":"insert","seen":"done","at":2.5,"remark":"at 90°"}})");
    EXPECT_EQ(textOf(CheckOffEvent{CheckOffEventKind::Signed}),
              R"({"kind":"signed","on_screen":0,"on_manikin":0})");
    CheckOffEvent rated{CheckOffEventKind::Rated};
    rated.rating = 4;
    EXPECT_EQ(textOf(rated), R"({"kind":"rated","on_screen":0,"on_manikin":0,"rating":4,"note":""})");
}

TEST(CheckOffTextTest, AnEventSaysWhatBelongsToItAndNothingElse)
{
    for (const CheckOffEvent& event : everyKind()) {
        const json whole = json::parse(textOf(event));
        for (const auto& [key, value] : whole.items()) {
            const std::string where = faultIn(event, [&](json& text) { text.erase(key); });
            EXPECT_EQ(where, key) << wordOf(event.kind);
        }
        EXPECT_EQ(faultIn(event, [](json& text) { text["more"] = 1; }), "more");
        if (!whole.contains("note")) {
            EXPECT_EQ(faultIn(event, [](json& text) { text["note"] = "x"; }), "note");
        }
        if (!whole.contains("rating")) {
            EXPECT_EQ(faultIn(event, [](json& text) { text["rating"] = 3; }), "rating");
        }
    }
}

TEST(CheckOffTextTest, WrongValuesAreNamed)
{
    const CheckOffEvent seen = firstOf(CheckOffEventKind::Observed);
    EXPECT_EQ(faultIn(seen, [](json& t) { t["kind"] = "watched"; }), "kind");
    EXPECT_EQ(faultIn(seen, [](json& t) { t["on_screen"] = -1; }), "on_screen");
    EXPECT_EQ(faultIn(seen, [](json& t) { t["on_manikin"] = 0.5; }), "on_manikin");
    EXPECT_EQ(faultIn(seen, [](json& t) { t["observation"]["step"] = "sing"; }), "observation.step");
    EXPECT_EQ(faultIn(seen, [](json& t) { t["observation"]["seen"] = "maybe"; }), "observation.seen");
    EXPECT_EQ(faultIn(seen, [](json& t) { t["observation"]["at"] = -1; }), "observation.at");
    EXPECT_EQ(faultIn(seen, [](json& t) { t["observation"]["more"] = 1; }), "observation.more");
    EXPECT_EQ(faultIn(firstOf(CheckOffEventKind::Rated), [](json& t) { t["rating"] = 6; }), "rating");
    EXPECT_EQ(faultIn(firstOf(CheckOffEventKind::Held), [](json& t) { t["held"] = "10"; }), "held");
    EXPECT_EQ(faultIn(firstOf(CheckOffEventKind::Answered), [](json& t) { t["answer"]["item"] = 20; }),
              "answer.item");
    EXPECT_EQ(eventFrom("{\"kind\":").error().where, "1:9");
}

TEST(CheckOffTextTest, CutShortAtAnyByteItIsRefused)
{
    for (const CheckOffEvent& event : everyKind()) {
        const std::string text = textOf(event);
        for (std::size_t end = 0; end < text.size(); ++end)
            ASSERT_FALSE(eventFrom(std::string_view(text).substr(0, end))) << text << " at " << end;
    }
}

TEST(CheckOffTextTest, WordsAreTheirOwn)
{
    std::set<std::string_view> words;
    for (int i = 0; i < kCheckOffEventKindCount; ++i)
        words.insert(wordOf(static_cast<CheckOffEventKind>(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kCheckOffEventKindCount));
    words.clear();
    for (int i = 0; i < kCheckOffStageCount; ++i)
        words.insert(wordOf(static_cast<CheckOffStage>(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kCheckOffStageCount));
    EXPECT_EQ(wordOf(CheckOffStage::OnScreen), "on_screen");
    EXPECT_EQ(wordOf(CheckOffEventKind::SafetyStop), "safety_stop");
}

}  // namespace check_off_text_test
