// The names each view cannot do without: see plate.h.
#include <array>
#include <span>

#include "core/plate/plate.h"

namespace fb {

namespace required_detail {

struct LimbNames {
    std::string_view limb;
    std::array<std::string_view, 6> levels;
};

struct ViewNames {
    std::span<const LimbNames> limbs;
    std::span<const std::string_view> names;
};

constexpr std::array kShoulderLimbs{
    LimbNames{"trunk", {"neck", "shoulder", "chest", "waist"}},
    LimbNames{"forearm", {"elbow", "forearm", "wrist"}},
    LimbNames{"arm", {"shoulder-top", "acromion", "axilla", "mid-arm", "radiale", "elbow-tip"}}};
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

constexpr LimbNames kThigh{"thigh", {"trochanter", "thigh-upper", "mid-thigh", "lower-thigh", "epicondyle"}};
constexpr LimbNames kLeg{"leg", {"knee", "shank"}};

constexpr std::array kHipSideLimbs{LimbNames{"pelvis", {"waist", "crest", "asis", "hip", "fold"}}, kThigh,
                                   kLeg};
constexpr std::array<std::string_view, 19> kHipSideNames{"joint.pelvis",
                                                         "joint.hip",
                                                         "joint.knee",
                                                         "landmark.greater-trochanter",
                                                         "landmark.asis",
                                                         "landmark.iliac-tubercle",
                                                         "landmark.iliac-crest",
                                                         "landmark.psis",
                                                         "landmark.ischial-tuberosity",
                                                         "landmark.lateral-femoral-epicondyle",
                                                         "line.iliac-crest",
                                                         "line.sacrum-edge",
                                                         "line.sciatic-nerve",
                                                         "line.superior-gluteal-nerve",
                                                         "area.bone.ilium",
                                                         "area.bone.greater-trochanter",
                                                         "area.muscle.gluteus-medius",
                                                         "area.muscle.gluteus-maximus",
                                                         "area.muscle.tensor-fasciae-latae"};

constexpr std::array kHipBehindLimbs{
    LimbNames{"pelvis", {"waist", "crest", "psis", "hip", "fold"}},
    LimbNames{"thigh", {"trochanter", "thigh-upper", "mid-thigh"}},
    LimbNames{"thigh-left", {"trochanter-left", "thigh-upper-left", "mid-thigh-left"}}};
constexpr std::array<std::string_view, 17> kHipBehindNames{"joint.pelvis",
                                                           "joint.hip",
                                                           "joint.hip-left",
                                                           "landmark.greater-trochanter",
                                                           "landmark.iliac-crest",
                                                           "landmark.psis",
                                                           "landmark.ischial-tuberosity",
                                                           "landmark.coccyx",
                                                           "line.iliac-crest",
                                                           "line.sacrum-edge",
                                                           "line.sciatic-nerve",
                                                           "line.superior-gluteal-nerve",
                                                           "area.bone.ilium",
                                                           "area.bone.sacrum",
                                                           "area.bone.greater-trochanter",
                                                           "area.muscle.gluteus-medius",
                                                           "area.muscle.gluteus-maximus"};

constexpr std::array kThighLimbs{LimbNames{"pelvis", {"crest", "asis", "hip", "fold"}}, kThigh, kLeg};
constexpr std::array<std::string_view, 14> kThighSideNames{"joint.pelvis",
                                                           "joint.hip",
                                                           "joint.knee",
                                                           "landmark.greater-trochanter",
                                                           "landmark.asis",
                                                           "landmark.lateral-femoral-epicondyle",
                                                           "landmark.patella",
                                                           "line.sciatic-nerve",
                                                           "area.bone.greater-trochanter",
                                                           "area.bone.femur",
                                                           "area.bone.patella",
                                                           "area.muscle.vastus-lateralis",
                                                           "area.muscle.rectus-femoris",
                                                           "area.muscle.hamstrings"};
constexpr std::array<std::string_view, 14> kThighFrontNames{"joint.pelvis",
                                                            "joint.hip",
                                                            "joint.knee",
                                                            "landmark.greater-trochanter",
                                                            "landmark.asis",
                                                            "landmark.lateral-femoral-epicondyle",
                                                            "landmark.patella",
                                                            "line.femoral-artery",
                                                            "line.lateral-circumflex-femoral-artery",
                                                            "area.bone.greater-trochanter",
                                                            "area.bone.femur",
                                                            "area.bone.patella",
                                                            "area.muscle.vastus-lateralis",
                                                            "area.muscle.rectus-femoris"};

constexpr std::array kHandLimbs{LimbNames{"palm", {"wrist", "palm", "knuckles"}},
                                LimbNames{"thumb", {"thumb-base", "thumb-mid", "thumb-tip"}},
                                LimbNames{"index", {"index-base", "index-mid", "index-tip"}},
                                LimbNames{"middle", {"middle-base", "middle-mid", "middle-tip"}},
                                LimbNames{"ring", {"ring-base", "ring-mid", "ring-tip"}},
                                LimbNames{"little", {"little-base", "little-mid", "little-tip"}}};
constexpr std::array<std::string_view, 9> kHandNames{
    "joint.palm",   "joint.thumb",   "joint.index",        "joint.middle",       "joint.ring",
    "joint.little", "landmark.fork", "landmark.index-tip", "landmark.middle-tip"};

constexpr std::array kLaidLimbs{LimbNames{"hand", {"wrist", "knuckles", "tips"}}};
constexpr std::array<std::string_view, 3> kLaidNames{"joint.hand", "landmark.upper-edge", "landmark.lower-edge"};

ViewNames namesOf(View view)
{
    switch (view) {
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter: return {kShoulderLimbs, kShoulderNames};
    case View::HipSide: return {kHipSideLimbs, kHipSideNames};
    case View::HipBehind: return {kHipBehindLimbs, kHipBehindNames};
    case View::ThighFront: return {kThighLimbs, kThighFrontNames};
    case View::ThighSide: return {kThighLimbs, kThighSideNames};
    case View::OpenHand: return {kHandLimbs, kHandNames};
    case View::TwoFingers:
    case View::ThreeFingers: return {kLaidLimbs, kLaidNames};
    }
    return {};
}

}  // namespace required_detail

std::array<std::string_view, 4> edgeNames(View view)
{
    switch (view) {
    case View::ThighFront: return {"skin-outer", "bone-outer", "bone-inner", "skin-inner"};
    case View::HipBehind:
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: return {"skin-left", "bone-left", "bone-right", "skin-right"};
    default: return {"skin-back", "bone-back", "bone-front", "skin-front"};
    }
}

std::vector<std::string> requiredNames(View view)
{
    const required_detail::ViewNames wanted = required_detail::namesOf(view);
    std::vector<std::string> names(wanted.names.begin(), wanted.names.end());
    for (const required_detail::LimbNames& limb : wanted.limbs) {
        for (const std::string_view level : limb.levels) {
            if (level.empty())
                continue;
            names.push_back("level." + std::string(level));
            for (const std::string_view edge : edgeNames(view))
                names.push_back("edge." + std::string(level) + "." + std::string(edge));
        }
    }
    return names;
}

std::string_view firstLandmark(View view)
{
    switch (view) {
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter: return "landmark.acromion.lateral";
    case View::OpenHand: return "joint.palm";
    case View::TwoFingers:
    case View::ThreeFingers: return "joint.hand";
    default: return "landmark.greater-trochanter";
    }
}

}  // namespace fb
