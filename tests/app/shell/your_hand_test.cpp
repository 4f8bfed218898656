// The learner's hand through the window: menu, dialog of a run, what is kept.
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QRadioButton>

#include "tests/support/layout_audit.h"
#include "tests/support/page_steps.h"
#include "tests/support/window_walk.h"

namespace fb::test::your_hand_tests {

namespace your_hand_test {

void type(OpenWindow& open, const char* dialog, const char* field, const char* text)
{
    auto* edit = open.find(dialog)->findChild<QLineEdit*>(QLatin1String(field));
    ASSERT_NE(edit, nullptr) << field;
    edit->selectAll();
    QTest::keyClicks(edit, QString::fromLatin1(text));
}

}  // namespace your_hand_test

using your_hand_test::type;

TEST(YourHandTest, IsOpenedFromTheMenuAndUsedAndKept)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    choose(open, "viewMenu", "yourHand");
    ASSERT_NE(open.find("profileDialog"), nullptr);
    type(open, "profileDialog", "runHand", "20.5");
    type(open, "profileDialog", "profileFinger", "1.9");
    click(open, "writesLeft");
    click(open, "saveProfile");
    EXPECT_EQ(
        open.profiles.stored.profile,
        std::optional(Profile{.handLength = Cm{20.5}, .fingerWidth = Cm{1.9}, .handedness = Side::Left}));
    EXPECT_EQ(open.state().policy->value(PolicyKey::HandLength), 20.5) << "nothing was marked yet";
    EXPECT_EQ(open.state().own.handedness, Side::Left);
    EXPECT_EQ(open.profiles.saves, 1);
}

TEST(YourHandTest, AMarkIsNotLostToANewHand)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    open.practice().placeMark({0.0, -4.0});
    choose(open, "viewMenu", "yourHand");
    type(open, "profileDialog", "runHand", "20.5");
    click(open, "saveProfile");
    EXPECT_TRUE(open.state().mark.has_value());
    EXPECT_EQ(open.state().own.handLength, std::optional(Cm{20.5}));
    EXPECT_EQ(open.profiles.saves, 1);
}

TEST(YourHandTest, IsOpenedFromTheDialogOfARunWhichShowsItAfterwards)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    click(open, "newRun");
    type(open, "runDialog", "runLength", "17");
    click(open, "moreHand");
    ASSERT_NE(open.find("profileDialog"), nullptr);
    type(open, "profileDialog", "runHand", "16.2");
    click(open, "saveProfile");
    auto* run = open.find("runDialog");
    EXPECT_EQ(run->findChild<QLineEdit*>(QStringLiteral("runLength"))->text(), QStringLiteral("17"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.find("profileDialog") == nullptr; }));
    EXPECT_EQ(run->findChild<QLineEdit*>(QStringLiteral("runHand"))->text(), QStringLiteral("16.2"));
    QTest::mouseClick(open.find("startRun"), Qt::LeftButton);
    EXPECT_EQ(open.state().policy->value(PolicyKey::HandLength), 16.2);
    EXPECT_EQ(open.state().setup.length, 17);
}

TEST(YourHandTest, AHandTypedForARunIsTheProfilesFromThenOn)
{
    Remembered remembered;
    remembered.profile = Profile{.fingerWidth = Cm{1.9}, .handedness = Side::Left};
    OpenWindow open(plainPreferences(), {1280, 800}, 7, remembered);
    ASSERT_TRUE(open.isReady);
    click(open, "newRun");
    click(open, "startRun");
    EXPECT_EQ(open.profiles.saves, 0) << "the usual hand is nobody's";
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.find("runDialog") == nullptr; }));
    click(open, "newRun");
    type(open, "runDialog", "runHand", "19.5");
    click(open, "startRun");
    EXPECT_EQ(open.profiles.saves, 1);
    EXPECT_EQ(
        open.profiles.stored.profile,
        std::optional(Profile{.handLength = Cm{19.5}, .fingerWidth = Cm{1.9}, .handedness = Side::Left}));
    EXPECT_EQ(open.state().policy->value(PolicyKey::DeltoidFingerWidth), 1.9);
}

TEST(YourHandTest, NothingIsCutOffInTheSmallestWindowWithLargeText)
{
    for (const int percent : {100, 150, 200}) {
        Preferences preferences = plainPreferences();
        preferences.textPercent = percent;
        OpenWindow open(preferences);
        ASSERT_TRUE(open.isReady);
        choose(open, "viewMenu", "yourHand");
        settle();
        const QWidget& dialog = *open.find("profileDialog");
        QStringList faults = layoutFaults(dialog) + namelessControls(dialog);
        EXPECT_LE(dialog.width(), open.window().width());
        EXPECT_LE(dialog.height(), open.window().height());
        click(open, "measureHand");
        settle();
        faults += layoutFaults(*open.find("measureDialog")) + namelessControls(*open.find("measureDialog"));
        EXPECT_TRUE(faults.isEmpty()) << percent << '\n' << faults.join('\n').toStdString();
    }
}

}  // namespace fb::test::your_hand_tests
