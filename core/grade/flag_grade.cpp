#include "core/grade/flag_grade.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace fb {

namespace flag_detail {

// Of the greater part of a way: a lesser part that is told too. Less is within a hand's own slant.
constexpr double kAslant = 0.5;

double awayFrom(const Target& target, Landmark landmark, Point at)
{
    const auto place = placeOf(target, landmark);
    return place ? distance(place->nearest(at), at) : std::numeric_limits<double>::infinity();
}

std::optional<Landmark> nearestOf(const Target& target, FigureKind kind, Landmark asked, Point at,
                                  double within)
{
    std::optional<Landmark> nearest;
    for (const Landmark other : offeredLandmarks(target.site)) {
        const auto place = placeOf(target, other);
        if (other == asked || !place || place->kind != kind)
            continue;
        const double away = distance(place->nearest(at), at);
        if (away <= within) {
            within = away;
            nearest = other;
        }
    }
    return nearest;
}

// The other landmark that lies where the flag is: a point before the line it stands on.
std::optional<Landmark> nearestOther(const Target& target, Landmark asked, Point at, double within)
{
    const auto point = nearestOf(target, FigureKind::Point, asked, at, within);
    return point ? point : nearestOf(target, FigureKind::Line, asked, at, within);
}

class FlagGrader {
public:
    FlagGrader(const Target& target, const Policy& policy, std::span<const Flag> flags)
        : m_target(target),
          m_flags(flags),
          m_found(policy.value(PolicyKey::FlagFound)),
          m_near(std::max(m_found, policy.value(PolicyKey::FlagNear)))
    {
    }

    [[nodiscard]] FlagGrade graded(Landmark asked) const
    {
        FlagGrade grade{asked, FlagVerdict::Missing, {}, {}, Direction::None, Direction::None, {}};
        const auto named = std::ranges::find(m_flags, asked, &Flag::name);
        if (named != m_flags.end()) {
            measure(grade, *named);
            grade.verdict = within(grade.distance.value());
            if (grade.verdict == FlagVerdict::Off)
                grade.really = nearestOther(m_target, asked, named->at, m_near);
            return grade;
        }
        const auto other = std::ranges::find_if(m_flags, [&](const Flag& flag) {
            return awayFrom(m_target, asked, flag.at) <= m_near && !isAtHome(flag);
        });
        if (other != m_flags.end()) {
            measure(grade, *other);
            grade.verdict = FlagVerdict::Misnamed;
        }
        return grade;
    }

private:
    void measure(FlagGrade& grade, const Flag& flag) const
    {
        const Point place = placeOf(m_target, grade.asked)->nearest(flag.at);
        grade.flag = flag;
        grade.distance = Cm{rounded6(distance(place, flag.at))};
        const Ways ways = waysOn(m_target, place, flag.at);
        grade.direction = ways.first;
        grade.second = ways.second;
    }
    [[nodiscard]] FlagVerdict within(double away) const
    {
        if (away <= m_found + kBorderTolerance)
            return FlagVerdict::Found;
        return away <= m_near + kBorderTolerance ? FlagVerdict::Near : FlagVerdict::Off;
    }
    // A flag that stands right under its own name is no other one's.
    [[nodiscard]] bool isAtHome(const Flag& flag) const
    {
        return awayFrom(m_target, flag.name, flag.at) <= m_near;
    }

    const Target& m_target;
    std::span<const Flag> m_flags;
    double m_found;
    double m_near;
};

}  // namespace flag_detail

Ways waysOn(const Target& target, Point a, Point b)
{
    const Point way = target.toSkin(b) - target.toSkin(a);
    const double along = std::abs(way.y);
    const double across = std::abs(way.x);
    if (std::max(along, across) <= kBorderTolerance)
        return {};
    Ways ways{way.y > 0.0 ? Direction::High : Direction::Low,
              way.x > 0.0 ? Direction::Forward : Direction::Back};
    if (along < across)
        std::swap(ways.first, ways.second);
    if (std::min(along, across) < flag_detail::kAslant * std::max(along, across))
        ways.second = Direction::None;
    return ways;
}

Direction directionOn(const Target& target, Point a, Point b) { return waysOn(target, a, b).first; }

std::vector<FlagGrade> gradeFlags(const Target& target, const Policy& policy, std::span<const Flag> flags)
{
    const flag_detail::FlagGrader grader(target, policy, flags);
    std::vector<FlagGrade> grades;
    for (const Landmark asked : askedLandmarks(target.convention))
        grades.push_back(grader.graded(asked));
    return grades;
}

std::string_view wordOf(FlagVerdict verdict)
{
    switch (verdict) {
    case FlagVerdict::Found: return "found";
    case FlagVerdict::Near: return "near";
    case FlagVerdict::Off: return "off";
    case FlagVerdict::Misnamed: return "misnamed";
    case FlagVerdict::Missing: return "missing";
    }
    return {};
}

}  // namespace fb
