#include "app/sheets/sheet_steps.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/odd_sheet.h"

namespace fb::test::sheet_steps_tests {

namespace sheet_steps_test {

Sheet writtenBy(const SheetSteps& part)
{
    Sheet sheet;
    EXPECT_TRUE(part.writeTo(sheet));
    return sheet;
}

QCheckBox* box(const SheetSteps& part, const char* name)
{
    return part.findChild<QCheckBox*>(QLatin1String(name));
}

}  // namespace sheet_steps_test

TEST(SheetStepsTest, AllStepsAreThoseOfTheProtocol)
{
    using namespace sheet_steps_test;
    SheetSteps part;
    part.fill(plainSheet());
    EXPECT_TRUE(writtenBy(part).steps.empty());
    QSignalSpy changed(&part, &SheetPart::changed);
    QTest::mouseClick(part.findChild<QPushButton*>("allSteps"), Qt::LeftButton);
    EXPECT_EQ(changed.count(), 1);
    std::vector<SheetStep> expected;
    for (int step = 0; step < kProcedureStepCount; ++step) {
        if (belongs(procedureStepAt(step), plainSheet().protocol))
            expected.push_back({procedureStepAt(step), false});
    }
    EXPECT_EQ(writtenBy(part).steps, expected);
    QTest::mouseClick(part.findChild<QPushButton*>("noSteps"), Qt::LeftButton);
    EXPECT_TRUE(writtenBy(part).steps.empty());
}

TEST(SheetStepsTest, AStepOutsideTheProtocolIsHiddenAndNotWatched)
{
    using namespace sheet_steps_test;
    SheetSteps part;
    part.fill(oddSheet());
    part.show();
    auto* aspirate = box(part, "watched.aspirate");
    EXPECT_TRUE(aspirate->isVisible());
    EXPECT_FALSE(box(part, "watched.shift_skin")->isVisible());
    box(part, "aspirates")->click();
    EXPECT_FALSE(aspirate->isVisible());
    EXPECT_EQ(writtenBy(part).steps,
              (std::vector<SheetStep>{{ProcedureStep::Identify, true}, {ProcedureStep::Document, true}}));
    // Turned back on, nothing was forgotten.
    box(part, "aspirates")->click();
    EXPECT_EQ(writtenBy(part).steps, oddSheet().steps);
}

TEST(SheetStepsTest, OnlyAWatchedStepIsCritical)
{
    using namespace sheet_steps_test;
    SheetSteps part;
    part.fill(plainSheet());
    auto* critical = box(part, "critical.sharps");
    EXPECT_FALSE(critical->isEnabled());
    box(part, "watched.sharps")->click();
    ASSERT_TRUE(critical->isEnabled());
    critical->click();
    EXPECT_EQ(writtenBy(part).steps, (std::vector<SheetStep>{{ProcedureStep::Sharps, true}}));
    EXPECT_TRUE(critical->accessibleName().startsWith("Critical: "));
}

TEST(SheetStepsTest, ARecapIsNoStep)
{
    using namespace sheet_steps_test;
    SheetSteps part;
    EXPECT_EQ(box(part, "watched.recap"), nullptr);
    Sheet sheet = plainSheet();
    sheet.steps = {{ProcedureStep::Recap, true}};
    part.fill(sheet);
    EXPECT_TRUE(writtenBy(part).steps.empty());
}

}  // namespace fb::test::sheet_steps_tests
