#include "core/geometry/monotone_curve.h"

#include <algorithm>
#include <cmath>

namespace fb {

namespace monotone_detail {

struct Piece {
    double x0, h, y0, dy, m0, m1;  // start, length, value, rise, end slopes times h

    [[nodiscard]] double at(double t) const
    {
        // Hermite form in t = 0..1.
        const double a = m0;
        const double b = 3.0 * dy - 2.0 * m0 - m1;
        const double c = m0 + m1 - 2.0 * dy;
        return y0 + t * (a + t * (b + t * c));
    }
    [[nodiscard]] double slope(double t) const
    {
        const double b = 3.0 * dy - 2.0 * m0 - m1;
        const double c = m0 + m1 - 2.0 * dy;
        return (m0 + t * (2.0 * b + 3.0 * t * c)) / h;
    }
};

}  // namespace monotone_detail

using monotone_detail::Piece;

std::optional<MonotoneCurve> MonotoneCurve::make(std::span<const double> x, std::span<const double> y)
{
    if (x.size() != y.size() || x.size() < 2 || x.size() > kMaxKnots)
        return std::nullopt;
    for (std::size_t i = 0; i + 1 < x.size(); ++i) {
        if (!(x[i] < x[i + 1]) || !(y[i] < y[i + 1]))
            return std::nullopt;
    }
    if (!std::isfinite(x.front() + x.back() + y.front() + y.back()))
        return std::nullopt;
    MonotoneCurve curve;
    curve.m_count = x.size();
    std::ranges::copy(x, curve.m_x.begin());
    std::ranges::copy(y, curve.m_y.begin());
    curve.setSlopes();
    return curve;
}

void MonotoneCurve::setSlopes()
{
    constexpr double kLeastShare = 0.3;
    const auto secant = [this](std::size_t i) { return (m_y[i + 1] - m_y[i]) / (m_x[i + 1] - m_x[i]); };
    m_slope[0] = secant(0);
    m_slope[m_count - 1] = secant(m_count - 2);
    for (std::size_t i = 1; i + 1 < m_count; ++i) {
        const double before = secant(i - 1);
        const double after = secant(i);
        const double hb = m_x[i] - m_x[i - 1];
        const double ha = m_x[i + 1] - m_x[i];
        const double wb = 2.0 * ha + hb;
        const double wa = ha + 2.0 * hb;
        const double mean = (wb + wa) / (wb / before + wa / after);
        m_slope[i] = std::max(mean, kLeastShare * std::min(before, after));
    }
}

std::size_t MonotoneCurve::pieceOfX(double x) const
{
    std::size_t i = 0;
    while (i + 2 < m_count && x >= m_x[i + 1])
        ++i;
    return i;
}

std::size_t MonotoneCurve::pieceOfY(double y) const
{
    std::size_t i = 0;
    while (i + 2 < m_count && y >= m_y[i + 1])
        ++i;
    return i;
}

double MonotoneCurve::at(double x) const
{
    if (x <= m_x[0])
        return m_y[0] + (x - m_x[0]) * m_slope[0];
    if (x >= m_x[m_count - 1])
        return m_y[m_count - 1] + (x - m_x[m_count - 1]) * m_slope[m_count - 1];
    const std::size_t i = pieceOfX(x);
    const double h = m_x[i + 1] - m_x[i];
    const Piece piece{m_x[i], h, m_y[i], m_y[i + 1] - m_y[i], m_slope[i] * h, m_slope[i + 1] * h};
    return piece.at((x - m_x[i]) / h);
}

double MonotoneCurve::slopeAt(double x) const
{
    if (x <= m_x[0])
        return m_slope[0];
    if (x >= m_x[m_count - 1])
        return m_slope[m_count - 1];
    const std::size_t i = pieceOfX(x);
    const double h = m_x[i + 1] - m_x[i];
    const Piece piece{m_x[i], h, m_y[i], m_y[i + 1] - m_y[i], m_slope[i] * h, m_slope[i + 1] * h};
    return piece.slope((x - m_x[i]) / h);
}

double MonotoneCurve::inverse(double y) const
{
    if (y <= m_y[0])
        return m_x[0] + (y - m_y[0]) / m_slope[0];
    if (y >= m_y[m_count - 1])
        return m_x[m_count - 1] + (y - m_y[m_count - 1]) / m_slope[m_count - 1];
    const std::size_t i = pieceOfY(y);
    const double h = m_x[i + 1] - m_x[i];
    const Piece piece{m_x[i], h, m_y[i], m_y[i + 1] - m_y[i], m_slope[i] * h, m_slope[i + 1] * h};
    // Newton from the chord, kept inside a shrinking bracket.
    double low = 0.0;
    double high = 1.0;
    double t = (y - m_y[i]) / (m_y[i + 1] - m_y[i]);
    for (int round = 0; round < 60; ++round) {
        const double miss = piece.at(t) - y;
        if (miss > 0.0)
            high = t;
        else
            low = t;
        const double step = miss / (piece.slope(t) * h);
        // Newton doubles its digits: after a step this small there is nothing left to gain.
        if (std::abs(step) < 1e-9)
            return m_x[i] + (t - step) * h;
        const double next = t - step;
        t = next > low && next < high ? next : 0.5 * (low + high);
    }
    return m_x[i] + t * h;
}

}  // namespace fb
