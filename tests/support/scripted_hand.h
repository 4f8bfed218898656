// How a scripted learner's hand shakes and slips: the part of scripted_learner.h that builds.
#pragma once

#include <optional>

#include "tests/support/scripted_learner.h"

namespace fb::test {

inline constexpr double kScatter = 0.6;     // of a tolerance: a steady hand
inline constexpr double kLeastSlip = 1.05;  // of a tolerance: a slip just seen
inline constexpr double kMostSlip = 3.0;

// Unit vector of a way on the body at a place, in the viewer's frame.
[[nodiscard]] Point wayAt(const Target& target, Point viewer, Direction way);
[[nodiscard]] Point scattered(Point viewer, double tolerance, SeedStream& stream);
// Off by more than the tolerance, nearly straight that way and told so by the body's own directions.
[[nodiscard]] std::optional<Point> slippedFrom(const Target& target, Point viewer, Direction way,
                                               double tolerance, SeedStream& stream);

// A landmark taken for right that lies off by this much.
struct Misled {
    Landmark landmark{};
    Point by;
};

[[nodiscard]] std::vector<PlantedError> everySlip(const Target& target, const Builder& builder);
[[nodiscard]] std::optional<Build> builtByHand(const ScriptedLearner& learner, const PlantedError* error,
                                               const std::optional<Misled>& misled, SeedStream& stream);

}  // namespace fb::test
