#include "app/checkoff/instructions_page.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>

#include "tests/support/check_off_run.h"

namespace instructions_page_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(InstructionsPageTest, TellsHowManyHowLongAndThatNothingIsToldBefore)
{
    CheckOffRun run;
    InstructionsPage page(*run.presenter);
    page.show();
    run.presenter->begin(QStringLiteral("S-2"));
    run.presenter->confirmIdentity();
    const QString words = page.findChild<QLabel*>(QStringLiteral("instructions"))->text();
    EXPECT_TRUE(words.contains(QStringLiteral("3 item"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("1:30 for each item"))) << "with the student's own extra time";
    EXPECT_TRUE(words.contains(QStringLiteral("before the end")));
    EXPECT_TRUE(words.contains(QStringLiteral("hidden")));
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("beginItems")), Qt::LeftButton);
    EXPECT_EQ(run.state().stage, CheckOffStage::OnScreen);
}

TEST(InstructionsPageTest, SaysOnlyWhatHoldsForTheSheet)
{
    Sheet sheet = shortSheet();
    sheet.secondsPerItem = 0;
    const auto told = [&] { return instructionsFor(sheet, 0).join(QLatin1Char(' ')); };
    EXPECT_TRUE(told().contains(QStringLiteral("none is set")));
    EXPECT_FALSE(told().contains(QStringLiteral("hidden")));
    EXPECT_FALSE(told().contains(QStringLiteral("by hand")));
    sheet.secondsOnScreen = 240;
    EXPECT_TRUE(told().contains(QStringLiteral("4:00 in all")));
    sheet.secondsPerItem = 60;
    EXPECT_TRUE(told().contains(QStringLiteral("1:00 for each item and 4:00 in all")));
    sheet.items[0].byHand = true;
    EXPECT_TRUE(told().contains(QStringLiteral("by hand")));
}

}  // namespace

}  // namespace instructions_page_test
