#include "app/lecture/lecture_look_hand.h"

#include <algorithm>
#include <array>
namespace fb {

namespace lecture_look_hand_detail {

struct Stage {
    StepCode step{};
    Handle handle{};
};

constexpr std::array kStages{Stage{StepCode::LayPalm, Handle::Palm},
                             Stage{StepCode::IndexOnSpine, Handle::IndexTip},
                             Stage{StepCode::MiddleAlongCrest, Handle::MiddleTip}};

}  // namespace lecture_look_hand_detail

std::optional<HandPose> handDuring(const Target& target, const Builder& builder, StepCode newest,
                                   double progress)
{
    using namespace lecture_look_hand_detail;
    const auto stage = std::ranges::find(kStages, newest, &Stage::step);
    const std::optional<HandPose>& arrived = target.hand;
    const bool isLast = newest == kStages.back().step;
    if (!arrived || buildKindOf(target.convention) != BuildKind::HandOnHip || stage == kStages.end() ||
        (isLast && progress >= 1.0))
        return arrived;
    const Build flawless = flawlessBuild(target, builder);
    Build build = withHand(emptyBuild(target), target, builder, arrived->hand);
    for (auto each = kStages.begin(); each <= stage; ++each) {
        const auto from = handleAt(build, target, builder, each->handle);
        const auto to = handleAt(flawless, target, builder, each->handle);
        const double share = each == stage ? std::clamp(progress, 0.0, 1.0) : 1.0;
        if (from && to)
            build = placed(build, target, builder, each->handle, lerp(*from, *to, share));
    }
    HandPose pose = poseOf(*build.hand, builder.hand);
    pose.pin = arrived->pin;
    return pose;
}

std::vector<LaidBar> laidBars(const LectureLook& look)
{
    std::vector<LaidBar> bars;
    if (look.hand)
        bars = barsOf(*look.hand);
    if (look.fingers)
        std::ranges::copy(barsOf(*look.fingers, Cm{look.fingerCm}), std::back_inserter(bars));
    return bars;
}

}  // namespace fb
