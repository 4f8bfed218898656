#include "app/records/log_page.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include "tests/support/sample_records.h"

namespace fb::test::log_page_tests {

namespace log_page_test {

struct Log {
    Log() : open(records)
    {
        open.unlock();
        open.click("areaLog");
    }
    [[nodiscard]] QString done() { return open.find<QLabel>("workDone")->text(); }

    SampleRecords records;
    RecordsWindow open;
};

}  // namespace log_page_test

using log_page_test::Log;

TEST(LogPageTest, VerifyingIsToldInWords)
{
    Log log;
    log.open.click("verify");
    EXPECT_TRUE(log.done().startsWith(QStringLiteral("Everything follows and is whole: 7 ")))
        << log.done().toStdString();
    EXPECT_TRUE(log.done().endsWith(QStringLiteral("The log’s head is 31eeae30572c.")));
    log.records.trouble = Fault{Problem::ChainBroken, "records.db", "3"};
    log.open.click("verify");
    EXPECT_TRUE(log.open.find("notice")->isVisible());
    EXPECT_TRUE(log.open.find<QLabel>("noticeText")->text().contains(QStringLiteral("entry 3")));
    EXPECT_FALSE(log.open.find("workDone")->isVisible());
}

TEST(LogPageTest, ExportsAskForAFileAndShowHowFarTheyAre)
{
    Log log;
    log.open.click("exportGradebook");
    EXPECT_TRUE(log.records.written.isEmpty()) << "thought better of it";
    EXPECT_EQ(log.open.dialogs.asKind, SaveKind::Csv);
    EXPECT_EQ(log.open.dialogs.suggested, QStringLiteral("gradebook 2026-11-30"));
    log.open.dialogs.answer = QStringLiteral("grades.csv");
    log.records.waits = true;
    log.open.click("exportGradebook");
    EXPECT_EQ(log.records.written, QStringList{QStringLiteral("grades.csv")});
    EXPECT_TRUE(log.open.find("workCancel")->isVisible());
    EXPECT_FALSE(log.open.find("verify")->isEnabled());
    ASSERT_TRUE(QTest::qWaitFor([&] { return log.open.find<QProgressBar>("workBar")->value() == 50; }, 3000));
    EXPECT_TRUE(log.open.find<QLabel>("workDoing")->text().contains(QStringLiteral("50 %")));
    log.records.answerAll();
    log.open.rest();
    EXPECT_EQ(log.done(), QStringLiteral("The export was written: grades.csv"));
    EXPECT_TRUE(log.open.find("verify")->isEnabled());
}

TEST(LogPageTest, ABackupIsCancelledByKey)
{
    Log log;
    log.open.dialogs.answer = QStringLiteral("backup.db");
    log.records.waits = true;
    log.open.click("backup");
    EXPECT_EQ(log.open.dialogs.asKind, SaveKind::Records);
    log.open.find("workCancel")->setFocus();
    QTest::keyClick(log.open.find("workCancel"), Qt::Key_Space);
    log.records.answerAll();
    log.open.rest();
    EXPECT_EQ(log.done(), QStringLiteral("Cancelled; no file was left behind."));
    log.open.click("backup");
    log.records.answerAll();
    log.open.rest();
    EXPECT_EQ(log.open.find<QLabel>("backupText")->text(), QStringLiteral("The last backup: backup.db"));
}

TEST(LogPageTest, ABackupIsChosenReadAndPutBackByKey)
{
    Log log;
    log.open.dialogs.answer = QStringLiteral("/lab/backups/kept.db");
    log.open.click("backup");
    log.open.dialogs.answer.clear();
    log.open.click("chooseBackup");
    EXPECT_EQ(log.open.dialogs.backupFolder, QStringLiteral("/lab/backups")) << "where the last one lies";
    EXPECT_FALSE(log.open.find("putBackPanel")->isVisible()) << "thought better of it";
    log.open.dialogs.answer = QStringLiteral("/lab/backups/term-end.db");
    log.open.click("chooseBackup");
    ASSERT_TRUE(log.open.find("putBackPanel")->isVisible());
    QTest::keyClick(log.open.find("putBackReject"), Qt::Key_Space);
    EXPECT_FALSE(log.open.find("putBackPanel")->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), log.open.find("chooseBackup"));
    QTest::keyClick(log.open.find("chooseBackup"), Qt::Key_Return);
    log.open.rest();
    ASSERT_TRUE(log.open.tabTo("putBackAccept"));
    log.records.waits = true;
    QTest::keyClick(log.open.find("putBackAccept"), Qt::Key_Return);
    EXPECT_TRUE(log.open.find<QLabel>("workDoing")
                    ->text()
                    .startsWith(QStringLiteral("The backup is being put back")));
    EXPECT_FALSE(log.open.find("chooseBackup")->isEnabled());
    log.records.answerAll();
    log.open.rest();
    EXPECT_EQ(log.open.state().gate, RecordsGate::Locked);
    EXPECT_TRUE(log.open.find<QLabel>("gatePutBack")->isVisible());
    EXPECT_TRUE(log.open.find<QLabel>("gatePutBack")->text().contains(QStringLiteral("records-before")));
    EXPECT_EQ(QApplication::focusWidget(), log.open.find("gatePin"));
}

TEST(LogPageTest, JsonIsOfTheChosenSheetOrOfAll)
{
    Log log;
    auto* sheet = log.open.find<QComboBox>("exportSheet");
    ASSERT_EQ(sheet->count(), 2);
    EXPECT_EQ(sheet->currentIndex(), 1) << "the sheet of the board";
    log.open.dialogs.answer = QStringLiteral("all.json");
    log.open.click("exportJson");
    EXPECT_EQ(log.open.dialogs.asKind, SaveKind::Json);
    EXPECT_EQ(log.records.written.size(), 1);
}

}  // namespace fb::test::log_page_tests
