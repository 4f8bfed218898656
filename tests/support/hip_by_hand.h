// A hip set down by hand: a straight pelvis of the reference stature, in the frame of the
// hip's side view (cm, head to the left, front up).
#pragma once

#include "core/site/hip.h"

namespace fb::test {

[[nodiscard]] inline Hip hipByHand()
{
    const Point spine{-9.6, 7.2};
    const Point tubercle{-13.4, 2.4};
    const Point top{-15.8, -0.8};
    const Point back{-11.3, -9.3};
    return {{0.0, 0.0},
            spine,
            tubercle,
            top,
            back,
            {spine, tubercle, top, {-15.4, -4.5}, back},
            {spine, tubercle, top, {-15.4, -4.5}, back},
            Polygon::rectangle(-1.5, 2.5, -2.0, 2.0),
            {{-8.0, -5.0}, {-4.0, 6.0}},
            {1.0, 0.0},
            {{-24.0, 9.0}, {-10.0, 10.5}, {0.0, 10.0}, {6.0, 9.0}},
            {{-24.0, -10.0}, {-10.0, -12.0}, {0.0, -13.0}, {6.0, -10.0}},
            {{1.0, 9.0}, {20.0, 7.0}},
            {{1.0, -9.0}, {20.0, -7.0}},
            1.0};
}

}  // namespace fb::test
