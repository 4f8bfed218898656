// A point or vector of the plane, in centimetres of the frame: +x to the viewer's right,
// +y up, origin at the site's first landmark.
#pragma once

#include <cmath>

namespace fb {

struct Point {
    double x = 0.0;
    double y = 0.0;

    friend bool operator==(const Point&, const Point&) = default;
};

[[nodiscard]] constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
[[nodiscard]] constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
[[nodiscard]] constexpr Point operator*(Point a, double k) { return {a.x * k, a.y * k}; }
[[nodiscard]] constexpr double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
[[nodiscard]] constexpr double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
[[nodiscard]] inline double length(Point a) { return std::sqrt(dot(a, a)); }
[[nodiscard]] inline double distance(Point a, Point b) { return length(a - b); }
[[nodiscard]] inline bool isFinite(Point a) { return std::isfinite(a.x) && std::isfinite(a.y); }
// Mirrored in the vertical axis x = 0; twice gives the same point.
[[nodiscard]] constexpr Point mirrored(Point a) { return {-a.x, a.y}; }
[[nodiscard]] constexpr Point lerp(Point a, Point b, double t) { return a + (b - a) * t; }

}  // namespace fb
