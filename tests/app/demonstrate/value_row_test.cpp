#include "app/demonstrate/value_row.h"

#include <gtest/gtest.h>

#include <QDoubleSpinBox>
#include <QSignalSpy>
#include <QSlider>
#include <QStyleOptionSlider>
#include <QTest>
#include <QWheelEvent>

namespace fb::test::value_row_test {

class ValueRowTest : public ::testing::Test {
protected:
    ValueRowTest()
    {
        row.setScheme(schemeOf(PaletteKind::Light));
        row.say(QStringLiteral("Weight"), QStringLiteral("%1 kg"));
        row.setRange({40.0, 120.0});
        row.setValue(65.0);
        row.resize(320, row.sizeHint().height());
        row.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&row));
    }
    [[nodiscard]] QPoint handle() const
    {
        QStyleOptionSlider option;
        option.initFrom(slider);
        option.orientation = Qt::Horizontal;
        option.minimum = slider->minimum();
        option.maximum = slider->maximum();
        option.sliderPosition = slider->value();
        option.sliderValue = slider->value();
        return slider->style()
            ->subControlRect(QStyle::CC_Slider, &option, QStyle::SC_SliderHandle, slider)
            .center();
    }

    ValueRow row{QStringLiteral("weight"), 0};
    QSlider* slider = row.findChild<QSlider*>(QStringLiteral("weightSlider"));
    QDoubleSpinBox* field = row.findChild<QDoubleSpinBox*>(QStringLiteral("weightField"));
    QSignalSpy moved{&row, &ValueRow::moved};
    QSignalSpy rests{&row, &ValueRow::rests};
};

TEST_F(ValueRowTest, ADragTellsEveryValueAndRestsOnceTheHandLetsGo)
{
    const QPoint from = handle();
    QTest::mousePress(slider, Qt::LeftButton, {}, from);
    for (int x = 10; x <= 60; x += 10)
        QTest::mouseMove(slider, from + QPoint(x, 0));
    EXPECT_GE(moved.count(), 3);
    EXPECT_EQ(rests.count(), 0) << "while the hand holds it";
    QTest::mouseRelease(slider, Qt::LeftButton, {}, from + QPoint(60, 0));
    EXPECT_EQ(rests.count(), 1);
    EXPECT_GT(row.value(), 66.0);
    EXPECT_NEAR(field->value(), row.value(), 0.5);
}

TEST_F(ValueRowTest, AKeyMovesByOneUnitAndRestsAMomentLater)
{
    QTest::keyClick(slider, Qt::Key_Right);
    QTest::keyClick(slider, Qt::Key_Right);
    EXPECT_DOUBLE_EQ(row.value(), 67.0);
    EXPECT_EQ(rests.count(), 0);
    EXPECT_TRUE(QTest::qWaitFor([this] { return rests.count() == 1; }, 3000));
}

TEST_F(ValueRowTest, NothingRestsWhileAHandHoldsIt)
{
    QTest::keyClick(slider, Qt::Key_Right);
    const QPoint from = handle();
    QTest::mousePress(slider, Qt::LeftButton, {}, from);
    QTest::mouseMove(slider, from + QPoint(20, 0));
    QTest::qWait(400);
    EXPECT_EQ(rests.count(), 0);
    QTest::mouseRelease(slider, Qt::LeftButton, {}, from + QPoint(20, 0));
    EXPECT_EQ(rests.count(), 1);
}

TEST_F(ValueRowTest, ATypedValueIsTakenOnceItIsHandedIn)
{
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("80"));
    EXPECT_EQ(moved.count(), 0) << "half a number is no weight";
    QTest::keyClick(field, Qt::Key_Return);
    ASSERT_EQ(moved.count(), 1);
    EXPECT_DOUBLE_EQ(moved[0][0].toDouble(), 80.0);
    EXPECT_EQ(slider->value(), 800);
    EXPECT_EQ(field->text(), QStringLiteral("80 kg"));
}

TEST_F(ValueRowTest, ValuesThatAreSetAndRangesTellNobody)
{
    row.setValue(90.0);
    row.setRange({50.0, 85.0});
    EXPECT_EQ(moved.count(), 0);
    EXPECT_EQ(slider->maximum(), 850);
}

TEST_F(ValueRowTest, AWheelThatPassesOverChangesNothing)
{
    for (QWidget* each : std::initializer_list<QWidget*>{slider, field}) {
        row.setFocus();
        each->clearFocus();
        const QPointF at = each->rect().center();
        QWheelEvent wheel(at, each->mapToGlobal(at), {}, {0, 120}, {}, {}, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(each, &wheel);
        EXPECT_DOUBLE_EQ(row.value(), 65.0);
    }
}

TEST_F(ValueRowTest, BothPartsSayWhatTheyAre)
{
    EXPECT_EQ(field->accessibleName(), QStringLiteral("Weight"));
    EXPECT_TRUE(slider->accessibleName().startsWith(QStringLiteral("Weight")));
    EXPECT_EQ(slider->accessibleDescription(), QStringLiteral("65 kg"));
}

}  // namespace fb::test::value_row_test
