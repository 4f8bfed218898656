// A backup chosen, looked into and put back from inside the gate: see records_presenter.h.
#include <gtest/gtest.h>

#include "tests/support/records_inside.h"

namespace fb::test::records_presenter_put_back_tests {

namespace records_presenter_put_back_test {

const QString kFile = QStringLiteral("/lab/backups/term-end.db");

// Put back, there is another assessor and nobody else.
void leaveIda(SampleRecords& records)
{
    records.backups.fill = [&records] {
        records.people = {{{7, QStringLiteral("Ida Lund")}, QStringLiteral("551199")}};
        records.students.clear();
        records.sheets.clear();
    };
}

}  // namespace records_presenter_put_back_test

using namespace records_presenter_put_back_test;

TEST(RecordsPresenterPutBackTest, ItIsLookedIntoFirstAndNothingIsDoneBeforeAWord)
{
    Inside inside;
    inside.presenter.putBack();
    EXPECT_TRUE(inside.records.backups.asked.isEmpty()) << "none is chosen";
    inside.presenter.chooseBackup(kFile);
    ASSERT_TRUE(inside.state().chosenBackup);
    EXPECT_EQ(inside.state().chosenBackup->file, kFile);
    EXPECT_TRUE(inside.records.backups.asked.isEmpty());
    inside.presenter.dropBackup();
    EXPECT_FALSE(inside.state().chosenBackup);
    inside.records.backups.trouble = Fault{Problem::NotAStore, kFile.toStdString(), {}};
    inside.presenter.chooseBackup(kFile);
    EXPECT_FALSE(inside.state().chosenBackup);
    EXPECT_EQ(inside.state().notice->problem, Problem::NotAStore);
}

TEST(RecordsPresenterPutBackTest, ItGoesWithTheProofAndShutsTheGateForWhoeverIsInIt)
{
    Inside inside;
    leaveIda(inside.records);
    inside.presenter.chooseBackup(kFile);
    inside.presenter.putBack();
    EXPECT_EQ(inside.records.backups.asked, QStringList{kFile});
    ASSERT_TRUE(inside.records.backups.by);
    EXPECT_EQ(inside.records.backups.by->assessor.name, QStringLiteral("Ada Brook"));
    EXPECT_EQ(inside.state().gate, RecordsGate::Locked);
    EXPECT_TRUE(isEmptyHanded(inside.state()));
    EXPECT_FALSE(inside.state().chosenBackup);
    ASSERT_EQ(inside.state().assessors.size(), 1U);
    EXPECT_EQ(inside.state().assessors.front().name, QStringLiteral("Ida Lund"));
    EXPECT_TRUE(inside.state().putBack) << "told at the gate";
    inside.presenter.open(7, QStringLiteral("551199"));
    EXPECT_EQ(inside.state().gate, RecordsGate::Open);
    EXPECT_FALSE(inside.state().putBack) << "it was read";
    EXPECT_EQ(inside.state().board->students.size(), 0U);
}

TEST(RecordsPresenterPutBackTest, AFaultOrACancelLeavesEverythingAsItWas)
{
    Inside inside;
    inside.presenter.chooseBackup(kFile);
    inside.records.backups.trouble = Fault{Problem::CheckOffRunning, {}, "Rosa Marlow"};
    inside.presenter.putBack();
    EXPECT_EQ(inside.state().notice->problem, Problem::CheckOffRunning);
    EXPECT_EQ(inside.state().gate, RecordsGate::Open);
    EXPECT_FALSE(inside.state().task);
    inside.records.backups.trouble.reset();
    inside.presenter.chooseBackup(kFile);
    inside.records.waits = true;
    inside.presenter.putBack();
    EXPECT_EQ(inside.state().task->kind, LongTaskKind::PutBack);
    inside.presenter.verify();
    EXPECT_EQ(inside.records.waiting.size(), 1U) << "one thing at a time";
    inside.presenter.cancel();
    inside.records.answerAll();
    ASSERT_TRUE(inside.state().done);
    EXPECT_TRUE(inside.state().done->cancelled);
    EXPECT_EQ(inside.state().gate, RecordsGate::Open);
    EXPECT_FALSE(inside.state().notice);
}

TEST(RecordsPresenterPutBackTest, DoneAfterTheRecordsWereLeftItIsToldToWhoeverComes)
{
    Inside inside;
    leaveIda(inside.records);
    inside.presenter.chooseBackup(kFile);
    inside.records.waits = true;
    inside.presenter.putBack();
    inside.presenter.leave();
    inside.records.answerAll();
    EXPECT_EQ(inside.state().gate, RecordsGate::Reading);
    EXPECT_FALSE(inside.state().task);
    inside.records.waits = false;
    inside.presenter.enter();
    EXPECT_EQ(inside.state().gate, RecordsGate::Locked);
    EXPECT_TRUE(inside.state().putBack);
}

TEST(RecordsPresenterPutBackTest, TheGateKnowsWhetherTheDeskOffersOne)
{
    Inside inside(false);
    EXPECT_FALSE(inside.state().isOffered);
    inside.records.people.clear();
    inside.records.backups.offered = backupSample();
    inside.presenter.enter();
    EXPECT_EQ(inside.state().gate, RecordsGate::NobodyEnrolled);
    EXPECT_TRUE(inside.state().isOffered);
}

}  // namespace fb::test::records_presenter_put_back_tests
