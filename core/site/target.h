// What a mark is graded against: region, ideal point, hazards and the construction they were
// built from, for one patient, one side and one convention.
//
// Plane values are in the viewer's frame (cm, mirrored for a left side). Skin values are in
// the right-sided skin coordinates of body/cross_section.h, in which every site reads alike
// on both sides.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/basics/enums.h"
#include "core/basics/units.h"
#include "core/body/cross_section.h"
#include "core/site/construction.h"
#include "core/site/hazard.h"

namespace fb {

struct Target {
    Site site{};
    View view{};
    Side side{};
    Convention convention{};
    Cm armLength;
    Cm axillaDepth;
    double scale = 1.0;  // arm length over the policy's reference arm

    Polygon region;  // plane
    Point ideal;     // plane
    Polygon regionSkin;
    Point idealSkin;
    std::vector<Hazard> hazards;
    Steps construction;
    std::map<std::string, Point> landmarks;  // plane; lower_snake_case names
    std::map<std::string, double> levels;    // y in cm
    CrossSection section;

    // From the viewer's frame to skin coordinates, and back.
    [[nodiscard]] Point toSkin(Point viewer) const;
    [[nodiscard]] Point toViewer(Point skin) const;
};

}  // namespace fb
