// Building on a thigh: its two ends, two lines across, two along, and the chosen cell. See
// build.h, which asks these by kind; points are in the viewer's frame, cm.
#pragma once

#include "core/build/build.h"

namespace fb {

[[nodiscard]] std::optional<Point> thighHandleAt(const Build& build, const Target& target, Handle handle);
[[nodiscard]] Build placedOnThigh(Build build, Handle handle, Point to);
[[nodiscard]] Steps thighFigures(const Build& build, const Target& target);
[[nodiscard]] Build flawlessOnThigh(const Target& target);
// The build is whole.
[[nodiscard]] Point siteByThigh(const Build& build, const Target& target);

// How far down the learner's own span a line across lies: 0 at its top, 1 at its bottom.
[[nodiscard]] double lineShare(const Build& build, const Target& target, Handle line);
// A line along the thigh, from the learner's top to her bottom.
[[nodiscard]] std::vector<Point> lineAlong(const Build& build, const Target& target, Handle line);
// How far a line along lies from the true one half-way down, straight across the picture: positive
// is too far forward, cm.
[[nodiscard]] double lineOff(const Build& build, const Target& target, Handle line);

}  // namespace fb
