#include "app/store/store_thread.h"

#include <QPointer>
#include <utility>

namespace fb {

StoreThread::StoreThread(const QString& file) : StoreThread([file] { return Store::open(file); }) {}

StoreThread::StoreThread(Opener opener) : m_opener(std::move(opener))
{
    m_room.moveToThread(&m_thread);
    m_thread.start();
}

StoreThread::~StoreThread()
{
    // Behind all that was asked. A connection is closed by the thread that opened it.
    QMetaObject::invokeMethod(
        &m_room,
        [this] {
            m_store.reset();
            m_room.moveToThread(nullptr);
            m_thread.quit();
        },
        Qt::QueuedConnection);
    m_thread.wait();
}

void StoreThread::ask(QObject* asker, Work work)
{
    const auto inThread = [this, asker = QPointer<QObject>(asker), work = std::move(work)] {
        const auto answer = [asker, then = work(access())] {
            if (asker && then)
                then();
        };
        QMetaObject::invokeMethod(this, answer, Qt::QueuedConnection);
    };
    QMetaObject::invokeMethod(&m_room, inThread, Qt::QueuedConnection);
}

std::optional<Fault> StoreThread::takeTold() { return std::exchange(m_told, std::nullopt); }

std::unique_ptr<Store> StoreThread::takeOut() { return std::exchange(m_store, nullptr); }

void StoreThread::putIn(std::unique_ptr<Store> store) { m_store = std::move(store); }

std::unique_ptr<StoreThread::Pause> StoreThread::pause()
{
    auto pause = std::make_unique<Pause>();
    const auto closed = std::make_shared<std::promise<void>>();
    QMetaObject::invokeMethod(
        &m_room,
        [this, closed, over = pause->m_over.get_future().share()] {
            m_store.reset();
            closed->set_value();
            over.wait();
        },
        Qt::QueuedConnection);
    closed->get_future().wait();
    return pause;
}

Result<Store*> StoreThread::access()
{
    if (!m_store) {
        auto opened = m_opener();
        if (!opened)
            return tl::unexpected(opened.error());
        m_store = std::move(opened->store);
        if (opened->told)
            m_told = opened->told;
    }
    return m_store.get();
}

}  // namespace fb
