// The steps a site is shown in, from the target's own construction: skin; each bone pressed, then named; each
// thing laid or drawn; region and ideal point; what lies around; each wrong place with what it would hurt.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/site/hazard.h"
#include "core/site/target.h"

namespace fb {

enum class LectureStepKind {
    Skin,       // nothing but the patient
    Press,      // a fingertip presses on a bone; nothing is named yet
    Build,      // a landmark is named, something is laid or drawn
    Hazards,    // what a needle can hit, all of it
    WrongPlace  // one of them: where not, and the harm
};
inline constexpr int kLectureStepKindCount = static_cast<int>(LectureStepKind::WrongPlace) + 1;

struct LectureStep {
    LectureStepKind kind{};
    int construction = -1;  // Press, Build: index as in watchScene(); of the others the last one
    StepCode code{};        // Press, Build
    HazardCode hazard{};    // WrongPlace

    friend bool operator==(const LectureStep&, const LectureStep&) = default;
};

[[nodiscard]] std::vector<LectureStep> lectureSteps(const Target& target);
// The step of other steps that shows the same, else the nearest before it: where to go on when the body or
// the convention changed.
[[nodiscard]] int sameStep(const std::vector<LectureStep>& steps, const LectureStep& step);

[[nodiscard]] std::string_view wordOf(LectureStepKind kind);
// By which speaker notes and hand-outs call it: "skin", "press feel_spine", "build region", "hazards",
// "wrong_place sciatic_nerve".
[[nodiscard]] std::string keyOf(const LectureStep& step);

}  // namespace fb
