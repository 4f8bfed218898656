// What a needle can hit. A strike makes a mark unsafe; a near structure is shown and its
// clearance told, but never changes a verdict.
#pragma once

#include <string_view>
#include <vector>

#include "core/geometry/polygon.h"

namespace fb {

enum class HazardCode {
    Acromion,            // bone; overrides even the region
    JointAndBursa,       // above the taught band
    BelowArmpit,         // radial nerve
    RadialNerveBehind,   // back of the arm, low
    BursaEdge,           // near
    AxillaryNerveFront,  // near: band by index
    AxillaryNerveBack
};

inline constexpr int kHazardCodeCount = static_cast<int>(HazardCode::AxillaryNerveBack) + 1;

enum class HazardKind { Bone, Strike, Near };

struct Hazard {
    HazardCode code{};
    HazardKind kind{};
    Polygon skin;   // skin coordinates (s, y), right-sided: what the grader asks
    Polygon plane;  // viewer's frame, within the picture: what is painted and printed
};

[[nodiscard]] std::string_view wordOf(HazardCode code);
[[nodiscard]] std::string_view wordOf(HazardKind kind);

}  // namespace fb
