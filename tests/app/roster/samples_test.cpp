#include "app/roster/samples.h"

#include <gtest/gtest.h>

#include <QFile>
#include <algorithm>
#include <set>

namespace fb::test::samples_test {

TEST(SamplesTest, TheSheetIsInventedAndSaysSo)
{
    const auto sheet = sampleSheet();
    ASSERT_TRUE(sheet) << sheet.error().where;
    EXPECT_TRUE(sheet->invented);
    EXPECT_NE(sheet->title.find("(invented sample)"), std::string::npos);
}

TEST(SamplesTest, TheSheetAsksForEverySiteAndWatchesEveryStepOfItsProtocol)
{
    const Sheet sheet = sampleSheet().value();
    ASSERT_EQ(sheet.items.size(), 3U);
    for (const Site site : kSites)
        EXPECT_EQ(std::ranges::count(sheet.items, site, &SheetItem::site), 1);
    for (const SheetItem& item : sheet.items)
        EXPECT_EQ(item.help, HelpLevel::Nothing);
    std::vector<ProcedureStep> steps, expected;
    for (const SheetStep& step : sheet.steps)
        steps.push_back(step.step);
    for (int index = 0; index < kProcedureStepCount; ++index) {
        if (belongs(procedureStepAt(index), sheet.protocol))
            expected.push_back(procedureStepAt(index));
    }
    EXPECT_EQ(steps, expected);
}

// Minimum safe set of the lab: without any of these there is no pass.
TEST(SamplesTest, TheCriticalStepsAreTheOnesNobodyMayMiss)
{
    using enum ProcedureStep;
    const std::set<ProcedureStep> expected{HandHygiene, Identify, BedsideCheck, Landmarks,
                                           Insert,      Sharps,   Document};
    std::set<ProcedureStep> critical;
    const Sheet sheet = sampleSheet().value();
    for (const SheetStep& step : sheet.steps) {
        if (step.critical)
            critical.insert(step.step);
    }
    EXPECT_EQ(critical, expected);
}

TEST(SamplesTest, TheSheetIsWrittenAsTheProgramWritesIt)
{
    QFile file(QStringLiteral(":/samples/sample-sheet.json"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(textOf(sampleSheet().value()), file.readAll().toStdString());
}

TEST(SamplesTest, TheStudentsAreFifteenInventedPeople)
{
    const auto students = sampleStudents();
    ASSERT_EQ(students.size(), 15U);
    std::set<QString> ids;
    for (const Student& student : students) {
        EXPECT_TRUE(student.invented) << student.id.toStdString();
        EXPECT_TRUE(student.section.contains(QLatin1String("invented")));
        EXPECT_FALSE(student.family.isEmpty() || student.given.isEmpty());
        ids.insert(student.id);
    }
    EXPECT_EQ(ids.size(), students.size());
    EXPECT_EQ(std::ranges::count(students, 25, &Student::extraPercent), 1);
    EXPECT_EQ(std::ranges::count(students, QStringLiteral("es"), &Student::language), 1);
    EXPECT_EQ(std::ranges::count_if(students, [](const Student& s) { return s.family.isRightToLeft(); }), 1);
}

}  // namespace fb::test::samples_test
