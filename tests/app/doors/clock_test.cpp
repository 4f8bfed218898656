#include "app/doors/clock.h"

#include <gtest/gtest.h>

#include <QTest>

namespace fb::test::clock_test {

TEST(ClockTest, TheSteadyHandsOnlyGoOn)
{
    const SystemClock clock;
    const Ms before = clock.steady();
    QTest::qWait(20);
    const Ms after = clock.steady();
    EXPECT_GE(after - before, Ms{19});
    EXPECT_LT(after - before, Ms{5000});
}

TEST(ClockTest, TheWallIsTheWorldsTimeAndNotAZones)
{
    const SystemClock clock;
    EXPECT_EQ(clock.wall().timeSpec(), Qt::UTC);
    EXPECT_LT(std::abs(clock.wall().msecsTo(QDateTime::currentDateTimeUtc())), 5000);
}

}  // namespace fb::test::clock_test
