#include "app/checkoff/reason_dialog.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>

#include "tests/support/layout_audit.h"

namespace reason_dialog_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(ReasonDialogTest, NothingIsDoneWithoutAReason)
{
    for (const ReasonFor what : {ReasonFor::Pause, ReasonFor::SafetyStop, ReasonFor::Void}) {
        ReasonDialog dialog(what, nullptr);
        dialog.show();
        auto* accept = dialog.findChild<QPushButton*>(QStringLiteral("reasonAccept"));
        auto* own = dialog.findChild<QLineEdit*>(QStringLiteral("ownReason"));
        auto* usual = dialog.findChild<QRadioButton*>(QStringLiteral("reason1"));
        EXPECT_FALSE(accept->isEnabled());
        QTest::keyClicks(own, QStringLiteral("   "));
        EXPECT_FALSE(accept->isEnabled()) << "blanks are no reason";
        QTest::mouseClick(usual, Qt::LeftButton, {}, QPoint(8, usual->height() / 2));
        EXPECT_TRUE(accept->isEnabled());
        EXPECT_EQ(dialog.reason(), usual->text());
        QTest::keyClicks(own, QStringLiteral(" the lights went out "));
        EXPECT_EQ(dialog.reason(), QStringLiteral("the lights went out"));
        EXPECT_FALSE(usual->isChecked()) << "one reason, not two";
        QTest::mouseClick(usual, Qt::LeftButton, {}, QPoint(8, usual->height() / 2));
        EXPECT_TRUE(own->text().isEmpty());
        EXPECT_EQ(dialog.reason(), usual->text());
        EXPECT_EQ(layoutFaults(dialog), QStringList());
        EXPECT_EQ(namelessControls(dialog), QStringList());
    }
}

TEST(ReasonDialogTest, ThatNobodyCameIsAReasonItselfAndOnlyAskedOnce)
{
    ReasonDialog dialog(ReasonFor::NoShow, nullptr);
    dialog.show();
    EXPECT_TRUE(dialog.findChildren<QRadioButton*>().isEmpty());
    EXPECT_FALSE(dialog.findChild<QLineEdit*>(QStringLiteral("ownReason"))->isVisible());
    auto* accept = dialog.findChild<QPushButton*>(QStringLiteral("reasonAccept"));
    ASSERT_TRUE(accept->isEnabled());
    EXPECT_EQ(layoutFaults(dialog), QStringList());
    EXPECT_EQ(namelessControls(dialog), QStringList());
    QTest::mouseClick(accept, Qt::LeftButton);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST(ReasonDialogTest, TheReasonIsHandedOnAndNothingIsWhereItIsPutAway)
{
    QWidget window;
    window.show();
    QStringList given;
    ReasonDialog::ask(ReasonFor::Pause, &window, [&](const QString& why) { given << why; });
    auto* dialog = window.findChild<ReasonDialog*>();
    ASSERT_NE(dialog, nullptr);
    dialog->reject();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_TRUE(given.isEmpty());
    ReasonDialog::ask(ReasonFor::Pause, &window, [&](const QString& why) { given << why; });
    dialog = window.findChild<ReasonDialog*>();
    ASSERT_NE(dialog, nullptr);
    auto* own = dialog->findChild<QLineEdit*>(QStringLiteral("ownReason"));
    QTest::keyClicks(own, QStringLiteral("fire alarm"));
    QTest::keyClick(own, Qt::Key_Return);
    EXPECT_EQ(given, QStringList{QStringLiteral("fire alarm")});
}

}  // namespace

}  // namespace reason_dialog_test
