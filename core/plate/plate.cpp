#include "core/plate/plate.h"

#include <array>

namespace fb {

namespace plate_detail {

struct LimbNames {
    std::string_view limb;
    std::array<std::string_view, 6> levels;
};

constexpr std::array<LimbNames, 3> kShoulderLevels{{
    {"trunk", {"neck", "shoulder", "chest", "waist"}},
    {"forearm", {"elbow", "forearm", "wrist"}},
    {"arm", {"shoulder-top", "acromion", "axilla", "mid-arm", "radiale", "elbow-tip"}},
}};

constexpr std::array<std::string_view, 4> kEdges{"skin-back", "bone-back", "bone-front", "skin-front"};

constexpr std::array<std::string_view, 21> kShoulderNames{"joint.trunk",
                                                          "joint.shoulder",
                                                          "joint.elbow",
                                                          "landmark.acromion.lateral",
                                                          "landmark.acromion.front",
                                                          "landmark.acromion.back",
                                                          "landmark.deltoid-tuberosity",
                                                          "landmark.lateral-epicondyle",
                                                          "landmark.axilla.front",
                                                          "landmark.axilla.back",
                                                          "landmark.clavicle.medial",
                                                          "landmark.scapula.spine",
                                                          "line.axillary-nerve",
                                                          "line.radial-nerve",
                                                          "line.clavicle",
                                                          "area.bone.acromion",
                                                          "area.bone.clavicle",
                                                          "area.bone.humerus",
                                                          "area.bone.scapula",
                                                          "area.bursa",
                                                          "area.muscle.deltoid"};

}  // namespace plate_detail

int Plate::limbNamed(std::string_view name) const
{
    for (std::size_t i = 0; i < limbs.size(); ++i) {
        if (limbs[i].name == name)
            return static_cast<int>(i);
    }
    return -1;
}

std::vector<std::string> requiredNames(View)
{
    using namespace plate_detail;
    std::vector<std::string> names(kShoulderNames.begin(), kShoulderNames.end());
    for (const LimbNames& limb : kShoulderLevels) {
        for (const std::string_view level : limb.levels) {
            if (level.empty())
                continue;
            names.push_back("level." + std::string(level));
            for (const std::string_view edge : kEdges)
                names.push_back("edge." + std::string(level) + "." + std::string(edge));
        }
    }
    return names;
}

}  // namespace fb
