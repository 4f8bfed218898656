#include "core/session/sheet.h"

#include <gtest/gtest.h>

#include <functional>
#include <nlohmann/json.hpp>

#include "core/session/population.h"
#include "tests/support/check_off_course.h"

using namespace fb;
using nlohmann::json;

namespace sheet_test {

namespace {

Sheet sampleSheet()
{
    Sheet sheet = test::plainSheet(2, {ProcedureStep::Identify, ProcedureStep::Insert});
    sheet.items[1] = {Site::VastusLateralis, std::nullopt, View::ThighFront, HelpLevel::NamedOnly, true};
    sheet.secondsPerItem = 90;
    return sheet;
}

Fault faultWith(const std::function<void(json&)>& change)
{
    json text = json::parse(textOf(sampleSheet()));
    change(text);
    const auto read = sheetFrom(text.dump());
    return read ? Fault{} : read.error();
}

Fault faultWith(const std::function<void(Sheet&)>& change)
{
    Sheet sheet = sampleSheet();
    change(sheet);
    const auto checked = checkedSheet(sheet);
    return checked ? Fault{} : checked.error();
}

Fault wrong(std::string where, std::string what, double low = 0, double high = 0)
{
    return {Problem::SheetWrongValue, std::move(where), std::move(what), low, high};
}

}  // namespace

// A lab may keep it under version control: every byte is meant.
TEST(SheetTest, ItsTextIsAlwaysTheSame)
{
    EXPECT_EQ(textOf(sampleSheet()), R"({
  "title": "Three marks",
  "invented": false,
  "items": [
    {
      "site": "deltoid",
      "side": "left",
      "view": "shoulder-side",
      "help": "nothing",
      "by_hand": false
    },
    {
      "site": "vastus-lateralis",
      "side": "drawn",
      "view": "thigh-front",
      "help": "named_only",
      "by_hand": true
    }
  ],
  "population": "any",
  "seed_rule": "own_for_each",
  "seed": 1,
  "seconds_per_item": 90,
  "seconds_on_screen": 0,
  "seconds_on_manikin": 0,
  "protocol": {
    "cleans_skin": true,
    "z_track": true,
    "aspirates": false,
    "filter_needle": false
  },
  "steps": [
    {
      "step": "identify",
      "critical": true
    },
    {
      "step": "insert",
      "critical": true
    }
  ],
  "prompted_share": 0.5,
  "item_weight": 1.0,
  "cut_percent": 80.0,
  "held_seconds": 10.0,
  "retest": {
    "attempts": 3,
    "days_between": 1,
    "remediation_first": true,
    "second_assessor_on_last": true,
    "no_show_counts": false
  }
}
)");
}

TEST(SheetTest, ReadsWhatItWrote)
{
    const auto read = sheetFrom(textOf(sampleSheet()));
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, sampleSheet());
}

TEST(SheetTest, EveryKeyIsNeededAndNoOtherIsKnown)
{
    const json whole = json::parse(textOf(sampleSheet()));
    for (const auto& [key, value] : whole.items()) {
        const Fault missing = faultWith([&](json& sheet) { sheet.erase(key); });
        EXPECT_EQ(missing, (Fault{Problem::SheetMissingKey, key, "", 0, 0}));
    }
    for (const char* part : {"/items/0", "/protocol", "/steps/1", "/retest"}) {
        const json::json_pointer at(part);
        for (const auto& [key, value] : whole.at(at).items()) {
            const Fault missing = faultWith([&](json& sheet) { sheet.at(at).erase(key); });
            EXPECT_EQ(missing.problem, Problem::SheetMissingKey) << part << " " << key;
            EXPECT_TRUE(missing.where.ends_with("." + key)) << missing.where;
        }
        const Fault unknown = faultWith([&](json& sheet) { sheet.at(at)["colour"] = 1; });
        EXPECT_EQ(unknown.problem, Problem::SheetUnknownKey);
        EXPECT_TRUE(unknown.where.ends_with(".colour")) << unknown.where;
    }
    EXPECT_EQ(faultWith([](json& sheet) { sheet["colour"] = "red"; }),
              (Fault{Problem::SheetUnknownKey, "colour", "", 0, 0}));
}

TEST(SheetTest, AValueOfAnotherKindIsRefusedWhereverItStands)
{
    const json flat = json::parse(textOf(sampleSheet())).flatten();
    for (const auto& [key, value] : flat.items()) {
        const json::json_pointer at(key);
        for (const json& other : {json("dorsogluteal"), json(-1), json(1e300), json(true), json(nullptr),
                                  json::array(), json::object()}) {
            if (other.type() == value.type() && (other.is_boolean() || key == "/title"))
                continue;
            const Fault fault = faultWith([&](json& sheet) { sheet[at] = other; });
            EXPECT_EQ(fault.problem, Problem::SheetWrongValue) << key << " " << other;
        }
    }
}

TEST(SheetTest, NumbersStayWithinTheirBorders)
{
    EXPECT_EQ(faultWith([](json& s) { s["seconds_per_item"] = 7201; }),
              wrong("seconds_per_item", "7201", 0, 7200));
    EXPECT_EQ(faultWith([](json& s) { s["seconds_per_item"] = 1.5; }).problem, Problem::SheetWrongValue);
    EXPECT_EQ(faultWith([](json& s) { s["cut_percent"] = 100.5; }), wrong("cut_percent", "100.5", 0, 100));
    EXPECT_EQ(faultWith([](json& s) { s["retest"]["attempts"] = 0; }), wrong("retest.attempts", "0", 1, 10));
    EXPECT_EQ(faultWith([](json& s) { s["item_weight"] = 0; }).where, "item_weight");
    EXPECT_EQ(faultWith([](json& s) { s["cut_percent"] = 100; }), Fault{});
    EXPECT_EQ(faultWith([](json& s) { s["seed"] = (1ULL << 53) + 1; }).where, "seed");
}

// The same borders for a sheet that was edited and never was a text.
TEST(SheetTest, AnEditedSheetIsHeldToThemToo)
{
    EXPECT_EQ(faultWith([](Sheet& s) { s.secondsOnScreen = -1; }), wrong("seconds_on_screen", "-1", 0, 7200));
    EXPECT_EQ(faultWith([](Sheet& s) { s.secondsPerItem = 7201; }).where, "seconds_per_item");
    EXPECT_EQ(faultWith([](Sheet& s) { s.secondsOnManikin = 9000; }).where, "seconds_on_manikin");
    EXPECT_EQ(faultWith([](Sheet& s) { s.promptedShare = 1.25; }), wrong("prompted_share", "1.25", 0, 1));
    EXPECT_EQ(faultWith([](Sheet& s) { s.itemWeight = std::nan(""); }).where, "item_weight");
    EXPECT_EQ(faultWith([](Sheet& s) { s.cutPercent = -1.0; }).where, "cut_percent");
    EXPECT_EQ(faultWith([](Sheet& s) { s.heldSeconds = 61.0; }).where, "held_seconds");
    EXPECT_EQ(faultWith([](Sheet& s) { s.seed = kLargestSeed + 1; }).where, "seed");
    EXPECT_EQ(faultWith([](Sheet& s) { s.retest.attempts = 11; }).where, "retest.attempts");
    EXPECT_EQ(faultWith([](Sheet& s) { s.retest.daysBetween = -1; }).where, "retest.days_between");
    EXPECT_EQ(faultWith([](Sheet&) {}), Fault{});
}

TEST(SheetTest, ATitleIsNeeded)
{
    for (const std::string& title : {std::string(), std::string(" \t\n"), std::string(121, 'x')}) {
        EXPECT_EQ(faultWith([&](Sheet& s) { s.title = title; }).where, "title");
        EXPECT_EQ(faultWith([&](json& s) { s["title"] = title; }).where, "title");
    }
}

TEST(SheetTest, OneToTwentyItems)
{
    EXPECT_EQ(faultWith([](Sheet& s) { s.items.clear(); }).problem, Problem::SheetNoItems);
    EXPECT_EQ(faultWith([](json& s) { s["items"] = json::array(); }).problem, Problem::SheetNoItems);
    EXPECT_EQ(faultWith([](Sheet& s) { s.items.resize(20, s.items[0]); }), Fault{});
    EXPECT_EQ(faultWith([](Sheet& s) { s.items.resize(21, s.items[0]); }), wrong("items", "21", 1, 20));
}

TEST(SheetTest, ASiteIsAskedInItsOwnViewsOnly)
{
    EXPECT_EQ(faultWith([](Sheet& s) { s.items[1].view = View::HipSide; }),
              wrong("items[2].view", "hip-side"));
    EXPECT_EQ(faultWith([](Sheet& s) { s.items[0].view = View::ShoulderThreeQuarter; }).where,
              "items[1].view");
    EXPECT_EQ(faultWith([](json& s) { s["items"][0]["view"] = "shoulder-three-quarter"; }),
              wrong("items[1].view", "shoulder-three-quarter"));
    EXPECT_EQ(faultWith([](json& s) { s["items"][0]["view"] = "open-hand"; }).where, "items[1].view");
}

TEST(SheetTest, AStepStandsOnceAndARecapIsNone)
{
    EXPECT_EQ(faultWith([](Sheet& s) { s.steps.push_back(s.steps[0]); }), wrong("steps[3].step", "identify"));
    EXPECT_EQ(faultWith([](Sheet& s) { s.steps[0].step = ProcedureStep::Recap; }),
              wrong("steps[1].step", "recap"));
    EXPECT_EQ(faultWith([](Sheet& s) { s.steps.clear(); }), Fault{});
}

TEST(SheetTest, SaysWhereABrokenTextBreaks)
{
    std::string text = textOf(sampleSheet());
    text.insert(text.find("\"items\""), "?");
    const auto read = sheetFrom(text);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error(), (Fault{Problem::SheetNotReadable, "4:3", "", 0, 0}));
}

TEST(SheetTest, PopulationsMeetWithoutAGap)
{
    const auto lean = indexRange(Population::Lean);
    const auto average = indexRange(Population::Average);
    const auto heavy = indexRange(Population::Heavy);
    const auto any = indexRange(Population::Any);
    EXPECT_EQ(lean.low, any.low);
    EXPECT_EQ(lean.high, average.low);
    EXPECT_EQ(average.high, heavy.low);
    EXPECT_EQ(heavy.high, any.high);
    EXPECT_EQ(any.low, kIndexLow);
    EXPECT_EQ(any.high, kIndexHigh);
    EXPECT_EQ(average.low, 22.0);
    EXPECT_EQ(average.high, 30.0);
}

TEST(SheetTest, WordsAreTheirOwn)
{
    EXPECT_EQ(wordOf(Population::Lean), "lean");
    EXPECT_EQ(wordOf(Population::Average), "average");
    EXPECT_EQ(wordOf(Population::Heavy), "heavy");
    EXPECT_EQ(wordOf(SeedRule::SameForAll), "same_for_all");
    EXPECT_EQ(wordOf(HelpLevel::DrawnAndNamed), "drawn_and_named");
}

}  // namespace sheet_test
