#include "core/scoring/wilson.h"

#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace fb {

Interval wilsonInterval(int hits, int trials, double confidence)
{
    if (trials <= 0)
        return {};
    const double z = boost::math::quantile(boost::math::normal(), 0.5 + confidence / 2.0);
    const double n = trials;
    const double share = hits / n;
    const double shrink = 1.0 + z * z / n;
    const double centre = (share + z * z / (2.0 * n)) / shrink;
    const double half = z / shrink * std::sqrt(share * (1.0 - share) / n + z * z / (4.0 * n * n));
    return {std::fmax(0.0, centre - half), std::fmin(1.0, centre + half)};
}

}  // namespace fb
