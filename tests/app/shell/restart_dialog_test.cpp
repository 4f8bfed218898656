#include "app/shell/restart_dialog.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "tests/support/layout_audit.h"

namespace fb::test::restart_dialog_test {

TEST(RestartDialogTest, NamesTheFileAndKeepsTheRunUnlessToldOtherwise)
{
    RestartDialog dialog(QStringLiteral("/lab/ward.json"), nullptr);
    dialog.open();
    EXPECT_TRUE(dialog.findChild<QLabel*>(QStringLiteral("restartQuestion"))
                    ->text()
                    .contains(QLatin1String("ward.json")));
    EXPECT_TRUE(namelessControls(dialog).isEmpty()) << namelessControls(dialog).join('\n').toStdString();
    EXPECT_TRUE(layoutFaults(dialog).isEmpty()) << layoutFaults(dialog).join('\n').toStdString();
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_EQ(dialog.result(), QDialog::Rejected);
    dialog.open();
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("restartRun")), Qt::LeftButton);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST(RestartDialogTest, TheShippedPolicyHasNoFileToName)
{
    RestartDialog dialog(QString(), nullptr);
    EXPECT_TRUE(dialog.findChild<QLabel*>(QStringLiteral("restartQuestion"))
                    ->text()
                    .contains(QLatin1String("shipped")));
}

}  // namespace fb::test::restart_dialog_test
