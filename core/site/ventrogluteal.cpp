#include "core/site/ventrogluteal.h"

#include <algorithm>
#include <array>

#include "core/geometry/clip.h"
#include "core/geometry/disc.h"
#include "core/site/hip_hazards.h"

namespace fb {

namespace ventrogluteal_detail {

constexpr double kIdealMargin = 0.1;  // cm: an ideal point keeps this from the region's border
constexpr int kGrid = 24;             // of the search for an innermost point

Point outwardOf(Point a, Point b, Point inside)
{
    const Point along = b - a;
    const Point normal = Point{along.y, -along.x} * (1.0 / length(along));
    return dot(normal, inside - a) > 0.0 ? normal * -1.0 : normal;
}

// The half-plane on the side of `inside`, `margin` away from the line through a and b.
HalfPlane keptWithin(Point a, Point b, Point inside, double margin)
{
    const Point normal = outwardOf(a, b, inside);
    return {normal, dot(normal, a) - margin};
}

// Whether a box lies wholly in the half-plane, so that cutting would change nothing.
bool holdsAll(const HalfPlane& keep, const Bounds& box)
{
    const Point farthest{keep.normal.x > 0.0 ? box.high.x : box.low.x,
                         keep.normal.y > 0.0 ? box.high.y : box.low.y};
    return dot(keep.normal, farthest) <= keep.offset;
}

// The wanted point, or where the region lies deepest when that one is too near its border.
Point heldInside(const Polygon& region, Point wanted)
{
    if (region.signedDistance(wanted) <= -kIdealMargin)
        return wanted;
    Point best = region.centroid();
    double deepest = region.signedDistance(best);
    const Bounds box = region.bounds();
    for (int i = 1; i < kGrid; ++i) {
        for (int j = 1; j < kGrid; ++j) {
            const Point p{box.low.x + (box.high.x - box.low.x) * i / kGrid,
                          box.low.y + (box.high.y - box.low.y) * j / kGrid};
            const double depth = region.signedDistance(p);
            if (depth < deepest) {
                deepest = depth;
                best = p;
            }
        }
    }
    return best;
}

Polygon turnedToSkin(const Polygon& polygon)
{
    std::vector<Point> corners = polygon.corners();
    std::ranges::transform(corners, corners.begin(), planeSkin);
    return *Polygon::make(std::move(corners));
}

class HipSteps {
public:
    explicit HipSteps(const Hip& hip) : m_hip(hip)
    {
        add(StepCode::FeelTrochanter, FigureKind::Point, {hip.trochanter});
        add(StepCode::FeelSpine, FigureKind::Point, {hip.spine});
        add(StepCode::FeelCrest, FigureKind::Line, hip.crest);
    }

    void layHand(const HandPose& pose)
    {
        add(StepCode::LayPalm, FigureKind::Line, {pose.wrist, pose.fork});
        add(StepCode::IndexOnSpine, FigureKind::Line, {pose.fork, pose.indexTip});
        add(StepCode::MiddleAlongCrest, FigureKind::Line, {pose.fork, pose.middleTip});
        add(StepCode::FingerTriangle, FigureKind::Closed, {pose.fork, pose.indexTip, pose.middleTip});
    }
    void drawMedians()
    {
        add(StepCode::FeelTubercle, FigureKind::Point, {m_hip.tubercle});
        const std::array corners{m_hip.trochanter, m_hip.tubercle, m_hip.spine};
        add(StepCode::HipTriangle, FigureKind::Closed, {corners.begin(), corners.end()});
        for (std::size_t i = 0; i < corners.size(); ++i)
            add(StepCode::Median, FigureKind::Line,
                {corners[i], lerp(corners[(i + 1) % 3], corners[(i + 2) % 3], 0.5)});
    }
    [[nodiscard]] Steps closed(const Polygon& region, Point ideal)
    {
        add(StepCode::Region, FigureKind::Closed, region.corners());
        add(StepCode::IdealPoint, FigureKind::Point, {ideal});
        return std::move(m_steps);
    }

private:
    void add(StepCode code, FigureKind kind, std::vector<Point> points)
    {
        m_steps.push_back({code, kind, std::move(points)});
    }

    const Hip& m_hip;
    Steps m_steps;
};

Disc mediansDisc(const Policy& policy, const Hip& hip)
{
    return {mediansCrossing(hip.trochanter, hip.tubercle, hip.spine),
            policy.value(PolicyKey::VgMediansRadius) * hip.scale};
}

}  // namespace ventrogluteal_detail

using namespace ventrogluteal_detail;

HandSize handSize(const Policy& policy)
{
    using enum PolicyKey;
    return {Cm{policy.value(HandLength)}, Cm{policy.value(DeltoidFingerWidth)},
            policy.value(HandPalm),       policy.value(HandFork),
            policy.value(HandIndex),      policy.value(HandHeel),
            policy.value(HandBreadth)};
}

std::optional<Polygon> clearOfBone(const Policy& policy, const Hip& hip, const Polygon& polygon)
{
    const double margin = policy.value(PolicyKey::VgBoneMargin) * hip.scale;
    std::optional<Polygon> left = polygon;
    for (std::size_t i = 0; left && i + 1 < hip.dome.size(); ++i) {
        const HalfPlane keep = keptWithin(hip.dome[i], hip.dome[i + 1], hip.trochanter, margin);
        if (!holdsAll(keep, left->bounds()))
            left = clipped(*left, keep);
    }
    if (left && margin > 0.0)
        left = without(*left, {hip.spine, margin});
    if (left)
        left = without(*left, {hip.trochanter, policy.value(PolicyKey::VgTrochanterMargin) * hip.scale});
    return left;
}

std::optional<Polygon> betweenFingers(const HandPose& pose, Cm fingerWidth)
{
    const double half = fingerWidth.value() / 2.0;
    auto left = Polygon::make({pose.fork, pose.indexTip, pose.middleTip});
    if (left)
        left = clipped(*left, keptWithin(pose.fork, pose.indexTip, pose.middleTip, half));
    if (left)
        left = clipped(*left, keptWithin(pose.fork, pose.middleTip, pose.indexTip, half));
    return left;
}

Target ventroglutealTarget(Convention convention, const Policy& policy, const Hip& hip)
{
    HipSteps steps(hip);
    std::optional<HandPose> pose;
    std::optional<Polygon> region;
    Point wanted = mediansCrossing(hip.trochanter, hip.tubercle, hip.spine);
    std::vector<Point> behind{hip.tubercle};
    if (convention == Convention::VentroglutealHand) {
        const HandSize size = handSize(policy);
        pose = laidHand(size, hip.trochanter, hip.spine, Degrees{policy.value(PolicyKey::VgOpening)});
        steps.layHand(*pose);
        if (const auto fingers = betweenFingers(*pose, size.fingerWidth))
            region = clearOfBone(policy, hip, *fingers);
        wanted = (pose->fork + pose->indexTip + pose->middleTip) * (1.0 / 3.0);
        behind = {pose->middleTip, pose->fork};
    } else {
        steps.drawMedians();
    }
    const Polygon disc = discPolygon(mediansDisc(policy, hip));
    if (!region)
        region = clearOfBone(policy, hip, disc).value_or(disc);
    const Point ideal = heldInside(*region, wanted);
    Steps construction = steps.closed(*region, ideal);
    Target target{Site::Ventrogluteal, *region, ideal, turnedToSkin(*region), planeSkin(ideal), HipPlane{}};
    target.convention = convention;
    target.asisToTrochanter = Cm{distance(hip.spine, hip.trochanter)};
    target.scale = hip.scale;
    target.hazards = hipHazards(policy, hip, behind);
    target.construction = std::move(construction);
    target.hand = pose;
    return target;
}

}  // namespace fb
