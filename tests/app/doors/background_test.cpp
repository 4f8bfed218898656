#include "app/doors/background.h"

#include <gtest/gtest.h>

#include <QTest>
#include <QThread>
#include <atomic>
#include <mutex>

namespace fb::test::background_test {

TEST(BackgroundTest, WorkIsDoneElsewhereAndAnsweredHere)
{
    QObject owner;
    QThread* worked = nullptr;
    QThread* answered = nullptr;
    int answer = 0;
    inBackground<int>(
        &owner,
        [&worked] {
            worked = QThread::currentThread();
            return 42;
        },
        [&](const int& value) {
            answered = QThread::currentThread();
            answer = value;
        });
    EXPECT_EQ(answer, 0);  // never at once
    ASSERT_TRUE(QTest::qWaitFor([&] { return answer == 42; }));
    EXPECT_EQ(answered, QThread::currentThread());
    EXPECT_NE(worked, QThread::currentThread());
}

TEST(BackgroundTest, AnOwnerWhoHasGoneHearsNothing)
{
    std::mutex door;
    std::atomic<bool> done = false;
    bool heard = false;
    door.lock();
    {
        QObject owner;
        inBackground<int>(
            &owner,
            [&] {
                const std::lock_guard waits(door);
                done = true;
                return 1;
            },
            [&heard](const int&) { heard = true; });
    }
    door.unlock();
    ASSERT_TRUE(QTest::qWaitFor([&] { return done.load(); }));
    QTest::qWait(50);
    EXPECT_FALSE(heard);
}

}  // namespace fb::test::background_test
