// What a sheet may hold, whoever made it.
#include "core/session/sheet.h"

#include <algorithm>
#include <string>

#include "core/session/population.h"

namespace fb {

namespace sheet_detail {

std::string shown(double value)
{
    std::string text = std::to_string(value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return text;
}

struct Border {
    std::string_view key;
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
};

Result<bool> titled(const std::string& title)
{
    const bool blank = title.find_first_not_of(" \t\r\n") == std::string::npos;
    if (blank || title.size() > kSheetLongestTitle)
        return fault(Problem::SheetWrongValue, "title", title.substr(0, kSheetLongestTitle));
    return true;
}

Result<bool> askable(const std::vector<SheetItem>& items)
{
    if (items.empty())
        return fault(Problem::SheetNoItems);
    if (items.size() > static_cast<std::size_t>(kSheetMostItems))
        return fault(Problem::SheetWrongValue, "items", std::to_string(items.size()), 1.0, kSheetMostItems);
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto views = askedViews(items[i].site);
        if (std::ranges::find(views, items[i].view) == views.end())
            return fault(Problem::SheetWrongValue, "items[" + std::to_string(i + 1) + "].view",
                         std::string(wordOf(items[i].view)));
    }
    return true;
}

Result<bool> watchable(const std::vector<SheetStep>& steps)
{
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const auto same = [&](const SheetStep& other) { return other.step == steps[i].step; };
        const auto before = steps.begin() + static_cast<std::ptrdiff_t>(i);
        if (steps[i].step == ProcedureStep::Recap || std::any_of(steps.begin(), before, same))
            return fault(Problem::SheetWrongValue, "steps[" + std::to_string(i + 1) + "].step",
                         std::string(wordOf(steps[i].step)));
    }
    return true;
}

Result<bool> withinBorders(const Sheet& sheet)
{
    if (sheet.seed > kLargestSeed)
        return fault(Problem::SheetWrongValue, "seed", std::to_string(sheet.seed), 0.0,
                     static_cast<double>(kLargestSeed));
    const Border borders[] = {
        {"seconds_per_item", static_cast<double>(sheet.secondsPerItem), 0.0, kSheetMostSeconds},
        {"seconds_on_screen", static_cast<double>(sheet.secondsOnScreen), 0.0, kSheetMostSeconds},
        {"seconds_on_manikin", static_cast<double>(sheet.secondsOnManikin), 0.0, kSheetMostSeconds},
        {"prompted_share", sheet.promptedShare, 0.0, 1.0},
        {"item_weight", sheet.itemWeight, kSheetLeastWeight, kSheetMostWeight},
        {"cut_percent", sheet.cutPercent, 0.0, 100.0},
        {"held_seconds", sheet.heldSeconds, 0.0, kSheetLongestHold},
        {"retest.attempts", static_cast<double>(sheet.retest.attempts), 1.0, kSheetMostAttempts},
        {"retest.days_between", static_cast<double>(sheet.retest.daysBetween), 0.0, kSheetMostDays},
    };
    for (const Border& border : borders)
        if (!(border.value >= border.low && border.value <= border.high))
            return fault(Problem::SheetWrongValue, std::string(border.key), shown(border.value), border.low,
                         border.high);
    return true;
}

}  // namespace sheet_detail

Result<Sheet> checkedSheet(Sheet sheet)
{
    for (const auto& checked : {sheet_detail::titled(sheet.title), sheet_detail::askable(sheet.items),
                                sheet_detail::withinBorders(sheet), sheet_detail::watchable(sheet.steps)})
        if (!checked)
            return tl::unexpected(checked.error());
    return sheet;
}

IndexRange indexRange(Population population)
{
    switch (population) {
    case Population::Any: return {kIndexLow, kIndexHigh};
    case Population::Lean: return {kIndexLow, kSheetLeanBelow};
    case Population::Average: return {kSheetLeanBelow, kSheetHeavyFrom};
    case Population::Heavy: return {kSheetHeavyFrom, kIndexHigh};
    }
    return {};
}

std::string_view wordOf(Population population)
{
    switch (population) {
    case Population::Any: return "any";
    case Population::Lean: return "lean";
    case Population::Average: return "average";
    case Population::Heavy: return "heavy";
    }
    return {};
}

std::string_view wordOf(SeedRule rule)
{
    switch (rule) {
    case SeedRule::SameForAll: return "same_for_all";
    case SeedRule::OwnForEach: return "own_for_each";
    }
    return {};
}

std::string_view wordOf(HelpLevel help)
{
    switch (help) {
    case HelpLevel::DrawnAndNamed: return "drawn_and_named";
    case HelpLevel::NamedOnly: return "named_only";
    case HelpLevel::Nothing: return "nothing";
    }
    return {};
}

}  // namespace fb
