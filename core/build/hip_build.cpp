#include "core/build/hip_build.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace fb {

namespace hip_build_detail {

constexpr std::array kCorners{Handle::CornerTrochanter, Handle::CornerTubercle, Handle::CornerSpine};
constexpr std::array kFeet{Handle::FootTrochanter, Handle::FootTubercle, Handle::FootSpine};

double alongSide(Point a, Point b, Point p)
{
    const Point way = b - a;
    const double square = dot(way, way);
    return square > 0.0 ? std::clamp(dot(p - a, way) / square, 0.0, 1.0) : 0.5;
}

bool hasCorners(const Build& build)
{
    return std::ranges::all_of(kCorners, [&](Handle corner) { return build.point(corner).has_value(); });
}

// Feet stay on their sides whatever is moved.
void settleFeet(Build& build)
{
    if (!hasCorners(build))
        return;
    for (const Handle foot : kFeet) {
        const MedianOf median = medianOf(foot);
        if (auto& at = build.point(foot))
            at = lerp(*build.point(median.sideFrom), *build.point(median.sideTo), footShare(build, foot));
    }
}

std::optional<Point> crossing(Point a, Point b, Point c, Point d)
{
    const Point r = b - a;
    const Point s = d - c;
    const double turn = cross(r, s);
    if (std::abs(turn) < 1e-9)
        return std::nullopt;
    return a + r * (cross(c - a, s) / turn);
}

// Three lines by hand hardly ever meet in one point: the mean of where each two do.
Point mediansCross(const Build& build)
{
    Point sum{};
    int count = 0;
    for (std::size_t i = 0; i < kFeet.size(); ++i) {
        const std::size_t j = (i + 1) % kFeet.size();
        const auto at = crossing(*build.point(kCorners[i]), *build.point(kFeet[i]), *build.point(kCorners[j]),
                                 *build.point(kFeet[j]));
        if (at) {
            sum = sum + *at;
            ++count;
        }
    }
    if (count > 0)
        return sum * (1.0 / count);
    return (*build.point(kCorners[0]) + *build.point(kCorners[1]) + *build.point(kCorners[2])) * (1.0 / 3.0);
}

Point betweenFingersOf(const FreeHand& hand, const Builder& builder)
{
    const HandPose pose = poseOf(hand, builder.hand);
    return (pose.fork + pose.indexTip + pose.middleTip) * (1.0 / 3.0);
}

Build flawlessMedians(const Target& target)
{
    Build build = emptyBuild(target);
    const auto at = [&](const char* name) { return target.landmarks.find(name)->second; };
    build.point(Handle::CornerTrochanter) = at("greater_trochanter");
    build.point(Handle::CornerTubercle) = at("iliac_tubercle");
    build.point(Handle::CornerSpine) = at("asis");
    for (const Handle foot : kFeet) {
        const MedianOf median = medianOf(foot);
        build.point(foot) = lerp(*build.point(median.sideFrom), *build.point(median.sideTo), 0.5);
    }
    return build;
}

Point placeBy(const Build& build, const Builder& builder)
{
    return build.hand ? betweenFingersOf(*build.hand, builder) : mediansCross(build);
}

}  // namespace hip_build_detail

using namespace hip_build_detail;

MedianOf medianOf(Handle foot)
{
    switch (foot) {
    case Handle::FootTubercle: return {Handle::CornerTubercle, Handle::CornerSpine, Handle::CornerTrochanter};
    case Handle::FootSpine: return {Handle::CornerSpine, Handle::CornerTrochanter, Handle::CornerTubercle};
    default: return {Handle::CornerTrochanter, Handle::CornerTubercle, Handle::CornerSpine};
    }
}

double footShare(const Build& build, Handle foot)
{
    const MedianOf median = medianOf(foot);
    return alongSide(*build.point(median.sideFrom), *build.point(median.sideTo), *build.point(foot));
}

std::optional<Point> hipHandleAt(const Build& build, const Builder& builder, Handle handle)
{
    if (buildKindOf(build.convention) == BuildKind::TriangleAndMedians)
        return build.point(handle);
    if (!build.hand)
        return std::nullopt;
    const HandPose pose = poseOf(*build.hand, builder.hand);
    switch (handle) {
    case Handle::IndexTip: return pose.indexTip;
    case Handle::MiddleTip: return pose.middleTip;
    default: return build.hand->palm;
    }
}

Build placedOnHip(Build build, const Builder& builder, Handle handle, Point to)
{
    switch (handle) {
    case Handle::Palm: build.hand = slid(*build.hand, to); break;
    case Handle::IndexTip: build.hand = turnedTo(*build.hand, builder.hand, to); break;
    case Handle::MiddleTip: build.hand = openedTo(*build.hand, builder.hand, to); break;
    default:
        build.point(handle) = to;
        settleFeet(build);
        break;
    }
    return build;
}

Steps hipFigures(const Build& build, const Builder& builder)
{
    Steps steps;
    if (build.hand) {
        const HandPose pose = poseOf(*build.hand, builder.hand);
        steps.push_back({StepCode::LayPalm, FigureKind::Line, {pose.wrist, pose.fork}});
        steps.push_back({StepCode::IndexOnSpine, FigureKind::Line, {pose.fork, pose.indexTip}});
        steps.push_back({StepCode::MiddleAlongCrest, FigureKind::Line, {pose.fork, pose.middleTip}});
        steps.push_back(
            {StepCode::FingerTriangle, FigureKind::Closed, {pose.fork, pose.indexTip, pose.middleTip}});
    }
    if (!hasCorners(build))
        return steps;
    std::vector<Point> triangle(kCorners.size());
    std::ranges::transform(kCorners, triangle.begin(), [&](Handle corner) { return *build.point(corner); });
    steps.push_back({StepCode::HipTriangle, FigureKind::Closed, triangle});
    for (std::size_t i = 0; i < kFeet.size(); ++i)
        if (const auto& foot = build.point(kFeet[i]))
            steps.push_back({StepCode::Median, FigureKind::Line, {triangle[i], *foot}});
    return steps;
}

Build flawlessOnHip(const Target& target, const Builder& builder)
{
    if (buildKindOf(target.convention) == BuildKind::TriangleAndMedians)
        return flawlessMedians(target);
    Build build = emptyBuild(target);
    build.hand = freeHandOf(*target.hand, builder.hand);
    return build;
}

Point siteByHip(const Build& build, const Target& target, const Builder& builder)
{
    // The ideal point keeps clear of bone; a build is off by as much as its own middle is.
    return target.ideal + placeBy(build, builder) - placeBy(flawlessOnHip(target, builder), builder);
}

}  // namespace fb
