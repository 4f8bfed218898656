// Fat under the skin, between finger or needle and muscle. A simple estimate from sex and
// body-mass index, behind one function that a fuller model can replace.
#pragma once

#include "core/basics/enums.h"
#include "core/basics/units.h"
#include "core/body/patient.h"
#include "core/body/proportions.h"

namespace fb {

// Skin and fat over the muscle of a site, mm. Coefficients and sources: the proportions' file.
// Deltoid: half the triceps skinfold. Thigh: straight in the index. Hip: rising by a constant
// share with the index, straight above a thickness named in the file.
[[nodiscard]] Mm fatOver(Site site, const Proportions& proportions, const Patient& patient);

}  // namespace fb
