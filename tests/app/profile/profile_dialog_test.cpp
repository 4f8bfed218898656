#include "app/profile/profile_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>

#include "app/look/style.h"
#include "app/profile/measure_dialog.h"
#include "app/words/fault_words.h"
#include "core/hand/free_hand.h"
#include "core/hand/hand_pose.h"
#include "tests/support/fakes.h"
#include "tests/support/layout_audit.h"
#include "tests/support/pseudo_translator.h"

namespace fb::test::profile_dialog_tests {

namespace profile_dialog_test {

const Fault kTrouble{Problem::StoreNotWritable, "/there/profile.db", {}, 0.0, 0.0};

struct Shown {
    explicit Shown(const Profile& profile = {}, const std::optional<Fault>& trouble = std::nullopt)
    {
        keeper.stored.profile = profile;
        keeper.stored.trouble = trouble;
        learner.load(std::nullopt);
        const auto estimate = [](Sex sex, Cm stature) -> Result<Cm> {
            if (stature.value() < 120.0)
                return fault(Problem::StatureOutOfRange, {}, "100", 120.0, 220.0);
            return stature * (sex == Sex::Male ? 0.11 : 0.1);
        };
        dialog = std::make_unique<ProfileDialog>(
            ProfileDialog::Doors{learner, estimate, Cm{18.1}, Cm{1.6}, schemeOf(PaletteKind::Light)},
            nullptr);
        dialog->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
    }

    template <class Widget = QPushButton>
    [[nodiscard]] Widget* find(const char* name) const
    {
        return dialog->findChild<Widget*>(QLatin1String(name));
    }
    void type(const char* name, const char* text) const
    {
        auto* edit = find<QLineEdit>(name);
        edit->selectAll();
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClicks(edit, QString::fromLatin1(text));
    }
    void click(const char* name) const { QTest::mouseClick(find<QWidget>(name), Qt::LeftButton); }
    [[nodiscard]] QLabel& notice() const { return *find<QLabel>("profileNotice"); }

    MemoryProfiles keeper;
    Learner learner{keeper};
    std::unique_ptr<ProfileDialog> dialog;
};

}  // namespace profile_dialog_test

using namespace profile_dialog_test;

TEST(ProfileDialogTest, WhatIsTypedIsKeptWholeByKeysAlone)
{
    Shown shown;
    shown.type("runHand", "17,4");
    shown.type("runHandStature", "163");
    shown.type("profileFinger", "1.45");
    auto* right = shown.find<QRadioButton>("writesRight");
    EXPECT_TRUE(right->isChecked());
    right->setFocus();
    QTest::keyClick(right, Qt::Key_Left);
    EXPECT_TRUE(shown.find<QRadioButton>("writesLeft")->isChecked());
    QTest::keyClick(shown.find<QLineEdit>("profileFinger"), Qt::Key_Return);
    EXPECT_EQ(shown.dialog->result(), QDialog::Accepted);
    const Profile wanted{.handLength = Cm{17.4},
                         .fingerWidth = Cm{1.45},
                         .handedness = Side::Left,
                         .sex = Sex::Female,
                         .stature = Cm{163.0}};
    EXPECT_EQ(shown.keeper.stored.profile, std::optional(wanted));
    EXPECT_EQ(shown.learner.profile(), wanted);
}

TEST(ProfileDialogTest, ShowsWhatIsKnownAndSavesItUnchanged)
{
    const Profile known{.handLength = Cm{20.5},
                        .fingerWidth = Cm{1.9},
                        .handedness = Side::Left,
                        .sex = Sex::Male,
                        .stature = Cm{182.5}};
    Shown shown(known);
    EXPECT_TRUE(shown.find<QRadioButton>("writesLeft")->isChecked());
    shown.click("saveProfile");
    EXPECT_EQ(shown.keeper.stored.profile, std::optional(known));
}

TEST(ProfileDialogTest, BlankFieldsAreNotKnownAndShowTheUsualFaintly)
{
    Shown shown(Profile{.handLength = Cm{20.5}, .fingerWidth = Cm{1.9}});
    shown.type("runHand", "");
    shown.type("profileFinger", "");
    EXPECT_EQ(shown.find<QLineEdit>("runHand")->placeholderText(), QStringLiteral("18.1"));
    EXPECT_EQ(shown.find<QLineEdit>("profileFinger")->placeholderText(), QStringLiteral("1.6"));
    shown.click("saveProfile");
    EXPECT_EQ(shown.keeper.stored.profile, std::optional(Profile{}));
}

TEST(ProfileDialogTest, ABadFieldIsToldInOneSentenceAndEverythingTypedStays)
{
    struct Row {
        const char* field;
        const char* text;
        Fault told;
    };
    const Row kRows[]{
        {"runHand", "12.9", checkedHandLength(Cm{0.0}).error()},
        {"runHand", "long", checkedHandLength(Cm{0.0}).error()},
        {"profileFinger", "1.1", checkedFingerWidth(Cm{0.0}).error()},
        {"profileFinger", "2.6", checkedFingerWidth(Cm{0.0}).error()},
        {"profileFinger", "thumb", checkedFingerWidth(Cm{0.0}).error()},
        {"runHandStature", "tall", {Problem::StatureNotANumber, {}, "tall", 0.0, 0.0}},
        {"runHandStature", "100", {Problem::StatureOutOfRange, {}, "100", 120.0, 220.0}},
    };
    for (const Row& row : kRows) {
        Shown shown;
        EXPECT_FALSE(shown.notice().isVisible());
        shown.type(row.field, row.text);
        shown.click("saveProfile");
        EXPECT_TRUE(shown.dialog->isVisible()) << row.text;
        EXPECT_TRUE(shown.notice().isVisible()) << row.text;
        EXPECT_EQ(shown.notice().text(), sentenceOf(row.told)) << row.text;
        EXPECT_EQ(shown.find<QLineEdit>(row.field)->text(), QLatin1String(row.text));
        EXPECT_EQ(shown.keeper.saves, 0) << row.text;
    }
}

TEST(ProfileDialogTest, AHandIsEstimatedAndMayBeChangedAfterwards)
{
    Shown shown;
    shown.type("runHandStature", "180");
    QTest::keyClick(shown.find<QComboBox>("runHandSex"), Qt::Key_Down);
    shown.click("estimateHand");
    EXPECT_EQ(shown.find<QLineEdit>("runHand")->text(), QStringLiteral("19.8"));
    shown.type("runHand", "19.5");
    shown.click("saveProfile");
    EXPECT_EQ(shown.learner.profile().handLength, std::optional(Cm{19.5}));
    EXPECT_EQ(shown.learner.profile().stature, std::optional(Cm{180.0}));
    EXPECT_EQ(shown.learner.profile().sex, std::optional(Sex::Male));
}

TEST(ProfileDialogTest, AProfileThatCannotBeKeptIsToldAndUsedOnlyWhenTheLearnerSaysSo)
{
    Shown shown({}, kTrouble);
    EXPECT_TRUE(shown.notice().isVisible()) << "known when the dialog opens";
    EXPECT_FALSE(shown.find("useUnsaved")->isVisible());
    shown.type("profileFinger", "2");
    shown.click("saveProfile");
    EXPECT_TRUE(shown.dialog->isVisible());
    EXPECT_EQ(shown.notice().text(), sentenceOf(kTrouble));
    EXPECT_EQ(shown.find<QLineEdit>("profileFinger")->text(), QStringLiteral("2"));
    EXPECT_EQ(shown.learner.profile(), Profile{});
    ASSERT_TRUE(shown.find("useUnsaved")->isVisible());
    shown.click("useUnsaved");
    EXPECT_EQ(shown.dialog->result(), QDialog::Accepted);
    EXPECT_EQ(shown.learner.profile().fingerWidth, std::optional(Cm{2.0}));
}

TEST(ProfileDialogTest, AFieldChangedAfterAFailureIsWhatIsUsed)
{
    Shown shown({}, kTrouble);
    shown.type("profileFinger", "2");
    shown.click("saveProfile");
    shown.type("profileFinger", "1.4");
    shown.click("useUnsaved");
    EXPECT_EQ(shown.learner.profile().fingerWidth, std::optional(Cm{1.4}));
}

TEST(ProfileDialogTest, WhatIsMeasuredIsWrittenIntoTheFieldsAndSkippedStepsAreNot)
{
    Shown shown(Profile{.fingerWidth = Cm{1.9}});
    shown.click("measureHand");
    auto* measuring = shown.find<MeasureDialog>("measureDialog");
    ASSERT_NE(measuring, nullptr);
    auto* board = measuring->findChild<MeasureBoard*>();
    board->setValue(257);
    QTest::mouseClick(measuring->findChild<QPushButton*>(QStringLiteral("measureTake")), Qt::LeftButton);
    board->setValue(561);
    QTest::mouseClick(measuring->findChild<QPushButton*>(QStringLiteral("measureTake")), Qt::LeftButton);
    QTest::mouseClick(measuring->findChild<QPushButton*>(QStringLiteral("measureSkip")), Qt::LeftButton);
    EXPECT_EQ(shown.find<QLineEdit>("runHand")->text(), QStringLiteral("18.7"));
    EXPECT_EQ(shown.find<QLineEdit>("profileFinger")->text(), QStringLiteral("1.9"));
    EXPECT_EQ(shown.keeper.saves, 0) << "nothing is kept before Save";
    EXPECT_EQ(shown.keeper.stored.scales.size(), 1U) << "but the screen is";
}

TEST(ProfileDialogTest, WhatIsMeasuredPutsTheSentenceOfABadNumberAway)
{
    Shown shown;
    shown.type("runHand", "31");
    shown.click("saveProfile");
    ASSERT_TRUE(shown.find<QLabel>("profileNotice")->isVisible());
    shown.click("measureHand");
    auto* measuring = shown.find<MeasureDialog>("measureDialog");
    auto* board = measuring->findChild<MeasureBoard*>();
    board->setValue(257);
    QTest::mouseClick(measuring->findChild<QPushButton*>(QStringLiteral("measureTake")), Qt::LeftButton);
    board->setValue(561);
    for (const char* button : {"measureTake", "measureSkip"})
        QTest::mouseClick(measuring->findChild<QPushButton*>(QLatin1String(button)), Qt::LeftButton);
    EXPECT_FALSE(shown.find<QLabel>("profileNotice")->isVisible());
}

TEST(ProfileDialogTest, CancelKeepsNothing)
{
    Shown shown;
    shown.type("runHand", "20");
    QTest::keyClick(shown.find<QLineEdit>("runHand"), Qt::Key_Escape);
    EXPECT_EQ(shown.dialog->result(), QDialog::Rejected);
    EXPECT_EQ(shown.learner.profile(), Profile{});
    EXPECT_EQ(shown.keeper.saves, 0);
}

TEST(ProfileDialogTest, NothingIsCutOffOrNamelessWithLargeOrLongOrMirroredWords)
{
    PseudoTranslator pseudo;
    for (const double scale : {1.0, 1.5, 2.0}) {
        for (const bool isWordy : {false, true}) {
            applyStyle(*qApp, schemeOf(PaletteKind::Light), scale);
            QApplication::setLayoutDirection(isWordy ? Qt::RightToLeft : Qt::LeftToRight);
            if (isWordy)
                QApplication::installTranslator(&pseudo);
            {
                Shown shown({}, kTrouble);
                shown.click("saveProfile");
                QTest::qWait(20);
                const QStringList faults = layoutFaults(*shown.dialog) + namelessControls(*shown.dialog);
                EXPECT_TRUE(faults.isEmpty()) << scale << '\n' << faults.join('\n').toStdString();
            }
            QApplication::removeTranslator(&pseudo);
        }
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
}

}  // namespace fb::test::profile_dialog_tests
