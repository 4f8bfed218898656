#include "app/sheets/sheet_part.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <memory>
#include <vector>

#include "app/sheets/sheet_draw.h"
#include "app/sheets/sheet_items.h"
#include "app/sheets/sheet_rules.h"
#include "app/sheets/sheet_steps.h"
#include "tests/support/odd_sheet.h"

namespace fb::test::sheet_part_test {

// Filled and written again by every part, a sheet is the same, and nobody is told of a change.
TEST(SheetPartTest, WhatAPartIsFilledWithItWritesBack)
{
    std::vector<std::unique_ptr<SheetPart>> parts;
    parts.push_back(std::make_unique<SheetItems>());
    parts.push_back(std::make_unique<SheetDraw>());
    parts.push_back(std::make_unique<SheetSteps>());
    parts.push_back(std::make_unique<SheetRules>());
    for (const Sheet& sheet : {oddSheet(), plainSheet(), oddSheet()}) {
        Sheet written;
        written.title = sheet.title;
        written.invented = sheet.invented;
        for (const auto& part : parts) {
            QSignalSpy changed(part.get(), &SheetPart::changed);
            part->fill(sheet);
            part->say();
            EXPECT_EQ(changed.count(), 0);
            ASSERT_TRUE(part->writeTo(written));
        }
        EXPECT_EQ(written, sheet) << textOf(written);
    }
}

TEST(SheetPartTest, APartLeavesTheSharesOfOthersAlone)
{
    SheetRules rules;
    rules.fill(plainSheet());
    Sheet sheet = oddSheet();
    ASSERT_TRUE(rules.writeTo(sheet));
    Sheet expected = oddSheet();
    expected.retest = plainSheet().retest;
    expected.cutPercent = plainSheet().cutPercent;
    expected.promptedShare = plainSheet().promptedShare;
    expected.itemWeight = plainSheet().itemWeight;
    EXPECT_EQ(sheet, expected);
}

}  // namespace fb::test::sheet_part_test
