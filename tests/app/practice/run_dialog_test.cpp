#include "app/practice/run_dialog.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>

#include "app/words/fault_words.h"
#include "core/hand/hand_pose.h"
#include "tests/support/layout_audit.h"
#include "tests/support/sample_run.h"

namespace fb::test::run_dialog_tests {

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
    auto* convention = dialog.findChild<QComboBox*>(QStringLiteral("runConvention.deltoid"));
    convention->setCurrentIndex(convention->findData(static_cast<int>(Convention::DeltoidFingers)));
    QTest::keyClick(dialog.findChild<QLineEdit*>(QStringLiteral("runSeed")), Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(
        run.state().setup,
        (PracticeSetup{.seed = 314, .length = 25, .help = HelpLevel::Nothing, .asksSide = true, .mix = {}}));
    EXPECT_EQ(run.state().convention, Convention::DeltoidFingers);
}

TEST(RunDialogTest, ByHandNothingIsDrawnSoNoHelpIsChosen)
{
    SampleRun run;
    RunDialog dialog(run.presenter, nullptr);
    dialog.show();
    auto* help = dialog.findChild<QRadioButton*>(QStringLiteral("runHelp1"));
    auto* byHand = dialog.findChild<QRadioButton*>(QStringLiteral("runByHand"));
    EXPECT_TRUE(help->isEnabled());
    QTest::keyClick(byHand, Qt::Key_Space);
    ASSERT_TRUE(byHand->isChecked());
    EXPECT_FALSE(help->isEnabled());
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("startRun")), Qt::LeftButton);
    EXPECT_TRUE(run.state().setup.byHand);
    EXPECT_EQ(run.state().phase, Phase::Feeling);
    RunDialog again(run.presenter, nullptr);
    EXPECT_TRUE(again.findChild<QRadioButton*>(QStringLiteral("runByHand"))->isChecked());
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

TEST(RunDialogTest, SitesAreTickedAloneOrMixedAndAtLeastOne)
{
    SampleRun run;
    RunDialog dialog(run.presenter, nullptr);
    dialog.show();
    auto* arm = dialog.findChild<QCheckBox*>(QStringLiteral("runSite.deltoid"));
    auto* hip = dialog.findChild<QCheckBox*>(QStringLiteral("runSite.ventrogluteal"));
    auto* notice = dialog.findChild<QLabel*>(QStringLiteral("runNotice"));
    auto* start = dialog.findChild<QPushButton*>(QStringLiteral("startRun"));
    QTest::keyClick(arm, Qt::Key_Space);
    QTest::mouseClick(start, Qt::LeftButton);
    EXPECT_TRUE(notice->isVisible());
    EXPECT_EQ(notice->text(), sentenceOf({Problem::NoSiteChosen, {}, {}, 0.0, 0.0}));
    EXPECT_EQ(run.state().setup.seed, 7U);
    QTest::keyClick(hip, Qt::Key_Space);
    QTest::keyClick(dialog.findChild<QCheckBox*>(QStringLiteral("runFindings")), Qt::Key_Space);
    QTest::mouseClick(start, Qt::LeftButton);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().request->site == Site::Ventrogluteal; }, 20000));
    EXPECT_EQ(run.state().setup.mix, (RequestMix{SiteSet::only(Site::Ventrogluteal), true}));
}

TEST(RunDialogTest, AHandOutOfRangeIsToldInOneSentence)
{
    SampleRun run;
    RunDialog dialog(run.presenter, nullptr);
    dialog.show();
    auto* notice = dialog.findChild<QLabel*>(QStringLiteral("runNotice"));
    for (const char* bad : {"12.9", "24.1", "long", "0"}) {
        run_dialog_test::type(dialog, "runHand", QString::fromLatin1(bad));
        QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("startRun")), Qt::LeftButton);
        EXPECT_TRUE(dialog.isVisible()) << bad;
        EXPECT_EQ(notice->text(), sentenceOf(checkedHandLength(Cm{0.0}).error())) << bad;
        EXPECT_EQ(dialog.findChild<QLineEdit*>(QStringLiteral("runHand"))->text(), QLatin1String(bad));
    }
    run_dialog_test::type(dialog, "runHand", QStringLiteral("20,5"));
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("startRun")), Qt::LeftButton);
    EXPECT_EQ(run.state().own.handLength, std::optional(Cm{20.5}));
}

TEST(RunDialogTest, TheRestOfTheHandIsAskedForAndGoesIntoTheRunUntouched)
{
    OwnChoices own;
    own.fingerWidth = Cm{2.1};
    own.handedness = Side::Left;
    SampleRun run(PracticeSetup{.seed = 7, .length = 3, .asksSide = false, .mix = {}}, own);
    RunDialog dialog(run.presenter, nullptr);
    dialog.show();
    QSignalSpy asked(&dialog, &RunDialog::handAsked);
    QTest::keyClick(dialog.findChild<QPushButton*>(QStringLiteral("moreHand")), Qt::Key_Space);
    EXPECT_EQ(asked.count(), 1);
    EXPECT_TRUE(dialog.isVisible()) << "it starts no run";
    run_dialog_test::type(dialog, "runLength", QStringLiteral("4"));
    dialog.showHand(Cm{21.5});
    EXPECT_EQ(dialog.findChild<QLineEdit*>(QStringLiteral("runHand"))->text(), QStringLiteral("21.5"));
    EXPECT_EQ(dialog.findChild<QLineEdit*>(QStringLiteral("runLength"))->text(), QStringLiteral("4"));
    QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("startRun")), Qt::LeftButton);
    EXPECT_EQ(run.state().own.handLength, std::optional(Cm{21.5}));
    EXPECT_EQ(run.state().own.fingerWidth, std::optional(Cm{2.1}));
    EXPECT_EQ(run.state().own.handedness, Side::Left);
}

TEST(RunDialogTest, AHandIsEstimatedFromSexAndStature)
{
    SampleRun run;
    RunDialog dialog(run.presenter, nullptr);
    dialog.show();
    auto* notice = dialog.findChild<QLabel*>(QStringLiteral("runNotice"));
    auto* hand = dialog.findChild<QLineEdit*>(QStringLiteral("runHand"));
    auto* estimate = dialog.findChild<QPushButton*>(QStringLiteral("estimateHand"));
    const QString before = hand->text();
    run_dialog_test::type(dialog, "runHandStature", QStringLiteral("tall"));
    QTest::mouseClick(estimate, Qt::LeftButton);
    EXPECT_TRUE(notice->isVisible());
    EXPECT_EQ(hand->text(), before);
    QTest::keyClick(dialog.findChild<QComboBox*>(QStringLiteral("runHandSex")), Qt::Key_Down);
    run_dialog_test::type(dialog, "runHandStature", QStringLiteral("182"));
    QTest::keyClick(estimate, Qt::Key_Space);
    EXPECT_FALSE(notice->isVisible());
    const double estimated = run.presenter.estimatedHand(Sex::Male, Cm{182.0})->value();
    EXPECT_NEAR(hand->text().toDouble(), estimated, 0.051);
    EXPECT_TRUE(dialog.isVisible()) << "an estimate starts no run";
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
    // On a narrow screen the halves stand one above the other; that is laid out with the next events.
    QTest::qWait(20);
    EXPECT_TRUE(namelessControls(dialog).isEmpty()) << namelessControls(dialog).join('\n').toStdString();
    EXPECT_TRUE(layoutFaults(dialog).isEmpty()) << layoutFaults(dialog).join('\n').toStdString();
}

}  // namespace fb::test::run_dialog_tests
