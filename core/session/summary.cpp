#include "core/session/summary.h"

#include <algorithm>
#include <cmath>
#include <iterator>

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

void countRefusal(Summary& summary, const Attempt& attempt)
{
    const auto& finding = attempt.request.finding;
    summary.ruledOut += finding && rulesOut(*finding, attempt.request.site, attempt.request.patient.side());
    if (!attempt.refusal)
        return;
    summary.refusedRight += attempt.refusal->outcome == RefusalOutcome::RightReason;
    summary.refusedOther += attempt.refusal->outcome == RefusalOutcome::WrongReason;
    summary.refusedNeedless += attempt.refusal->outcome == RefusalOutcome::NothingRulesOut;
}

void countMark(Summary& summary, const Attempt& attempt)
{
    const Grade& grade = attempt.grade;
    ++summary.marked;
    summary.hits += grade.verdict == Verdict::OnTarget;
    summary.acceptable += grade.verdict == Verdict::Acceptable;
    summary.offTarget += grade.verdict == Verdict::OffTarget;
    summary.unsafe += grade.verdict == Verdict::Unsafe;
    summary.lean = summary.lean + attempt.offIdeal;
    summary.marks.push_back(attempt.offIdeal);
    summary.verdicts.push_back(grade.verdict);
}

}  // namespace summary_detail

Summary summed(std::span<const Attempt> attempts)
{
    Summary summary;
    double distance = 0.0;
    for (const Attempt& attempt : attempts) {
        ++summary.attempts;
        summary.sidesAsked += attempt.sideRight.has_value();
        summary.sidesRight += attempt.sideRight.value_or(false);
        summary.points += attempt.grade.points;
        summary_detail::countRefusal(summary, attempt);
        if (attempt.refusal)
            continue;
        summary_detail::countMark(summary, attempt);
        distance += attempt.grade.distanceToIdeal.value();
    }
    if (summary.marked == 0)
        return summary;
    summary.lean = summary.lean * (1.0 / summary.marked);
    summary.meanDistance = Cm{distance / summary.marked};
    summary.hitRate = wilsonInterval(summary.hits, summary.marked);
    summary.leanWay = summary_detail::leaning(summary.marks, summary.lean);
    return summary;
}

Summary summed(std::span<const Attempt> attempts, Site site)
{
    std::vector<Attempt> there;
    std::ranges::copy_if(attempts, std::back_inserter(there),
                         [site](const Attempt& attempt) { return attempt.request.site == site; });
    return summed(there);
}

}  // namespace fb
