// Building on a hip: a hand laid on it, or a triangle and the lines from its corners. See build.h,
// which asks these by kind; everything is in the viewer's frame, cm.
#pragma once

#include "core/build/build.h"

namespace fb {

[[nodiscard]] std::optional<Point> hipHandleAt(const Build& build, const Builder& builder, Handle handle);
[[nodiscard]] Build placedOnHip(Build build, const Builder& builder, Handle handle, Point to);
[[nodiscard]] Steps hipFigures(const Build& build, const Builder& builder);
[[nodiscard]] Build flawlessOnHip(const Target& target, const Builder& builder);
// The build is whole.
[[nodiscard]] Point siteByHip(const Build& build, const Target& target, const Builder& builder);

// The corner a foot's line comes from, and the side it lies on.
struct MedianOf {
    Handle corner{}, sideFrom{}, sideTo{};
};
[[nodiscard]] MedianOf medianOf(Handle foot);
// How far along its side a foot lies, 0 to 1.
[[nodiscard]] double footShare(const Build& build, Handle foot);

}  // namespace fb
