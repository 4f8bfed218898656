#include "app/records/assessors_page.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>

#include "tests/support/sample_records.h"

namespace fb::test::assessors_page_test {

TEST(AssessorsPageTest, ListsWhoIsEnrolledAndEnrolsAnotherByKeyboard)
{
    SampleRecords records;
    RecordsWindow open(records);
    open.unlock();
    open.click("areaAssessors");
    EXPECT_EQ(open.find<QLabel>("assessorsNames")->text(), QStringLiteral("Ada Brook\nInes Castro"));
    auto* room = open.find("recordsLock")->parentWidget()->parentWidget();
    const auto field = [&](const char* name) { return room->findChild<QLineEdit*>(QLatin1String(name)); };
    EXPECT_EQ(QApplication::focusWidget(), field("enrolName"));
    QTest::keyClicks(field("enrolName"), QStringLiteral("Li Wen"));
    QTest::keyClick(field("enrolName"), Qt::Key_Tab);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("730915"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("730915"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    open.rest();
    EXPECT_EQ(records.people.size(), 3U);
    EXPECT_TRUE(open.find<QLabel>("assessorsNames")->text().endsWith(QStringLiteral("Li Wen")));
    EXPECT_TRUE(field("enrolName")->text().isEmpty());
}

}  // namespace fb::test::assessors_page_test
