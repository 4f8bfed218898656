#include "core/basics/seed_stream.h"

#include <cmath>

namespace fb {

std::uint64_t SeedStream::next()
{
    m_state += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31);
}

double SeedStream::unit() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }

double SeedStream::between(double low, double high) { return low + (high - low) * unit(); }

int SeedStream::below(int count) { return static_cast<int>(unit() * count); }

double SeedStream::normal(double cut)
{
    for (;;) {
        // Polar method: two uniforms in the unit disc make one deviate.
        const double u = between(-1.0, 1.0);
        const double v = between(-1.0, 1.0);
        const double s = u * u + v * v;
        if (s >= 1.0 || s == 0.0)
            continue;
        const double z = u * std::sqrt(-2.0 * std::log(s) / s);
        if (std::abs(z) <= cut)
            return z;
    }
}

}  // namespace fb
