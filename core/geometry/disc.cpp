#include "core/geometry/disc.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace fb {

namespace disc_detail {

constexpr double kTurn = 2.0 * std::numbers::pi;
constexpr double kChord = kTurn / kDiscCorners;
constexpr double kOnCircle = 1e-9;  // cm: nearer to the circle is on it

Point onCircle(const Disc& disc, double angle)
{
    return disc.centre + Point{std::cos(angle), std::sin(angle)} * disc.radius;
}

double angleOf(const Disc& disc, Point p) { return std::atan2(p.y - disc.centre.y, p.x - disc.centre.x); }

bool isOn(const Disc& disc, Point p) { return std::abs(distance(p, disc.centre) - disc.radius) <= kOnCircle; }

// Where an edge crosses the circle between its ends, as shares of the edge, rising.
std::vector<double> crossings(Point a, Point b, const Disc& disc)
{
    const Point d = b - a;
    const Point f = a - disc.centre;
    const double qa = dot(d, d);
    const double qb = dot(f, d);
    const double root = qb * qb - qa * (dot(f, f) - disc.radius * disc.radius);
    std::vector<double> shares;
    if (qa <= 0.0 || root <= 0.0)
        return shares;
    for (const double t : {(-qb - std::sqrt(root)) / qa, (-qb + std::sqrt(root)) / qa}) {
        const Point at = lerp(a, b, t);
        if (t > 0.0 && t < 1.0 && distance(at, a) > kOnCircle && distance(at, b) > kOnCircle)
            shares.push_back(t);
    }
    return shares;
}

using Chain = std::vector<Point>;

// The stretches of the border outside the disc, each from where it leaves the disc to where it
// enters it again.
std::vector<Chain> outerChains(const Polygon& polygon, const Disc& disc)
{
    const std::vector<Point>& corners = polygon.corners();
    std::vector<Point> border;
    std::vector<bool> crossing;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Point a = corners[i];
        const Point b = corners[(i + 1) % corners.size()];
        border.push_back(a);
        crossing.push_back(isOn(disc, a));
        for (const double t : crossings(a, b, disc)) {
            border.push_back(lerp(a, b, t));
            crossing.push_back(true);
        }
    }
    const std::size_t n = border.size();
    const auto leaves = [&](std::size_t i) {
        const Point middle = lerp(border[i], border[(i + 1) % n], 0.5);
        return crossing[i] && distance(middle, disc.centre) > disc.radius;
    };
    std::vector<Chain> chains;
    for (std::size_t i = 0; i < n; ++i) {
        if (!leaves(i))
            continue;
        Chain chain{border[i]};
        for (std::size_t k = 1; k <= n; ++k) {
            const std::size_t at = (i + k) % n;
            chain.push_back(border[at]);
            if (crossing[at])
                break;
        }
        chains.push_back(std::move(chain));
    }
    return chains;
}

// How far to go clockwise from one angle to another, 0 to a full turn.
double clockwise(double from, double to)
{
    const double way = std::fmod(from - to, kTurn);
    return way < 0.0 ? way + kTurn : way;
}

void followCircle(Chain& ring, const Disc& disc, Point from, Point to)
{
    const double start = angleOf(disc, from);
    const double way = clockwise(start, angleOf(disc, to));
    const int pieces = static_cast<int>(std::ceil(way / kChord));
    for (int i = 1; i < pieces; ++i)
        ring.push_back(onCircle(disc, start - way * i / pieces));
}

}  // namespace disc_detail

Polygon discPolygon(const Disc& disc)
{
    std::vector<Point> corners;
    corners.reserve(kDiscCorners);
    for (int i = 0; i < kDiscCorners; ++i)
        corners.push_back(disc_detail::onCircle(disc, disc_detail::kChord * i));
    return *Polygon::make(std::move(corners));
}

std::optional<Polygon> without(const Polygon& polygon, const Disc& disc)
{
    using namespace disc_detail;
    std::vector<Chain> chains = outerChains(polygon, disc);
    if (chains.empty()) {
        const bool swallowed = std::ranges::all_of(
            polygon.corners(), [&](Point p) { return distance(p, disc.centre) <= disc.radius + kOnCircle; });
        return swallowed ? std::nullopt : std::optional(polygon);
    }
    // From the end of each stretch the new border goes clockwise round the disc to the next start.
    std::vector<bool> used(chains.size(), false);
    std::optional<Polygon> largest;
    for (std::size_t first = 0; first < chains.size(); ++first) {
        if (used[first])
            continue;
        Chain ring;
        for (std::size_t at = first; !used[at];) {
            used[at] = true;
            ring.insert(ring.end(), chains[at].begin(), chains[at].end());
            const double end = angleOf(disc, chains[at].back());
            std::size_t next = 0;
            for (std::size_t k = 1; k < chains.size(); ++k) {
                const auto way = [&](std::size_t c) {
                    return clockwise(end, angleOf(disc, chains[c].front()));
                };
                if (way(k) < way(next))
                    next = k;
            }
            followCircle(ring, disc, chains[at].back(), chains[next].front());
            at = next;
        }
        auto piece = Polygon::make(std::move(ring));
        if (piece && (!largest || piece->area() > largest->area()))
            largest = std::move(piece);
    }
    return largest;
}

}  // namespace fb
