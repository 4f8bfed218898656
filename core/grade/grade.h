// From a mark to a verdict, with the reason and the harm a miss would do.
//
// Distances are centimetres of the target's surface: along the skin of arm and thigh, in the
// plane of the hip. The border counts as inside. Bone always strikes; elsewhere the taught
// region wins over a strike.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/basics/problem.h"
#include "core/basics/units.h"
#include "core/body/body_map.h"
#include "core/plate/plate.h"
#include "core/policy/policy.h"
#include "core/site/target.h"

namespace fb {

enum class Verdict { OnTarget, Acceptable, OffTarget, Unsafe };
inline constexpr int kVerdictCount = static_cast<int>(Verdict::Unsafe) + 1;

// The way the mark lies off the region. None: inside it.
enum class Direction { None, High, Low, Forward, Back };
inline constexpr int kDirectionCount = static_cast<int>(Direction::Back) + 1;

// What lies where the mark is.
enum class Tissue {
    ThickMuscle,  // in the region
    AcromionBone,
    SubacromialBursa,  // and the shoulder joint
    AxillaryNerve,
    RadialNerve,
    ThinMuscle,  // off the thick part, no named danger
    Trunk,       // not on the arm at all
    Forearm,
    // thigh
    RectusFemoris,  // with the descending vessels and the nerve under it
    FemoralVessels,
    SciaticNerve,  // behind the thigh, or below and inside the hip
    HipRegion,     // top of the thigh: tendon and joint
    KneeRegion,    // tendon and joint
    PatellaBone,
    TrochanterBone,
    Hamstrings,  // behind the outer line, short of the sciatic side
    // hip
    TrochanterTendons,  // too close to the trochanter
    CrestBone,
    AbdominalWall,    // above the crest
    FrontOfHip,       // in front of the line from spine to trochanter
    SuperiorGluteal,  // dorsogluteal: superior gluteal nerve and artery
    HipMuscle,        // beside the region, no named danger
    ThighBelowHip,    // the mark lies on the thigh
    Pelvis,           // the mark lies on the pelvis, not on the thigh
    Leg               // below the knee
};
inline constexpr int kTissueCount = static_cast<int>(Tissue::Leg) + 1;

struct Reason {
    Direction direction{};
    Cm amount;  // how far outside the region in that direction; zero inside
    Tissue tissue{};
    // Inside the region: the nearest thing to know of, if any, and how far away it is (zero: on it).
    std::optional<HazardCode> note;
    Cm clearance;
};

struct Grade {
    Verdict verdict{};
    bool inside = false;
    Cm distanceToBorder;               // negative inside
    Cm offDistal;                      // from the ideal point: positive is too far down the limb
    Cm offAnterior;                    // positive is too far to the front
    Cm distanceToIdeal;                // along the skin
    std::optional<HazardCode> hazard;  // the strike hit, if any
    Reason reason;
    double points = 0.0;
};

// Which part of the body the mark is on, as the plate draws it.
enum class MarkedLimb { Arm, Forearm, Trunk, Pelvis, Thigh, Leg };

// `viewer` is in the viewer's frame, cm.
[[nodiscard]] Grade gradeMark(const Target& target, const Policy& policy, Point viewer, MarkedLimb limb);

// Checks that a mark is on the body first: MarkOutsideBody, or ViewShowOnly for a plate that
// cannot be marked.
[[nodiscard]] Result<MarkedLimb> markedLimb(const Plate& plate, const BodyMap& map, Side side, Point viewer);

[[nodiscard]] std::string_view wordOf(Verdict verdict);
[[nodiscard]] std::string_view wordOf(Direction direction);
[[nodiscard]] std::string_view wordOf(Tissue tissue);

}  // namespace fb
