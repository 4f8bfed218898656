#include "app/checkoff/stopwatch.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/manikin_sample.h"

namespace stopwatch_test {

namespace {

using namespace fb;
using namespace fb::test;

QString textIn(const Stopwatch& watch, const char* name)
{
    return watch.findChild<QLabel*>(QLatin1String(name))->text();
}

TEST(StopwatchTest, RunsInWholeSecondsAndStandsInTenths)
{
    Stopwatch watch;
    watch.setScheme(dressed());
    CheckOffState state = manikinState();
    watch.showState(state);
    EXPECT_EQ(textIn(watch, "heldSeconds"), QStringLiteral("0 s"));
    const QString start = watch.findChild<QPushButton*>("holding")->text();
    state.holding = Ms{7950};
    watch.showState(state);
    EXPECT_EQ(textIn(watch, "heldSeconds"), QStringLiteral("7 s")) << "never ahead of the clock";
    EXPECT_NE(watch.findChild<QPushButton*>("holding")->text(), start);
    state.holding.reset();
    state.held = 10.45;
    watch.showState(state);
    EXPECT_TRUE(textIn(watch, "heldSeconds").startsWith(QLatin1String("10.4")));
}

TEST(StopwatchTest, SaysInWordsWhenItWasTooShort)
{
    Stopwatch watch;
    watch.setScheme(dressed());
    CheckOffState state = manikinState();
    state.held = state.open->sheet.sheet.heldSeconds;
    watch.showState(state);
    const QString enough = textIn(watch, "heldTitle");
    EXPECT_TRUE(enough.contains(QLatin1String("10 s")));
    state.held = state.open->sheet.sheet.heldSeconds - 0.1;
    watch.showState(state);
    EXPECT_NE(textIn(watch, "heldTitle"), enough);
    EXPECT_TRUE(textIn(watch, "heldTitle").contains(QLatin1String("less than")));
}

TEST(StopwatchTest, NothingIsAskedWhereTheProtocolDoesNot)
{
    Stopwatch watch;
    CheckOffState state = manikinState();
    state.open->sheet.sheet.protocol.zTrack = false;
    state.held = 1.0;
    watch.showState(state);
    EXPECT_FALSE(textIn(watch, "heldTitle").contains(QLatin1String("asked")));
    EXPECT_TRUE(watch.findChild<QProgressBar*>("heldBar")->isHidden());
}

TEST(StopwatchTest, IsPressed)
{
    Stopwatch watch;
    watch.showState(manikinState());
    watch.show();
    QSignalSpy pressed(&watch, &Stopwatch::pressed);
    QTest::mouseClick(watch.findChild<QPushButton*>("holding"), Qt::LeftButton);
    EXPECT_EQ(pressed.size(), 1);
}

}  // namespace

}  // namespace stopwatch_test
