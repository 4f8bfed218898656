#include "core/build/laying.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace fb {

namespace laying_detail {

double heldShare(double t) { return t > 0.0 ? std::min(t, 1.0) : 0.0; }

Degrees shortWay(Degrees from, Degrees to, double t)
{
    return Degrees{from.value() + std::remainder((to - from).value(), 360.0) * t};
}

// Joints bend within a range, so what lies between two bends is one as well.
FreeHand handBetween(const FreeHand& from, const FreeHand& to, double t)
{
    if (t >= 1.0)
        return to;
    return {to.hand, lerp(from.palm, to.palm, t), shortWay(from.turn, to.turn, t),
            Degrees{std::lerp(from.opening.value(), to.opening.value(), t)}};
}

LaidFingers fingersBetween(const LaidFingers& from, const LaidFingers& to, double t)
{
    if (t >= 1.0)
        return to;
    return {to.count, to.hand, lerp(from.top, to.top, t), shortWay(from.turn, to.turn, t)};
}

double lengthOf(const std::vector<Point>& line)
{
    double sum = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i)
        sum += distance(line[i - 1], line[i]);
    return sum;
}

// The beginning of a line, so many centimetres of it: at least two points, however short.
std::vector<Point> beginningOf(const std::vector<Point>& line, double length)
{
    std::vector<Point> begun{line.front()};
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double piece = distance(line[i - 1], line[i]);
        if (piece >= length) {
            begun.push_back(piece > 0.0 ? lerp(line[i - 1], line[i], length / piece) : line[i]);
            break;
        }
        begun.push_back(line[i]);
        length -= piece;
    }
    return begun;
}

// Felt first, then laid and drawn; what the target measures comes after, and its region and point last.
bool comesBeforeBuilding(const Step& step) { return step.code == StepCode::FeelAcromion; }

bool isBuilt(const Step& step)
{
    switch (step.code) {
    case StepCode::LayFingers:
    case StepCode::AcromionBase:
    case StepCode::Apex:
    case StepCode::Triangle: return true;
    default: return false;
    }
}

// The figures of a flawless build, its fingers' edges in one step; the armpit's level before the apex on it.
Steps builtOnArm(const Target& target, const Builder& builder)
{
    Steps built;
    Step fingers{StepCode::LayFingers, FigureKind::Line, {}};
    for (const Step& step : figuresOf(flawlessBuild(target, builder), target, builder)) {
        if (step.code == StepCode::LayFingers) {
            fingers.points.insert(fingers.points.end(), step.points.begin(), step.points.end());
            continue;
        }
        if (step.code == StepCode::Apex)
            std::ranges::copy_if(target.construction, std::back_inserter(built),
                                 [](const Step& each) { return each.code == StepCode::ArmpitLevel; });
        built.push_back(step);
    }
    built.insert(built.begin(), std::move(fingers));
    return built;
}

Steps taughtByFingers(const Target& target, const Builder& builder)
{
    Steps taught;
    std::ranges::copy_if(target.construction, std::back_inserter(taught), comesBeforeBuilding);
    std::ranges::move(builtOnArm(target, builder), std::back_inserter(taught));
    std::ranges::copy_if(target.construction, std::back_inserter(taught), [](const Step& step) {
        return !comesBeforeBuilding(step) && !isBuilt(step) && step.code != StepCode::ArmpitLevel;
    });
    return taught;
}

// Once the line is drawn it is halved.
Steps taughtByHalving(const Target& target, const Builder& builder)
{
    Steps taught = target.construction;
    const auto drawn = std::ranges::find(taught, StepCode::MidLateralLine, &Step::code);
    for (const Step& step : figuresOf(flawlessBuild(target, builder), target, builder))
        if (step.code == StepCode::MeasureDown && drawn != taught.end())
            taught.insert(drawn + 1, step);
    return taught;
}

}  // namespace laying_detail

using namespace laying_detail;

std::optional<HandPose> handOnItsWay(const Target& target, const Builder& builder, double t)
{
    // A view that shows the site edge-on has no hand to lay.
    if (buildKindOf(target.convention) != BuildKind::HandOnHip || !target.hand)
        return std::nullopt;
    const FreeHand laid = *flawlessBuild(target, builder).hand;
    const FreeHand beside = *withHand(emptyBuild(target), target, builder, laid.hand).hand;
    HandPose pose = poseOf(handBetween(beside, laid, heldShare(t)), builder.hand);
    pose.pin = target.hand->pin;
    return pose;
}

std::optional<LaidFingers> fingersOnTheirWay(const Target& target, const Builder& builder, double t)
{
    if (buildKindOf(target.convention) != BuildKind::FingersAndTriangle)
        return std::nullopt;
    const LaidFingers laid = *flawlessBuild(target, builder).fingers;
    const LaidFingers beside =
        *withFingers(emptyBuild(target), target, builder, laid.count, laid.hand).fingers;
    return fingersBetween(beside, laid, heldShare(t));
}

Step grown(const Step& step, double t)
{
    const double share = heldShare(t);
    if (step.kind == FigureKind::Point || step.points.size() < 2 || share >= 1.0)
        return step;
    std::vector<Point> whole = step.points;
    if (step.kind == FigureKind::Closed)
        whole.push_back(whole.front());
    return {step.code, FigureKind::Line, beginningOf(whole, share * lengthOf(whole))};
}

Steps taughtSteps(const Target& target, const Builder& builder)
{
    switch (buildKindOf(target.convention)) {
    case BuildKind::FingersAndTriangle: return taughtByFingers(target, builder);
    case BuildKind::HalvedLine: return taughtByHalving(target, builder);
    default: return target.construction;
    }
}

}  // namespace fb
