// Building on an arm: fingers and triangle, or a line and its middle. See build.h, which asks
// these by kind; everything is in the viewer's frame, cm.
#pragma once

#include "core/build/build.h"

namespace fb {

[[nodiscard]] std::optional<Point> armHandleAt(const Build& build, const Builder& builder, Handle handle);
[[nodiscard]] Build placedOnArm(Build build, const Builder& builder, Handle handle, Point to);
[[nodiscard]] Steps armFigures(const Build& build, const Builder& builder);
[[nodiscard]] Build flawlessOnArm(const Target& target, const Builder& builder);
// The build is whole.
[[nodiscard]] Point siteByArm(const Build& build, const Target& target, const Builder& builder);

// Of so many fingers of this width below the acromion: whether 2 or 3 end in the site's band, or
// if neither does, which ends nearer its ideal point.
[[nodiscard]] bool countFits(const Target& target, const Builder& builder, int count);
// How far along a halved line its middle lies, 0 at the top and 1 at the bottom.
[[nodiscard]] double middleShare(const Build& build);

}  // namespace fb
