#include "core/site/hip_hazards.h"

#include <algorithm>
#include <iterator>
#include <optional>

#include "core/geometry/disc.h"
#include "core/site/ventrogluteal.h"

namespace fb {

namespace hip_hazards_detail {

constexpr double kFar = 200.0;  // cm: past anything that can be marked

using Line = std::vector<Point>;

void append(Line& to, const Line& points) { to.insert(to.end(), points.begin(), points.end()); }

Line reversed(Line line)
{
    std::ranges::reverse(line);
    return line;
}

// The crest laid `out` cm outward (or inward, negative).
Line shifted(const Line& crest, Point inside, double out)
{
    Line moved;
    for (std::size_t i = 0; i < crest.size(); ++i) {
        const Point along = crest[std::min(i + 1, crest.size() - 1)] - crest[i > 0 ? i - 1 : 0];
        Point normal = Point{along.y, -along.x} * (1.0 / length(along));
        if (dot(normal, inside - crest[i]) > 0.0)
            normal = normal * -1.0;
        moved.push_back(crest[i] + normal * out);
    }
    return moved;
}

// The part of an outline on one side of a height along the body.
Line from(const Line& outline, double x)
{
    Line part;
    std::ranges::copy_if(outline, std::back_inserter(part), [x](Point p) { return p.x > x; });
    return part;
}
Line upTo(const Line& outline, double x)
{
    Line part;
    std::ranges::copy_if(outline, std::back_inserter(part), [x](Point p) { return p.x <= x; });
    return part;
}

class HipHazards {
public:
    explicit HipHazards(const Hip& hip) : m_hip(hip) {}

    void add(HazardCode code, HazardKind kind, Line asked, Line shown)
    {
        std::ranges::transform(asked, asked.begin(), planeSkin);
        auto skin = Polygon::make(std::move(asked));
        auto plane = Polygon::make(std::move(shown));
        if (skin && plane)
            m_all.push_back({code, kind, *std::move(skin), *std::move(plane)});
    }
    void add(HazardCode code, HazardKind kind, const Line& both) { add(code, kind, both, both); }
    [[nodiscard]] std::vector<Hazard> taken() { return std::move(m_all); }

    void addCrest(double rim)
    {
        Line band = shifted(m_hip.crest, m_hip.trochanter, rim);
        append(band, reversed(shifted(m_hip.crest, m_hip.trochanter, -rim)));
        add(HazardCode::CrestBone, HazardKind::Bone, band);
    }
    void addAboveCrest()
    {
        Line asked = m_hip.crest;
        append(asked, {{m_hip.backSpine.x, -kFar}, {-kFar, -kFar}, {-kFar, kFar}, {m_hip.spine.x, kFar}});
        Line shown = m_hip.crest;
        std::ranges::transform(shown, shown.begin(), [this](Point p) { return withinTrunk(p); });
        append(shown, reversed(upTo(m_hip.trunkBack, m_hip.backSpine.x)));
        append(shown, upTo(m_hip.trunkFront, m_hip.spine.x));
        add(HazardCode::AboveCrest, HazardKind::Strike, asked, shown);
    }
    void addSciatic()
    {
        Line asked{
            m_hip.backSpine, m_hip.trochanter, downThigh(kFar), {kFar, -kFar}, {m_hip.backSpine.x, -kFar}};
        Line shown{withinTrunk(m_hip.backSpine), m_hip.trochanter, downThigh(m_hip.thighBack)};
        append(shown, reversed(m_hip.thighBack));
        append(shown, reversed(upTo(from(m_hip.trunkBack, m_hip.backSpine.x), m_hip.thighBack.front().x)));
        add(HazardCode::SciaticNerve, HazardKind::Strike, asked, shown);
    }
    void addFront()
    {
        Line asked{m_hip.spine, m_hip.trochanter, downThigh(kFar), {kFar, kFar}, {m_hip.spine.x, kFar}};
        Line shown{m_hip.spine, m_hip.trochanter, downThigh(m_hip.thighFront)};
        append(shown, reversed(m_hip.thighFront));
        // The groin is where the drawn thigh begins; the trunk's outline runs on under it.
        append(shown, reversed(upTo(from(m_hip.trunkFront, m_hip.spine.x), m_hip.thighFront.front().x)));
        add(HazardCode::FrontOfHipLine, HazardKind::Near, asked, shown);
    }
    // Behind the taught region: along the crest to where it is nearest to the region, down its
    // back border, and home by the line from the trochanter to the posterior spine.
    void addDorsogluteal(const Line& behind)
    {
        Line down = behind;
        std::size_t first = nearestOnCrest(behind.front());
        if (const auto meeting = behind.size() > 1 ? meetsCrest(behind[0], behind[1]) : std::nullopt) {
            down.front() = meeting->at;  // a fingertip beyond the crest
            first = meeting->next;
        }
        Line border(m_hip.crest.begin() + static_cast<std::ptrdiff_t>(first), m_hip.crest.end());
        std::ranges::reverse(border);
        append(border, down);
        border.push_back(m_hip.trochanter);
        add(HazardCode::Dorsogluteal, HazardKind::Strike, border);
    }
    void addGlutealBranches(double low, double high)
    {
        const Bounds reach = m_hip.glutealNerve;
        add(HazardCode::SuperiorGluteal, HazardKind::Near,
            {{-high, reach.low.y}, {-low, reach.low.y}, {-low, reach.high.y}, {-high, reach.high.y}});
    }

private:
    // For painting: bone that lies at the very skin of a lean body is drawn a little inside it.
    [[nodiscard]] Point withinTrunk(Point p) const
    {
        constexpr double kInside = 0.2;  // cm
        const double back = outlineAt(m_hip.trunkBack, p.x) + kInside;
        const double front = outlineAt(m_hip.trunkFront, p.x) - kInside;
        return {p.x, back < front ? std::clamp(p.y, back, front) : p.y};
    }
    // Height of an outline, which runs from head to foot, at a place along the body.
    [[nodiscard]] static double outlineAt(const Line& outline, double x)
    {
        const auto next = std::ranges::find_if(outline, [x](Point p) { return p.x >= x; });
        if (next == outline.begin() || next == outline.end())
            return next == outline.begin() ? outline.front().y : outline.back().y;
        const Point before = *std::prev(next);
        return before.y + (next->y - before.y) * (x - before.x) / (next->x - before.x);
    }
    struct Meeting {
        Point at;
        std::size_t next = 0;  // the crest's next corner toward the back
    };
    // Where the way from a to b crosses the crest.
    [[nodiscard]] std::optional<Meeting> meetsCrest(Point a, Point b) const
    {
        for (std::size_t i = 0; i + 1 < m_hip.crest.size(); ++i) {
            const Point p = m_hip.crest[i];
            const Point along = m_hip.crest[i + 1] - p;
            const double turn = cross(b - a, along);
            if (turn == 0.0)
                continue;
            const double way = cross(p - a, along) / turn;
            const double share = cross(p - a, b - a) / turn;
            if (way >= 0.0 && way <= 1.0 && share >= 0.0 && share <= 1.0)
                return Meeting{lerp(a, b, way), i + 1};
        }
        return std::nullopt;
    }
    [[nodiscard]] std::size_t nearestOnCrest(Point to) const
    {
        const auto nearest =
            std::ranges::min_element(m_hip.crest, {}, [&](Point p) { return distance(p, to); });
        return static_cast<std::size_t>(nearest - m_hip.crest.begin());
    }
    [[nodiscard]] Point downThigh(double way) const { return m_hip.trochanter + m_hip.thighAxis * way; }
    // As far down the thigh as its outline is drawn.
    [[nodiscard]] Point downThigh(const Line& outline) const
    {
        return downThigh(dot(outline.back() - m_hip.trochanter, m_hip.thighAxis));
    }

    const Hip& m_hip;
    std::vector<Hazard> m_all;
};

}  // namespace hip_hazards_detail

std::vector<Hazard> hipHazards(const Policy& policy, const Hip& hip, const std::vector<Point>& behind)
{
    using enum PolicyKey;
    const double s = hip.scale;
    hip_hazards_detail::HipHazards hazards(hip);
    hazards.add(HazardCode::Trochanter, HazardKind::Bone, hip.trochanterBone.corners());
    hazards.addCrest(policy.value(VgBoneMargin) / 2.0 * s);
    hazards.add(HazardCode::RoundTrochanter, HazardKind::Strike,
                discPolygon({hip.trochanter, policy.value(VgTrochanterMargin) * s}).corners());
    hazards.addAboveCrest();
    hazards.addFront();
    hazards.addSciatic();
    hazards.addDorsogluteal(behind);
    hazards.addGlutealBranches(policy.value(SuperiorGlutealLow) * s, policy.value(SuperiorGlutealHigh) * s);
    return hazards.taken();
}

}  // namespace fb
