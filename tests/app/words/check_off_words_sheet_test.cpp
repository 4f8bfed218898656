// A sheet and its items in words.
#include <gtest/gtest.h>

#include <QLocale>
#include <QSet>

#include "app/words/check_off_words.h"
#include "core/session/sheet.h"

namespace fb::test::check_off_words_sheet_test {

namespace check_off_sheet_test {

QString inWords(const Sheet& sheet) { return sheetInWords(sheet).join(QLatin1Char('\n')); }

void expectTold(const Sheet& sheet, std::initializer_list<const char*> words)
{
    const QString text = inWords(sheet);
    for (const char* each : words)
        EXPECT_TRUE(text.contains(QString::fromUtf8(each))) << each << " in\n" << text.toStdString();
}

}  // namespace check_off_sheet_test

using namespace check_off_sheet_test;

TEST(CheckOffWordsTest, AnItemTellsSiteSideViewAndHelp)
{
    EXPECT_EQ(itemName({Site::Ventrogluteal, Side::Left, View::HipSide, HelpLevel::Nothing}),
              QStringLiteral("Ventrogluteal, left, from the side; nothing drawn"));
    EXPECT_EQ(itemName({Site::VastusLateralis, std::nullopt, View::ThighFront, HelpLevel::Nothing, true}),
              QStringLiteral("Vastus lateralis, either side, from the front; found by hand"));
    QSet<QString> all;
    int combinations = 0;
    for (const Site site : kSites) {
        for (const View view : askedViews(site)) {
            for (int help = 0; help < kHelpLevelCount; ++help) {
                all += itemName({site, Side::Right, view, static_cast<HelpLevel>(help)});
                ++combinations;
            }
        }
    }
    EXPECT_EQ(all.size(), combinations);
}

TEST(CheckOffWordsTest, ASheetIsToldInAsManyLinesAsItHasSubjects)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    Sheet sheet;
    sheet.items.resize(6);
    sheet.secondsPerItem = 90;
    sheet.secondsOnScreen = 600;
    sheet.secondsOnManikin = 720;
    sheet.steps = {
        {ProcedureStep::Identify, true}, {ProcedureStep::Insert, true}, {ProcedureStep::Explain, false}};
    sheet.cutPercent = 82.5;
    sheet.retest = {3, 2, true, true, true};
    expectTold(sheet, {"6 item", "adults of any build, new patients",
                       "1:30 for each item, 10:00 on screen, 12:00 on", "3 step", "critical: 2",
                       "Z-track, skin is cleaned, does not aspirate", "82.5 %", "3 attempt", "at least 2 day",
                       "practice signed first", "second assessor", "not coming counts"});
    EXPECT_FALSE(sheetInWords(sheet).contains(QString()));
}

TEST(CheckOffWordsTest, WhatASheetDoesNotAskForIsSaidOrLeftOut)
{
    Sheet sheet;
    sheet.items.resize(1);
    sheet.secondsPerItem = 0;
    sheet.secondsOnManikin = 720;
    sheet.seedRule = SeedRule::SameForAll;
    sheet.population = Population::Heavy;
    sheet.protocol = {false, false, true, true};
    sheet.retest = {1, 2, true, false, false};
    expectTold(sheet, {"No limit of time", "Nothing on the manikin", "heavy adults, the same patients",
                       "no Z-track, clean skin is not swabbed, aspirates, drawn up through a filter needle"});
    EXPECT_FALSE(inWords(sheet).contains(QStringLiteral("at least")));
    EXPECT_FALSE(inWords(sheet).contains(QStringLiteral("second assessor")));
}

}  // namespace fb::test::check_off_words_sheet_test
