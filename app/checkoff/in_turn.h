// Wishes that wait while something is on its way to the disk and are then made one after another, so that a
// quick hand loses none.
#pragma once

#include <deque>
#include <functional>

namespace fb {

class InTurn {
public:
    using Wish = std::function<void()>;

    explicit InTurn(std::function<bool()> busy) : m_busy(std::move(busy)) {}

    void ask(Wish wish)
    {
        m_waiting.push_back(std::move(wish));
        goOn();
    }
    // To be called when it may be busy no more. True: none waits.
    bool goOn()
    {
        while (!m_waiting.empty() && !m_busy()) {
            const Wish next = std::move(m_waiting.front());
            m_waiting.pop_front();
            next();
        }
        return m_waiting.empty();
    }
    // What waits was meant for a state of things that is none any more.
    void forget() { m_waiting.clear(); }

private:
    std::function<bool()> m_busy;
    std::deque<Wish> m_waiting;
};

}  // namespace fb
