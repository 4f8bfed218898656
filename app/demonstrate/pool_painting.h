// Painting that a window waits for, in a thread of Qt's pool. Measured: from any other thread Qt shares every
// larger fill among the threads of that pool and waits for each, a thousand times for one picture; the
// fullest step on a tall screen then takes twice the computing, and on a busy machine five times as long.
#pragma once

#include <functional>

namespace fb {

// Done when it returns. A pool that stays busy is not waited for: then it is painted here, as a thread of the
// pool paints itself.
void paintInPool(const std::function<void()>& paint);

}  // namespace fb
