// Stable words of the site room, for JSON and tests.
#include "core/site/construction.h"
#include "core/site/hazard.h"

namespace fb {

std::string_view wordOf(StepCode code)
{
    switch (code) {
    case StepCode::FeelAcromion: return "feel_acromion";
    case StepCode::AcromionBase: return "acromion_base";
    case StepCode::ArmpitLevel: return "armpit_level";
    case StepCode::Apex: return "apex";
    case StepCode::Triangle: return "triangle";
    case StepCode::MidLateralLine: return "mid_lateral_line";
    case StepCode::MeasureDown: return "measure_down";
    case StepCode::LayFingers: return "lay_fingers";
    case StepCode::FeelTuberosity: return "feel_tuberosity";
    case StepCode::FeelTrochanter: return "feel_trochanter";
    case StepCode::FeelCondyle: return "feel_condyle";
    case StepCode::ThighLine: return "thigh_line";
    case StepCode::FrontLine: return "front_line";
    case StepCode::UpperThird: return "upper_third";
    case StepCode::LowerThird: return "lower_third";
    case StepCode::HandBelowHip: return "hand_below_hip";
    case StepCode::HandAboveKnee: return "hand_above_knee";
    case StepCode::FeelSpine: return "feel_spine";
    case StepCode::FeelCrest: return "feel_crest";
    case StepCode::FeelTubercle: return "feel_tubercle";
    case StepCode::LayPalm: return "lay_palm";
    case StepCode::IndexOnSpine: return "index_on_spine";
    case StepCode::MiddleAlongCrest: return "middle_along_crest";
    case StepCode::FingerTriangle: return "finger_triangle";
    case StepCode::HipTriangle: return "hip_triangle";
    case StepCode::Median: return "median";
    case StepCode::FeelBackSpine: return "feel_back_spine";
    case StepCode::BackLine: return "back_line";
    case StepCode::Region: return "region";
    case StepCode::IdealPoint: return "ideal_point";
    }
    return {};
}

std::string_view wordOf(FigureKind kind)
{
    switch (kind) {
    case FigureKind::Point: return "point";
    case FigureKind::Line: return "line";
    case FigureKind::Closed: return "closed";
    }
    return {};
}

std::string_view wordOf(HazardCode code)
{
    switch (code) {
    case HazardCode::Acromion: return "acromion";
    case HazardCode::JointAndBursa: return "joint_and_bursa";
    case HazardCode::BelowArmpit: return "below_armpit_level";
    case HazardCode::RadialNerveBehind: return "radial_nerve_behind";
    case HazardCode::BursaEdge: return "bursa_edge";
    case HazardCode::AxillaryNerveFront: return "axillary_nerve_front";
    case HazardCode::AxillaryNerveBack: return "axillary_nerve_back";
    case HazardCode::Trochanter: return "greater_trochanter";
    case HazardCode::Patella: return "patella";
    case HazardCode::HipEnd: return "hip_end";
    case HazardCode::KneeEnd: return "knee_end";
    case HazardCode::FemoralVessels: return "femoral_vessels";
    case HazardCode::SciaticBehindThigh: return "sciatic_nerve_behind_thigh";
    case HazardCode::RectusFemoris: return "rectus_femoris";
    case HazardCode::CrestBone: return "iliac_crest";
    case HazardCode::RoundTrochanter: return "round_trochanter";
    case HazardCode::AboveCrest: return "above_crest";
    case HazardCode::FrontOfHipLine: return "front_of_hip_line";
    case HazardCode::SciaticNerve: return "sciatic_nerve";
    case HazardCode::Dorsogluteal: return "dorsogluteal";
    case HazardCode::SuperiorGluteal: return "superior_gluteal_branches";
    }
    return {};
}

std::string_view wordOf(HazardKind kind)
{
    switch (kind) {
    case HazardKind::Bone: return "bone";
    case HazardKind::Strike: return "strike";
    case HazardKind::Near: return "near";
    }
    return {};
}

}  // namespace fb
