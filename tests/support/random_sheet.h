// Any sheet the program allows, from a stream.
#pragma once

#include <algorithm>
#include <string>

#include "core/basics/seed_stream.h"
#include "core/session/sheet.h"

namespace fb::test {

[[nodiscard]] inline bool tossed(SeedStream& stream) { return stream.below(2) == 0; }

[[nodiscard]] inline SheetItem randomItem(SeedStream& stream)
{
    SheetItem item;
    item.site = kSites[static_cast<std::size_t>(stream.below(static_cast<int>(kSites.size())))];
    const auto views = askedViews(item.site);
    item.view = views[static_cast<std::size_t>(stream.below(static_cast<int>(views.size())))];
    if (const int side = stream.below(3); side < 2)
        item.side = kSides[static_cast<std::size_t>(side)];
    item.help = static_cast<HelpLevel>(stream.below(kHelpLevelCount));
    item.byHand = tossed(stream);
    return item;
}

[[nodiscard]] inline std::string randomTitle(SeedStream& stream)
{
    static constexpr std::array kLetters{"a", "Z", "ß", "é", "中", "\"", "\\", "\t", "💉", " ", "\x01"};
    std::string title = "x";
    for (int i = stream.below(20); i > 0; --i)
        title += kLetters[static_cast<std::size_t>(stream.below(static_cast<int>(kLetters.size())))];
    return title;
}

[[nodiscard]] inline Sheet randomSheet(SeedStream& stream)
{
    Sheet sheet;
    sheet.title = randomTitle(stream);
    sheet.invented = tossed(stream);
    for (int i = 1 + stream.below(kSheetMostItems); i > 0; --i)
        sheet.items.push_back(randomItem(stream));
    sheet.population = static_cast<Population>(stream.below(kPopulationCount));
    sheet.seedRule = static_cast<SeedRule>(stream.below(kSeedRuleCount));
    sheet.seed = tossed(stream) ? kLargestSeed : stream.next() % kLargestSeed;
    sheet.secondsPerItem = stream.below(kSheetMostSeconds + 1);
    sheet.secondsOnScreen = stream.below(kSheetMostSeconds + 1);
    sheet.secondsOnManikin = stream.below(kSheetMostSeconds + 1);
    sheet.protocol = {tossed(stream), tossed(stream), tossed(stream), tossed(stream)};
    for (int i = 0; i < static_cast<int>(ProcedureStep::Recap); ++i)
        if (tossed(stream))
            sheet.steps.push_back({procedureStepAt(i), tossed(stream)});
    sheet.promptedShare = stream.unit();
    sheet.itemWeight = stream.between(kSheetLeastWeight, kSheetMostWeight);
    sheet.cutPercent = stream.between(0.0, 100.0);
    sheet.heldSeconds = stream.between(0.0, kSheetLongestHold);
    sheet.retest = {1 + stream.below(kSheetMostAttempts), stream.below(kSheetMostDays + 1), tossed(stream),
                    tossed(stream), tossed(stream)};
    return sheet;
}

}  // namespace fb::test
