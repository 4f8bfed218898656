// Everything the rules of the hip need of one body, measured on the moved plate and nowhere else.
//
// Points are in the right-sided frame of the hip's side view: origin at the greater trochanter,
// +x toward the foot, +y toward the front of the body, cm.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"

namespace fb {

struct Hip {
    Point trochanter, spine, tubercle, crestTop, backSpine;
    std::vector<Point> crest;  // from the spine over tubercle and top to the back spine
    std::vector<Point> dome;   // the same without its dents: what clearance is kept from
    Polygon trochanterBone;
    Bounds glutealNerve;  // what the branches of the superior gluteal nerve reach
    Point thighAxis;      // unit vector down the thigh
    // The drawn outline, from the waist down the trunk and from the trochanter down the thigh.
    std::vector<Point> trunkFront, trunkBack, thighFront, thighBack;
    double scale = 1.0;  // stature over the reference stature
};

}  // namespace fb
