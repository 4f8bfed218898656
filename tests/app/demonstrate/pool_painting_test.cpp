#include "app/demonstrate/pool_painting.h"

#include <gtest/gtest.h>

#include <QSemaphore>
#include <QThread>
#include <QThreadPool>

namespace fb::test::pool_painting_test {

TEST(PoolPaintingTest, ItIsDoneInThePoolWhenItReturns)
{
    const QThread* painter = nullptr;
    bool isOfPool = false;
    paintInPool([&] {
        painter = QThread::currentThread();
        isOfPool = QThreadPool::globalInstance()->contains(painter);
    });
    EXPECT_NE(painter, nullptr);
    EXPECT_NE(painter, QThread::currentThread());
    EXPECT_TRUE(isOfPool);
}

TEST(PoolPaintingTest, ABusyPoolIsNotWaitedFor)
{
    QThreadPool* pool = QThreadPool::globalInstance();
    QSemaphore begun;
    QSemaphore goOn;
    const int busy = pool->maxThreadCount();
    for (int i = 0; i < busy; ++i)
        pool->start([&] {
            begun.release();
            goOn.acquire();
        });
    begun.acquire(busy);
    bool isPainted = false;
    paintInPool([&] { isPainted = true; });
    EXPECT_TRUE(isPainted);
    goOn.release(busy);
    EXPECT_TRUE(pool->waitForDone());
    EXPECT_LE(pool->activeThreadCount(), 0) << "nothing is left behind";
}

TEST(PoolPaintingTest, AThreadOfThePoolPaintsItself)
{
    const QThread* outer = nullptr;
    const QThread* inner = nullptr;
    paintInPool([&] {
        outer = QThread::currentThread();
        paintInPool([&] { inner = QThread::currentThread(); });
    });
    EXPECT_EQ(inner, outer);
}

}  // namespace fb::test::pool_painting_test
