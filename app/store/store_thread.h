// A thread of its own for a store: work is handed in, done in order, and answered in the thread that
// asked. The window never waits for the disk.
#pragma once

#include <QObject>
#include <QThread>
#include <functional>
#include <future>
#include <memory>
#include <optional>

#include "app/store/store.h"

namespace fb {

class StoreThread : public QObject {
public:
    using Opener = std::function<Result<Store::Opened>()>;
    using Then = std::function<void()>;
    // Gets the open store, or why there is none; what it returns is done in the asker's thread.
    using Work = std::function<Then(const Result<Store*>&)>;

    // Opens the file with the first work, and again with every other until that succeeds.
    explicit StoreThread(const QString& file);
    explicit StoreThread(Opener opener);
    // Waits until everything asked so far is on disk; nothing is answered any more.
    ~StoreThread() override;

    // From the thread this object lives in; the asker lives there too. No answer once it is gone. Without
    // an asker from any thread, and nobody is answered.
    void ask(QObject* asker, Work work);

    // In a work only: what opening told and nobody has been told yet.
    [[nodiscard]] std::optional<Fault> takeTold();
    // In a work only: the store itself, to be closed; and the one that takes its place. Without one the next
    // work opens the file.
    [[nodiscard]] std::unique_ptr<Store> takeOut();
    void putIn(std::unique_ptr<Store> store);

    // From another thread: behind all that was asked its store is closed, and the next work waits until what
    // is returned is gone; then it opens the file again. Returns when the store is closed.
    class Pause {
    public:
        Pause() = default;
        Pause(const Pause&) = delete;
        Pause& operator=(const Pause&) = delete;
        ~Pause() { m_over.set_value(); }

    private:
        friend class StoreThread;
        std::promise<void> m_over;
    };
    [[nodiscard]] std::unique_ptr<Pause> pause();

private:
    Result<Store*> access();

    Opener m_opener;
    QThread m_thread;
    QObject m_room;  // lives in the thread
    std::unique_ptr<Store> m_store;
    std::optional<Fault> m_told;
};

}  // namespace fb
