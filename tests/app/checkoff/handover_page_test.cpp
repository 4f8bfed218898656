#include "app/checkoff/handover_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>

#include "tests/support/check_off_run.h"

namespace handover_page_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(HandoverPageTest, TheStudentsLastKeyDoesNotGoOn)
{
    CheckOffRun run;
    HandoverPage page(*run.presenter);
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    run.toHandover();
    page.focusFirst();
    EXPECT_EQ(QApplication::focusWidget(), &page);
    QTest::keyClick(&page, Qt::Key_Return);
    QTest::keyClick(&page, Qt::Key_Space);
    EXPECT_EQ(run.state().stage, CheckOffStage::Handover);
    auto* goOn = page.findChild<QPushButton*>(QStringLiteral("takeOver"));
    EXPECT_TRUE(goOn->text().contains(QStringLiteral("manikin")));
    EXPECT_FALSE(page.findChild<QLabel*>(QStringLiteral("handoverTimeUp"))->isVisible());
    QTest::keyClick(&page, Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), goOn);
    QTest::keyClick(goOn, Qt::Key_Return);
    EXPECT_EQ(run.state().stage, CheckOffStage::OnManikin);
}

TEST(HandoverPageTest, WithoutStepsTheResultIsNext)
{
    Sheet sheet = shortSheet();
    sheet.steps.clear();
    CheckOffRun run(sheet);
    HandoverPage page(*run.presenter);
    run.toHandover();
    EXPECT_TRUE(
        page.findChild<QPushButton*>(QStringLiteral("takeOver"))->text().contains(QStringLiteral("result")));
}

TEST(HandoverPageTest, SaysWhereTheLastItemRanOutOfTime)
{
    Sheet sheet = shortSheet();
    sheet.items.resize(1);
    sheet.secondsPerItem = 5;
    CheckOffRun run(sheet);
    HandoverPage page(*run.presenter);
    page.show();
    run.toItems();
    ASSERT_TRUE(run.wait(Ms{5700}));
    ASSERT_EQ(run.state().stage, CheckOffStage::Handover);
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("handoverTimeUp"))->isVisible());
}

}  // namespace

}  // namespace handover_page_test
