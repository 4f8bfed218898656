// The arm's part of build_steps.h.
#include <cmath>

#include "core/build/arm_build.h"
#include "core/grade/build_steps.h"
#include "core/grade/flag_grade.h"

namespace fb {

namespace arm_grade_detail {

void gradeFingers(StepWriter& writer)
{
    const LaidFingers& hers = *writer.hers().fingers;
    const LaidFingers& wanted = *writer.flawless().fingers;
    const double off = distance(hers.top, wanted.top);
    if (off <= writer.limit(PolicyKey::BuildPlace) + kBorderTolerance) {
        writer.right(BuildStep::FingersLaid);
    } else {
        Build alone = writer.flawless();
        alone.fingers->top = hers.top;
        writer.slip(BuildStep::FingersLaid, writer.offPlace(Slip::FingersOff, wanted.top, hers.top), alone);
    }
    if (std::abs(hers.turn.value()) <= writer.limit(PolicyKey::BuildFingerTurn) + kBorderTolerance) {
        writer.right(BuildStep::FingersLevel);
    } else {
        Build alone = writer.flawless();
        alone.fingers->turn = hers.turn;
        writer.slip(BuildStep::FingersLevel,
                    {{}, Slip::FingersTurned, {}, {}, {}, Degrees{std::abs(hers.turn.value())}, 0.0, {}},
                    alone);
    }
    if (countFits(writer.target(), writer.builder(), hers.count)) {
        writer.right(BuildStep::FingerCount);
    } else {
        const double end = hers.count * writer.builder().hand.fingerWidth.value();
        Build alone = writer.flawless();
        alone.fingers->count = hers.count;
        writer.slip(BuildStep::FingerCount,
                    {{},
                     Slip::FingerCount,
                     hers.count > wanted.count ? Direction::Low : Direction::High,
                     {},
                     Cm{rounded6(end)},
                     {},
                     0.0,
                     {}},
                    alone);
    }
}

// The base's two corners are one step: the worse of them is told.
void gradeTriangle(StepWriter& writer)
{
    const auto off = [&](Handle handle) {
        return distance(*writer.hers().point(handle), *writer.flawless().point(handle));
    };
    const Handle worse =
        off(Handle::BaseFront) >= off(Handle::BaseBack) ? Handle::BaseFront : Handle::BaseBack;
    const double limit = writer.limit(PolicyKey::BuildPlace);
    writer.place(BuildStep::Base, Slip::BaseOff, worse, limit);
    writer.place(BuildStep::Apex, Slip::ApexOff, Handle::Apex, limit);
}

void gradeHalvedLine(StepWriter& writer)
{
    const auto off = [&](Handle handle) {
        return distance(*writer.hers().point(handle), *writer.flawless().point(handle));
    };
    const double limit = writer.limit(PolicyKey::BuildPlace);
    const bool topFirst = off(Handle::LineTop) > limit + kBorderTolerance;
    const Handle end = topFirst ? Handle::LineTop : Handle::LineBottom;
    if (off(end) <= limit + kBorderTolerance) {
        writer.right(BuildStep::LineEnds);
    } else {
        // The middle goes with the line it halves.
        Build alone = writer.flawless();
        const double half = middleShare(alone);
        alone.point(end) = *writer.hers().point(end);
        alone.point(Handle::LineMiddle) =
            lerp(*alone.point(Handle::LineTop), *alone.point(Handle::LineBottom), half);
        writer.slip(BuildStep::LineEnds,
                    writer.offPlace(topFirst ? Slip::TopOff : Slip::BottomOff, *writer.flawless().point(end),
                                    *writer.hers().point(end)),
                    alone);
    }
    const double share = middleShare(writer.hers());
    const double uneven = share - middleShare(writer.flawless());
    if (std::abs(uneven) <= writer.limit(PolicyKey::BuildShare) + kBorderTolerance)
        return writer.right(BuildStep::LineHalved);
    Build alone = writer.flawless();
    alone.point(Handle::LineMiddle) =
        lerp(*alone.point(Handle::LineTop), *alone.point(Handle::LineBottom), share);
    writer.slip(BuildStep::LineHalved,
                {{},
                 Slip::HalfUneven,
                 uneven > 0.0 ? Direction::Low : Direction::High,
                 {},
                 {},
                 {},
                 std::abs(uneven),
                 {}},
                alone);
}

}  // namespace arm_grade_detail

using namespace arm_grade_detail;

void gradeArmBuild(StepWriter& writer)
{
    if (buildKindOf(writer.hers().convention) == BuildKind::HalvedLine)
        return gradeHalvedLine(writer);
    gradeFingers(writer);
    gradeTriangle(writer);
}

}  // namespace fb
