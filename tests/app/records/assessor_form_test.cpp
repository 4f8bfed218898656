#include "app/records/assessor_form.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace fb::test::assessor_form_test {

TEST(AssessorFormTest, GivesNameAndBothPinsAndKeepsTheNameAlone)
{
    AssessorForm form;
    form.setAction(QStringLiteral("Enrol"));
    form.show();
    const auto field = [&](const char* name) { return form.findChild<QLineEdit*>(QLatin1String(name)); };
    QSignalSpy given(&form, &AssessorForm::given);
    QTest::keyClicks(field("enrolName"), QStringLiteral("Ada Brook"));
    QTest::keyClicks(field("enrolPin"), QStringLiteral("482716"));
    QTest::keyClicks(field("enrolAgain"), QStringLiteral("482717"));
    auto* action = form.findChild<QPushButton*>(QStringLiteral("enrolAction"));
    form.setBusy(true);
    QTest::keyClick(field("enrolAgain"), Qt::Key_Return);
    EXPECT_EQ(given.count(), 0);
    form.setBusy(false);
    QTest::keyClick(field("enrolAgain"), Qt::Key_Return);
    ASSERT_EQ(given.count(), 1);
    EXPECT_EQ(given[0], (QVariantList{QStringLiteral("Ada Brook"), QStringLiteral("482716"),
                                      QStringLiteral("482717")}));
    EXPECT_EQ(field("enrolName")->text(), QStringLiteral("Ada Brook")) << "what was typed stays";
    EXPECT_TRUE(field("enrolPin")->text().isEmpty());
    EXPECT_TRUE(field("enrolAgain")->text().isEmpty());
    EXPECT_EQ(field("enrolPin")->echoMode(), QLineEdit::Password);
    EXPECT_TRUE(form.findChild<QLabel*>(QStringLiteral("enrolHint"))->text().contains(QStringLiteral("6")));
    QTest::mouseClick(action, Qt::LeftButton);
    EXPECT_EQ(given.count(), 2);
    form.clear();
    EXPECT_TRUE(field("enrolName")->text().isEmpty());
}

TEST(AssessorFormTest, EnterGoesFromFieldToFieldAndThenGives)
{
    AssessorForm form;
    form.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form));
    QSignalSpy given(&form, &AssessorForm::given);
    QSignalSpy edited(&form, &AssessorForm::edited);
    form.focusFirst();
    for (const char* typed : {"Vera  Holm ", "482913", "482913"}) {
        EXPECT_EQ(given.count(), 0);
        QTest::keyClicks(form.focusWidget(), QLatin1String(typed));
        QTest::keyClick(form.focusWidget(), Qt::Key_Return);
    }
    ASSERT_EQ(given.count(), 1);
    EXPECT_EQ(given[0][0].toString(), QStringLiteral("Vera Holm"));
    EXPECT_EQ(edited.count(), 11 + 6 + 6);
    EXPECT_EQ(form.focusWidget(), form.findChild<QLineEdit*>(QStringLiteral("enrolPin")))
        << "should it be refused, the PIN is typed again";
}

}  // namespace fb::test::assessor_form_test
