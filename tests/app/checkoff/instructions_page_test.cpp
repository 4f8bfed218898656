#include "app/checkoff/instructions_page.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>

#include "tests/support/check_off_run.h"

namespace instructions_page_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(InstructionsPageTest, TellsHowManyHowLongWhatFollowsAndWhenMarksAreTold)
{
    CheckOffRun run;
    InstructionsPage page(*run.presenter);
    page.show();
    run.presenter->begin(QStringLiteral("S-2"));
    run.presenter->confirmIdentity();
    const QString words = page.findChild<QLabel*>(QStringLiteral("instructions"))->text();
    EXPECT_TRUE(words.contains(QStringLiteral("3 site"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("1 minute(s) 30 second(s) for each site")))
        << "with the student's own extra time: " << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("at the end")));
    EXPECT_TRUE(words.contains(QStringLiteral("not confirmed in time")));
    EXPECT_TRUE(words.contains(QStringLiteral("hidden")));
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("beginItems")), Qt::LeftButton);
    EXPECT_EQ(run.state().stage, CheckOffStage::OnScreen);
}

TEST(InstructionsPageTest, SaysOnlyWhatHoldsForTheSheet)
{
    Sheet sheet = shortSheet();
    sheet.secondsPerItem = 0;
    const auto told = [&] { return instructionsFor(sheet, 0).join(QLatin1Char(' ')); };
    EXPECT_TRUE(told().contains(QStringLiteral("no limit")));
    EXPECT_FALSE(told().contains(QStringLiteral("hidden")));
    EXPECT_FALSE(told().contains(QStringLiteral("by hand")));
    sheet.secondsOnScreen = 240;
    EXPECT_TRUE(told().contains(QStringLiteral("4 minute(s) in all")));
    sheet.secondsPerItem = 60;
    EXPECT_TRUE(told().contains(QStringLiteral("1 minute(s) for each site and 4 minute(s) in all")));
    sheet.items[0].byHand = true;
    EXPECT_TRUE(told().contains(QStringLiteral("by hand")));
    sheet.secondsPerItem = 45;
    EXPECT_TRUE(told().contains(QStringLiteral("have 45 second(s) for each site")));
    sheet.steps.clear();
    EXPECT_FALSE(told().contains(QStringLiteral("manikin")));
    sheet.steps = {{ProcedureStep::Insert, true}};
    sheet.secondsOnManikin = 0;
    EXPECT_TRUE(told().contains(QStringLiteral("on the manikin.")));
    sheet.secondsOnManikin = 360;
    EXPECT_TRUE(told().contains(QStringLiteral("on the manikin, in 6 minute(s).")));
}

}  // namespace

}  // namespace instructions_page_test
