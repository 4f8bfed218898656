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
