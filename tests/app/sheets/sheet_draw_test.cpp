#include "app/sheets/sheet_draw.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QRadioButton>

#include "tests/support/odd_sheet.h"

namespace fb::test::sheet_draw_test {

TEST(SheetDrawTest, ASeedIsAskedForWhereAllStudentsMarkTheSame)
{
    SheetDraw part;
    part.fill(plainSheet());
    auto* seed = part.findChild<QLineEdit*>("sheetSeed");
    EXPECT_FALSE(seed->isEnabled());
    part.findChild<QRadioButton*>("sheetSeedRule0")->click();
    EXPECT_TRUE(seed->isEnabled());
    seed->setText(" 271828 ");
    Sheet sheet;
    ASSERT_TRUE(part.writeTo(sheet));
    EXPECT_EQ(sheet.seedRule, SeedRule::SameForAll);
    EXPECT_EQ(sheet.seed, 271828U);
}

TEST(SheetDrawTest, ASeedThatIsNoneIsAFaultOnlyWhereItCounts)
{
    SheetDraw part;
    part.fill(oddSheet());
    auto* seed = part.findChild<QLineEdit*>("sheetSeed");
    for (const char* bad : {"", "x", "-1", "99999999999999999999"}) {
        seed->setText(QLatin1String(bad));
        Sheet sheet = oddSheet();
        const auto written = part.writeTo(sheet);
        ASSERT_FALSE(written) << bad;
        EXPECT_EQ(written.error().problem, Problem::SeedNotANumber);
    }
    part.findChild<QRadioButton*>("sheetSeedRule1")->click();
    Sheet sheet = oddSheet();
    ASSERT_TRUE(part.writeTo(sheet));
    EXPECT_EQ(sheet.seed, oddSheet().seed);
}

}  // namespace fb::test::sheet_draw_test
