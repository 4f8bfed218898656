// The desk after a damage: the backup that is offered, put back or declined.
#include <gtest/gtest.h>

#include <QSignalSpy>

#include "tests/support/check_off_run.h"

namespace check_off_presenter_put_back_test {

namespace {

using namespace fb;
using namespace fb::test;

// Empty records with an offer; put back, the class of CheckOffRun stands in them.
struct Offered : CheckOffRun {
    Offered()
    {
        const auto students = records.students;
        const auto sheets = records.sheets;
        const auto people = records.people;
        records.students.clear();
        records.sheets.clear();
        records.people.clear();
        records.backups.offered = backupSample();
        records.backups.told = Fault{Problem::StoreBroken, "/lab/records.db", "/lab/records.db.broken-1"};
        records.backups.fill = [=, this] {
            records.students = students;
            records.sheets = sheets;
            records.people = people;
            records.current = sheets.front().key;
        };
        restart();
    }
};

TEST(CheckOffPresenterPutBackTest, TheOfferSaysWhatHappenedAndTheNoticeDoesNotSayItAgain)
{
    Offered run;
    ASSERT_TRUE(run.state().offered);
    EXPECT_EQ(run.state().offered->students, 15);
    EXPECT_FALSE(run.state().notice);
    run.records.backups.offered.reset();
    run.records.backups.told = Fault{Problem::StoreBroken, "/lab/records.db", "/lab/records.db.broken-1"};
    run.restart();
    EXPECT_FALSE(run.state().offered);
    EXPECT_TRUE(run.state().notice) << "without a backup the notice says it";
}

TEST(CheckOffPresenterPutBackTest, PutBackTheDeskIsReadAnewAndTold)
{
    Offered run;
    QSignalSpy kept(run.presenter.get(), &CheckOffPresenter::kept);
    run.presenter->putBack();
    EXPECT_EQ(run.records.backups.asked, QStringList{backupSample().file});
    EXPECT_FALSE(run.records.backups.by) << "nobody is enrolled who could prove it";
    EXPECT_EQ(run.state().desk.students.size(), 4U);
    EXPECT_EQ(run.state().chosenStudent, QStringLiteral("S-1")) << "one press starts";
    EXPECT_FALSE(run.state().offered);
    EXPECT_FALSE(run.state().saving);
    EXPECT_FALSE(run.state().puttingBack);
    ASSERT_TRUE(run.state().putBack);
    EXPECT_TRUE(run.state().putBack->aside.contains(QStringLiteral("records-before")));
    EXPECT_EQ(kept.count(), 1) << "the records are read anew as well";
    run.presenter->openDesk();
    EXPECT_TRUE(run.state().putBack) << "until it was read";
    run.presenter->dismissPutBack();
    EXPECT_FALSE(run.state().putBack);
}

TEST(CheckOffPresenterPutBackTest, WhileItIsDoneNothingElseIsAndHowFarItIsIsSeen)
{
    Offered run;
    run.records.waits = true;
    run.presenter->putBack();
    EXPECT_TRUE(run.state().saving);
    EXPECT_EQ(run.state().puttingBack, 0);
    QSignalSpy ticked(run.presenter.get(), &CheckOffPresenter::ticked);
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().puttingBack == 50; }, 3000));
    EXPECT_GT(ticked.count(), 0);
    run.presenter->putBack();
    run.presenter->useSample();
    run.presenter->declineBackup();
    EXPECT_EQ(run.records.waiting.size(), 1U);
    EXPECT_TRUE(run.state().offered);
    run.records.answerAll();
    EXPECT_EQ(run.state().desk.students.size(), 4U);
}

TEST(CheckOffPresenterPutBackTest, CancelledInTimeItStaysOfferedWithoutAFault)
{
    Offered run;
    run.records.waits = true;
    run.presenter->putBack();
    run.presenter->cancelPutBack();
    run.records.answerAll();
    EXPECT_FALSE(run.state().saving);
    EXPECT_TRUE(run.state().offered);
    EXPECT_FALSE(run.state().notice);
    EXPECT_TRUE(run.state().desk.students.empty());
}

TEST(CheckOffPresenterPutBackTest, AFaultIsToldAndAnotherBackupIsOffered)
{
    Offered run;
    run.records.backups.trouble = Fault{Problem::StoreBroken, backupSample().file.toStdString(), {}};
    run.records.backups.offered->file = QStringLiteral("/lab/backups/older.db");
    run.presenter->putBack();
    ASSERT_TRUE(run.state().notice);
    EXPECT_EQ(run.state().notice->problem, Problem::StoreBroken);
    EXPECT_EQ(run.state().offered->file, QStringLiteral("/lab/backups/older.db"))
        << "what the records now offer";
    EXPECT_FALSE(run.state().saving);
    EXPECT_FALSE(run.state().putBack);
}

TEST(CheckOffPresenterPutBackTest, DeclinedItIsNotOfferedAgainBeforeTheNextStart)
{
    Offered run;
    run.presenter->declineBackup();
    EXPECT_FALSE(run.state().offered);
    run.presenter->openDesk();
    EXPECT_FALSE(run.state().offered);
    run.presenter->putBack();
    EXPECT_TRUE(run.records.backups.asked.isEmpty());
    run.restart();
    EXPECT_TRUE(run.state().offered);
}

}  // namespace

}  // namespace check_off_presenter_put_back_test
