#include "app/practice/how_choice.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>

namespace how_choice_test {

namespace {

using namespace fb;

TEST(HowChoiceTest, EitherWaySaysWhatItMeans)
{
    HowChoice choice;
    EXPECT_FALSE(choice.isByHand());
    const QString before = choice.findChild<QLabel*>("runHowNote")->text();
    QSignalSpy changed(&choice, &HowChoice::changed);
    choice.findChild<QRadioButton*>("runByHand")->click();
    EXPECT_TRUE(choice.isByHand());
    EXPECT_EQ(changed.size(), 1);
    EXPECT_NE(choice.findChild<QLabel*>("runHowNote")->text(), before);
    choice.setByHand(false);
    EXPECT_FALSE(choice.isByHand());
}

}  // namespace

}  // namespace how_choice_test
