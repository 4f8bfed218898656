// This patient's drawing: the plate's ink, moved by the body map, ready to be painted.
//
// Coordinates are in the frame of the viewer (cm; mirrored for a left side). Shapes are cut
// to pieces of at most 1 cm before they are moved; pen strokes keep their drawn weight; cues
// of leanness, fullness and age carry an opacity that follows the patient.
#pragma once

#include <vector>

#include "core/body/body_map.h"
#include "core/body/patient.h"
#include "core/plate/plate.h"

namespace fb {

struct MovedShape {
    int structure = 0;  // index into Plate::structures
    std::vector<Ring> rings;
    int tone = -1;
    int gradient = -1;  // index into MovedInk::gradients
    double opacity = 1.0;
    bool penStroke = false;
};

struct MovedInk {
    std::vector<Gradient> gradients;
    std::vector<MovedShape> shapes;  // painter's order, bottom first
    Bounds paper;                    // what the picture shows of this patient, cm
};

[[nodiscard]] MovedInk movedInk(const Plate& plate, const BodyMap& map, const Patient& patient);

// The silhouette test: the topmost limb whose drawn skin covers this point of the patient
// (viewer's frame), or -1 outside the body. Cloth does not count as body.
[[nodiscard]] int limbAt(const Plate& plate, const BodyMap& map, Side side, Point viewer);

}  // namespace fb
