// Makes bodies in a thread of its own, so that a slider never waits for one. A body that was begun is
// finished and answered; of those that wait only the newest of each lane.
#pragma once

#include <QObject>
#include <QPointer>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <vector>

#include "app/lecture/bodies.h"

namespace fb {

class BodyWorker : public QObject, public Bodies {
    Q_OBJECT

public:
    using Make = std::function<Result<LectureBody>(const Library&, const Policy&, const BodyAsk&)>;
    // A test may make bodies its own way; never called by two threads at once.
    explicit BodyWorker(Make make = makeLectureBody, QObject* parent = nullptr);
    // Waits for the body under way; nothing is answered any more.
    ~BodyWorker() override;

    void ask(int lane, const std::shared_ptr<const Library>& library,
             const std::shared_ptr<const Policy>& policy, const BodyAsk& ask, QObject* asker,
             Then then) override;

private:
    struct Order {
        int lane = 0;
        std::shared_ptr<const Library> library;
        std::shared_ptr<const Policy> policy;
        BodyAsk ask;
        QPointer<QObject> asker;
        Then then;
    };
    [[nodiscard]] std::optional<Order> next(const std::stop_token& stop);
    void work(const std::stop_token& stop);
    void answer(const Order& order, Result<std::shared_ptr<const LectureBody>> made);

    Make m_make;
    std::mutex m_mutex;
    std::condition_variable_any m_wake;
    std::vector<Order> m_waiting;                        // at most one of a lane; who came first is first
    std::chrono::steady_clock::time_point m_restsUntil;  // of the thread alone
    std::jthread m_thread;                               // last: it uses all of the above
};

}  // namespace fb
