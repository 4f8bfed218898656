#include "app/checkoff/identity_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>

#include "tests/support/check_off_run.h"

namespace identity_page_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(IdentityPageTest, TellsWhoAndAsksForNothingButYesOrNo)
{
    CheckOffRun run;
    IdentityPage page(*run.presenter);
    page.show();
    run.presenter->begin(QStringLiteral("S-2"));
    const auto words = [&](const char* name) { return page.findChild<QLabel*>(QLatin1String(name))->text(); };
    EXPECT_TRUE(words("identityName").contains(QStringLiteral("Tom Birch")));
    EXPECT_TRUE(words("identityDetails").contains(QStringLiteral("S-2")));
    EXPECT_TRUE(words("identityDetails").contains(QStringLiteral("Section A")));
    EXPECT_TRUE(words("identityDetails").contains(QStringLiteral("Invented")))
        << "the sample says what it is";
    EXPECT_TRUE(words("identityAttempt").contains(QStringLiteral("1 of 3")));
    EXPECT_TRUE(words("identityAttempt").contains(QStringLiteral("50 percent")));
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("identityNo")), Qt::LeftButton);
    EXPECT_FALSE(run.state().open.has_value());
    run.presenter->begin(QStringLiteral("S-1"));
    EXPECT_FALSE(words("identityAttempt").contains(QStringLiteral("percent")));
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("identityYes")), Qt::LeftButton);
    EXPECT_EQ(run.state().stage, CheckOffStage::Instructions);
}

TEST(IdentityPageTest, EnterAloneAcceptsNobodyAndTabReachesBothAnswers)
{
    CheckOffRun run;
    IdentityPage page(*run.presenter);
    run.presenter->begin(QStringLiteral("S-2"));
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    page.focusFirst();
    ASSERT_EQ(QApplication::focusWidget(), &page);
    QTest::keyClick(&page, Qt::Key_Return);
    QTest::keyClick(&page, Qt::Key_Space);
    EXPECT_EQ(run.state().stage, CheckOffStage::Identity);
    QTest::keyClick(&page, Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("identityYes"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("identityNo"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backtab);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(run.state().stage, CheckOffStage::Instructions);
}

}  // namespace

}  // namespace identity_page_test
