#include "app/checkoff/pause_cover.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/checkoff/reason_dialog.h"
#include "tests/support/check_off_run.h"

namespace pause_cover_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(PauseCoverTest, SaysWhyAndGoesOn)
{
    CheckOffRun run;
    PauseCover cover(*run.presenter);
    cover.show();
    run.toItems();
    run.presenter->pause(QStringLiteral("fire alarm"));
    EXPECT_EQ(cover.findChild<QLabel*>(QStringLiteral("pausedReason"))->text(), QStringLiteral("fire alarm"));
    QTest::mouseClick(cover.findChild<QPushButton*>(QStringLiteral("resume")), Qt::LeftButton);
    EXPECT_FALSE(run.state().paused);
}

TEST(PauseCoverTest, FromHereItCanBeVoidedForAReason)
{
    CheckOffRun run;
    PauseCover cover(*run.presenter);
    cover.show();
    run.toItems();
    run.presenter->pause(QStringLiteral("screen went black"));
    QTest::mouseClick(cover.findChild<QPushButton*>(QStringLiteral("voidPaused")), Qt::LeftButton);
    auto* dialog = cover.findChild<ReasonDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(run.state().paused) << "not before there is a reason";
    auto* own = dialog->findChild<QLineEdit*>(QStringLiteral("ownReason"));
    QTest::keyClicks(own, QStringLiteral("screen is broken"));
    QTest::keyClick(own, Qt::Key_Return);
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
    EXPECT_EQ(run.state().endNote, QStringLiteral("screen is broken"));
}

}  // namespace

}  // namespace pause_cover_test
