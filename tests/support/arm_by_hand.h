// An arm made by hand: straight, 11 cm deep, with lengths chosen by the test.
#pragma once

#include "core/site/arm.h"

namespace fb::test {

[[nodiscard]] inline Arm armByHand(double armLength, double axillaDepth)
{
    std::vector<LevelRow> rows{{-2.0, {-5.5, -2.2, 2.3, 5.5}},
                               {axillaDepth, {-5.5, -1.3, 1.3, 5.5}},
                               {armLength, {-5.5, -2.0, 2.0, 5.5}},
                               {armLength + 2.0, {-5.5, -2.0, 2.0, 5.5}}};
    Arm arm{{0.0, 0.0},
            {2.3, 0.2},
            {-2.2, -0.4},
            {0.0, -16.1 / 30.4 * armLength},
            Polygon::rectangle(-2.2, 2.3, 0.0, 0.8),
            armLength,
            axillaDepth,
            -armLength - 2.0,
            CrossSection(LimbMap::make(rows, rows).value(), {0.0, 0.0}, 0.92),
            {}};
    arm.showTurn = [section = arm.section](double turn, double y) {
        return Point{section.seenAt(turn, y, {0.0, 1.0}), y};
    };
    return arm;
}

}  // namespace fb::test
