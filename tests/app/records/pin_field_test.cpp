#include "app/records/pin_field.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/manikin_sample.h"

namespace pin_field_test {

namespace {

using namespace fb;
using namespace fb::test;

class PinFieldTest : public ::testing::Test {
protected:
    PinFieldTest()
    {
        dressed();
        field.say(QStringLiteral("Assessor"));
        field.showAssessors({{3, QStringLiteral("Vera Holm")}, {7, QStringLiteral("Tom Aske")}});
        field.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&field));
    }

    PinField field{QStringLiteral("first")};
    QLineEdit* pin = field.findChild<QLineEdit*>("firstPin");
    QComboBox* who = field.findChild<QComboBox*>("firstWho");
};

TEST_F(PinFieldTest, NobodyIsChosenForThem)
{
    EXPECT_EQ(field.assessor(), 0);
    field.focusPin();
    EXPECT_TRUE(who->hasFocus()) << "the name comes first";
    QTest::keyClick(who, Qt::Key_Down);
    EXPECT_EQ(field.assessor(), 3);
    field.focusPin();
    EXPECT_TRUE(pin->hasFocus());
}

TEST_F(PinFieldTest, ThePinIsNeverShownAndEnterHandsItOver)
{
    QSignalSpy entered(&field, &PinField::entered);
    EXPECT_EQ(pin->echoMode(), QLineEdit::Password);
    QTest::keyClicks(pin, QStringLiteral("482913"));
    QTest::keyClick(pin, Qt::Key_Return);
    EXPECT_EQ(entered.size(), 1);
    EXPECT_EQ(field.pin(), QStringLiteral("482913"));
    EXPECT_FALSE(pin->displayText().contains(QLatin1String("4829")));
    field.clearPin();
    EXPECT_TRUE(field.pin().isEmpty());
}

TEST_F(PinFieldTest, WhoWasChosenStaysWhenTheListChanges)
{
    field.choose(7);
    field.showAssessors(
        {{1, QStringLiteral("Ada")}, {3, QStringLiteral("Vera")}, {7, QStringLiteral("Tom")}});
    EXPECT_EQ(field.assessor(), 7);
    field.showAssessors({{1, QStringLiteral("Ada")}, {3, QStringLiteral("Vera")}});
    EXPECT_EQ(field.assessor(), 0) << "who is gone is not replaced by another";
    field.showAssessors({{1, QStringLiteral("Ada")}});
    EXPECT_EQ(field.assessor(), 1) << "where there is one alone, nobody has to choose";
    EXPECT_EQ(field.assessorName(), QStringLiteral("Ada"));
}

TEST_F(PinFieldTest, AWrongPinIsMarkedByALineThatIsBroken)
{
    QApplication::setCursorFlashTime(0);  // a caret that blinks is a difference too
    // Dressed by the style sheet once before: the very first dressing shifts the words by a pixel.
    field.setWrong(true);
    field.setWrong(false);
    const QImage usual = pin->grab().toImage();
    field.setWrong(true);
    EXPECT_NE(pin->grab().toImage(), usual);
    field.setWrong(false);
    EXPECT_EQ(pin->grab().toImage(), usual);
}

}  // namespace

}  // namespace pin_field_test
