// Reading a moved plate: where its named points, lines and areas lie on this patient.
#pragma once

#include <string_view>
#include <vector>

#include "core/body/body_map.h"
#include "core/geometry/polygon.h"
#include "core/plate/plate.h"

namespace fb {

class Places {
public:
    // Both outlive this.
    Places(const Plate& plate, const BodyMap& map) : m_plate(plate), m_map(map) {}

    [[nodiscard]] const Plate& plate() const { return m_plate; }
    [[nodiscard]] const BodyMap& map() const { return m_map; }

    // Names as the plate carries them; every one asked is among requiredNames() of its view.
    // Landmarks move with the bones, but for the folds of the armpit, which are skin.
    [[nodiscard]] Point landmark(std::string_view id) const;
    [[nodiscard]] std::vector<Point> boneLine(std::string_view id) const;
    [[nodiscard]] Polygon boneArea(std::string_view id) const;

    // A limb's drawn outline between two of its levels, back (or outer) and front (or inner).
    struct Outline {
        std::vector<Point> back, front;
    };
    [[nodiscard]] Outline outline(std::string_view limb, std::string_view from, std::string_view to) const;

private:
    const Plate& m_plate;
    const BodyMap& m_map;
};

// A line without its dents: corners inside the chord of their neighbours are left out. The line
// turns counter-clockwise as a whole; its ends stay.
[[nodiscard]] std::vector<Point> domeOf(const std::vector<Point>& line);

// "landmark.greater-trochanter" to "greater_trochanter"; the acromion's lateral edge is "acromion".
[[nodiscard]] std::string publicName(std::string_view landmark);

}  // namespace fb
