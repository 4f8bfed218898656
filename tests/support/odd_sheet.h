// Two sheets that have no value in common: one with every value its own, one as a new one starts.
#pragma once

#include "core/session/sheet.h"

namespace fb::test {

[[nodiscard]] inline Sheet plainSheet()
{
    Sheet sheet;
    sheet.title = "Plain";
    sheet.items = {{Site::Deltoid, {}, View::ShoulderSide}};
    return sheet;
}

[[nodiscard]] inline Sheet oddSheet()
{
    Sheet sheet;
    sheet.title = "Odd";
    sheet.invented = true;
    sheet.items = {{Site::Ventrogluteal, Side::Left, View::HipSide, HelpLevel::NamedOnly, true},
                   {Site::VastusLateralis, {}, View::ThighFront, HelpLevel::DrawnAndNamed, false},
                   {Site::Deltoid, Side::Right, View::ShoulderSide}};
    sheet.population = Population::Heavy;
    sheet.seedRule = SeedRule::SameForAll;
    sheet.seed = 31415;
    sheet.secondsPerItem = 75;
    sheet.secondsOnScreen = 3601;
    sheet.secondsOnManikin = 0;
    sheet.protocol = {false, false, true, true};
    sheet.steps = {
        {ProcedureStep::Identify, true}, {ProcedureStep::Aspirate, false}, {ProcedureStep::Document, true}};
    sheet.promptedShare = 0.3333;
    sheet.itemWeight = 2.25;
    sheet.cutPercent = 87.5;
    sheet.heldSeconds = 7.5;
    sheet.retest = {5, 14, false, false, true};
    return sheet;
}

}  // namespace fb::test
