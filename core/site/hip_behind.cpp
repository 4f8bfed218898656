#include "core/site/hip_behind.h"

#include <algorithm>
#include <cmath>

namespace fb {

namespace hip_behind_detail {

constexpr int kRows = 8;

using Line = std::vector<Point>;

double interpolated(const Line& outline, double at, double Point::*key, double Point::*value)
{
    for (std::size_t i = 0; i + 1 < outline.size(); ++i) {
        const double a = outline[i].*key;
        const double b = outline[i + 1].*key;
        if ((at - a) * (at - b) <= 0.0 && a != b)
            return outline[i].*value + (outline[i + 1].*value - outline[i].*value) * (at - a) / (b - a);
    }
    const bool first = std::abs(outline.front().*key - at) < std::abs(outline.back().*key - at);
    return first ? outline.front().*value : outline.back().*value;
}

// The hip as an elliptic cylinder: what the side view shows at a height and a depth, seen from
// behind near the drawn outline.
class FromBehind {
public:
    FromBehind(const Hip& hip, const Line& outline, double midline)
        : m_hip(hip),
          m_outline(outline),
          m_midline(midline)
    {
    }

    [[nodiscard]] Point edge(double height) const { return {outer(height), height}; }
    [[nodiscard]] Point at(double height, double front) const
    {
        const double most = interpolated(m_hip.trunkFront, -height, &Point::x, &Point::y);
        const double least = interpolated(m_hip.trunkBack, -height, &Point::x, &Point::y);
        const double turn = std::clamp((2.0 * front - most - least) / (most - least), -0.98, 0.98);
        return {m_midline + (outer(height) - m_midline) * std::sqrt(1.0 - turn * turn), height};
    }
    // How far from the body's middle a depth lies at a height, either way.
    [[nodiscard]] double fromMiddle(Point side) const
    {
        const double most = interpolated(m_hip.trunkFront, side.x, &Point::x, &Point::y);
        const double least = interpolated(m_hip.trunkBack, side.x, &Point::x, &Point::y);
        return std::abs(2.0 * side.y - most - least) / (most - least);
    }

private:
    [[nodiscard]] double outer(double height) const
    {
        return interpolated(m_outline, height, &Point::y, &Point::x);
    }

    const Hip& m_hip;
    const Line& m_outline;
    double m_midline;
};

// From the edge of the picture to the place of the region that lies farthest round.
Polygon edgeOn(const Polygon& region, const FromBehind& seen)
{
    const auto& corners = region.corners();
    const Point farthest =
        *std::ranges::max_element(corners, {}, [&](Point p) { return seen.fromMiddle(p); });
    const Bounds box = region.bounds();
    Line strip;
    for (int row = 0; row <= kRows; ++row)
        strip.push_back(seen.edge(-(box.low.x + (box.high.x - box.low.x) * row / kRows)));
    for (int row = kRows; row >= 0; --row)
        strip.push_back(seen.at(-(box.low.x + (box.high.x - box.low.x) * row / kRows), farthest.y));
    return *Polygon::make(std::move(strip));
}

struct Territory {
    Line crest;  // from its outer end to the posterior spine
    Point backSpine, trochanter, coccyx;
    Line outline;  // the right side, from the waist down to the fold
};

// Asked on the side view's plane, like everything of this target; only what is painted is its own.
void addTerritory(Target& target, const Target& side, HazardCode code, Line corners)
{
    const auto asked = std::ranges::find(side.hazards, code, &Hazard::code);
    auto polygon = Polygon::make(std::move(corners));
    if (polygon && asked != side.hazards.end())
        target.hazards.push_back({code, HazardKind::Strike, asked->skin, *std::move(polygon)});
}

void addHazards(Target& target, const Target& side, const Territory& body)
{
    const auto between = [&](double top, double bottom) {
        Line part;
        std::ranges::copy_if(body.outline, std::back_inserter(part),
                             [&](Point p) { return p.y < top && p.y > bottom; });
        return part;
    };
    Line upper = body.crest;
    std::ranges::reverse(upper);  // from the posterior spine outward
    const Line flank = between(upper.back().y, body.trochanter.y);
    upper.insert(upper.end(), flank.begin(), flank.end());
    upper.push_back(body.trochanter);
    addTerritory(target, side, HazardCode::Dorsogluteal, std::move(upper));

    Line lower{body.backSpine, body.trochanter};
    const Line thigh = between(body.trochanter.y, -1e9);
    lower.insert(lower.end(), thigh.begin(), thigh.end());
    lower.push_back({body.coccyx.x, body.outline.back().y});
    lower.push_back(body.coccyx);
    addTerritory(target, side, HazardCode::SciaticNerve, std::move(lower));
}

}  // namespace hip_behind_detail

Target hipBehindTarget(const Target& side, const Hip& hip, const Places& behind)
{
    using namespace hip_behind_detail;
    Territory body{behind.boneLine("line.iliac-crest"), behind.landmark("landmark.psis"),
                   behind.landmark("landmark.greater-trochanter"), behind.landmark("landmark.coccyx"),
                   behind.outline("pelvis", "waist", "fold").front};
    if (distance(body.crest.front(), body.backSpine) < distance(body.crest.back(), body.backSpine))
        std::ranges::reverse(body.crest);
    const FromBehind seen(hip, body.outline, body.coccyx.x);
    Polygon region = edgeOn(side.region, seen);
    const Point ideal = seen.at(-side.ideal.x, side.ideal.y);
    Target target{side.site, region, ideal, side.regionSkin, side.idealSkin, side.surface};
    target.convention = side.convention;
    target.asisToTrochanter = side.asisToTrochanter;
    target.scale = side.scale;
    addHazards(target, side, body);
    target.construction = {
        {StepCode::FeelBackSpine, FigureKind::Point, {body.backSpine}},
        {StepCode::FeelTrochanter, FigureKind::Point, {body.trochanter}},
        {StepCode::FeelCrest, FigureKind::Line, body.crest},
        {StepCode::BackLine, FigureKind::Line, {body.backSpine, body.trochanter}},
        {StepCode::Region, FigureKind::Closed, region.corners()},
        {StepCode::IdealPoint, FigureKind::Point, {ideal}},
    };
    return target;
}

}  // namespace fb
