// A straight limb with the same edges all along, lying to the viewer's right from the origin.
#pragma once

#include "core/body/round_limb.h"

namespace fb::test {

[[nodiscard]] inline LimbMap plainLimb(double negative, double positive)
{
    const EdgeRow edges{-negative, -1.0, 1.0, positive};
    const std::vector<LevelRow> rows{{0.0, edges}, {20.0, edges}, {40.0, edges}};
    return *LimbMap::make(rows, rows);
}

// Half axes in cm.
[[nodiscard]] inline RoundLimb roundLimb(double front, double back, double outer, double inner)
{
    return {plainLimb(back, front), {0.0, 0.0}, plainLimb(outer, inner), {0.0, 0.0}};
}

}  // namespace fb::test
