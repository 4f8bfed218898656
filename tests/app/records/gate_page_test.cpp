#include "app/records/gate_page.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "tests/support/sample_records.h"

namespace fb::test::gate_page_test {

TEST(GatePageTest, AsksForAPinAndSaysHonestlyWhatItIsFor)
{
    SampleRecords records;
    RecordsWindow open(records);
    ASSERT_TRUE(open.isReady);
    EXPECT_EQ(open.find<QLabel>("gateHonest")->text(),
              QStringLiteral("This PIN keeps the curious out while you are away from the desk. It does not "
                             "protect the files; your computer account does."));
    EXPECT_EQ(QApplication::focusWidget(), open.find("gatePin"));
    EXPECT_EQ(open.find<QComboBox>("gateWho")->count(), 2);
    EXPECT_FALSE(open.find("enrolAction")->isVisible());
    open.type("gatePin", "111222");
    open.click("gateAction");
    EXPECT_EQ(open.find<QLabel>("noticeText")->text(), QStringLiteral("That PIN is not right; try again."));
    EXPECT_TRUE(open.find<QLineEdit>("gatePin")->text().isEmpty());
    EXPECT_EQ(QApplication::focusWidget(), open.find("gatePin"));
    open.unlock();
    EXPECT_EQ(open.state().gate, RecordsGate::Open);
    EXPECT_FALSE(open.find("gatePin")->isVisible());
}

TEST(GatePageTest, ThreeWrongPinsHaveToWaitAndItIsCountedDown)
{
    SampleRecords records;
    RecordsWindow open(records);
    for (int i = 0; i < 3; ++i) {
        open.type("gatePin", "111222");
        QTest::keyClick(open.find("gatePin"), Qt::Key_Return);
    }
    EXPECT_TRUE(open.find("pinFormWait")->isVisible());
    open.type("gatePin", kPin);
    EXPECT_FALSE(open.find("gateAction")->isEnabled());
    records.clock.now += Ms{2100};
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.find("gateAction")->isEnabled(); }, 3000));
    EXPECT_FALSE(open.find("notice")->isVisible()) << "what was told is over";
    QTest::keyClick(open.find("gatePin"), Qt::Key_Return);
    EXPECT_EQ(open.state().gate, RecordsGate::Open);
}

TEST(GatePageTest, BeforeAnybodyIsEnrolledItSaysSoAndOffersIt)
{
    SampleRecords records;
    records.people.clear();
    RecordsWindow open(records);
    EXPECT_TRUE(open.find<QLabel>("gateWhy")->text().startsWith(QStringLiteral("Nobody is enrolled")));
    EXPECT_FALSE(open.find("gatePin")->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), open.find("enrolName"));
    open.type("enrolName", "Ada Brook");
    open.type("enrolPin", "482716");
    open.type("enrolAgain", "482711");
    open.click("enrolAction");
    EXPECT_EQ(open.find<QLabel>("noticeText")->text(),
              QStringLiteral("The two PINs differ; type the same one twice."));
    open.type("enrolPin", "482716");
    open.type("enrolAgain", "482716");
    QTest::keyClick(open.find("enrolAgain"), Qt::Key_Return);
    open.rest();
    EXPECT_EQ(open.state().gate, RecordsGate::Open);
    EXPECT_EQ(records.people.size(), 1U);
}

TEST(GatePageTest, AfterADamageItSaysWhereTheBackupIsPutBackBeforeSomebodyEnrols)
{
    SampleRecords records;
    records.people.clear();
    records.backups.offered = backupSample();
    RecordsWindow open(records);
    const QString why = open.find<QLabel>("gateWhy")->text();
    EXPECT_TRUE(why.contains(QStringLiteral("Check-off"))) << why.toStdString();
    EXPECT_TRUE(why.contains(QStringLiteral("As long as nobody is enrolled"))) << why.toStdString();
    EXPECT_FALSE(open.find("gatePutBack")->isVisible());
    EXPECT_TRUE(open.find("enrolAction")->isVisible());
}

}  // namespace fb::test::gate_page_test
