// The smooth, invertible map of one limb from the plate to this patient.
//
// Local coordinates: `along` from the joint along the limb's axis, `across` square to it
// (positive to the viewer's right of an axis that points straight down). Along, levels move
// by a monotone curve; across, at each height a monotone curve runs through the ordered edges
// skin, bone, axis, bone, skin. `along` depends on `along` only and `across` is monotone at
// each height: one to one, no fold, exact inverse.
//
// Laws: toDrawn(toPatient(p)) == p to 1e-9 cm; equal levels and edges give the identity.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/geometry/monotone_curve.h"
#include "core/geometry/point.h"

namespace fb {

// Edges across at one level, cm from the axis, in order: skin back, bone back, bone front,
// skin front. The axis (0) lies between the two bones.
using EdgeRow = std::array<double, 4>;

struct LevelRow {
    double along = 0.0;
    EdgeRow edges{};
};

inline constexpr double kLeastGap = 0.2;  // cm between neighbouring edges, and between levels

// Moves outer edges outward until every neighbour (the axis included) is kLeastGap away.
[[nodiscard]] EdgeRow spread(EdgeRow edges);

class LimbMap {
public:
    // Both tables list the same levels in the same order, at least two and at most 8, along
    // rising; nullopt otherwise.
    [[nodiscard]] static std::optional<LimbMap> make(std::vector<LevelRow> drawn,
                                                     std::vector<LevelRow> patient);

    // Points are (across, along).
    [[nodiscard]] Point toPatient(Point drawn) const;
    [[nodiscard]] Point toDrawn(Point patient) const;
    [[nodiscard]] double alongToPatient(double drawnAlong) const { return m_along.at(drawnAlong); }

    // The patient's edges at a height of the patient; between levels they blend smoothly.
    [[nodiscard]] EdgeRow patientEdges(double patientAlong) const;
    [[nodiscard]] const std::vector<LevelRow>& patientLevels() const { return m_patient; }

private:
    LimbMap(std::vector<LevelRow> drawn, std::vector<LevelRow> patient, MonotoneCurve along);
    [[nodiscard]] MonotoneCurve acrossAt(double drawnAlong) const;

    std::vector<LevelRow> m_drawn;
    std::vector<LevelRow> m_patient;
    MonotoneCurve m_along;
};

}  // namespace fb
