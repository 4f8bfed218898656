// Work done beside the window's thread, answered in it, and only while its owner lives.
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QPromise>
#include <QThreadPool>
#include <functional>
#include <memory>

namespace fb {

// `work` runs in another thread and touches nothing of the owner; what it gives is handed to `then`.
template <class T>
void inBackground(QObject* owner, std::function<T()> work, std::function<void(const T&)> then)
{
    auto* watcher = new QFutureWatcher<T>(owner);
    QObject::connect(watcher, &QFutureWatcher<T>::finished, owner, [watcher, then = std::move(then)] {
        then(watcher->result());
        watcher->deleteLater();
    });
    auto promise = std::make_shared<QPromise<T>>();
    watcher->setFuture(promise->future());
    promise->start();
    QThreadPool::globalInstance()->start([promise, work = std::move(work)] {
        promise->addResult(work());
        promise->finish();
    });
}

}  // namespace fb
