// The lab's own numbers: conventions, distances, tolerances and points, each with the source
// it comes from (or the words "lab's choice"). The shipped values stand in
// resources/policy/default.json, which is their only home.
//
// A lab may name a file of its own that holds only what it changes; everything else keeps
// the shipped value. A policy is checked once, here; after that nobody asks again.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>

#include "core/basics/enums.h"
#include "core/basics/problem.h"

namespace fb {

// Names of the numbers; `policyFields()` gives each its key in the file, unit and range.
enum class PolicyKey {
    DeltoidReferenceArm,  // cm: the arm length at which the cm values below hold
    DeltoidStripTop,      // share of the arm length, likewise the next two
    DeltoidStripBottom,
    DeltoidStripIdeal,
    DeltoidStripHalfWidth,    // cm at the reference arm
    DeltoidCentroidDistance,  // cm at the reference arm
    DeltoidTwoInches,         // cm at the reference arm
    DeltoidFingerWidth,       // cm, never scaled
    DeltoidFingersLow,        // fingers
    DeltoidFingersHigh,
    DeltoidMuscleLength,  // cm at the reference arm
    DeltoidHalfwayShare,  // of the muscle length
    PointHalfAlong,       // cm at the reference arm: region about a bare point
    PointHalfAcross,
    ArmpitMargin,      // cm at the reference arm: an ideal point keeps this from armpit level
    ReferenceStature,  // cm: the stature at which the cm values below hold
    VastusTop,         // share of the thigh length below the trochanter
    VastusBottom,
    VastusIdeal,
    VastusFront,  // degrees round the thigh from the front line, the outer line being 90
    VastusBack,
    VastusIdealRound,
    VgOpening,
    VgBoneMargin,  // cm at the reference stature: kept from crest and spine
    VgTrochanterMargin,
    VgMediansRadius,
    HandLength,  // cm: of whoever lays the hand
    HandPalm,
    HandFork,
    HandIndex,
    HandHeel,
    HandBreadth,
    JointShare,     // share of the arm length: above it joint and bursa are struck
    BursaEdge,      // cm at the reference arm
    NerveFrontLow,  // shares of the arm length
    NerveFrontHigh,
    NerveBackLow,
    NerveBackHigh,
    RadialBack,  // cm at the reference arm
    ThighEnds,   // share of the thigh length at either end: joint
    SciaticRound,
    SuperiorGlutealLow,  // cm above the trochanter at the reference stature
    SuperiorGlutealHigh,
    AcceptableMargin,  // cm at the reference arm, outside the region
    PointsOnTarget,
    PointsAcceptable,
    PointsOffTarget,
    PointsRefusedRight,        // not here, for the right reason
    PointsRefusedWrongReason,  // not here, rightly, for another reason
    LimbLateralShare,          // lateral half axis as a share of the front-back half axes
    // found by hand
    FeelReachLean,      // cm beside a bone: felt through little fat
    FeelReachThick,     // cm: through thick fat
    FeelFatLean,        // mm: little fat
    FeelFatThick,       // mm: thick fat
    FeelFatSoft,        // mm: above it muscle is felt as soft
    FlagFound,          // cm from the landmark
    FlagNear,           // cm
    BuildPlace,         // cm: a corner, an end, an apex
    BuildPalm,          // cm: the palm
    BuildIndex,         // cm: the index fingertip
    BuildCrest,         // cm: an index fingertip so near the crest lies on it
    BuildLeastOpening,  // degrees between index and middle finger
    BuildFingerTurn,    // degrees
    BuildShare,         // of a line or side: how uneven halves and thirds may be
    BuildCounts,        // 1: a slip in the construction counts; 0: it is only noted
    WeightLandmarks,    // points of a request found by hand
    WeightBuild,
    WeightMark
};

inline constexpr std::size_t kPolicyKeyCount = static_cast<std::size_t>(PolicyKey::WeightMark) + 1;

struct PolicyField {
    PolicyKey key{};
    std::string_view group;  // object in the file
    std::string_view name;   // member of that object
    std::string_view unit;
    double low = 0.0;  // allowed, both ends inclusive
    double high = 0.0;
};

[[nodiscard]] std::span<const PolicyField> policyFields();

class Policy {
public:
    // The complete default: every field must be there, with a source.
    [[nodiscard]] static Result<Policy> parse(std::string_view text);
    // A lab's own file over a base: only the fields it names change.
    [[nodiscard]] static Result<Policy> parseOver(std::string_view text, const Policy& base);

    [[nodiscard]] double value(PolicyKey key) const { return m_values[index(key)]; }
    [[nodiscard]] const std::string& source(PolicyKey key) const { return m_sources[index(key)]; }
    [[nodiscard]] Convention convention(Site site) const
    {
        return m_conventions[static_cast<std::size_t>(site)];
    }
    [[nodiscard]] const std::string& name() const { return m_name; }

    // The same policy with one number replaced; the value must lie in the field's range.
    [[nodiscard]] Policy with(PolicyKey key, double value) const;
    // The same policy with another convention for the site it belongs to.
    [[nodiscard]] Policy withConvention(Convention convention) const;

    friend bool operator==(const Policy&, const Policy&) = default;

private:
    Policy() = default;
    [[nodiscard]] static std::size_t index(PolicyKey key) { return static_cast<std::size_t>(key); }
    friend class PolicyReader;

    std::string m_name;
    std::array<Convention, kSites.size()> m_conventions{Convention::DeltoidStrip, Convention::VastusThirds,
                                                        Convention::VentroglutealHand};
    std::array<double, kPolicyKeyCount> m_values{};
    std::array<std::string, kPolicyKeyCount> m_sources;
};

// The whole policy as a file that parse() reads, always the same bytes for the same policy.
[[nodiscard]] std::string textOf(const Policy& policy);

}  // namespace fb
