#include "core/session/sheet_defaults.h"

#include <gtest/gtest.h>

#include "core/session/population.h"
#include "core/session/sheet.h"

using namespace fb;

namespace sheet_defaults_test {

TEST(SheetDefaultsTest, ANewSheetStartsWithThem)
{
    const Sheet sheet;
    EXPECT_EQ(sheet.secondsPerItem, 120);
    EXPECT_EQ(sheet.secondsOnScreen, 0);
    EXPECT_EQ(sheet.secondsOnManikin, 600);
    EXPECT_EQ(sheet.promptedShare, 0.5);
    EXPECT_EQ(sheet.itemWeight, 1.0);
    EXPECT_EQ(sheet.cutPercent, 80.0);
    EXPECT_EQ(sheet.heldSeconds, 10.0);
    EXPECT_EQ(sheet.retest, (RetestRule{3, 1, true, true, false}));
}

// A new sheet lacks only a title and an item.
TEST(SheetDefaultsTest, TheDefaultsLieWithinTheLimits)
{
    Sheet sheet;
    sheet.title = "Deltoid";
    sheet.items.push_back({Site::Deltoid, {}, View::ShoulderSide});
    EXPECT_TRUE(checkedSheet(sheet));
}

TEST(SheetDefaultsTest, PopulationsFollowOnEachOtherWithinTheSpread)
{
    EXPECT_LT(kIndexLow, kSheetLeanBelow);
    EXPECT_LT(kSheetLeanBelow, kSheetHeavyFrom);
    EXPECT_LT(kSheetHeavyFrom, kIndexHigh);
}

}  // namespace sheet_defaults_test
