#include "app/practice/watched.h"

#include <algorithm>

#include "app/practice/practice_state.h"
#include "core/build/laying.h"

namespace fb {

namespace watched_detail {

bool isShown(const Step& step) { return !step.points.empty(); }

}  // namespace watched_detail

Target watchedTarget(const Target& target, const Builder& builder)
{
    Target watched = target;
    watched.construction = taughtSteps(target, builder);
    return watched;
}

std::optional<LaidFingers> watchedFingers(const PracticeState& state)
{
    if (!state.byHand || !state.byHand->watching || !state.target)
        return std::nullopt;
    const Builder& builder = state.byHand->builder;
    bool laid = false;
    int left = *state.byHand->watching;
    for (const Step& step : taughtSteps(*state.target, builder)) {
        if (!watched_detail::isShown(step))
            continue;
        if (step.code == StepCode::Region)
            return std::nullopt;
        laid = laid || step.code == StepCode::LayFingers;
        if (left-- == 0)
            break;
    }
    if (!laid)
        return std::nullopt;
    auto fingers = flawlessBuild(*state.target, builder).fingers;
    if (fingers)
        fingers->hand = opposite(state.own.handedness);
    return fingers;
}

}  // namespace fb
