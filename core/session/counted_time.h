// Time that is counted against a student, on a clock that is handed in: monotonic, from any start.
//
// Pauses are left out. So is whatever lies between two looks at the clock that are farther apart than
// `kLongestGap`: the machine slept, was stopped or its clock jumped; a clock that runs backwards counts
// nothing. So nothing but the student's own time is ever counted.
#pragma once

#include <chrono>
#include <optional>

namespace fb {

using Ms = std::chrono::milliseconds;

class CountedTime {
public:
    static constexpr Ms kLongestGap{2000};

    explicit CountedTime(Ms used = Ms{0}) : m_used(used) {}

    void run(Ms now);   // starts, or goes on after hold()
    void look(Ms now);  // at least twice a second while it runs
    void hold(Ms now);
    [[nodiscard]] bool isRunning() const { return m_last.has_value(); }
    [[nodiscard]] Ms used() const { return m_used; }

private:
    Ms m_used;
    std::optional<Ms> m_last;
};

}  // namespace fb
