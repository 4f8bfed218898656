#include "app/store/record_standing.h"

#include <gtest/gtest.h>

#include "tests/support/record_folder.h"

namespace fb::test::record_standing_tests {

namespace record_standing_test {

Standing standingOf(RecordFolder& folder, const SheetOnFile& sheet, int student, const Moment& now)
{
    return readStanding(folder.store(), sheet, inventedStudent(student), now)->where.standing;
}

}  // namespace record_standing_test

using namespace record_standing_test;

TEST(RecordStandingTest, FollowsAStudentFromTheFirstFailToThePass)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    const QString id = QStringLiteral("s-001");
    EXPECT_EQ(standingOf(folder, sheet, 1, momentAt(1)), Standing::NotTried);
    ASSERT_TRUE(signedCheckOff(folder.store(), id, sheet, false, momentAt(1)));
    EXPECT_EQ(standingOf(folder, sheet, 1, momentAt(9)), Standing::RemediationDue);
    ASSERT_TRUE(signRemediation(folder.store(), 1, QStringLiteral("practice"), kFirst, momentAt(1, 60)));
    EXPECT_EQ(standingOf(folder, sheet, 1, momentAt(1, 90)), Standing::Waiting);
    const auto waiting = readStanding(folder.store(), sheet, inventedStudent(1), momentAt(1, 90));
    EXPECT_EQ(waiting->where.earliest, dayOf(momentAt(2).day));
    EXPECT_EQ(standingOf(folder, sheet, 1, momentAt(2)), Standing::MayRetest);
    ASSERT_TRUE(beginCheckOff(folder.store(), orderOf(id, sheet), momentAt(2)));
    EXPECT_EQ(standingOf(folder, sheet, 1, momentAt(2)), Standing::Running);
    EXPECT_EQ(standingOf(folder, sheet, 2, momentAt(2)), Standing::NotTried);
}

TEST(RecordStandingTest, OfAllIsThatOfEachByFamilyName)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill(4);
    Student first = inventedStudent(9);
    first.family = QStringLiteral("aaron");
    ASSERT_TRUE(saveStudents(folder.store(), {first}, momentAt(0)));
    ASSERT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-002"), sheet, true, momentAt(1)));
    ASSERT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-003"), sheet, false, momentAt(1)));
    const auto all = readStandings(folder.store(), sheet, momentAt(2));
    ASSERT_TRUE(all);
    ASSERT_EQ(all->size(), 5U);
    EXPECT_EQ(all->front().student, first) << "names are sorted as people sort them";
    for (const StudentStanding& line : *all) {
        const auto one = readStanding(folder.store(), sheet, line.student, momentAt(2));
        EXPECT_EQ(one->where, line.where);
        EXPECT_EQ(one->lastOutcome, line.lastOutcome);
        EXPECT_EQ(one->lastAt, line.lastAt);
    }
    EXPECT_EQ((*all)[2].lastOutcome, Outcome::Pass);
    EXPECT_EQ((*all)[2].lastPercent, 100.0);
    EXPECT_EQ((*all)[2].lastAt, momentAt(1).at);
    EXPECT_FALSE((*all)[4].lastAt.isValid());
}

TEST(RecordStandingTest, AnotherSheetIsAnotherMatter)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    Sheet edited = twoMarks();
    edited.cutPercent = 90.0;
    const SheetOnFile other = saveSheet(folder.store(), edited, momentAt(0)).value();
    ASSERT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-001"), sheet, true, momentAt(1)));
    EXPECT_EQ(standingOf(folder, sheet, 1, momentAt(2)), Standing::Passed);
    EXPECT_EQ(standingOf(folder, other, 1, momentAt(2)), Standing::NotTried);
}

}  // namespace fb::test::record_standing_tests
