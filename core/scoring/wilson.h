// The interval of a hit rate.
#pragma once

namespace fb {

struct Interval {
    double low = 0.0;
    double high = 1.0;
};

// Wilson score interval of hits out of trials (Wilson 1927), two-sided; confidence in (0, 1).
// No trials: 0 to 1.
[[nodiscard]] Interval wilsonInterval(int hits, int trials, double confidence = 0.95);

}  // namespace fb
