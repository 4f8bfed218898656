#include "app/checkoff/first_assessor.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/manikin_sample.h"

namespace first_assessor_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(FirstAssessorTest, EnterGoesFromFieldToFieldAndThenEnrols)
{
    dressed();
    FirstAssessor form;
    form.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form));
    QSignalSpy pressed(&form, &FirstAssessor::enrolPressed);
    form.focusFirst();
    for (const char* typed : {"Vera  Holm ", "482913", "482913"}) {
        QTest::keyClicks(QApplication::focusWidget(), QLatin1String(typed));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    EXPECT_EQ(pressed.size(), 1);
    EXPECT_EQ(form.name(), QStringLiteral("Vera Holm"));
    EXPECT_EQ(form.pin(), QStringLiteral("482913"));
    EXPECT_TRUE(form.pinsAgree());
}

TEST(FirstAssessorTest, TellsWhenThePinsDifferAndLetsThemBeTypedAgain)
{
    FirstAssessor form;
    form.findChild<QLineEdit*>("enrolPin")->setText(QStringLiteral("482913"));
    form.findChild<QLineEdit*>("enrolAgain")->setText(QStringLiteral("482931"));
    EXPECT_FALSE(form.pinsAgree());
    form.focusPin();
    EXPECT_TRUE(form.findChild<QLineEdit*>("enrolAgain")->text().isEmpty());
    for (const char* name : {"enrolPin", "enrolAgain"})
        EXPECT_EQ(form.findChild<QLineEdit*>(QLatin1String(name))->echoMode(), QLineEdit::Password);
    form.clear();
    EXPECT_TRUE(form.pin().isEmpty());
}

}  // namespace

}  // namespace first_assessor_test
