// A sheet as JSON, and back: see sheet.h for the faults.
#include "core/session/json_fields.h"
#include "core/session/sheet.h"

namespace fb {

namespace sheet_text_detail {

using nlohmann::ordered_json;

constexpr std::string_view kEitherSide = "drawn";

ordered_json itemsOf(const Sheet& sheet)
{
    ordered_json items = ordered_json::array();
    for (const SheetItem& item : sheet.items)
        items.push_back({{"site", wordOf(item.site)},
                         {"side", item.side ? wordOf(*item.side) : kEitherSide},
                         {"view", wordOf(item.view)},
                         {"help", wordOf(item.help)},
                         {"by_hand", item.byHand}});
    return items;
}

ordered_json stepsOf(const Sheet& sheet)
{
    ordered_json steps = ordered_json::array();
    for (const SheetStep& step : sheet.steps)
        steps.push_back({{"step", wordOf(step.step)}, {"critical", step.critical}});
    return steps;
}

ordered_json jsonOf(const Protocol& protocol)
{
    return {{"cleans_skin", protocol.cleansSkin},
            {"z_track", protocol.zTrack},
            {"aspirates", protocol.aspirates},
            {"filter_needle", protocol.filterNeedle}};
}

ordered_json jsonOf(const RetestRule& rule)
{
    return {{"attempts", rule.attempts},
            {"days_between", rule.daysBetween},
            {"remediation_first", rule.remediationFirst},
            {"second_assessor_on_last", rule.secondAssessorOnLast},
            {"no_show_counts", rule.noShowCounts}};
}

SheetItem itemIn(JsonFields fields)
{
    SheetItem item;
    item.site = fields.word("site", siteFrom);
    if (const std::string side = fields.text("side"); side != kEitherSide)
        item.side = fields.word("side", sideFrom);
    item.view = fields.word("view", viewFrom);
    item.help =
        fields.word("help", [](std::string_view word) { return enumFrom<HelpLevel>(word, kHelpLevelCount); });
    item.byHand = fields.flag("by_hand");
    fields.noMore();
    return item;
}

SheetStep stepIn(JsonFields fields)
{
    const SheetStep step{fields.word("step", procedureStepFrom), fields.flag("critical")};
    fields.noMore();
    return step;
}

Protocol protocolIn(JsonFields fields)
{
    const Protocol protocol{fields.flag("cleans_skin"), fields.flag("z_track"), fields.flag("aspirates"),
                            fields.flag("filter_needle")};
    fields.noMore();
    return protocol;
}

RetestRule retestIn(JsonFields fields)
{
    const RetestRule rule{fields.whole("attempts", 1, kSheetMostAttempts),
                          fields.whole("days_between", 0, kSheetMostDays), fields.flag("remediation_first"),
                          fields.flag("second_assessor_on_last"), fields.flag("no_show_counts")};
    fields.noMore();
    return rule;
}

// Who is asked, and from what.
void readDraw(JsonFields& fields, Sheet& sheet)
{
    for (JsonFields& item : fields.objects("items"))
        sheet.items.push_back(itemIn(item));
    sheet.population = fields.word(
        "population", [](std::string_view word) { return enumFrom<Population>(word, kPopulationCount); });
    sheet.seedRule = fields.word(
        "seed_rule", [](std::string_view word) { return enumFrom<SeedRule>(word, kSeedRuleCount); });
    sheet.seed = fields.natural("seed", kLargestSeed);
}

Sheet sheetIn(JsonFields& fields)
{
    Sheet sheet;
    sheet.title = fields.text("title");
    sheet.invented = fields.flag("invented");
    readDraw(fields, sheet);
    sheet.secondsPerItem = fields.whole("seconds_per_item", 0, kSheetMostSeconds);
    sheet.secondsOnScreen = fields.whole("seconds_on_screen", 0, kSheetMostSeconds);
    sheet.secondsOnManikin = fields.whole("seconds_on_manikin", 0, kSheetMostSeconds);
    sheet.protocol = protocolIn(fields.object("protocol"));
    for (JsonFields& step : fields.objects("steps"))
        sheet.steps.push_back(stepIn(step));
    sheet.promptedShare = fields.number("prompted_share", 0.0, 1.0);
    sheet.itemWeight = fields.number("item_weight", kSheetLeastWeight, kSheetMostWeight);
    sheet.cutPercent = fields.number("cut_percent", 0.0, 100.0);
    sheet.heldSeconds = fields.number("held_seconds", 0.0, kSheetLongestHold);
    sheet.retest = retestIn(fields.object("retest"));
    fields.noMore();
    return sheet;
}

}  // namespace sheet_text_detail

Result<Sheet> sheetFrom(std::string_view text)
{
    JsonText read(text, {Problem::SheetNotReadable, Problem::SheetUnknownKey, Problem::SheetMissingKey,
                         Problem::SheetWrongValue});
    JsonFields fields(read);
    Sheet sheet = sheet_text_detail::sheetIn(fields);
    if (read.fault())
        return tl::unexpected(*read.fault());
    return checkedSheet(std::move(sheet));
}

std::string textOf(const Sheet& sheet)
{
    using namespace sheet_text_detail;
    return pageOf({{"title", sheet.title},
                   {"invented", sheet.invented},
                   {"items", itemsOf(sheet)},
                   {"population", wordOf(sheet.population)},
                   {"seed_rule", wordOf(sheet.seedRule)},
                   {"seed", sheet.seed},
                   {"seconds_per_item", sheet.secondsPerItem},
                   {"seconds_on_screen", sheet.secondsOnScreen},
                   {"seconds_on_manikin", sheet.secondsOnManikin},
                   {"protocol", jsonOf(sheet.protocol)},
                   {"steps", stepsOf(sheet)},
                   {"prompted_share", sheet.promptedShare},
                   {"item_weight", sheet.itemWeight},
                   {"cut_percent", sheet.cutPercent},
                   {"held_seconds", sheet.heldSeconds},
                   {"retest", jsonOf(sheet.retest)}});
}

}  // namespace fb
