#include "app/demonstrate/pool_painting.h"

#include <QRunnable>
#include <QSemaphore>
#include <QThread>
#include <QThreadPool>
#include <limits>
#include <memory>

namespace fb {

void paintInPool(const std::function<void()>& paint)
{
    constexpr int kPatienceMs = 20;  // Qt's own shares of a fill take a part of it
    QThreadPool* pool = QThreadPool::globalInstance();
    if (pool->contains(QThread::currentThread()))
        return paint();
    QSemaphore begun, done;
    const std::unique_ptr<QRunnable> work(QRunnable::create([&] {
        begun.release();
        paint();
        done.release();
    }));
    work->setAutoDelete(false);
    pool->start(work.get(), std::numeric_limits<int>::max());
    if (!begun.tryAcquire(1, kPatienceMs) && pool->tryTake(work.get()))
        return paint();
    done.acquire();
}

}  // namespace fb
