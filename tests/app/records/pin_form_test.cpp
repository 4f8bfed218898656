#include "app/records/pin_form.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace fb::test::pin_form_tests {

namespace pin_form_test {

struct Form {
    Form()
    {
        form.setAction(QStringLiteral("Sign"));
        form.setAssessors({{1, QStringLiteral("Ada")}, {2, QStringLiteral("Ines")}});
        form.show();
    }
    template <class Widget>
    [[nodiscard]] Widget& part(const char* name)
    {
        return *form.findChild<Widget*>(QLatin1String(name));
    }

    PinForm form{"door"};
};

}  // namespace pin_form_test

using pin_form_test::Form;

TEST(PinFormTest, GivesWhoAndPinByKeyOnceAndForgetsThePin)
{
    Form f;
    QSignalSpy given(&f.form, &PinForm::given);
    auto& pin = f.part<QLineEdit>("doorPin");
    EXPECT_EQ(pin.echoMode(), QLineEdit::Password);
    QTest::keyClick(&pin, Qt::Key_Return);
    EXPECT_EQ(given.count(), 0) << "nothing was typed";
    f.form.choose(2);
    QTest::keyClicks(&pin, QStringLiteral("551903"));
    QTest::keyClick(&pin, Qt::Key_Return);
    ASSERT_EQ(given.count(), 1);
    EXPECT_EQ(given[0][0].toLongLong(), 2);
    EXPECT_EQ(given[0][1].toString(), QStringLiteral("551903"));
    EXPECT_TRUE(f.form.isBlank());
}

TEST(PinFormTest, WaitsWhileBusyOrHeldAndSaysHowLong)
{
    Form f;
    QSignalSpy given(&f.form, &PinForm::given);
    auto& pin = f.part<QLineEdit>("doorPin");
    auto& action = f.part<QPushButton>("doorAction");
    QTest::keyClicks(&pin, QStringLiteral("551903"));
    EXPECT_TRUE(action.isEnabled());
    f.form.setHeld(3);
    EXPECT_TRUE(f.part<QLabel>("pinFormWait").isVisible());
    EXPECT_TRUE(f.part<QLabel>("pinFormWait").text().contains(QStringLiteral("3")));
    QTest::keyClick(&pin, Qt::Key_Return);
    f.form.setHeld(0);
    f.form.setBusy(true);
    QTest::keyClick(&pin, Qt::Key_Return);
    EXPECT_EQ(given.count(), 0);
    f.form.setBusy(false);
    QTest::mouseClick(&action, Qt::LeftButton);
    EXPECT_EQ(given.count(), 1);
}

TEST(PinFormTest, TheChosenOneStaysWhenAnotherIsEnrolled)
{
    Form f;
    f.form.choose(2);
    f.form.setAssessors({{1, QStringLiteral("Ada")}, {2, QStringLiteral("Ines")}, {3, QStringLiteral("Li")}});
    EXPECT_EQ(f.part<QComboBox>("doorWho").currentText(), QStringLiteral("Ines"));
}

}  // namespace fb::test::pin_form_tests
