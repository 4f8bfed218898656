#include "app/checkoff/time_strip.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

namespace time_strip_test {

namespace {

using namespace fb;

CheckOffState stateWith(std::optional<Ms> item, std::optional<Ms> screen)
{
    CheckOffState state;
    state.stage = CheckOffStage::OnScreen;
    state.item = 1;
    state.itemCount = 6;
    state.itemLeft = item;
    state.screenLeft = screen;
    return state;
}

struct Strip {
    Strip() { strip.show(); }
    template <class Widget>
    [[nodiscard]] Widget* find(const char* name)
    {
        return strip.findChild<Widget*>(QLatin1String(name));
    }
    TimeStrip strip;
};

TEST(TimeStripTest, TellsWhichItemAndWhatIsLeft)
{
    Strip shown;
    shown.strip.showState(stateWith(Ms{41001}, Ms{200000}));
    EXPECT_EQ(shown.find<QLabel>("itemCounter")->text(), QStringLiteral("Item 2 of 6"));
    EXPECT_EQ(shown.find<QLabel>("timeLeft")->text(),
              QStringLiteral("0:42 left for this item   ·   3:20 left in all"))
        << "a second that has begun is still left";
    EXPECT_FALSE(shown.find<QLabel>("timeWasUp")->isVisible());
    shown.strip.showTimes(stateWith(Ms{0}, std::nullopt));
    EXPECT_EQ(shown.find<QLabel>("timeLeft")->text(), QStringLiteral("0:00 left for this item"));
}

TEST(TimeStripTest, TimeCanBeHiddenAndIsNotShownWithoutALimit)
{
    Strip shown;
    CheckOffState state = stateWith(Ms{41000}, std::nullopt);
    shown.strip.showState(state);
    QSignalSpy asked(&shown.strip, &TimeStrip::timeShownAsked);
    auto* toggle = shown.find<QToolButton>("showTime");
    EXPECT_TRUE(toggle->isChecked());
    QTest::mouseClick(toggle, Qt::LeftButton);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_FALSE(asked.front().front().toBool());
    state.timeShown = false;
    shown.strip.showState(state);
    EXPECT_FALSE(shown.find<QLabel>("timeLeft")->isVisible());
    shown.strip.showState(stateWith(std::nullopt, std::nullopt));
    EXPECT_FALSE(toggle->isVisible());
    EXPECT_FALSE(shown.find<QLabel>("timeLeft")->isVisible());
}

TEST(TimeStripTest, AScreenReaderIsToldTwiceAndOnlyOfWhatIsShown)
{
    Strip shown;
    QSignalSpy spoke(&shown.strip, &TimeStrip::spoke);
    shown.strip.showState(stateWith(Ms{60000}, std::nullopt));
    EXPECT_EQ(spoke.count(), 0) << "not at the start";
    for (int left = 90000; left >= 0; left -= 250)
        shown.strip.showTimes(stateWith(Ms{left}, std::nullopt));
    ASSERT_EQ(spoke.count(), 2);
    EXPECT_TRUE(spoke[0].front().toString().startsWith(QStringLiteral("60 second")));
    EXPECT_TRUE(spoke[0].front().toString().endsWith(QStringLiteral("left for this item")));
    EXPECT_TRUE(spoke[1].front().toString().startsWith(QStringLiteral("10 second")));
    EXPECT_TRUE(spoke[1].front().toString().endsWith(QStringLiteral("left for this item")));
    for (int left = 70000; left >= 0; left -= 250)
        shown.strip.showTimes(stateWith(std::nullopt, Ms{left}));
    EXPECT_EQ(spoke.count(), 4);
    EXPECT_TRUE(spoke[2].front().toString().endsWith(QStringLiteral("left in all")));
    CheckOffState hidden = stateWith(Ms{61000}, std::nullopt);
    hidden.timeShown = false;
    for (; *hidden.itemLeft > Ms{0}; *hidden.itemLeft -= Ms{250})
        shown.strip.showTimes(hidden);
    EXPECT_EQ(spoke.count(), 4) << "who hid the clock is left in peace";
}

TEST(TimeStripTest, TheNextItemsTimeIsNotTakenForThisOnes)
{
    Strip shown;
    QSignalSpy spoke(&shown.strip, &TimeStrip::spoke);
    CheckOffState state = stateWith(Ms{70000}, std::nullopt);
    shown.strip.showTimes(state);
    state.item = 2;
    state.itemLeft = Ms{60000};
    shown.strip.showTimes(state);
    EXPECT_EQ(spoke.count(), 0);
}

TEST(TimeStripTest, TheLastSecondsAndAnItemThatRanOutHaveASignAndWords)
{
    Strip shown;
    shown.strip.setScheme(schemeOf(PaletteKind::Light));
    CheckOffState state = stateWith(Ms{10000}, std::nullopt);
    state.itemTimeUp = true;
    shown.strip.showState(state);
    EXPECT_TRUE(shown.find<QLabel>("timeWasUp")->isVisible());
    int icons = 0;
    for (const QLabel* label : shown.strip.findChildren<QLabel*>())
        icons += label->isVisible() && !label->pixmap().isNull() ? 1 : 0;
    EXPECT_EQ(icons, 2);
    state.itemTimeUp = false;
    state.itemLeft = Ms{10250};
    shown.strip.showState(state);
    for (const QLabel* label : shown.strip.findChildren<QLabel*>())
        EXPECT_TRUE(!label->isVisible() || label->pixmap().isNull());
}

TEST(TimeStripTest, PauseIsAsked)
{
    Strip shown;
    QSignalSpy asked(&shown.strip, &TimeStrip::pauseAsked);
    CheckOffState state = stateWith(Ms{10000}, std::nullopt);
    state.saving = true;
    shown.strip.showState(state);
    auto* pause = shown.find<QPushButton>("pauseItems");
    EXPECT_FALSE(pause->isEnabled());
    state.saving = false;
    shown.strip.showState(state);
    QTest::mouseClick(pause, Qt::LeftButton);
    EXPECT_EQ(asked.count(), 1);
}

}  // namespace

}  // namespace time_strip_test
