// What a run of practice came to.
#pragma once

#include <span>
#include <vector>

#include "core/basics/units.h"
#include "core/geometry/point.h"
#include "core/grade/grade.h"
#include "core/scoring/wilson.h"
#include "core/session/practice.h"

namespace fb {

struct Summary {
    int attempts = 0;  // marks and refusals
    int marked = 0;
    int hits = 0;  // marks inside the region
    int acceptable = 0;
    int offTarget = 0;
    int unsafe = 0;
    int sidesAsked = 0;
    int sidesRight = 0;
    int ruledOut = 0;         // requests whose site the chart ruled out
    int refusedRight = 0;     // of those, refused for the right reason
    int refusedOther = 0;     // of those, refused for another reason
    int refusedNeedless = 0;  // refused though nothing ruled the site out
    double points = 0.0;
    Interval hitRate;                     // 95 percent Wilson interval
    Cm meanDistance;                      // to the ideal point, along the skin
    Point lean;                           // mean of (anterior, distal) offsets, cm at the reference arm
    Direction leanWay = Direction::None;  // None when the lean is under its own standard error or 0.2 cm
    std::vector<Point> marks;             // (anterior, distal) from the ideal, cm at the reference arm
    std::vector<Verdict> verdicts;        // one a mark
};

// Distances, lean and marks speak of the marks alone. A mark where the chart ruled the site out
// counts as unsafe and not as a hit.
[[nodiscard]] Summary summed(std::span<const Attempt> attempts);
// The same of the attempts at one site.
[[nodiscard]] Summary summed(std::span<const Attempt> attempts, Site site);

}  // namespace fb
