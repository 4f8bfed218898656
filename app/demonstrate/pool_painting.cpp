#include "app/demonstrate/pool_painting.h"

#include <QSemaphore>
#include <QThread>
#include <QThreadPool>

namespace fb {

void paintInPool(const std::function<void()>& paint)
{
    QThreadPool* pool = QThreadPool::globalInstance();
    if (pool->contains(QThread::currentThread()))
        return paint();
    QSemaphore done;
    pool->reserveThread();
    pool->startOnReservedThread([&] {
        paint();
        done.release();
    });
    done.acquire();
}

}  // namespace fb
