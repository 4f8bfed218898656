// The landmarks a learner feels for and names, and the bony points that are taken for them.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/basics/enums.h"
#include "core/site/construction.h"
#include "core/site/target.h"

namespace fb {

enum class Landmark {
    // asked
    Acromion,  // its lateral edge
    ArmpitLevel,
    DeltoidTuberosity,
    GreaterTrochanter,
    AnteriorSuperiorIliacSpine,
    IliacCrest,
    IliacTubercle,
    LateralFemoralCondyle,
    Patella,
    // never asked: near misses
    Clavicle,
    CoracoidProcess,
    ScapularSpine,
    HumeralHead,
    ElbowEpicondyle,  // lateral epicondyle of the humerus
    LesserTrochanter,
    AnteriorInferiorIliacSpine,
    PosteriorSuperiorIliacSpine,
    IschialTuberosity,
    PubicSymphysis,
    MedialFemoralCondyle,
    TibialTuberosity,
    FibularHead
};
inline constexpr int kLandmarkCount = static_cast<int>(Landmark::FibularHead) + 1;
[[nodiscard]] constexpr Landmark landmarkAt(int index) { return static_cast<Landmark>(index); }

// What a learner has to find before building, in the order it is taught.
[[nodiscard]] std::span<const Landmark> askedLandmarks(Convention convention);

// Names to choose from at a site: the asked ones and their near misses, in one fixed order.
[[nodiscard]] std::vector<Landmark> offeredLandmarks(Site site);

// Where a landmark lies on a target: a point; for the iliac crest a line; for armpit level a line
// across the limb. Viewer's frame, cm. nullopt where the view does not show it.
struct LandmarkPlace {
    FigureKind kind{};
    std::vector<Point> points;

    // From a point of the viewer's frame to the nearest place of it.
    [[nodiscard]] Point nearest(Point viewer) const;
};
[[nodiscard]] std::optional<LandmarkPlace> placeOf(const Target& target, Landmark landmark);

[[nodiscard]] std::string_view wordOf(Landmark landmark);

}  // namespace fb
