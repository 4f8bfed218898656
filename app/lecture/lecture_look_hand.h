// The hand of whoever shows a hip's site, step by step as it is taught: the palm is laid, then the hand turns
// until the index finger points to the spine, then the middle finger opens. Every pose is one that core's own
// handles reach, as a learner's would.
#pragma once

#include <optional>
#include <vector>

#include "app/lecture/lecture_look.h"
#include "core/build/build.h"
#include "core/hand/laid_bars.h"

namespace fb {

// While the step `newest` runs, progress 0 to 1; after the last of the three the flawless hand. nullopt where
// the convention or the view lays none. Laws: each step begins where the one before it ended; the hand
// arrives at flawlessBuild().
[[nodiscard]] std::optional<HandPose> handDuring(const Target& target, const Builder& builder,
                                                 StepCode newest, double progress);

// What hand and fingers of a look cover; none where nothing is laid.
[[nodiscard]] std::vector<LaidBar> laidBars(const LectureLook& look);

}  // namespace fb
