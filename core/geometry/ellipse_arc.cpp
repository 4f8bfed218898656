#include "core/geometry/ellipse_arc.h"

#include <array>
#include <cmath>
#include <numbers>

namespace fb {

double ellipseArc(double front, double lateral, double turn)
{
    // Gauss-Legendre with eight points, taken in pairs; the integrand is smooth.
    static constexpr std::array<double, 4> kNode{0.1834346424956498, 0.5255324099163290, 0.7966664774136267,
                                                 0.9602898564975363};
    static constexpr std::array<double, 4> kWeight{0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                                   0.1012285362903763};
    const double f2 = front * front;
    const double l2 = lateral * lateral;
    const double half = turn / 2.0;
    const auto speed = [&](double at) {
        const double c = std::cos(at);
        return std::sqrt(l2 + (f2 - l2) * c * c);
    };
    double sum = 0.0;
    for (std::size_t i = 0; i < kNode.size(); ++i)
        sum += kWeight[i] * (speed(half - half * kNode[i]) + speed(half + half * kNode[i]));
    return sum * half;
}

double ellipseTurn(double front, double lateral, double arc)
{
    constexpr double kQuarter = std::numbers::pi / 2.0;
    // No quarter is shorter than the lesser half axis' own: below that there is nothing to hold.
    if (std::abs(arc) >= kQuarter * std::fmin(front, lateral)) {
        const double quarter = ellipseArc(front, lateral, kQuarter);
        if (std::abs(arc) >= quarter)
            return std::copysign(kQuarter, arc);
    }
    double turn = arc / front;
    for (int round = 0; round < 40; ++round) {
        const double c = std::cos(turn);
        const double rate = std::sqrt(lateral * lateral + (front * front - lateral * lateral) * c * c);
        const double step = (ellipseArc(front, lateral, turn) - arc) / rate;
        turn -= step;
        if (std::abs(step) < 1e-14)
            break;
    }
    return turn;
}

}  // namespace fb
