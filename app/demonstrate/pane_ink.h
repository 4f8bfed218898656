// Fetches a pane's drawing from a thread of its own: soon, and sharp when nothing moves. The newest request
// wins; what was begun for a moment is finished, so that something moves under a moving hand.
#pragma once

#include <QObject>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

#include "app/demonstrate/pane_painter.h"

namespace fb {

struct PaneDrawn {
    PaneJob job;
    InkResult result;
};

class PaneInk : public QObject {
    Q_OBJECT

public:
    explicit PaneInk(QObject* parent = nullptr);
    ~PaneInk() override;

    void request(const PaneJob& job);
    void forget();  // no request is of interest any more

Q_SIGNALS:
    // In the thread this object lives in; a picture of a moment, and a sharp one after it.
    void painted(const fb::PaneDrawn& drawn);

private:
    void work(const std::stop_token& stop);
    void deliver(const PaneJob& job, const InkResult& result, quint64 number);

    std::mutex m_mutex;
    std::condition_variable_any m_wake;
    std::optional<PaneJob> m_next;
    quint64 m_number = 0;
    quint64 m_oldestWanted = 0;
    std::atomic_bool m_cancel = false;  // the sharp one under way
    std::jthread m_thread;              // last: it uses all of the above
};

}  // namespace fb
