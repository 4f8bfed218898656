#include "core/hand/laid_bars.h"

#include <cmath>
#include <numbers>

namespace fb {

namespace laid_bars_detail {

// Measured on the drawing, in shares of the way from wrist to fork: along it, and aside to the fingers behind
// the middle one. The drawing's fingers are open by kDrawn.
constexpr double kDrawn = 40.0;  // degrees
struct Row {
    Point joint, from, to;
    double half;
    bool opens;
};
constexpr Row kRows[] = {
    {{}, {0.10, 0.0}, {0.72, 0.0}, 0.465, false},                 // palm
    {{}, {0.16, -0.23}, {0.82, -0.82}, 0.135, false},             // thumb
    {{}, {0.85, -0.07}, {1.60, -0.01}, 0.115, false},             // index
    {{1.0, 0.0}, {1.0, 0.0}, {1.565, 0.475}, 0.115, true},        // middle
    {{0.886, 0.166}, {0.886, 0.166}, {1.40, 0.675}, 0.11, true},  // ring
    {{0.776, 0.332}, {0.776, 0.332}, {1.11, 0.82}, 0.10, true},   // little
};

Point turnedAbout(Point p, Point middle, double degrees)
{
    const double radians = degrees * std::numbers::pi / 180.0;
    const Point d = p - middle;
    return middle + Point{d.x * std::cos(radians) - d.y * std::sin(radians),
                          d.x * std::sin(radians) + d.y * std::cos(radians)};
}

}  // namespace laid_bars_detail

std::vector<LaidBar> barsOf(const HandPose& pose)
{
    using namespace laid_bars_detail;
    const Point along = pose.fork - pose.wrist;
    const double size = length(along);
    // A left hand seen from behind opens counter-clockwise.
    const double way = pose.hand == Side::Left ? 1.0 : -1.0;
    const Point aside = Point{-along.y, along.x} * way;
    const auto placed = [&](const Row& row, Point p) {
        const Point own = row.opens ? turnedAbout(p, row.joint, pose.opening.value() - kDrawn) : p;
        return pose.wrist + along * own.x + aside * own.y;
    };
    std::vector<LaidBar> bars;
    for (const Row& row : kRows)
        bars.push_back({placed(row, row.from), placed(row, row.to), Cm{row.half * size}});
    return bars;
}

std::vector<LaidBar> barsOf(const LaidFingers& fingers, Cm fingerWidth)
{
    // In breadths of a finger, measured on the drawing.
    constexpr double kTip = 1.7;
    constexpr double kRoot = 1.8;
    constexpr double kBackFrom = 4.4, kBackTo = 8.2, kBackDown = 1.5, kBackHalf = 3.0;
    const double width = fingerWidth.value();
    const double radians = fingers.turn.value() * std::numbers::pi / 180.0;
    // Toward the wrist: a left hand points to the viewer's left.
    const Point back =
        Point{std::cos(radians), std::sin(radians)} * (fingers.hand == Side::Left ? 1.0 : -1.0);
    const Point down = downOf(fingers);
    const auto at = [&](double toWrist, double lower) {
        return fingers.top + back * (toWrist * width) + down * (lower * width);
    };
    std::vector<LaidBar> bars;
    for (int i = 0; i < fingers.count; ++i)
        bars.push_back({at(-kTip, i + 0.5), at(kRoot, i + 0.5), Cm{0.56 * width}});
    bars.push_back({at(kBackFrom, kBackDown), at(kBackTo, kBackDown), Cm{kBackHalf * width}});
    return bars;
}

}  // namespace fb
