#include "core/build/build.h"

#include <algorithm>

#include "core/build/arm_build.h"
#include "core/build/hip_build.h"
#include "core/build/thigh_build.h"
#include "core/site/ventrogluteal.h"

namespace fb {

namespace build_detail {

constexpr double kBesideHip = 15.0;      // cm down the thigh from the trochanter: nothing is found there
constexpr double kBelowShoulder = 14.0;  // cm below the acromion

bool isOfHand(Handle handle)
{
    return handle == Handle::Palm || handle == Handle::IndexTip || handle == Handle::MiddleTip;
}

bool isOfFingers(Handle handle) { return handle == Handle::Fingers || handle == Handle::FingersTurn; }

bool isOf(const Build& build, Handle handle)
{
    return std::ranges::find(handlesOf(buildKindOf(build.convention)), handle) !=
           handlesOf(buildKindOf(build.convention)).end();
}

// What has to be set before a handle can be.
std::vector<Handle> before(Handle handle)
{
    using enum Handle;
    switch (handle) {
    case LineMiddle: return {LineTop, LineBottom};
    case UpperLine:
    case LowerLine:
    case FrontLine:
    case OuterLine: return {ThighTop, ThighBottom};
    case FootTrochanter:
    case FootTubercle:
    case FootSpine: return {CornerTrochanter, CornerTubercle, CornerSpine};
    default: return {};
    }
}

Site siteOfBuild(const Build& build) { return siteOf(build.convention); }

}  // namespace build_detail

using namespace build_detail;

BuildKind buildKindOf(Convention convention)
{
    switch (convention) {
    case Convention::DeltoidHalfway: return BuildKind::HalvedLine;
    case Convention::VastusThirds:
    case Convention::VastusHandbreadths: return BuildKind::ThighGrid;
    case Convention::VentroglutealHand: return BuildKind::HandOnHip;
    case Convention::VentroglutealMedians: return BuildKind::TriangleAndMedians;
    default: return BuildKind::FingersAndTriangle;
    }
}

std::span<const Handle> handlesOf(BuildKind kind)
{
    using enum Handle;
    static constexpr std::array kFingers{Fingers, FingersTurn, BaseFront, BaseBack, Apex};
    static constexpr std::array kLine{LineTop, LineBottom, LineMiddle};
    static constexpr std::array kThigh{ThighTop, ThighBottom, UpperLine, LowerLine, FrontLine, OuterLine};
    static constexpr std::array kHand{Palm, IndexTip, MiddleTip};
    static constexpr std::array kMedians{CornerTrochanter, CornerTubercle, CornerSpine,
                                         FootTrochanter,   FootTubercle,   FootSpine};
    switch (kind) {
    case BuildKind::FingersAndTriangle: return kFingers;
    case BuildKind::HalvedLine: return kLine;
    case BuildKind::ThighGrid: return kThigh;
    case BuildKind::HandOnHip: return kHand;
    case BuildKind::TriangleAndMedians: return kMedians;
    }
    return {};
}

std::optional<BuildChoice> choiceOf(BuildKind kind)
{
    switch (kind) {
    case BuildKind::FingersAndTriangle: return BuildChoice::HowManyFingers;
    case BuildKind::ThighGrid: return BuildChoice::WhichCell;
    case BuildKind::HandOnHip: return BuildChoice::WhichHand;
    default: return std::nullopt;
    }
}

Builder Builder::from(const Policy& policy) { return {handSize(policy)}; }

Build emptyBuild(const Target& target)
{
    Build build;
    build.convention = target.convention;
    build.side = target.side;
    return build;
}

std::optional<Point> handleAt(const Build& build, const Target& target, const Builder& builder, Handle handle)
{
    switch (siteOfBuild(build)) {
    case Site::Deltoid: return armHandleAt(build, builder, handle);
    case Site::VastusLateralis: return thighHandleAt(build, target, handle);
    case Site::Ventrogluteal: return hipHandleAt(build, builder, handle);
    }
    return std::nullopt;
}

bool isReady(const Build& build, Handle handle)
{
    if (!isOf(build, handle))
        return false;
    if (isOfHand(handle))
        return build.hand.has_value();
    if (isOfFingers(handle))
        return build.fingers.has_value();
    return std::ranges::all_of(before(handle), [&](Handle first) { return build.point(first).has_value(); });
}

Build placed(Build build, const Target&, const Builder& builder, Handle handle, Point to)
{
    if (!isReady(build, handle) || !isFinite(to))
        return build;
    switch (siteOfBuild(build)) {
    case Site::Deltoid: return placedOnArm(build, builder, handle, to);
    case Site::VastusLateralis: return placedOnThigh(build, handle, to);
    case Site::Ventrogluteal: return placedOnHip(build, builder, handle, to);
    }
    return build;
}

Build withHand(Build build, const Target& target, const Builder&, Side hand)
{
    if (buildKindOf(build.convention) != BuildKind::HandOnHip)
        return build;
    if (build.hand && build.hand->hand != hand)
        build.hand = swapped(*build.hand);
    if (!build.hand) {
        // Flat on the thigh, pointing to the head, fingers closed.
        const double toHead = target.side == Side::Right ? 180.0 : 0.0;
        build.hand =
            FreeHand{hand, target.toViewer({0.0, -kBesideHip}), Degrees{toHead}, Degrees{kClosedOpening}};
    }
    return build;
}

Build withFingers(Build build, const Target& target, const Builder&, int count, Side laysWith)
{
    if (buildKindOf(build.convention) != BuildKind::FingersAndTriangle || count < 2 || count > 3)
        return build;
    if (build.fingers) {
        build.fingers->count = count;
        build.fingers->hand = laysWith;
    } else {
        build.fingers = LaidFingers{count, laysWith, target.toViewer({0.0, -kBelowShoulder}), Degrees{0.0}};
    }
    return build;
}

bool isEmpty(const Build& build)
{
    return !build.hand && !build.fingers && !build.cell &&
           std::ranges::none_of(build.points, [](const auto& point) { return point.has_value(); });
}

std::vector<Handle> missingHandles(const Build& build)
{
    std::vector<Handle> missing;
    for (const Handle handle : handlesOf(buildKindOf(build.convention))) {
        const bool set = isOfHand(handle)      ? build.hand.has_value()
                         : isOfFingers(handle) ? build.fingers.has_value()
                                               : build.point(handle).has_value();
        if (!set)
            missing.push_back(handle);
    }
    return missing;
}

bool isWhole(const Build& build)
{
    const bool chosen = buildKindOf(build.convention) != BuildKind::ThighGrid || build.cell.has_value();
    return chosen && missingHandles(build).empty();
}

Steps figuresOf(const Build& build, const Target& target, const Builder& builder)
{
    switch (siteOfBuild(build)) {
    case Site::Deltoid: return armFigures(build, builder);
    case Site::VastusLateralis: return thighFigures(build, target);
    case Site::Ventrogluteal: return hipFigures(build, builder);
    }
    return {};
}

Build flawlessBuild(const Target& target, const Builder& builder)
{
    switch (target.site) {
    case Site::Deltoid: return flawlessOnArm(target, builder);
    case Site::VastusLateralis: return flawlessOnThigh(target);
    case Site::Ventrogluteal: return flawlessOnHip(target, builder);
    }
    return emptyBuild(target);
}

std::optional<Point> siteBy(const Build& build, const Target& target, const Builder& builder)
{
    if (!isWhole(build))
        return std::nullopt;
    switch (siteOfBuild(build)) {
    case Site::Deltoid: return siteByArm(build, target, builder);
    case Site::VastusLateralis: return siteByThigh(build, target);
    case Site::Ventrogluteal: return siteByHip(build, target, builder);
    }
    return std::nullopt;
}

}  // namespace fb
