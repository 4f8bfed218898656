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
    AxillaryNerveBack,
    Trochanter,          // bone of the thigh and hip
    Patella,             // bone
    HipEnd,              // uppermost tenth of the thigh
    KneeEnd,             // lowest tenth of the thigh
    FemoralVessels,      // inner side of the front line
    SciaticBehindThigh,  // far behind the outer line
    RectusFemoris,       // near: the band beside the front line
    CrestBone,           // bone: crest and spine under the skin
    RoundTrochanter,     // too close to the trochanter: tendon and bone
    AboveCrest,          // abdominal wall
    FrontOfHipLine,      // near: in front of the line from spine to trochanter
    SciaticNerve,        // below the line from posterior spine to trochanter
    Dorsogluteal,        // above that line, behind the taught region
    SuperiorGluteal      // near: branches of nerve and artery above the trochanter
};

inline constexpr int kHazardCodeCount = static_cast<int>(HazardCode::SuperiorGluteal) + 1;

enum class HazardKind { Bone, Strike, Near };

struct Hazard {
    HazardCode code{};
    HazardKind kind{};
    Polygon skin;   // skin coordinates of the target's surface, right-sided: what the grader asks
    Polygon plane;  // viewer's frame, within the picture: what is painted and printed
};

[[nodiscard]] std::string_view wordOf(HazardCode code);
[[nodiscard]] std::string_view wordOf(HazardKind kind);

}  // namespace fb
