#include "app/sheets/sheet_rules.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QSignalSpy>
#include <QSpinBox>

#include "core/session/sheet_defaults.h"
#include "tests/support/odd_sheet.h"

namespace fb::test::sheet_rules_test {

TEST(SheetRulesTest, EveryRuleIsTakenFromItsField)
{
    SheetRules part;
    part.fill(oddSheet());
    QSignalSpy changed(&part, &SheetPart::changed);
    part.findChild<QDoubleSpinBox*>("sheetCut")->setValue(90.0);
    part.findChild<QDoubleSpinBox*>("sheetPrompted")->setValue(25.0);
    part.findChild<QDoubleSpinBox*>("sheetWeight")->setValue(3.0);
    part.findChild<QSpinBox*>("sheetAttempts")->setValue(2);
    part.findChild<QSpinBox*>("sheetDays")->setValue(7);
    part.findChild<QCheckBox*>("sheetRemediation")->click();
    part.findChild<QCheckBox*>("sheetSecondAssessor")->click();
    part.findChild<QCheckBox*>("sheetNoShow")->click();
    EXPECT_EQ(changed.count(), 8);
    Sheet sheet;
    ASSERT_TRUE(part.writeTo(sheet));
    EXPECT_EQ(sheet.cutPercent, 90.0);
    EXPECT_EQ(sheet.promptedShare, 0.25);
    EXPECT_EQ(sheet.itemWeight, 3.0);
    EXPECT_EQ(sheet.retest, (RetestRule{2, 7, true, true, false}));
}

TEST(SheetRulesTest, TheFieldsHaveTheBordersOfASheet)
{
    SheetRules part;
    EXPECT_EQ(part.findChild<QSpinBox*>("sheetAttempts")->maximum(), kSheetMostAttempts);
    EXPECT_EQ(part.findChild<QSpinBox*>("sheetAttempts")->minimum(), 1);
    EXPECT_EQ(part.findChild<QSpinBox*>("sheetDays")->maximum(), kSheetMostDays);
    EXPECT_EQ(part.findChild<QDoubleSpinBox*>("sheetWeight")->minimum(), kSheetLeastWeight);
    EXPECT_EQ(part.findChild<QDoubleSpinBox*>("sheetCut")->maximum(), 100.0);
}

}  // namespace fb::test::sheet_rules_test
