// The clock a check-off is timed by, behind a door so that a test turns its hands.
#pragma once

#include <QDateTime>

#include "core/session/counted_time.h"

namespace fb {

class Clock {
public:
    Clock() = default;
    Clock(const Clock&) = delete;
    Clock& operator=(const Clock&) = delete;
    virtual ~Clock() = default;

    [[nodiscard]] virtual Ms steady() const = 0;       // monotonic, from any start
    [[nodiscard]] virtual QDateTime wall() const = 0;  // UTC
};

class SystemClock : public Clock {
public:
    [[nodiscard]] Ms steady() const override;
    [[nodiscard]] QDateTime wall() const override;
};

}  // namespace fb
