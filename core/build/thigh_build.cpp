#include "core/build/thigh_build.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fb {

namespace thigh_build_detail {

constexpr double kFrontTurn = std::numbers::pi / 2.0;  // from the outer line, radians
constexpr double kOuterTurn = 0.0;
constexpr int kRowsAlong = 8;
constexpr int kStepsAcross = 8;
constexpr double kBesideShare = 1.0 / 3.0;  // of the way between the lines: as wide is a field beside them

const RoundLimb& limbOf(const Target& target) { return target.surface.thigh()->limb; }

Point shown(const Target& target, double turn, double y)
{
    return target.toViewer({limbOf(target).arcOf(turn, y), y});
}

double yOf(const Build& build, const Target& target, Handle handle)
{
    return target.toSkin(*build.point(handle)).y;
}

double turnOf(const Build& build, const Target& target, Handle line)
{
    return limbOf(target).turnOf(target.toSkin(*build.point(line)));
}

struct Span {
    double top = 0.0, bottom = 0.0;
};

Span spanOf(const Build& build, const Target& target)
{
    return {yOf(build, target, Handle::ThighTop), yOf(build, target, Handle::ThighBottom)};
}

// The two lines across in their order down the thigh.
Span rowsOf(const Build& build, const Target& target)
{
    const double a = yOf(build, target, Handle::UpperLine);
    const double b = yOf(build, target, Handle::LowerLine);
    return {std::max(a, b), std::min(a, b)};
}

struct Field {
    Span y;
    double front = 0.0, back = 0.0;  // turns
};

Field fieldOf(const Build& build, const Target& target, ThighCell cell)
{
    const Span span = spanOf(build, target);
    const Span rows = rowsOf(build, target);
    const double front = turnOf(build, target, Handle::FrontLine);
    const double outer = turnOf(build, target, Handle::OuterLine);
    const double beside = (front - outer) * kBesideShare;
    Field field{rows, front, outer};
    if (cell.row == ThighRow::Upper)
        field.y = {span.top, rows.top};
    if (cell.row == ThighRow::Lower)
        field.y = {rows.bottom, span.bottom};
    if (cell.column == ThighColumn::Inside)
        field = {field.y, front + beside, front};
    if (cell.column == ThighColumn::Behind)
        field = {field.y, outer, outer - beside};
    return field;
}

std::vector<Point> across(const Target& target, double y, double front, double back)
{
    std::vector<Point> points;
    for (int i = 0; i <= kStepsAcross; ++i)
        points.push_back(shown(target, front + (back - front) * i / kStepsAcross, y));
    return points;
}

// Where the region begins and ends on the flawless thigh, and how its ideal point divides it.
Span trueRows(const Target& target)
{
    const Bounds region = target.regionSkin.bounds();
    return {region.high.y, region.low.y};
}

Point pointNamed(const Target& target, const char* name) { return target.landmarks.find(name)->second; }

}  // namespace thigh_build_detail

using namespace thigh_build_detail;

double lineShare(const Build& build, const Target& target, Handle line)
{
    const Span span = spanOf(build, target);
    const double height = span.top - span.bottom;
    return std::abs(height) > kBorderTolerance ? (span.top - yOf(build, target, line)) / height : 0.0;
}

std::vector<Point> lineAlong(const Build& build, const Target& target, Handle line)
{
    const Span span = spanOf(build, target);
    const double turn = turnOf(build, target, line);
    std::vector<Point> points;
    for (int i = 0; i <= kRowsAlong; ++i)
        points.push_back(shown(target, turn, span.top + (span.bottom - span.top) * i / kRowsAlong));
    return points;
}

double lineOff(const Build& build, const Target& target, Handle line)
{
    const double middle = -target.thighLength.value() / 2.0;
    const double wanted = line == Handle::FrontLine ? kFrontTurn : kOuterTurn;
    const double hers = turnOf(build, target, line);
    const double off = distance(shown(target, hers, middle), shown(target, wanted, middle));
    return hers > wanted ? off : -off;
}

std::optional<Point> thighHandleAt(const Build& build, const Target& target, Handle handle)
{
    const auto& set = build.point(handle);
    if (!set || handle == Handle::ThighTop || handle == Handle::ThighBottom)
        return set;
    const Span span = spanOf(build, target);
    if (handle == Handle::UpperLine || handle == Handle::LowerLine) {
        // On the way from end to end, so that its grip is found in the middle of the limb.
        const Point top = *build.point(Handle::ThighTop);
        const Point bottom = *build.point(Handle::ThighBottom);
        return lerp(top, bottom, lineShare(build, target, handle));
    }
    return shown(target, turnOf(build, target, handle), (span.top + span.bottom) / 2.0);
}

Build placedOnThigh(Build build, Handle handle, Point to)
{
    build.point(handle) = to;
    return build;
}

Steps thighFigures(const Build& build, const Target& target)
{
    Steps steps;
    if (!build.point(Handle::ThighTop) || !build.point(Handle::ThighBottom))
        return steps;
    const auto add = [&](StepCode code, std::vector<Point> points) {
        steps.push_back({code, FigureKind::Line, std::move(points)});
    };
    // From end to end until the outer line is set, which then stands for it.
    if (!build.point(Handle::OuterLine))
        add(StepCode::ThighLine, {*build.point(Handle::ThighTop), *build.point(Handle::ThighBottom)});
    for (const auto& [handle, code] : {std::pair{Handle::UpperLine, StepCode::UpperThird},
                                       std::pair{Handle::LowerLine, StepCode::LowerThird}})
        if (build.point(handle))
            add(code, across(target, yOf(build, target, handle), kFrontTurn, kOuterTurn));
    for (const auto& [handle, code] : {std::pair{Handle::FrontLine, StepCode::FrontLine},
                                       std::pair{Handle::OuterLine, StepCode::ThighLine}})
        if (build.point(handle))
            add(code, lineAlong(build, target, handle));
    return steps;
}

std::vector<Point> cellOutline(const Build& build, const Target& target, ThighCell cell)
{
    const Field field = fieldOf(build, target, cell);
    std::vector<Point> outline = across(target, field.y.top, field.front, field.back);
    const std::vector<Point> lower = across(target, field.y.bottom, field.back, field.front);
    outline.insert(outline.end(), lower.begin(), lower.end());
    return outline;
}

std::optional<ThighCell> cellAt(const Build& build, const Target& target, Point viewer)
{
    for (const Handle handle : handlesOf(BuildKind::ThighGrid))
        if (buildKindOf(build.convention) != BuildKind::ThighGrid || !build.point(handle))
            return std::nullopt;
    const Point skin = target.toSkin(viewer);
    const Span rows = rowsOf(build, target);
    const double turn = limbOf(target).turnOf(skin);
    const double a = turnOf(build, target, Handle::FrontLine);
    const double b = turnOf(build, target, Handle::OuterLine);
    ThighCell cell{ThighRow::Middle, ThighColumn::Between};
    if (skin.y > rows.top)
        cell.row = ThighRow::Upper;
    if (skin.y < rows.bottom)
        cell.row = ThighRow::Lower;
    if (turn > std::max(a, b))
        cell.column = ThighColumn::Inside;
    if (turn < std::min(a, b))
        cell.column = ThighColumn::Behind;
    return cell;
}

Build flawlessOnThigh(const Target& target)
{
    Build build = emptyBuild(target);
    build.point(Handle::ThighTop) = pointNamed(target, "greater_trochanter");
    build.point(Handle::ThighBottom) = pointNamed(target, "lateral_femoral_epicondyle");
    const Span rows = trueRows(target);
    const double middle = -target.thighLength.value() / 2.0;
    build.point(Handle::UpperLine) = shown(target, limbOf(target).turnOf(target.idealSkin), rows.top);
    build.point(Handle::LowerLine) = shown(target, limbOf(target).turnOf(target.idealSkin), rows.bottom);
    build.point(Handle::FrontLine) = shown(target, kFrontTurn, middle);
    build.point(Handle::OuterLine) = shown(target, kOuterTurn, middle);
    build.cell = ThighCell{ThighRow::Middle, ThighColumn::Between};
    return build;
}

Point siteByThigh(const Build& build, const Target& target)
{
    const ThighCell middle{ThighRow::Middle, ThighColumn::Between};
    const bool taught = *build.cell == middle;
    const Field field = fieldOf(build, target, *build.cell);
    const Span rows = trueRows(target);
    const double down = taught ? (rows.top - target.idealSkin.y) / (rows.top - rows.bottom) : 0.5;
    const double round =
        taught ? (kFrontTurn - limbOf(target).turnOf(target.idealSkin)) / (kFrontTurn - kOuterTurn) : 0.5;
    const double y = field.y.top + (field.y.bottom - field.y.top) * down;
    return shown(target, field.front + (field.back - field.front) * round, y);
}

}  // namespace fb
