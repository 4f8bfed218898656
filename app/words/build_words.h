// The words of building a site by hand: what each handle is and what is done with it, each choice,
// each stage; what the program does when it shows how. The instructions teach the method and
// give no place away.
#pragma once

#include <QString>

#include "core/build/build.h"
#include "core/session/by_hand.h"
#include "core/site/target.h"

namespace fb {

// "Feel", "Build", "Mark": short, for the rail.
[[nodiscard]] QString stageName(ByHandStage stage);
// What there is to do in a stage, one or two sentences.
[[nodiscard]] QString stageInstruction(ByHandStage stage, Convention convention);

// "Palm", "Index fingertip", "Upper line across"
[[nodiscard]] QString handleName(Handle handle);
// "Lay the middle of your palm over the greater trochanter."
[[nodiscard]] QString handleInstruction(Handle handle, Convention convention);

[[nodiscard]] QString choiceName(BuildChoice choice);
// As a question: "Which hand finds this hip?"
[[nodiscard]] QString choiceInstruction(BuildChoice choice);
// What there is to choose from.
[[nodiscard]] QString handName(Side hand);         // "Left hand"
[[nodiscard]] QString fingerCountName(int count);  // 2 or 3
[[nodiscard]] QString cellName(ThighCell cell);    // "Middle row, between the two lines"

// What is missing, by the word core gives it (wordOf of a handle or a choice); empty for any other.
[[nodiscard]] QString partName(const QString& word);

// What the hand does in a step that the program shows, one sentence.
[[nodiscard]] QString watchCaption(const Target& target, const Step& step);

}  // namespace fb
