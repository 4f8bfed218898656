#include "app/lecture/body_worker.h"

#include <QMetaObject>
#include <algorithm>
#include <utility>

namespace fb {

namespace body_worker_detail {

inline constexpr std::chrono::milliseconds kMostRest{16};

}  // namespace body_worker_detail

BodyWorker::BodyWorker(Make make, QObject* parent)
    : QObject(parent),
      m_make(std::move(make)),
      m_thread([this](const std::stop_token& stop) { work(stop); })
{
}

BodyWorker::~BodyWorker()
{
    m_thread.request_stop();
    m_thread.join();
}

void BodyWorker::ask(int lane, const std::shared_ptr<const Library>& library,
                     const std::shared_ptr<const Policy>& policy, const BodyAsk& ask, QObject* asker,
                     Then then)
{
    Order order{lane, library, policy, ask, asker, std::move(then)};
    const std::lock_guard lock(m_mutex);
    // It takes the turn of the one it replaces: a lane that asks without end does not starve the other, nor
    // the other it.
    const auto older = std::ranges::find(m_waiting, lane, &Order::lane);
    if (older != m_waiting.end())
        std::swap(*older, order);
    else
        m_waiting.push_back(std::move(order));
    m_wake.notify_all();
}

// Waits for it; nullopt: the end. After a body the thread rests as long as the body took, a little at most,
// so that bodies that nobody has time to paint do not take the time from those that are painted. Measured on
// two cores: half of all bodies were for nothing.
std::optional<BodyWorker::Order> BodyWorker::next(const std::stop_token& stop)
{
    std::unique_lock lock(m_mutex);
    if (!m_wake.wait(lock, stop, [this] { return !m_waiting.empty(); }) || stop.stop_requested())
        return std::nullopt;
    if (m_wake.wait_until(lock, stop, m_restsUntil, [] { return false; }) || stop.stop_requested())
        return std::nullopt;
    Order order = std::move(m_waiting.front());
    m_waiting.erase(m_waiting.begin());
    return order;
}

void BodyWorker::work(const std::stop_token& stop)
{
    while (const auto order = next(stop)) {
        const auto began = std::chrono::steady_clock::now();
        answer(*order, m_make(*order->library, *order->policy, order->ask).map([](LectureBody body) {
            return std::make_shared<const LectureBody>(std::move(body));
        }));
        const auto done = std::chrono::steady_clock::now();
        m_restsUntil =
            done + std::min<std::chrono::steady_clock::duration>(done - began, body_worker_detail::kMostRest);
    }
}

// In the thread that asked, and not after this object's end.
void BodyWorker::answer(const Order& order, Result<std::shared_ptr<const LectureBody>> made)
{
    QMetaObject::invokeMethod(
        this,
        [asker = order.asker, then = order.then, body = std::move(made)] {
            if (asker)
                then(body);
        },
        Qt::QueuedConnection);
}

}  // namespace fb
