#include "app/practice/hand_field.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/layout_audit.h"

namespace fb::test::hand_field_tests {

namespace hand_field_test {

void type(HandField& field, const char* name, const char* text)
{
    auto* edit = field.findChild<QLineEdit*>(QLatin1String(name));
    edit->selectAll();
    QTest::keyClicks(edit, QString::fromLatin1(text));
}

}  // namespace hand_field_test

using hand_field_test::type;

TEST(HandFieldTest, TakesAPointOrACommaAndNothingOutsideItsRange)
{
    HandField field;
    field.show();
    for (const char* good : {"13", "24", "18.5", "18,5", " 20 "}) {
        type(field, "runHand", good);
        EXPECT_TRUE(field.length().has_value()) << good;
    }
    type(field, "runHand", "18,5");
    EXPECT_EQ(*field.length(), Cm{18.5});
    for (const char* bad : {"12.99", "24.01", "-18", "1 8", "18.5.1", "wide", " "}) {
        type(field, "runHand", bad);
        ASSERT_FALSE(field.length().has_value()) << bad;
        EXPECT_EQ(field.length().error().problem, Problem::HandLengthOutOfRange) << bad;
    }
}

TEST(HandFieldTest, ALengthIsShownAsTheLanguageWritesItAndReadBack)
{
    const QLocale before;
    for (const auto language : {QLocale::English, QLocale::Spanish}) {
        QLocale::setDefault(QLocale(language));
        HandField field;
        field.setLength(Cm{18.1});
        EXPECT_EQ(*field.length(), Cm{18.1}) << language;
    }
    QLocale::setDefault(before);
}

TEST(HandFieldTest, ABlankFieldIsNoLengthAndShowsTheUsualOneFaintly)
{
    HandField field;
    field.setUsual(Cm{18.1});
    EXPECT_TRUE(field.isBlank());
    EXPECT_FALSE(field.hasStature());
    EXPECT_EQ(field.findChild<QLineEdit*>(QStringLiteral("runHand"))->placeholderText(),
              QStringLiteral("18.1"));
    type(field, "runHand", "18");
    EXPECT_FALSE(field.isBlank());
    field.setEstimate(Sex::Male, Cm{182.5});
    EXPECT_TRUE(field.hasStature());
    EXPECT_EQ(field.sex(), Sex::Male);
    EXPECT_EQ(*field.stature(), Cm{182.5});
}

TEST(HandFieldTest, AnEstimateIsAskedForByKey)
{
    HandField field;
    field.show();
    QSignalSpy asked(&field, &HandField::estimateAsked);
    type(field, "runHandStature", "171");
    QTest::keyClick(field.findChild<QComboBox*>(QStringLiteral("runHandSex")), Qt::Key_Down);
    QTest::keyClick(field.findChild<QPushButton*>(QStringLiteral("estimateHand")), Qt::Key_Space);
    EXPECT_EQ(asked.count(), 1);
    EXPECT_EQ(field.sex(), Sex::Male);
    EXPECT_EQ(*field.stature(), Cm{171.0});
    type(field, "runHandStature", "tall");
    EXPECT_EQ(field.stature().error().problem, Problem::StatureNotANumber);
    EXPECT_TRUE(namelessControls(field).isEmpty()) << namelessControls(field).join('\n').toStdString();
    EXPECT_TRUE(layoutFaults(field).isEmpty()) << layoutFaults(field).join('\n').toStdString();
}

}  // namespace fb::test::hand_field_tests
