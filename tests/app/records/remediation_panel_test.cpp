#include "app/records/remediation_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QPlainTextEdit>

#include "tests/support/sample_records.h"

namespace fb::test::remediation_panel_test {

TEST(RemediationPanelTest, IsSignedWithAPinByKeyboardAlone)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {}, Seen::NotDone);
    RecordsWindow open(records);
    open.unlock();
    open.presenter.openCheckOff(id);
    open.rest();
    EXPECT_EQ(open.find<QComboBox>("practiceWho")->currentText(), QStringLiteral("Ada Brook"))
        << "who is inside";
    ASSERT_TRUE(open.tabTo("practiceWhat"));
    QTest::keyClicks(open.find("practiceWhat"), QStringLiteral("Asked for two identifiers"));
    ASSERT_TRUE(open.tabTo("practicePin"));
    QTest::keyClicks(open.find("practicePin"), QStringLiteral("000000"));
    QTest::keyClick(open.find("practicePin"), Qt::Key_Return);
    EXPECT_EQ(open.state().notice->problem, Problem::PinWrong);
    EXPECT_EQ(open.find<QPlainTextEdit>("practiceWhat")->toPlainText(),
              QStringLiteral("Asked for two identifiers"))
        << "what was written stays";
    QTest::keyClicks(open.find("practicePin"), QString::fromLatin1(kPin));
    QTest::keyClick(open.find("practicePin"), Qt::Key_Return);
    open.rest();
    EXPECT_EQ(records.kept.at(id).remediation, QStringLiteral("Asked for two identifiers"));
    EXPECT_EQ(open.find<QLabel>("practiceDone")->text(), QStringLiteral("Signed: Asked for two identifiers"));
    EXPECT_FALSE(open.find("practiceWhat")->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), open.find("practiceDone")) << "the keys stay where it was signed";
}

TEST(RemediationPanelTest, IsNotThereAfterAPass)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {});
    RecordsWindow open(records);
    open.unlock();
    open.presenter.openCheckOff(id);
    open.rest();
    EXPECT_EQ(open.state().opened->result.decision.outcome, Outcome::Pass);
    EXPECT_FALSE(open.find("practiceTitle")->isVisible());
}

}  // namespace fb::test::remediation_panel_test
