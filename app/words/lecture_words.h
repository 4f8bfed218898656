// The words of a demonstration: what each step is called and what is said of it to the room.
#pragma once

#include <QString>

#include "core/body/body_values.h"
#include "core/feel/feel.h"
#include "core/site/hazard.h"
#include "core/site/target.h"

namespace fb {

// "Deltoid site, left arm", "Ventrogluteal site, right hip"
[[nodiscard]] QString lectureHeading(Site site, Side side);
// Of the first step: who is seen and how they lie, in one sentence.
[[nodiscard]] QString skinCaption(const Target& target);
// What a fingertip looks for, without naming the bone: "Press below the edge of the shoulder until bone stops
// the finger."
[[nodiscard]] QString pressCaption(StepCode code);
// All that lies around the site, one sentence.
[[nodiscard]] QString hazardsCaption(Site site);
// Where not to inject and what it would hurt, two short sentences at most.
[[nodiscard]] QString wrongPlaceCaption(HazardCode hazard);
// On the plate, two or three words that can be read from the back of a room: what a step adds, and what a
// needle would meet in a place. Whole sentences stand in the captions.
[[nodiscard]] QString plateWord(StepCode code);
[[nodiscard]] QString plateWord(HazardCode hazard);
[[nodiscard]] QString fingerbreadths(int count);           // "2 fingerbreadths"
[[nodiscard]] QString stoutnessName(Stoutness stoutness);  // "Lean", "Average", "Heavy"
// "Woman, 40 years, 165 cm, 65 kg"
[[nodiscard]] QString bodyText(const BodyValues& values);
// "Body-mass index 24"
[[nodiscard]] QString bodyMassIndexText(double kgPerM2);

}  // namespace fb
