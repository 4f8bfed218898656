#include "app/practice/run_dialog.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>

#include "tests/support/layout_audit.h"
#include "tests/support/sample_run.h"

namespace fb::test {

namespace run_dialog_test {

void type(RunDialog& dialog, const char* field, const QString& text)
{
    auto* edit = dialog.findChild<QLineEdit*>(QLatin1String(field));
    edit->selectAll();
    QTest::keyClicks(edit, text);
}

}  // namespace run_dialog_test

TEST(RunDialogTest, StartsARunAsItIsSetUp)
{
    SampleRun run;
    RunDialog dialog(run.presenter, nullptr);
    dialog.show();
    run_dialog_test::type(dialog, "runSeed", QStringLiteral("314"));
    run_dialog_test::type(dialog, "runLength", QStringLiteral("25"));
    dialog.findChild<QRadioButton*>(QStringLiteral("runHelp2"))->setChecked(true);
    dialog.findChild<QCheckBox*>(QStringLiteral("runAsksSide"))->setChecked(true);
    auto* convention = dialog.findChild<QComboBox*>(QStringLiteral("runConvention"));
    convention->setCurrentIndex(convention->findData(static_cast<int>(Convention::DeltoidFingers)));
    QTest::keyClick(dialog.findChild<QLineEdit*>(QStringLiteral("runSeed")), Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(run.state().setup,
              (PracticeSetup{.seed = 314, .length = 25, .help = HelpLevel::Nothing, .asksSide = true}));
    EXPECT_EQ(run.state().convention, Convention::DeltoidFingers);
}

TEST(RunDialogTest, ABadFieldIsToldInPlaceAndEverythingTypedStays)
{
    SampleRun run;
    run.presenter.placeMark({0.0, -4.0});
    RunDialog dialog(run.presenter, nullptr);
    dialog.show();
    auto* notice = dialog.findChild<QLabel*>(QStringLiteral("runNotice"));
    EXPECT_FALSE(notice->isVisible());
    for (const char* bad : {"0", "201", "-3", "ten", ""}) {
        run_dialog_test::type(dialog, "runLength", QStringLiteral(" "));
        run_dialog_test::type(dialog, "runLength", QString::fromLatin1(bad));
        QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("startRun")), Qt::LeftButton);
        EXPECT_TRUE(notice->isVisible()) << bad;
        EXPECT_FALSE(notice->text().isEmpty()) << bad;
        EXPECT_TRUE(dialog.isVisible()) << bad;
    }
    run_dialog_test::type(dialog, "runLength", QStringLiteral("5"));
    run_dialog_test::type(dialog, "runSeed", QStringLiteral("one"));
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("startRun")), Qt::LeftButton);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(dialog.findChild<QLineEdit*>(QStringLiteral("runSeed"))->text(), QStringLiteral("one"));
    EXPECT_EQ(run.state().setup.seed, 7U);
    EXPECT_TRUE(run.state().mark.has_value());
}

TEST(RunDialogTest, ProposesAFreshSeedAndThePresentSetup)
{
    SampleRun run(12, HelpLevel::NamedOnly, true);
    RunDialog dialog(run.presenter, nullptr);
    dialog.show();
    auto* seed = dialog.findChild<QLineEdit*>(QStringLiteral("runSeed"));
    const QString first = seed->text();
    EXPECT_NE(first, QString::number(run.state().setup.seed));
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("freshSeed")), Qt::LeftButton);
    EXPECT_NE(seed->text(), first);
    EXPECT_EQ(dialog.findChild<QLineEdit*>(QStringLiteral("runLength"))->text(), QStringLiteral("12"));
    EXPECT_TRUE(dialog.findChild<QRadioButton*>(QStringLiteral("runHelp1"))->isChecked());
    EXPECT_TRUE(dialog.findChild<QCheckBox*>(QStringLiteral("runAsksSide"))->isChecked());
    EXPECT_TRUE(namelessControls(dialog).isEmpty()) << namelessControls(dialog).join('\n').toStdString();
    EXPECT_TRUE(layoutFaults(dialog).isEmpty()) << layoutFaults(dialog).join('\n').toStdString();
}

}  // namespace fb::test
