#include "app/checkoff/manikin_column.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include "app/words/check_off_words.h"
#include "tests/support/manikin_sample.h"

namespace manikin_column_test {

namespace {

using namespace fb;
using namespace fb::test;

class ManikinColumnTest : public ::testing::Test {
protected:
    ManikinColumnTest()
    {
        column.setScheme(dressed());
        column.resize(284, 709);
        column.show();
    }
    [[nodiscard]] QString text(const char* name) const
    {
        return column.findChild<QLabel*>(QLatin1String(name))->text();
    }
    [[nodiscard]] QPushButton* button(const char* name) const
    {
        return column.findChild<QPushButton*>(QLatin1String(name));
    }

    CheckOffState state = manikinState();
    ManikinColumn column;
};

TEST_F(ManikinColumnTest, SaysHowManyStepsHaveBeenRated)
{
    observe(state, ProcedureStep::Identify, Seen::Done, 1.0);
    observe(state, ProcedureStep::Recap, Seen::Done, 2.0);
    column.showState(state);
    EXPECT_EQ(text("stepsSaid"),
              QStringLiteral("1 of %1 steps rated").arg(state.open->sheet.sheet.steps.size()))
        << "what is no step of the sheet does not count";
}

TEST_F(ManikinColumnTest, SaysTheTimeUsedAndLeftAndThatItIsUp)
{
    column.showState(state);
    EXPECT_EQ(text("manikinTime"), QStringLiteral("4:07 used, 5:53 left"));
    state.used = Ms{611000};
    state.manikinLeft = Ms{0};
    column.showTimes(state);
    EXPECT_EQ(text("manikinTime"), QStringLiteral("10:11 used; the time is up"));
    state.manikinLeft.reset();
    column.showTimes(state);
    EXPECT_EQ(text("manikinTime"), QStringLiteral("10:11 used"));
}

TEST_F(ManikinColumnTest, ARecappedNeedleIsSaidAndCanBeTakenBack)
{
    QSignalSpy recapped(&column, &ManikinColumn::recapPressed);
    observe(state, ProcedureStep::Insert, Seen::Done, 1.0);
    column.showState(state);
    const QString before = button("recapped")->text();
    QTest::mouseClick(button("recapped"), Qt::LeftButton);
    ASSERT_EQ(recapped.size(), 1);
    EXPECT_FALSE(recapped[0][0].toBool());
    observe(state, ProcedureStep::Recap, Seen::Done, 2.0);
    column.showState(state);
    EXPECT_NE(button("recapped")->text(), before);
    QTest::mouseClick(button("recapped"), Qt::LeftButton);
    ASSERT_EQ(recapped.size(), 2);
    EXPECT_TRUE(recapped[1][0].toBool());
}

TEST_F(ManikinColumnTest, ANeedleThatDidNotGoInYetIsNotUsed)
{
    column.showState(state);
    EXPECT_FALSE(button("recapped")->isEnabled());
    EXPECT_TRUE(button("recapped")->toolTip().contains(stepName(ProcedureStep::Insert)));
    EXPECT_EQ(button("recapped")->accessibleDescription(), button("recapped")->toolTip());
    observe(state, ProcedureStep::Insert, Seen::Prompted, 1.0);
    column.showState(state);
    EXPECT_TRUE(button("recapped")->isEnabled());
    EXPECT_TRUE(button("recapped")->toolTip().isEmpty());
    EXPECT_TRUE(button("recapped")->accessibleDescription().isEmpty());
    CheckOffState unwatched = manikinState();
    std::erase_if(unwatched.open->sheet.sheet.steps,
                  [](const SheetStep& step) { return step.step == ProcedureStep::Insert; });
    column.showState(unwatched);
    EXPECT_TRUE(button("recapped")->isEnabled());
}

TEST_F(ManikinColumnTest, EveryButtonAsksForItsOwn)
{
    column.showState(state);
    QSignalSpy pause(&column, &ManikinColumn::pausePressed);
    QSignalSpy stop(&column, &ManikinColumn::safetyStopPressed);
    QSignalSpy ended(&column, &ManikinColumn::voidPressed);
    QSignalSpy rest(&column, &ManikinColumn::restPressed);
    QSignalSpy finish(&column, &ManikinColumn::finishPressed);
    QSignalSpy holding(&column, &ManikinColumn::holdingPressed);
    for (const char* name : {"pauseManikin", "safetyStop", "voidManikin", "restNotDone", "finish", "holding"})
        QTest::mouseClick(button(name), Qt::LeftButton);
    for (const QSignalSpy* spy : {&pause, &stop, &ended, &rest, &finish, &holding})
        EXPECT_EQ(spy->size(), 1) << spy->signal().toStdString();
    EXPECT_FALSE(button("finish")->hasFocus()) << "the focus stays with the steps";
}

TEST_F(ManikinColumnTest, NothingIsLeftToMarkOnceEveryStepIsRated)
{
    column.showState(state);
    EXPECT_TRUE(button("restNotDone")->isEnabled());
    for (const SheetStep& step : state.open->sheet.sheet.steps)
        observe(state, step.step, Seen::Done, 1.0);
    column.showState(state);
    EXPECT_FALSE(button("restNotDone")->isEnabled());
}

TEST_F(ManikinColumnTest, FinishingIsTheMainActionOnlyOnceEveryStepIsRated)
{
    const auto& steps = state.open->sheet.sheet.steps;
    for (std::size_t i = 0; i + 2 < steps.size(); ++i)
        observe(state, steps[i].step, Seen::Done, 1.0);
    column.showState(state);
    EXPECT_TRUE(button("finish")->text().contains(QLatin1String("(2 left)")));
    EXPECT_NE(button("finish")->property("look").toString(), QStringLiteral("main"));
    const QImage plain = button("finish")->grab().toImage();
    observe(state, steps[steps.size() - 2].step, Seen::Done, 1.0);
    observe(state, steps.back().step, Seen::NotDone, 1.0);
    column.showState(state);
    EXPECT_EQ(button("finish")->text(), QStringLiteral("Finish"));
    EXPECT_EQ(button("finish")->accessibleName(), QStringLiteral("Finish"));
    const QImage main = button("finish")->grab().toImage();
    EXPECT_NE(plain.pixelColor(12, 12), main.pixelColor(12, 12));
    EXPECT_EQ(main.pixelColor(12, 12), schemeOf(PaletteKind::Light).accent);
}

TEST_F(ManikinColumnTest, TheSafetyStopStandsApartWithASignAndAFirmOutline)
{
    column.showState(state);
    QTest::qWait(20);
    const QPushButton* stop = button("safetyStop");
    EXPECT_FALSE(stop->icon().isNull());
    for (const char* other : {"recapped", "restNotDone", "pauseManikin", "voidManikin", "finish"})
        EXPECT_GE(button(other)->geometry().top() - stop->geometry().bottom(), 12) << other;
    const QImage image = button("safetyStop")->grab().toImage();
    const QColor danger = schemeOf(PaletteKind::Light).danger;
    int thick = 0;
    for (int y = 0; y < image.height() / 2; ++y)
        thick += image.pixelColor(image.width() / 4, y) == danger ? 1 : 0;
    EXPECT_EQ(thick, 2) << "other outlines are one pixel wide";
}

TEST_F(ManikinColumnTest, AnOrderThatIsBrokenIsListedAtOnce)
{
    observe(state, ProcedureStep::Document, Seen::Done, 1.0);
    observe(state, ProcedureStep::Inject, Seen::Done, 2.0);
    column.showState(state);
    const auto count = column.findChildren<QLabel*>("breach").size();
    EXPECT_GT(count, 0);
    EXPECT_TRUE(text("ordersTitle").contains(QString::number(count)));
}

TEST_F(ManikinColumnTest, WhatIsOutOfSightIsReachedByTurningThePage)
{
    for (const ProcedureStep step : {ProcedureStep::Document, ProcedureStep::Insert, ProcedureStep::Inject,
                                     ProcedureStep::Recap, ProcedureStep::Withdraw})
        observe(state, step, Seen::Done, static_cast<int>(step));
    column.showState(state);
    column.resize(284, 500);
    QTest::qWait(20);
    auto* bar = column.findChild<QScrollArea*>("manikinScroll")->verticalScrollBar();
    ASSERT_GT(bar->maximum(), 0);
    column.turnPage(true);
    EXPECT_GT(bar->value(), 0);
    column.turnPage(false);
    EXPECT_EQ(bar->value(), 0);
}

}  // namespace

}  // namespace manikin_column_test
