#include "app/demonstrate/lecture_clock.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_clock_test {

QString timeOf(const LectureClock& clock)
{
    return clock.findChild<QLabel*>(QStringLiteral("lectureTime"))->text();
}

TEST(LectureClockTest, TellsMinutesAndSecondsThenHours)
{
    LectureSample sample;
    LectureClock clock(sample.presenter);
    const std::vector<std::pair<int, const char*>> rows{{0, "0:00"},        {9, "0:09"},
                                                        {61, "1:01"},       {3599, "59:59"},
                                                        {3600, "1:00:00"},  {3600 + 247, "1:04:07"},
                                                        {36000, "10:00:00"}};
    const Ms began = sample.clock.now;
    for (const auto& [seconds, text] : rows) {
        sample.clock.now = began + std::chrono::seconds(seconds) + Ms(400);
        clock.showTime();
        EXPECT_EQ(timeOf(clock), QLatin1String(text));
    }
}

TEST(LectureClockTest, GoesOnByItselfWhileItIsSeen)
{
    LectureSample sample;
    LectureClock clock(sample.presenter);
    clock.show();
    sample.clock.now += std::chrono::seconds(5);
    EXPECT_TRUE(QTest::qWaitFor([&] { return timeOf(clock) == QStringLiteral("0:05"); }, 5000));
}

TEST(LectureClockTest, RestartsFromNought)
{
    LectureSample sample;
    LectureClock clock(sample.presenter);
    sample.clock.now += std::chrono::minutes(12);
    clock.showTime();
    ASSERT_EQ(timeOf(clock), QStringLiteral("12:00"));
    QTest::keyClick(clock.findChild<QPushButton*>(QStringLiteral("restartClock")), Qt::Key_Space);
    EXPECT_EQ(timeOf(clock), QStringLiteral("0:00"));
}

}  // namespace fb::test::lecture_clock_test
