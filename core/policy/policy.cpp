#include "core/policy/policy.h"

namespace fb {

namespace policy_detail {

// Ranges are limits of sense for a file, not clinical numbers.
constexpr std::array<PolicyField, kPolicyKeyCount> kFields{{
    {PolicyKey::DeltoidReferenceArm, "deltoid", "reference_arm_cm", "cm", 20.0, 45.0},
    {PolicyKey::DeltoidStripTop, "deltoid", "strip_top", "of arm length", 0.05, 0.20},
    {PolicyKey::DeltoidStripBottom, "deltoid", "strip_bottom", "of arm length", 0.10, 0.30},
    {PolicyKey::DeltoidStripIdeal, "deltoid", "strip_ideal", "of arm length", 0.06, 0.29},
    {PolicyKey::DeltoidStripHalfWidth, "deltoid", "strip_half_width_cm", "cm at the reference arm", 0.3, 3.0},
    {PolicyKey::DeltoidCentroidDistance, "deltoid", "centroid_distance_cm", "cm at the reference arm", 3.2,
     8.0},
    {PolicyKey::DeltoidTwoInches, "deltoid", "two_inches_cm", "cm at the reference arm", 4.0, 6.0},
    {PolicyKey::DeltoidFingerWidth, "deltoid", "finger_width_cm", "cm", 1.2, 2.5},
    {PolicyKey::DeltoidFingersLow, "deltoid", "fingers_low", "fingers", 1.0, 3.0},
    {PolicyKey::DeltoidFingersHigh, "deltoid", "fingers_high", "fingers", 2.0, 4.0},
    {PolicyKey::DeltoidMuscleLength, "deltoid", "muscle_length_cm", "cm at the reference arm", 10.0, 22.0},
    {PolicyKey::DeltoidHalfwayShare, "deltoid", "halfway_share", "of the muscle length", 0.3, 0.6},
    {PolicyKey::PointHalfAlong, "deltoid", "point_half_along_cm", "cm at the reference arm", 0.3, 2.0},
    {PolicyKey::PointHalfAcross, "deltoid", "point_half_across_cm", "cm at the reference arm", 0.3, 3.0},
    {PolicyKey::ArmpitMargin, "deltoid", "armpit_margin_cm", "cm at the reference arm", 0.1, 2.0},
    {PolicyKey::ReferenceStature, "hip_and_thigh", "reference_stature_cm", "cm", 150.0, 190.0},
    {PolicyKey::VastusTop, "vastus_lateralis", "thirds_top", "of thigh length", 0.1, 0.5},
    {PolicyKey::VastusBottom, "vastus_lateralis", "thirds_bottom", "of thigh length", 0.5, 0.9},
    {PolicyKey::VastusIdeal, "vastus_lateralis", "ideal_along", "of thigh length", 0.2, 0.8},
    {PolicyKey::VastusFront, "vastus_lateralis", "front_degrees", "degrees round from the front line", 0.0,
     60.0},
    {PolicyKey::VastusBack, "vastus_lateralis", "back_degrees", "degrees round from the front line", 60.0,
     110.0},
    {PolicyKey::VastusIdealRound, "vastus_lateralis", "ideal_degrees", "degrees round from the front line",
     5.0, 100.0},
    {PolicyKey::VgOpening, "ventrogluteal", "opening_degrees", "degrees between index and middle finger",
     25.0, 45.0},
    {PolicyKey::VgBoneMargin, "ventrogluteal", "bone_margin_cm", "cm at the reference stature", 0.0, 2.0},
    {PolicyKey::VgTrochanterMargin, "ventrogluteal", "trochanter_margin_cm", "cm at the reference stature",
     2.0, 6.0},
    {PolicyKey::VgMediansRadius, "ventrogluteal", "medians_radius_cm", "cm at the reference stature", 0.5,
     4.0},
    {PolicyKey::HandLength, "hand", "length_cm", "cm", 13.0, 24.0},
    {PolicyKey::HandPalm, "hand", "palm_share", "of hand length", 0.5, 0.7},
    {PolicyKey::HandFork, "hand", "fork_share", "of hand length", 0.45, 0.65},
    {PolicyKey::HandIndex, "hand", "index_share", "of hand length", 0.85, 1.0},
    {PolicyKey::HandHeel, "hand", "heel_share", "of hand length", 0.0, 0.2},
    {PolicyKey::HandBreadth, "hand", "breadth_share", "of hand length", 0.35, 0.55},
    {PolicyKey::JointShare, "hazards", "joint_share", "of arm length", 0.05, 0.12},
    {PolicyKey::BursaEdge, "hazards", "bursa_edge_cm", "cm at the reference arm", 2.0, 6.0},
    {PolicyKey::NerveFrontLow, "hazards", "nerve_front_low", "of arm length", 0.10, 0.30},
    {PolicyKey::NerveFrontHigh, "hazards", "nerve_front_high", "of arm length", 0.10, 0.30},
    {PolicyKey::NerveBackLow, "hazards", "nerve_back_low", "of arm length", 0.08, 0.30},
    {PolicyKey::NerveBackHigh, "hazards", "nerve_back_high", "of arm length", 0.08, 0.30},
    {PolicyKey::RadialBack, "hazards", "radial_back_cm", "cm at the reference arm", 6.0, 14.0},
    {PolicyKey::ThighEnds, "hazards", "thigh_ends_share", "of thigh length", 0.05, 0.25},
    {PolicyKey::SciaticRound, "hazards", "sciatic_degrees", "degrees round from the front line", 95.0, 150.0},
    {PolicyKey::SuperiorGlutealLow, "hazards", "superior_gluteal_low_cm", "cm at the reference stature", 2.0,
     7.0},
    {PolicyKey::SuperiorGlutealHigh, "hazards", "superior_gluteal_high_cm", "cm at the reference stature",
     5.0, 10.0},
    {PolicyKey::AcceptableMargin, "grading", "acceptable_margin_cm", "cm at the reference arm", 0.0, 2.0},
    {PolicyKey::PointsOnTarget, "grading", "points_on_target", "points", 0.0, 10.0},
    {PolicyKey::PointsAcceptable, "grading", "points_acceptable", "points", 0.0, 10.0},
    {PolicyKey::PointsOffTarget, "grading", "points_off_target", "points", 0.0, 10.0},
    {PolicyKey::PointsRefusedRight, "grading", "points_refused_right", "points", 0.0, 10.0},
    {PolicyKey::PointsRefusedWrongReason, "grading", "points_refused_wrong_reason", "points", 0.0, 10.0},
    {PolicyKey::LimbLateralShare, "grading", "limb_lateral_share", "of the front-back half depth", 0.6, 1.4},
    {PolicyKey::FeelReachLean, "hands_on", "feel_reach_lean_cm", "cm", 0.5, 4.0},
    {PolicyKey::FeelReachThick, "hands_on", "feel_reach_thick_cm", "cm", 0.2, 2.0},
    {PolicyKey::FeelFatLean, "hands_on", "feel_fat_lean_mm", "mm", 0.0, 25.0},
    {PolicyKey::FeelFatThick, "hands_on", "feel_fat_thick_mm", "mm", 26.0, 80.0},
    {PolicyKey::FeelFatSoft, "hands_on", "feel_fat_soft_mm", "mm", 5.0, 60.0},
    {PolicyKey::FlagFound, "hands_on", "flag_found_cm", "cm", 0.3, 3.0},
    {PolicyKey::FlagNear, "hands_on", "flag_near_cm", "cm", 0.5, 5.0},
    {PolicyKey::BuildPlace, "hands_on", "place_cm", "cm", 0.3, 4.0},
    {PolicyKey::BuildPalm, "hands_on", "palm_cm", "cm", 0.5, 5.0},
    {PolicyKey::BuildIndex, "hands_on", "index_cm", "cm", 0.5, 4.0},
    {PolicyKey::BuildCrest, "hands_on", "crest_cm", "cm", 0.2, 2.0},
    {PolicyKey::BuildLeastOpening, "hands_on", "least_opening_degrees",
     "degrees between index and middle finger", 10.0, 44.0},
    {PolicyKey::BuildFingerTurn, "hands_on", "finger_turn_degrees", "degrees", 3.0, 45.0},
    {PolicyKey::BuildShare, "hands_on", "uneven_share", "of the line or side", 0.01, 0.3},
    {PolicyKey::BuildCounts, "hands_on", "build_counts", "1: it counts, 0: it is noted", 0.0, 1.0},
    {PolicyKey::WeightLandmarks, "hands_on", "points_landmarks", "points", 0.0, 10.0},
    {PolicyKey::WeightBuild, "hands_on", "points_build", "points", 0.0, 10.0},
    {PolicyKey::WeightMark, "hands_on", "points_mark", "points", 0.0, 10.0},
}};

}  // namespace policy_detail

std::span<const PolicyField> policyFields() { return policy_detail::kFields; }

Policy Policy::with(PolicyKey key, double value) const
{
    Policy changed = *this;
    changed.m_values[index(key)] = value;
    return changed;
}

Policy Policy::withConvention(Convention convention) const
{
    Policy changed = *this;
    changed.m_conventions[static_cast<std::size_t>(siteOf(convention))] = convention;
    return changed;
}

}  // namespace fb
