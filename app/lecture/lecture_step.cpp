#include "app/lecture/lecture_step.h"

#include <algorithm>
#include <array>

#include "app/scene/by_hand_scene.h"

namespace fb {

std::vector<LectureStep> lectureSteps(const Target& target)
{
    std::vector<LectureStep> steps{{LectureStepKind::Skin}};
    int index = 0;
    for (const Step& step : target.construction) {
        if (step.points.empty())
            continue;
        if (watchPress(target, index))
            steps.push_back({LectureStepKind::Press, index, step.code, {}});
        steps.push_back({LectureStepKind::Build, index, step.code, {}});
        ++index;
    }
    steps.push_back({LectureStepKind::Hazards, index - 1, {}, {}});
    for (const Hazard& hazard : target.hazards)
        if (hazard.kind != HazardKind::Near)
            steps.push_back({LectureStepKind::WrongPlace, index - 1, {}, hazard.code});
    return steps;
}

int sameStep(const std::vector<LectureStep>& steps, const LectureStep& step)
{
    // The very step first: fingers and medians are several of one code.
    auto same = std::ranges::find(steps, step);
    if (same == steps.end())
        same = std::ranges::find_if(steps, [&](const LectureStep& each) {
            return each.kind == step.kind && each.code == step.code && each.hazard == step.hazard;
        });
    if (same != steps.end())
        return static_cast<int>(same - steps.begin());
    if (step.kind == LectureStepKind::WrongPlace || step.kind == LectureStepKind::Hazards) {
        const auto hazards = std::ranges::find(steps, LectureStepKind::Hazards, &LectureStep::kind);
        return static_cast<int>(hazards - steps.begin());
    }
    int nearest = 0;
    for (std::size_t i = 0; i < steps.size(); ++i)
        if (steps[i].construction >= 0 && steps[i].construction <= step.construction &&
            (steps[i].kind == LectureStepKind::Press || steps[i].kind == LectureStepKind::Build))
            nearest = static_cast<int>(i);
    return nearest;
}

std::string_view wordOf(LectureStepKind kind)
{
    static constexpr std::array<std::string_view, kLectureStepKindCount> kWords{"skin", "press", "build",
                                                                                "hazards", "wrong_place"};
    return kWords[static_cast<std::size_t>(kind)];
}

std::string keyOf(const LectureStep& step)
{
    std::string key(wordOf(step.kind));
    if (step.kind == LectureStepKind::Press || step.kind == LectureStepKind::Build)
        key += ' ' + std::string(wordOf(step.code));
    if (step.kind == LectureStepKind::WrongPlace)
        key += ' ' + std::string(wordOf(step.hazard));
    return key;
}

}  // namespace fb
