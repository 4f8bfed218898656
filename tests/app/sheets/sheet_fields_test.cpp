#include "app/sheets/sheet_fields.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLocale>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <QWheelEvent>
#include <memory>

namespace fb::test::sheet_fields_test {

TEST(SheetFieldsTest, LinesStandUnderEachOtherAndEachFieldIsCalledWhatStandsBesideIt)
{
    QWidget whole;
    fields::Lines lines(&whole);
    auto* firstName = new QLabel(&whole);
    auto* first = fields::whole(&whole, "first", 0, 9);
    auto* secondName = new QLabel(&whole);
    auto* second = new fields::TimeField("second", 600, &whole);
    auto* tick = fields::tick(&whole, "tick");
    lines.add(firstName, first);
    lines.rule();
    lines.add(secondName, second);
    lines.across(tick);
    lines.end();
    fields::say(firstName, first, QStringLiteral("Attempts"));
    fields::say(secondName, second, QStringLiteral("Time"));
    fields::say(tick, QStringLiteral("Practice first"));
    whole.resize(700, 500);
    whole.show();
    EXPECT_EQ(first->accessibleName(), firstName->text());
    EXPECT_EQ(tick->accessibleName(), tick->text());
    EXPECT_TRUE(whole.findChild<QSpinBox*>("secondMinutes")->accessibleName().startsWith(secondName->text()));
    EXPECT_EQ(first->x(), second->x());
    EXPECT_EQ(tick->x(), firstName->x());
    EXPECT_GT(second->y(), first->geometry().bottom());
    EXPECT_GT(tick->y(), second->geometry().bottom());
    EXPECT_LT(tick->geometry().bottom(), 300) << "room that is left stays below";
}

TEST(SheetFieldsTest, ANumberShowsNoDigitMoreThanItHas)
{
    const std::unique_ptr<QDoubleSpinBox> box(fields::number(nullptr, "n", 0.0, 100.0));
    box->setValue(50.0);
    EXPECT_EQ(box->text(), "50");
    box->setValue(33.25);
    EXPECT_EQ(box->text(), "33.25");
    box->setValue(1000.0);
    EXPECT_EQ(box->value(), 100.0);
}

TEST(SheetFieldsTest, AWheelOverAFieldWithoutFocusChangesNothing)
{
    const std::unique_ptr<QSpinBox> box(fields::whole(nullptr, "n", 0, 10));
    box->setValue(5);
    QWheelEvent wheel({5, 5}, {5, 5}, {0, 120}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase,
                      false);
    QCoreApplication::sendEvent(box.get(), &wheel);
    EXPECT_EQ(box->value(), 5);
    EXPECT_FALSE(wheel.isAccepted());
    box->show();
    box->setFocus();
    ASSERT_TRUE(QTest::qWaitForWindowActive(box.get()));
    QCoreApplication::sendEvent(box.get(), &wheel);
    EXPECT_EQ(box->value(), 6);
}

TEST(SheetFieldsTest, AChoiceIsByItsDataAndIgnoresWhatItDoesNotHave)
{
    const std::unique_ptr<QComboBox> box(fields::choice(nullptr, "n"));
    box->addItem("a", 3);
    box->addItem("b", 7);
    fields::choose(box.get(), 7);
    EXPECT_EQ(fields::chosen(box.get()), 7);
    fields::choose(box.get(), 9);
    EXPECT_EQ(fields::chosen(box.get()), 7);
}

TEST(SheetFieldsTest, ATimeIsMinutesAndSecondsAndNoughtIsNoLimit)
{
    fields::TimeField field("t", 7200, nullptr);
    field.say("Time");
    field.show();
    QSignalSpy changed(&field, &fields::TimeField::changed);
    for (const int seconds : {0, 1, 59, 60, 75, 3601, 7200}) {
        field.setSeconds(seconds);
        EXPECT_EQ(field.seconds(), seconds);
        EXPECT_EQ(field.findChild<QLabel*>("tLimit")->isVisible(), seconds == 0);
    }
    EXPECT_EQ(changed.count(), 0);
    field.findChild<QSpinBox*>("tSeconds")->setValue(30);
    EXPECT_EQ(field.seconds(), 7200);  // no more than the most
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(field.findChild<QSpinBox*>("tMinutes")->accessibleName(), "Time, minutes");
}

}  // namespace fb::test::sheet_fields_test
