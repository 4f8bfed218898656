#include "app/records/history_view.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>

#include "tests/support/sample_records.h"

namespace fb::test::history_view_test {

TEST(HistoryViewTest, TellsEachAttemptWhatCameBetweenAndWhereTheStudentStands)
{
    SampleRecords records;
    const qint64 first = records.signedOne(0, {}, Seen::NotDone);
    records.kept.at(first).remediation = QStringLiteral("Two identifiers with Ines");
    records.clock.day = records.clock.day.addDays(2);
    records.signedOne(0, {}, Seen::Prompted);
    RecordsWindow open(records);
    open.unlock();
    open.presenter.openHistory(QStringLiteral("S1000"));
    open.rest();
    EXPECT_EQ(open.find<QLabel>("historyName")->text(), QStringLiteral("Rosa Marlow"));
    EXPECT_TRUE(open.find<QLabel>("historyAbout")->text().contains(QStringLiteral("S1000")));
    EXPECT_TRUE(open.find<QLabel>("historyStanding")->text().contains(QStringLiteral("practice")))
        << open.find<QLabel>("historyStanding")->text().toStdString();
    const auto between = open.window.findChildren<QLabel*>(QStringLiteral("historyBetween"));
    ASSERT_EQ(between.size(), 2);
    EXPECT_EQ(between[0]->text(), QStringLiteral("Practised afterwards: Two identifiers with Ines"));
    EXPECT_EQ(between[1]->text(), QStringLiteral("Practice afterwards is not signed yet."));
    const auto attempts = open.window.findChildren<QLabel*>(QStringLiteral("historyAttempt"));
    ASSERT_EQ(attempts.size(), 2);
    EXPECT_TRUE(attempts[0]->text().startsWith(QStringLiteral("Attempt 1 · Not passed")));
    const auto opens = open.window.findChildren<QPushButton*>(QStringLiteral("historyOpen"));
    EXPECT_EQ(QApplication::focusWidget(), opens[0]);
    EXPECT_NE(opens[0]->accessibleName(), opens[1]->accessibleName());
    QTest::keyClick(opens[0], Qt::Key_Space);
    ASSERT_NE(open.state().opened, nullptr);
    EXPECT_EQ(open.state().opened->file.line.id, first);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    open.click("historyBack");
    EXPECT_EQ(open.state().history, nullptr);
    EXPECT_TRUE(open.find("boardTable")->isVisible());
}

TEST(HistoryViewTest, AStudentWhoNeverTriedIsToldSo)
{
    SampleRecords records;
    RecordsWindow open(records);
    open.unlock();
    open.presenter.openHistory(QStringLiteral("S1003"));
    open.rest();
    EXPECT_TRUE(open.find("historyNone")->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), open.find("historyBack"));
}

}  // namespace fb::test::history_view_test
