// How a limb's named levels and edges move from the reference body to a patient.
//
// Along the limb, levels follow lengths. Across, bone edges follow the size of the skeleton
// and skin edges follow the breadths and depths of the survey: fat moves skin, never bone.
// However lean, a quarter of the drawn flesh stays over every bone.
// A level the rule does not know follows its limb's length and breadth as a whole.
#pragma once

#include <vector>

#include "core/basics/units.h"
#include "core/body/limb_map.h"
#include "core/body/proportions.h"
#include "core/plate/plate.h"

namespace fb {

// The patient's rows for the limb's drawn levels, ordered, neighbours at least kLeastGap
// apart. Equal measures give the drawn rows back. azimuth: of the view, 0 front, 90 lateral.
[[nodiscard]] std::vector<LevelRow> patientLevels(const Limb& limb, Degrees azimuth,
                                                  const BodyMeasures& reference, const BodyMeasures& patient);

// The patient's bones in the reference body's flesh, scaled with them: a body on which stature,
// sex and age alone have a say. Bones are moved by its levels, so that fat moves none of them.
[[nodiscard]] BodyMeasures skeletonOf(const BodyMeasures& reference, const BodyMeasures& patient);

// The patient's muscle: of what a body gains over its skeleton's flesh, muscle takes a part and
// fat the rest; a lean body's muscle shrinks with its skin. Heights are the patient's own.
[[nodiscard]] BodyMeasures muscleOf(const BodyMeasures& reference, const BodyMeasures& patient);

}  // namespace fb
