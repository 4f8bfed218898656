// Fingers, a hand, lines on their way to where a flawless learner lays them: what a demonstration shows and
// moves, value by value, with no picture between two pictures. Laws: at 0 the laid things are beside the
// limb, at 1 they are flawlessBuild(); every pose between is one the hand can take; it is continuous in t.
#pragma once

#include <optional>

#include "core/build/build.h"

namespace fb {

// t from 0 to 1 (held). Of a convention that lays a hand; else nullopt.
[[nodiscard]] std::optional<HandPose> handOnItsWay(const Target& target, const Builder& builder, double t);
// Of a convention that lays fingers; else nullopt.
[[nodiscard]] std::optional<LaidFingers> fingersOnTheirWay(const Target& target, const Builder& builder,
                                                           double t);
// A figure that grows: a line from its first point along its length, a closed figure likewise round its edge
// and closed only at 1, a point as it is.
[[nodiscard]] Step grown(const Step& step, double t);

// What a learner who finds the site by hand is shown, in the order of teaching: everything the flawless build
// of that learner's own measures consists of, and the target's construction. On an arm found by fingers and a
// triangle both are there, the fingers as one step of paired points, whichever of them the target's own
// construction has; a line that is halved has its halving; elsewhere the construction is all of it.
[[nodiscard]] Steps taughtSteps(const Target& target, const Builder& builder);

}  // namespace fb
