// The bones that lie close enough under the skin of a view to be felt, on one patient.
//
// What a hand finds there: a corner or knob (Point), a rim (Edge), a surface (Broad). A knob is
// its surface and, on it, the Point that stands out most; the tubercle is a Point on the crest.
// Shafts under thick muscle are left out: they are never felt. Two bones are felt through muscle
// alone, dully: the deltoid tuberosity, where the muscle narrows to its end, and from the side
// the ischial tuberosity under the buttock.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/site/places.h"

namespace fb {

// What the bone under a finger is like.
enum class BoneShape {
    None,   // no bone within reach
    Point,  // a knob or corner
    Edge,   // a rim that goes on both ways
    Broad   // a surface
};
inline constexpr int kBoneShapeCount = static_cast<int>(BoneShape::Broad) + 1;

// One of them. Right-sided frame of the view, cm.
struct FeltBone {
    BoneShape shape{};
    std::vector<Point> line;           // Point: one; Edge: the rim; Broad: its top, or none
    std::optional<Polygon> area = {};  // Broad
    int on = -1;                       // the edge or surface a Point stands on, by its number in the list
    bool deep = false;                 // under muscle: felt dully, never hard
};

// Of a view that can be marked; empty for any other. An edge is listed before its points.
[[nodiscard]] std::vector<FeltBone> feltBones(const Places& places);

// A finger's middle and a bone.
struct Touch {
    double away = 0.0;                // cm; 0 over a surface
    Point at;                         // the bone's nearest place
    std::optional<Point> along = {};  // Edge: unit vector the way its line is listed
    double place = 0.0;               // Edge: cm along the line from its start
};
[[nodiscard]] Touch touched(const FeltBone& bone, Point frame);

}  // namespace fb
