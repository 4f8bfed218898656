// The hip from behind, shown beside the side view: where the dorsogluteal territory and the
// sciatic nerve lie, and that the ventrogluteal site lies round the side, seen edge-on.
#pragma once

#include "core/site/hip.h"
#include "core/site/places.h"
#include "core/site/target.h"

namespace fb {

// `side` is the right-sided target of the side view and `hip` what it was built from; the
// result is right-sided, in the frame of the view from behind.
[[nodiscard]] Target hipBehindTarget(const Target& side, const Hip& hip, const Places& behind);

}  // namespace fb
