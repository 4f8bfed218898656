// One hand-drawn plate: ink in layers, named points, hidden lines and areas, read from SVG.
//
// Everything here is in the frame of the program: centimetres, +x to the viewer's right, +y
// up, origin at the plate's first landmark. The drawing shows the right side of its
// reference body; nothing here is moved yet (see body/body_map.h and body/moved_ink.h).
#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/basics/units.h"
#include "core/geometry/point.h"
#include "core/geometry/polygon.h"

namespace fb {

// A chain of cubic pieces: 3k+1 points, start, handle, handle, knot, ...
struct Ring {
    std::vector<Point> points;
    bool closed = true;
};

// What part of a body a cue belongs to: it fades with it.
enum class Cue { Always, Lean, Full, Older };

struct InkShape {
    std::vector<Ring> rings;
    int tone = -1;      // index into Plate::tones, or
    int gradient = -1;  // index into Plate::gradients; exactly one of the two is set
    double opacity = 1.0;
    bool penStroke = false;  // a tapering line: keeps its drawn weight on any body
    Cue cue = Cue::Always;
};

struct Tone {
    std::string name;  // e.g. skin-light
    std::string hex;   // the colour in the file, #rrggbb; replaced when painting
};

struct GradientStop {
    double offset = 0.0;  // 0..1
    int tone = 0;
    double opacity = 1.0;
};

struct Gradient {
    bool radial = false;
    int limb = 0;
    Point from;  // linear: start; radial: centre
    Point to;    // linear: end; radial: a point at the radius, to the right of the centre
    std::vector<GradientStop> stops;
};

// One structure of one limb in one layer, e.g. muscle.arm.deltoid "Deltoid".
struct Structure {
    Layer layer{};
    int limb = 0;
    std::string id;     // may be empty for ink without a name
    std::string title;  // English title of the drawing, for whoever reads the SVG
    std::vector<InkShape> shapes;
};

struct Level {
    std::string name;  // without "level."
    Cm along;          // from the limb's joint along its axis
    // Signed distances from the axis, in the order of edgeNames(): of a limb seen from the side,
    // skin back, bone back, bone front, skin front.
    Cm skinBack, boneBack, boneFront, skinFront;
};

struct Limb {
    std::string name;
    int parent = -1;            // index; -1 for the root
    Point joint;                // where its axis starts
    Degrees angle;              // from straight down, turning toward the viewer's right
    std::vector<Level> levels;  // rising along the axis
};

struct ReferenceBody {
    Sex sex{};
    double ageYears = 0.0;
    Cm stature;
    Kg weight;
};

struct NamedPoint {
    int limb = 0;
    Point at;
};

struct NamedPath {
    int limb = 0;
    Ring ring;
};

struct Plate {
    View view{};
    bool markable = false;
    Degrees azimuth;  // 0 seen from the front, 90 from the lateral side, 180 from behind
    ReferenceBody reference;
    Bounds paper;  // the viewBox, in the frame
    std::vector<Tone> tones;
    std::vector<Gradient> gradients;
    std::vector<Limb> limbs;                                // painter's order, bottom first
    std::vector<Structure> structures;                      // painter's order, bottom first
    std::map<std::string, NamedPoint, std::less<>> points;  // landmark.*, joint.*
    std::map<std::string, NamedPath, std::less<>> lines;    // line.*
    std::map<std::string, NamedPath, std::less<>> areas;    // area.*

    [[nodiscard]] int limbNamed(std::string_view name) const;  // -1 when there is none
};

// Names a view cannot do without; a plate that lacks one is refused.
[[nodiscard]] std::vector<std::string> requiredNames(View view);

// What the four edges of a level are called in a view, in order across (negative side first).
[[nodiscard]] std::array<std::string_view, 4> edgeNames(View view);

// The point that stays at the origin of the frame on every body.
[[nodiscard]] std::string_view firstLandmark(View view);

// Reads and checks one plate. `file` names it in a fault. Refused: anything outside the SVG
// subset (scripts, links, entities, styles, transforms, strokes), a missing or doubled name,
// a colour that is no named tone, levels or edges out of order. Never throws.
[[nodiscard]] Result<Plate> parsePlate(std::string_view svg, const std::string& file);

}  // namespace fb
