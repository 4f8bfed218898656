#include "core/build/arm_build.h"

#include <algorithm>
#include <cmath>

namespace fb {

namespace arm_build_detail {

Point landmarkOf(const Target& target, const char* name) { return target.landmarks.find(name)->second; }

double shareOn(Point a, Point b, Point p)
{
    const Point way = b - a;
    const double square = dot(way, way);
    return square > 0.0 ? std::clamp(dot(p - a, way) / square, 0.0, 1.0) : 0.0;
}

// Where the band's ideal point lies below the acromion, cm.
double idealDepth(const Target& target) { return -target.idealSkin.y; }

bool endsInBand(const Target& target, const Builder& builder, int count)
{
    const Bounds band = target.regionSkin.bounds();
    const double end = -count * builder.hand.fingerWidth.value();
    return end <= band.high.y + kBorderTolerance && end >= band.low.y - kBorderTolerance;
}

Build flawlessLine(const Target& target)
{
    Build build = emptyBuild(target);
    const Point top = landmarkOf(target, "acromion");
    const Point bottom = landmarkOf(target, "deltoid_tuberosity");
    build.point(Handle::LineTop) = top;
    build.point(Handle::LineBottom) = bottom;
    build.point(Handle::LineMiddle) = lerp(top, bottom, shareOn(top, bottom, target.ideal));
    return build;
}

// Where the mid-lateral line of the learner's triangle meets acromion level, on the skin: the
// base moved as hers is, with the acromion as far along it as on this body.
Point topOfTriangle(const Build& build, const Target& target)
{
    const Point front = target.toSkin(landmarkOf(target, "acromion_front"));
    const Point back = target.toSkin(landmarkOf(target, "acromion_back"));
    const double share = shareOn(front, back, {0.0, 0.0});
    const Point hers = lerp(target.toSkin(*build.point(Handle::BaseFront)),
                            target.toSkin(*build.point(Handle::BaseBack)), share);
    return hers - lerp(front, back, share);
}

// Fingers that fit measure the ideal depth; others measure to where the last of them ends.
double depthBy(const LaidFingers& fingers, const Target& target, const Builder& builder)
{
    return countFits(target, builder, fingers.count) ? idealDepth(target)
                                                     : fingers.count * builder.hand.fingerWidth.value();
}

Point siteByTriangle(const Build& build, const Target& target, const Builder& builder)
{
    const Point top = topOfTriangle(build, target);
    const Point apex = target.toSkin(*build.point(Handle::Apex));
    const double down = depthBy(*build.fingers, target, builder) * std::cos(toRadians(build.fingers->turn));
    const double y = target.toSkin(build.fingers->top).y - down;
    const double height = top.y - apex.y;
    const double share = std::abs(height) > kBorderTolerance ? (top.y - y) / height : 0.0;
    return target.toViewer({top.x + (apex.x - top.x) * share, y});
}

}  // namespace arm_build_detail

using namespace arm_build_detail;

bool countFits(const Target& target, const Builder& builder, int count)
{
    if (endsInBand(target, builder, count))
        return true;
    const int other = count == 2 ? 3 : 2;
    const auto off = [&](int n) {
        return std::abs(n * builder.hand.fingerWidth.value() - idealDepth(target));
    };
    return !endsInBand(target, builder, other) && off(count) <= off(other);
}

double middleShare(const Build& build)
{
    return shareOn(*build.point(Handle::LineTop), *build.point(Handle::LineBottom),
                   *build.point(Handle::LineMiddle));
}

std::optional<Point> armHandleAt(const Build& build, const Builder& builder, Handle handle)
{
    const Cm width = builder.hand.fingerWidth;
    switch (handle) {
    case Handle::Fingers:
        return build.fingers ? std::optional(lerp(build.fingers->top, lowerEdge(*build.fingers, width), 0.5))
                             : std::nullopt;
    case Handle::FingersTurn:
        return build.fingers ? std::optional(turnGrip(*build.fingers, width)) : std::nullopt;
    default: return build.point(handle);
    }
}

Build placedOnArm(Build build, const Builder& builder, Handle handle, Point to)
{
    const Cm width = builder.hand.fingerWidth;
    const auto middleOnLine = [&] {
        auto& middle = build.point(Handle::LineMiddle);
        const auto& top = build.point(Handle::LineTop);
        const auto& bottom = build.point(Handle::LineBottom);
        if (middle && top && bottom)
            middle = lerp(*top, *bottom, shareOn(*top, *bottom, *middle));
    };
    switch (handle) {
    case Handle::Fingers: {
        // Taken by its middle; laid by its upper edge.
        const Point middle = lerp(build.fingers->top, lowerEdge(*build.fingers, width), 0.5);
        build.fingers = slid(*build.fingers, build.fingers->top + to - middle);
        break;
    }
    case Handle::FingersTurn: build.fingers = turnedTo(*build.fingers, width, to); break;
    default:
        build.point(handle) = to;
        middleOnLine();
        break;
    }
    return build;
}

Steps armFigures(const Build& build, const Builder& builder)
{
    Steps steps;
    if (build.fingers) {
        for (int edge = 0; edge <= build.fingers->count; ++edge) {
            const auto line = edgeLine(*build.fingers, builder.hand.fingerWidth, edge);
            steps.push_back({StepCode::LayFingers, FigureKind::Line, {line.begin(), line.end()}});
        }
    }
    const auto& front = build.point(Handle::BaseFront);
    const auto& back = build.point(Handle::BaseBack);
    const auto& apex = build.point(Handle::Apex);
    if (front && back)
        steps.push_back({StepCode::AcromionBase, FigureKind::Line, {*front, *back}});
    if (apex)
        steps.push_back({StepCode::Apex, FigureKind::Point, {*apex}});
    if (front && back && apex)
        steps.push_back({StepCode::Triangle, FigureKind::Closed, {*back, *front, *apex}});
    const auto& top = build.point(Handle::LineTop);
    const auto& bottom = build.point(Handle::LineBottom);
    if (top && bottom)
        steps.push_back({StepCode::MidLateralLine, FigureKind::Line, {*top, *bottom}});
    if (const auto& middle = build.point(Handle::LineMiddle); top && middle)
        steps.push_back({StepCode::MeasureDown, FigureKind::Line, {*top, *middle}});
    return steps;
}

Build flawlessOnArm(const Target& target, const Builder& builder)
{
    if (buildKindOf(target.convention) == BuildKind::HalvedLine)
        return flawlessLine(target);
    Build build = emptyBuild(target);
    build.fingers = LaidFingers{countFits(target, builder, 2) ? 2 : 3, Side::Left,
                                landmarkOf(target, "acromion"), Degrees{0.0}};
    build.point(Handle::BaseFront) = landmarkOf(target, "acromion_front");
    build.point(Handle::BaseBack) = landmarkOf(target, "acromion_back");
    build.point(Handle::Apex) = target.toViewer({0.0, -target.axillaDepth.value()});
    return build;
}

Point siteByArm(const Build& build, const Target& target, const Builder& builder)
{
    if (buildKindOf(build.convention) == BuildKind::HalvedLine) {
        const Point flawless = *flawlessLine(target).point(Handle::LineMiddle);
        return *build.point(Handle::LineMiddle) + target.ideal - flawless;
    }
    return siteByTriangle(build, target, builder);
}

}  // namespace fb
