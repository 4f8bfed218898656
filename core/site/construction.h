// The figure a hand makes to find the site, as ordered steps. The projector replays these,
// practice draws them as feedback, the grader's target is built from the same points.
#pragma once

#include <string_view>
#include <vector>

#include "core/geometry/point.h"

namespace fb {

enum class StepCode {
    FeelAcromion,      // point: lateral lower edge of the acromion
    AcromionBase,      // line: front corner to back corner
    ArmpitLevel,       // line across the arm
    Apex,              // point: mid-lateral at armpit level
    Triangle,          // closed figure
    MidLateralLine,    // line from acromion to apex
    MeasureDown,       // line from the acromion to the region's upper edge
    LayFingers,        // lines, one a fingerbreadth
    FeelTuberosity,    // point: where the deltoid ends
    FeelTrochanter,    // point: greater trochanter
    FeelCondyle,       // point: lateral femoral condyle
    ThighLine,         // line: trochanter to condyle along the outer side
    FrontLine,         // line: anterior spine to the middle of the patella, down the front
    UpperThird,        // line across the thigh
    LowerThird,        // line across the thigh
    HandBelowHip,      // closed figure: a hand's breadth laid below the trochanter
    HandAboveKnee,     // closed figure: a hand's breadth laid above the condyle
    FeelSpine,         // point: anterior superior iliac spine
    FeelCrest,         // line: iliac crest, from the spine back
    FeelTubercle,      // point: iliac tubercle
    LayPalm,           // line: wrist crease to fork; the palm lies over the trochanter
    IndexOnSpine,      // line: fork to index fingertip
    MiddleAlongCrest,  // line: fork to middle fingertip
    FingerTriangle,    // closed figure: between the two fingers
    HipTriangle,       // closed figure: trochanter, tubercle, spine
    Median,            // line: a corner of that triangle to the middle of the side facing it
    FeelBackSpine,     // point: posterior superior iliac spine
    BackLine,          // line: posterior spine to trochanter
    Region,            // closed figure: the target region
    IdealPoint         // point
};

inline constexpr int kStepCodeCount = static_cast<int>(StepCode::IdealPoint) + 1;

enum class FigureKind { Point, Line, Closed };

struct Step {
    StepCode code{};
    FigureKind kind{};
    std::vector<Point> points;  // viewer's frame, cm
};

using Steps = std::vector<Step>;

[[nodiscard]] std::string_view wordOf(StepCode code);
[[nodiscard]] std::string_view wordOf(FigureKind kind);

}  // namespace fb
