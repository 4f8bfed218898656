#include "core/session/summary.h"

#include <cmath>

namespace fb {

namespace summary_detail {

constexpr double kLeastLean = 0.2;  // cm: less is no lean worth a word

// The way a run leans, once it leans by more than chance would have it.
Direction leaning(std::span<const Point> marks, Point mean)
{
    const double n = static_cast<double>(marks.size());
    if (n < 3.0)
        return Direction::None;
    Point squares;
    for (const Point p : marks)
        squares = squares + Point{(p.x - mean.x) * (p.x - mean.x), (p.y - mean.y) * (p.y - mean.y)};
    const auto clear = [n](double value, double square) {
        const double standardError = std::sqrt(square / (n - 1.0) / n);
        return std::abs(value) >= kLeastLean && std::abs(value) > standardError ? std::abs(value) : 0.0;
    };
    const double anterior = clear(mean.x, squares.x);
    const double distal = clear(mean.y, squares.y);
    if (anterior == 0.0 && distal == 0.0)
        return Direction::None;
    if (distal >= anterior)
        return mean.y > 0.0 ? Direction::Low : Direction::High;
    return mean.x > 0.0 ? Direction::Forward : Direction::Back;
}

}  // namespace summary_detail

Summary summed(std::span<const Attempt> attempts)
{
    Summary summary;
    double distance = 0.0;
    for (const Attempt& attempt : attempts) {
        const Grade& grade = attempt.grade;
        ++summary.attempts;
        summary.hits += grade.verdict == Verdict::OnTarget;
        summary.acceptable += grade.verdict == Verdict::Acceptable;
        summary.offTarget += grade.verdict == Verdict::OffTarget;
        summary.unsafe += grade.verdict == Verdict::Unsafe;
        summary.sidesAsked += attempt.sideRight.has_value();
        summary.sidesRight += attempt.sideRight.value_or(false);
        summary.points += grade.points;
        distance += grade.distanceToIdeal.value();
        summary.lean = summary.lean + attempt.offIdeal;
        summary.marks.push_back(attempt.offIdeal);
        summary.verdicts.push_back(grade.verdict);
    }
    if (summary.attempts == 0)
        return summary;
    summary.lean = summary.lean * (1.0 / summary.attempts);
    summary.meanDistance = Cm{distance / summary.attempts};
    summary.hitRate = wilsonInterval(summary.hits, summary.attempts);
    summary.leanWay = summary_detail::leaning(summary.marks, summary.lean);
    return summary;
}

}  // namespace fb
