// The desk: whom one may start, how one comes back to it, and what ends a check-off before its time.
#include <gtest/gtest.h>

#include <QSignalSpy>

#include "app/checkoff/check_off_presenter.h"
#include "app/roster/samples.h"
#include "tests/support/check_off_run.h"

namespace check_off_presenter_desk_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(CheckOffPresenterDeskTest, TheFirstWhoMayStartIsChosen)
{
    CheckOffRun run;
    EXPECT_EQ(run.state().chosenStudent, QStringLiteral("S-1"));
    run.presenter->chooseStudent(QStringLiteral("S-3"));
    run.presenter->chooseStudent(QStringLiteral("nobody"));
    EXPECT_EQ(run.state().chosenStudent, QStringLiteral("S-3"));
    run.presenter->openDesk();
    EXPECT_EQ(run.state().chosenStudent, QStringLiteral("S-3")) << "who was chosen stays so";
}

TEST(CheckOffPresenterDeskTest, NoRecordIsBegunBeforeTheStudentSaysYes)
{
    CheckOffRun run;
    QSignalSpy kept(run.presenter.get(), &CheckOffPresenter::kept);
    run.presenter->begin(QStringLiteral("S-2"));
    ASSERT_TRUE(run.state().open.has_value());
    EXPECT_EQ(run.state().stage, CheckOffStage::Identity);
    EXPECT_EQ(run.state().open->student.family, QStringLiteral("Birch"));
    EXPECT_TRUE(run.presenter->holdsTheWindow());
    run.presenter->backToDesk();
    EXPECT_FALSE(run.state().open.has_value());
    EXPECT_TRUE(run.records.kept.empty());
    EXPECT_EQ(kept.count(), 0);
    run.presenter->begin(QStringLiteral("S-2"));
    run.presenter->confirmIdentity();
    EXPECT_EQ(run.records.kept.size(), 1U);
    EXPECT_EQ(run.state().stage, CheckOffStage::Instructions);
    run.presenter->backToDesk();
    EXPECT_TRUE(run.state().open.has_value()) << "from here only a reason ends it";
}

TEST(CheckOffPresenterDeskTest, ARecordThatIsBegunIsVoidedWhereTheStudentSaysNo)
{
    CheckOffRun run;
    RunningCheckOff open;
    open.id = 1;
    open.student = run.records.students.front();
    open.sheet = run.records.sheets.front();
    open.order.student = open.student.id;
    open.order.sheet = QStringLiteral("sheet");
    open.order.policyText = QStringLiteral("{}");
    run.records.kept[1] = MemoryEntry{open, {}, {}, {}};
    run.presenter->openDesk();
    run.presenter->goOn();
    ASSERT_EQ(run.state().stage, CheckOffStage::Identity);
    run.presenter->backToDesk();
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
    EXPECT_EQ(run.state().result.decision.outcome, Outcome::VoidTechnical);
    EXPECT_EQ(run.state().endNote, QStringLiteral("Wrong student chosen"));
    EXPECT_FALSE(run.presenter->holdsTheWindow());
}

TEST(CheckOffPresenterDeskTest, OnlyWhoseStandingAllowsItIsStarted)
{
    CheckOffRun run;
    run.toClosing();
    run.sign();
    run.presenter->backToDesk();
    EXPECT_FALSE(run.state().open.has_value());
    EXPECT_EQ(run.state().chosenStudent, QStringLiteral("S-2")) << "who is next";
    run.presenter->begin(QStringLiteral("S-1"));
    EXPECT_FALSE(run.state().open.has_value()) << "passed already";
    run.presenter->begin(QStringLiteral("nobody"));
    EXPECT_FALSE(run.state().open.has_value());
}

TEST(CheckOffPresenterDeskTest, TheNextStudentIsOnePressAway)
{
    CheckOffRun run;
    run.toClosing();
    EXPECT_EQ(run.state().next->id, QStringLiteral("S-2"));
    run.presenter->nextStudent();
    EXPECT_EQ(run.state().open->student.id, QStringLiteral("S-1")) << "not before it is signed";
    run.sign();
    run.presenter->nextStudent();
    EXPECT_EQ(run.state().open->student.id, QStringLiteral("S-2"));
    EXPECT_EQ(run.state().stage, CheckOffStage::Identity);
    EXPECT_FALSE(run.state().signedOff.has_value());
    EXPECT_TRUE(run.state().answers.empty());
    EXPECT_EQ(run.state().chosenStudent, QStringLiteral("S-2"));
    EXPECT_EQ(run.state().next->id, QStringLiteral("S-3"));
}

TEST(CheckOffPresenterDeskTest, TheLastOneHasNobodyAfter)
{
    CheckOffRun run;
    run.presenter->begin(QStringLiteral("S-4"));
    EXPECT_FALSE(run.state().next.has_value());
}

TEST(CheckOffPresenterDeskTest, ANoShowIsRecordedFromTheDesk)
{
    CheckOffRun run;
    run.presenter->chooseStudent(QStringLiteral("S-2"));
    run.presenter->noShow();
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
    EXPECT_EQ(run.state().result.decision.outcome, Outcome::NoShow);
    EXPECT_EQ(run.state().open->student.id, QStringLiteral("S-2"));
    run.presenter->sign(1, QLatin1String(CheckOffRun::kPin), 0, {});
    EXPECT_TRUE(run.state().signedOff.has_value()) << "without a rating";
}

TEST(CheckOffPresenterDeskTest, WhatStandsOpenCanBeVoidedFromTheDesk)
{
    CheckOffRun run;
    run.toItems();
    run.restart();
    run.presenter->voidTechnical(QStringLiteral("computer failed"));
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
    EXPECT_EQ(run.state().endNote, QStringLiteral("computer failed"));
    run.presenter->sign(1, QLatin1String(CheckOffRun::kPin), 0, {});
    run.presenter->backToDesk();
    EXPECT_EQ(run.state().desk.students.front().where.standing, Standing::NotTried) << "it used up nothing";
}

TEST(CheckOffPresenterDeskTest, TheSampleFillsAnEmptyStore)
{
    MemoryRecords records;
    CountingSeeds seeds;
    CheckOffPresenter presenter(records, records.clock, seeds);
    presenter.useLibrary(wholeLibrary(), wholeLibrary()->defaultPolicy(), QStringLiteral("{}"));
    presenter.openDesk();
    EXPECT_TRUE(presenter.state().desk.students.empty());
    presenter.useSample();
    EXPECT_EQ(presenter.state().desk.students.size(), sampleStudents().size());
    EXPECT_FALSE(presenter.state().desk.currentSheet.isEmpty());
    EXPECT_TRUE(presenter.state().desk.sheets.front().sheet.invented);
    EXPECT_FALSE(presenter.state().chosenStudent.isEmpty()) << "one press starts";
    EXPECT_FALSE(presenter.state().saving);
}

TEST(CheckOffPresenterDeskTest, ASavedSheetIsChosenAndSeedsGoByItsRule)
{
    CheckOffRun run;
    Sheet sheet = shortSheet();
    sheet.title = "Another";
    sheet.seedRule = SeedRule::SameForAll;
    sheet.seed = 4711;
    run.presenter->saveSheet(sheet);
    ASSERT_EQ(run.state().desk.sheets.size(), 2U);
    EXPECT_NE(run.state().desk.currentSheet, QStringLiteral("sheet"));
    run.presenter->begin(QStringLiteral("S-1"));
    EXPECT_EQ(run.state().open->order.seed, 4711U);
    run.presenter->backToDesk();
    run.presenter->chooseSheet(QStringLiteral("sheet"));
    EXPECT_EQ(run.state().desk.currentSheet, QStringLiteral("sheet"));
    run.presenter->begin(QStringLiteral("S-1"));
    EXPECT_EQ(run.state().open->order.seed, 7U);
}

TEST(CheckOffPresenterDeskTest, WhatCouldNotBeSavedIsTold)
{
    CheckOffRun run;
    run.records.trouble = Fault{Problem::StoreReadOnly, "records.sqlite", {}};
    run.presenter->saveStudents(sampleStudents());
    EXPECT_FALSE(run.state().saving);
    EXPECT_EQ(run.state().notice->problem, Problem::StoreReadOnly);
    run.presenter->dismissNotice();
    run.presenter->saveSheet(shortSheet());
    EXPECT_FALSE(run.state().saving);
    EXPECT_EQ(run.state().notice->problem, Problem::StoreReadOnly);
    run.presenter->useSample();
    EXPECT_FALSE(run.state().saving);
}

}  // namespace

}  // namespace check_off_presenter_desk_test
