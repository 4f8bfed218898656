#include "app/store/record_desk.h"

#include <gtest/gtest.h>

#include "tests/support/record_folder.h"

namespace fb::test::record_desk_test {

TEST(RecordDeskTest, AFreshStoreIsAnEmptyDesk)
{
    RecordFolder folder;
    const auto desk = readDesk(folder.store(), {}, momentAt(0));
    ASSERT_TRUE(desk);
    EXPECT_TRUE(desk->sheets.empty() && desk->students.empty() && desk->assessors.empty());
    EXPECT_TRUE(desk->currentSheet.isEmpty());
    EXPECT_FALSE(desk->running);
}

TEST(RecordDeskTest, HoldsWhatIsThereOnTheSheetThatIsAsked)
{
    RecordFolder folder;
    const SheetOnFile first = folder.fill();
    Sheet edited = twoMarks();
    edited.title = "Later";
    const SheetOnFile later = saveSheet(folder.store(), edited, momentAt(0)).value();
    ASSERT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-001"), first, true, momentAt(1)));
    const auto on = [&](const QString& key) { return readDesk(folder.store(), key, momentAt(1)).value(); };
    EXPECT_EQ(on({}).currentSheet, first.key) << "the last used";
    EXPECT_EQ(on(QStringLiteral("no such")).currentSheet, first.key);
    EXPECT_EQ(on(later.key).currentSheet, later.key);
    EXPECT_EQ(on(first.key).students.front().where.standing, Standing::Passed);
    EXPECT_EQ(on(later.key).students.front().where.standing, Standing::NotTried);
    EXPECT_EQ(on({}).sheets.size(), 2U);
    EXPECT_EQ(on({}).assessors.size(), 2U);
    EXPECT_EQ(on({}).students.size(), 3U);
    ASSERT_TRUE(beginCheckOff(folder.store(), orderOf(QStringLiteral("s-002"), later), momentAt(1)));
    ASSERT_TRUE(on(first.key).running);
    EXPECT_EQ(on(first.key).running->student, inventedStudent(2));
}

TEST(RecordDeskTest, StudentsWithoutASheetHaveTriedNothing)
{
    RecordFolder folder;
    ASSERT_TRUE(saveStudents(folder.store(), {inventedStudent(1)}, momentAt(0)));
    const auto desk = readDesk(folder.store(), {}, momentAt(0));
    ASSERT_EQ(desk->students.size(), 1U);
    EXPECT_EQ(desk->students[0].where.standing, Standing::NotTried);
}

TEST(RecordDeskTest, TheBoardCountsEveryStudentOnce)
{
    RecordFolder folder;
    Sheet strict = twoMarks();
    strict.retest = {1, 0, false, false, false};
    const SheetOnFile sheet = folder.fill(5);
    const SheetOnFile once = saveSheet(folder.store(), strict, momentAt(0)).value();
    Store& store = folder.store();
    ASSERT_TRUE(signedCheckOff(store, QStringLiteral("s-001"), sheet, true, momentAt(1)));
    ASSERT_TRUE(signedCheckOff(store, QStringLiteral("s-002"), sheet, false, momentAt(1)));
    ASSERT_TRUE(signedCheckOff(store, QStringLiteral("s-003"), once, false, momentAt(1)));
    ASSERT_TRUE(beginCheckOff(store, orderOf(QStringLiteral("s-004"), sheet), momentAt(1)));
    const auto board = readBoard(store, sheet.key, momentAt(1));
    ASSERT_TRUE(board);
    EXPECT_EQ(board->count.passed, 1);
    EXPECT_EQ(board->count.due, 1);
    EXPECT_EQ(board->count.running, 1);
    EXPECT_EQ(board->count.notTried, 2);
    EXPECT_EQ(board->count.outOfAttempts, 0);
    const std::vector<std::pair<Outcome, int>> outcomes{{Outcome::FailScore, 1}, {Outcome::Pass, 1}};
    EXPECT_EQ(board->outcomes, outcomes);
    EXPECT_EQ(readBoard(store, once.key, momentAt(1))->count.outOfAttempts, 1);
    EXPECT_EQ(readBoard(store, {}, momentAt(1)).error().problem, Problem::SheetNotReadable);
}

}  // namespace fb::test::record_desk_test
