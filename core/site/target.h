// What a mark is graded against: region, ideal point, hazards and the construction they were
// built from, for one patient, one side and one convention.
//
// Plane values are in the viewer's frame (cm, mirrored for a left side). Skin values are in
// the right-sided coordinates of the target's surface (body/surface.h), in which every site
// reads alike on both sides: s to the front, y up the body. On the hip these are plane
// centimetres, on arm and thigh centimetres of skin.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/basics/enums.h"
#include "core/basics/units.h"
#include "core/body/surface.h"
#include "core/hand/hand_pose.h"
#include "core/site/construction.h"
#include "core/site/hazard.h"

namespace fb {

struct Target {
    Target(Site of, Polygon shownRegion, Point shownIdeal, Polygon skinRegion, Point skinIdeal, Surface on);

    Site site{};
    View view{};
    Side side = Side::Right;  // as the rules build it; locate() turns it round
    Convention convention{};
    // The site's own length; the others are zero.
    Cm armLength;         // acromion to radiale
    Cm axillaDepth;       // acromion to armpit level
    Cm thighLength;       // greater trochanter to lateral femoral epicondyle
    Cm asisToTrochanter;  // in the plane of the picture
    double scale = 1.0;   // of every size given in cm: arm length or stature over the reference's

    Polygon region;  // plane
    Point ideal;     // plane
    Polygon regionSkin;
    Point idealSkin;
    std::vector<Hazard> hazards;
    Steps construction;
    std::map<std::string, Point> landmarks;  // plane; lower_snake_case names
    std::map<std::string, double> levels;    // where they cross the limb's axis in the frame, cm
    std::map<std::string, double> heights;   // cm above the sole, standing; hip and thigh only
    std::optional<HandPose> hand;            // viewer's frame; where the convention lays one
    Surface surface;

    // From the viewer's frame to skin coordinates, and back.
    [[nodiscard]] Point toSkin(Point viewer) const;
    [[nodiscard]] Point toViewer(Point skin) const;
};

}  // namespace fb
