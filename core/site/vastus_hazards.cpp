// What a needle can hit about the thigh: see vastus.h.
#include <algorithm>

#include "core/site/vastus.h"

namespace fb {

namespace vastus_hazards_detail {

constexpr double kFar = 200.0;  // cm: past anything that can be marked
constexpr int kRows = 8;

struct Stretch {
    double top = 0.0, bottom = 0.0;  // shares of the thigh's length; what the picture shows
};

// Between two angles (degrees from the front line) down a stretch of the thigh.
std::optional<Polygon> shownBand(const Thigh& thigh, double from, double to, Stretch along)
{
    std::vector<Point> corners;
    for (int row = 0; row <= kRows; ++row)
        corners.push_back(thigh.shownAt(from, along.top + (along.bottom - along.top) * row / kRows));
    for (int row = kRows; row >= 0; --row)
        corners.push_back(thigh.shownAt(to, along.top + (along.bottom - along.top) * row / kRows));
    return Polygon::make(std::move(corners));
}

// The skin from one angle on, the whole thigh long; `outward` is the far end across.
Polygon skinBeyond(const Thigh& thigh, double degrees, double outward)
{
    std::vector<Point> corners{{outward, kFar}, {thigh.skinAt(degrees, 0.0).x, kFar}};
    for (int row = 0; row <= kRows; ++row)
        corners.push_back(thigh.skinAt(degrees, static_cast<double>(row) / kRows));
    corners.push_back({thigh.skinAt(degrees, 1.0).x, -kFar});
    corners.push_back({outward, -kFar});
    return *Polygon::make(std::move(corners));
}

Polygon skinBetween(const Thigh& thigh, double from, double to)
{
    std::vector<Point> corners;
    for (int row = 0; row <= kRows; ++row)
        corners.push_back(thigh.skinAt(from, static_cast<double>(row) / kRows));
    for (int row = kRows; row >= 0; --row)
        corners.push_back(thigh.skinAt(to, static_cast<double>(row) / kRows));
    return *Polygon::make(std::move(corners));
}

Polygon skinOf(const Thigh& thigh, const Polygon& frame)
{
    std::vector<Point> corners = frame.corners();
    for (Point& p : corners)
        p = thigh.limb.toSkin(thigh.sight, p);
    return Polygon::make(std::move(corners)).value_or(frame);
}

}  // namespace vastus_hazards_detail

std::vector<Hazard> vastusHazards(const Policy& policy, const Thigh& thigh)
{
    using namespace vastus_hazards_detail;
    using enum PolicyKey;
    const double ends = policy.value(ThighEnds);
    const double sciatic = policy.value(SciaticRound);
    // Angles at the visible edges: the back of the thigh, and its inner side.
    constexpr double kBehind = 180.0;
    constexpr double kInner = -90.0;

    std::vector<Hazard> hazards;
    for (const BonePlace& bone : thigh.bones)
        hazards.push_back({bone.code, HazardKind::Bone, skinOf(thigh, bone.frame), bone.frame});
    const auto strike = [&](HazardCode code, HazardKind kind, Polygon skin, std::optional<Polygon> shown) {
        if (shown)
            hazards.push_back({code, kind, std::move(skin), *std::move(shown)});
    };
    strike(HazardCode::HipEnd, HazardKind::Strike, Polygon::rectangle(-kFar, kFar, thigh.yOf(ends), kFar),
           shownBand(thigh, kInner, kBehind, {0.0, ends}));
    strike(HazardCode::KneeEnd, HazardKind::Strike,
           Polygon::rectangle(-kFar, kFar, -kFar, thigh.yOf(1.0 - ends)),
           shownBand(thigh, kInner, kBehind, {1.0 - ends, 1.0}));
    const Stretch between{ends, 1.0 - ends};
    strike(HazardCode::FemoralVessels, HazardKind::Strike, skinBeyond(thigh, 0.0, kFar),
           shownBand(thigh, kInner, 0.0, between));
    strike(HazardCode::SciaticBehindThigh, HazardKind::Strike, skinBeyond(thigh, sciatic, -kFar),
           shownBand(thigh, sciatic, kBehind, between));
    strike(HazardCode::RectusFemoris, HazardKind::Near, skinBetween(thigh, 0.0, policy.value(VastusFront)),
           shownBand(thigh, 0.0, policy.value(VastusFront), between));
    return hazards;
}

}  // namespace fb
