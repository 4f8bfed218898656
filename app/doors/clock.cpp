#include "app/doors/clock.h"

namespace fb {

Ms SystemClock::steady() const
{
    return std::chrono::duration_cast<Ms>(std::chrono::steady_clock::now().time_since_epoch());
}

QDateTime SystemClock::wall() const { return QDateTime::currentDateTimeUtc(); }

}  // namespace fb
