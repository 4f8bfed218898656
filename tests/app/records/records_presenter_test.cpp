#include "app/records/records_presenter.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QtPrintSupport/QPrinter>

#include "tests/support/records_inside.h"

namespace fb::test::records_presenter_test {

TEST(RecordsPresenterTest, WhatIsOpenedLastIsShownAndBackLeavesIt)
{
    Inside inside;
    const qint64 id = inside.records.signedOne(0, {0.1, 0.0});
    inside.presenter.reread();
    inside.records.waits = true;
    inside.presenter.openHistory(QStringLiteral("S1000"));
    inside.presenter.back();
    inside.records.answerAll();
    EXPECT_EQ(inside.state().history, nullptr) << "it was left before it came";
    inside.records.waits = false;
    inside.presenter.openHistory(QStringLiteral("S1000"));
    inside.presenter.openCheckOff(id);
    inside.presenter.replay(3);
    EXPECT_FALSE(inside.state().item.has_value()) << "there are only three";
    inside.presenter.replay(2);
    ASSERT_TRUE(QTest::qWaitFor([&] { return inside.state().replay != nullptr; }, 20000));
    EXPECT_EQ(inside.state().replay->item, 2);
    inside.presenter.back();
    EXPECT_FALSE(inside.state().item.has_value());
    inside.presenter.back();
    EXPECT_EQ(inside.state().opened, nullptr);
    ASSERT_NE(inside.state().history, nullptr);
    inside.presenter.back();
    EXPECT_EQ(inside.state().history, nullptr);
}

TEST(RecordsPresenterTest, AStudentsAttemptsAreToldInTheirOrder)
{
    Inside inside;
    const qint64 first = inside.records.signedOne(0, {}, Seen::NotDone);
    inside.records.clock.day = inside.records.clock.day.addDays(2);
    const qint64 second = inside.records.signedOne(0, {});
    inside.records.signedOne(1, {});
    inside.presenter.reread();
    inside.presenter.openHistory(QStringLiteral("S1000"));
    ASSERT_EQ(inside.state().history->attempts.size(), 2U);
    EXPECT_EQ(inside.state().history->attempts[0].id, first);
    EXPECT_EQ(inside.state().history->attempts[1].id, second);
    EXPECT_EQ(inside.state().history->where->standing, Standing::Passed);
    inside.presenter.openHistory(QStringLiteral("nobody"));
    EXPECT_EQ(inside.state().notice->problem, Problem::StudentUnknown);
}

TEST(RecordsPresenterTest, PracticeIsSignedWithAPinAndChangesTheStanding)
{
    Inside inside;
    const qint64 id = inside.records.signedOne(0, {}, Seen::NotDone);
    inside.presenter.reread();
    inside.presenter.openHistory(QStringLiteral("S1000"));
    EXPECT_EQ(inside.state().history->where->standing, Standing::RemediationDue);
    inside.presenter.openCheckOff(id);
    QSignalSpy signedNow(&inside.presenter, &RecordsPresenter::practiceSigned);
    inside.presenter.signPractice(QStringLiteral("  "), 1, QString::fromLatin1(kPin));
    EXPECT_EQ(inside.state().notice->problem, Problem::ReasonMissing);
    inside.presenter.signPractice(QStringLiteral("Two identifiers, twice"), 2, QString::fromLatin1(kPin));
    EXPECT_EQ(inside.state().notice->problem, Problem::PinWrong);
    EXPECT_TRUE(inside.records.kept.at(id).remediation.isEmpty());
    inside.presenter.signPractice(QStringLiteral("Two identifiers, twice"), 2, QStringLiteral("551903"));
    EXPECT_EQ(signedNow.count(), 1);
    EXPECT_EQ(inside.state().opened->file.line.remediation, QStringLiteral("Two identifiers, twice"));
    EXPECT_EQ(inside.state().history->where->standing, Standing::Waiting) << "what lies under it, too";
    EXPECT_FALSE(inside.state().asking);
}

TEST(RecordsPresenterTest, ADamagedRecordIsToldAndTheRestStaysUsable)
{
    Inside inside;
    const qint64 broken = inside.records.signedOne(0, {});
    const qint64 sound = inside.records.signedOne(1, {});
    auto& events = inside.records.kept.at(broken).open.events;
    events.erase(events.begin() + 1);
    inside.presenter.show(RecordsArea::CheckOffs);
    inside.presenter.openCheckOff(broken);
    ASSERT_TRUE(inside.state().notice.has_value());
    EXPECT_EQ(inside.state().opened, nullptr);
    EXPECT_EQ(inside.state().found->size(), 2U);
    inside.presenter.dismissNotice();
    inside.presenter.openCheckOff(sound);
    EXPECT_NE(inside.state().opened, nullptr);
    inside.records.trouble = Fault{Problem::StoreBroken, "records.db", {}};
    inside.presenter.find({});
    EXPECT_EQ(inside.state().notice->problem, Problem::StoreBroken);
    EXPECT_EQ(inside.state().found->size(), 2U) << "what was read stays";
}

TEST(RecordsPresenterTest, LongWorkIsOneAtATimeCanBeCancelledAndOutlivesTheGate)
{
    Inside inside;
    inside.records.waits = true;
    inside.presenter.write(ExportKind::FullCsv, {}, QStringLiteral("all.csv"));
    ASSERT_TRUE(inside.state().task.has_value());
    inside.presenter.backup(QStringLiteral("b.db"));
    EXPECT_EQ(inside.records.written, QStringList{QStringLiteral("all.csv")});
    ASSERT_TRUE(QTest::qWaitFor([&] { return inside.state().task->percent == 50; }, 3000));
    inside.presenter.cancel();
    inside.records.answerAll();
    ASSERT_TRUE(inside.state().done.has_value());
    EXPECT_TRUE(inside.state().done->cancelled);
    inside.presenter.backup(QStringLiteral("b.db"));
    inside.presenter.leave();
    EXPECT_TRUE(inside.state().task.has_value()) << "it goes on";
    inside.records.answerAll();
    EXPECT_FALSE(inside.state().task.has_value());
    EXPECT_EQ(inside.state().done->file, QStringLiteral("b.db"));
    EXPECT_TRUE(isEmptyHanded(inside.state()));
}

TEST(RecordsPresenterTest, VerifyingTellsCountsOrTheFirstEntryThatDoesNotFollow)
{
    Inside inside;
    inside.presenter.verify();
    ASSERT_TRUE(inside.state().done->verified.has_value());
    EXPECT_EQ(inside.state().done->verified->entries, 7);
    inside.records.trouble = Fault{Problem::ChainBroken, "records.db", "3"};
    inside.presenter.verify();
    EXPECT_FALSE(inside.state().done.has_value());
    EXPECT_EQ(inside.state().notice->problem, Problem::ChainBroken);
    EXPECT_FALSE(inside.state().task.has_value());
}

TEST(RecordsPresenterTest, AnotherSheetIsAnotherBoard)
{
    Inside inside;
    Sheet other = sampleSheet();
    other.title = "Only the arm";
    other.items.resize(1);
    const QString first = inside.records.current;
    inside.records.signedOne(0, {});
    const QString second = inside.records.addSheet(other);
    inside.presenter.reread();
    EXPECT_EQ(inside.state().sheet, first) << "the chosen one stays";
    EXPECT_EQ(inside.state().board->count.passed, 1);
    inside.presenter.chooseSheet(second);
    EXPECT_EQ(inside.state().sheet, second);
    EXPECT_EQ(inside.state().board->count.passed, 0);
}

TEST(RecordsPresenterTest, MayEndWhileAReplayAndASheetAreBeingMade)
{
    const QTemporaryDir folder;
    auto inside = std::make_unique<Inside>();
    const qint64 id = inside->records.signedOne(0, {0.2, 0.0});
    inside->presenter.openCheckOff(id);
    inside->presenter.saveSheet(folder.filePath(QStringLiteral("sheet.pdf")));
    inside->presenter.replay(0);
    inside.reset();
    SUCCEED() << "the sheet waits for the window's thread, and the presenter for the sheet: neither for ever";
}

TEST(RecordsPresenterTest, TheSheetIsSavedAgainOrToldWhyNot)
{
    const QTemporaryDir folder;
    Inside inside;
    const qint64 id = inside.records.signedOne(0, {0.2, 0.0});
    inside.presenter.openCheckOff(id);
    const QString file = folder.filePath(QStringLiteral("sheet.pdf"));
    inside.presenter.saveSheet(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !inside.state().task; }, 30000));
    EXPECT_FALSE(inside.state().notice.has_value());
    EXPECT_TRUE(QFile::exists(file));
    inside.presenter.saveSheet(folder.filePath(QStringLiteral("no/such/folder/sheet.pdf")));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !inside.state().task; }, 30000));
    EXPECT_EQ(inside.state().notice->problem, Problem::OutputNotWritable);
    inside.presenter.dismissNotice();
    const auto printer = std::make_shared<QPrinter>();
    printer->setOutputFormat(QPrinter::PdfFormat);
    printer->setOutputFileName(folder.filePath(QStringLiteral("printed.pdf")));
    inside.presenter.printSheet(printer);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !inside.state().task; }, 30000));
    EXPECT_EQ(inside.state().done->kind, LongTaskKind::PrintedSheet);
}

}  // namespace fb::test::records_presenter_test
