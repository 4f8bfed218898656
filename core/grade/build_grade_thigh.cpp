// The thigh's part of build_steps.h.
#include <algorithm>
#include <cmath>

#include "core/build/thigh_build.h"
#include "core/grade/build_steps.h"

namespace fb {

namespace thigh_grade_detail {

// Only how far up or down an end lies counts: the thigh is measured along.
double endOff(const StepWriter& writer, Handle end)
{
    return writer.target().toSkin(*writer.hers().point(end)).y -
           writer.target().toSkin(*writer.flawless().point(end)).y;
}

void gradeEnds(StepWriter& writer)
{
    const double limit = writer.limit(PolicyKey::BuildPlace);
    const double top = endOff(writer, Handle::ThighTop);
    const double bottom = endOff(writer, Handle::ThighBottom);
    if (std::max(std::abs(top), std::abs(bottom)) <= limit + kBorderTolerance)
        return writer.right(BuildStep::ThighEnds);
    const bool topFirst = std::abs(top) > limit + kBorderTolerance;
    const Handle worse = topFirst ? Handle::ThighTop : Handle::ThighBottom;
    const double off = topFirst ? top : bottom;
    // The lines across go with the span they divide.
    Build alone = writer.flawless();
    const double upper = lineShare(alone, writer.target(), Handle::UpperLine);
    const double lower = lineShare(alone, writer.target(), Handle::LowerLine);
    alone.point(worse) = *writer.hers().point(worse);
    const Point from = *alone.point(Handle::ThighTop);
    const Point to = *alone.point(Handle::ThighBottom);
    alone.point(Handle::UpperLine) = lerp(from, to, upper);
    alone.point(Handle::LowerLine) = lerp(from, to, lower);
    writer.slip(BuildStep::ThighEnds,
                {{},
                 topFirst ? Slip::TopOff : Slip::BottomOff,
                 off > 0.0 ? Direction::High : Direction::Low,
                 {},
                 Cm{rounded6(std::abs(off))},
                 {},
                 0.0,
                 {}},
                alone);
}

void gradeThirds(StepWriter& writer)
{
    // Whichever line lies higher is the upper one, as siteBy() takes them.
    const auto shares = [&](const Build& build) {
        return std::minmax({lineShare(build, writer.target(), Handle::UpperLine),
                            lineShare(build, writer.target(), Handle::LowerLine)});
    };
    const auto hers = shares(writer.hers());
    const auto wanted = shares(writer.flawless());
    const double upper = hers.first - wanted.first;
    const double lower = hers.second - wanted.second;
    const double worse = std::abs(upper) >= std::abs(lower) ? upper : lower;
    if (std::abs(worse) <= writer.limit(PolicyKey::BuildShare) + kBorderTolerance)
        return writer.right(BuildStep::Thirds);
    Build alone = writer.flawless();
    for (const Handle line : {Handle::UpperLine, Handle::LowerLine})
        alone.point(line) = lerp(*alone.point(Handle::ThighTop), *alone.point(Handle::ThighBottom),
                                 lineShare(writer.hers(), writer.target(), line));
    writer.slip(BuildStep::Thirds,
                {{},
                 Slip::ThirdsUneven,
                 worse > 0.0 ? Direction::Low : Direction::High,
                 {},
                 {},
                 {},
                 std::abs(worse),
                 {}},
                alone);
}

void gradeLine(StepWriter& writer, BuildStep step, Slip slip, Handle line)
{
    const double off = lineOff(writer.hers(), writer.target(), line);
    if (std::abs(off) <= writer.limit(PolicyKey::BuildPlace) + kBorderTolerance)
        return writer.right(step);
    Build alone = writer.flawless();
    alone.point(line) = *writer.hers().point(line);
    writer.slip(step,
                {{},
                 slip,
                 off > 0.0 ? Direction::Forward : Direction::Back,
                 {},
                 Cm{rounded6(std::abs(off))},
                 {},
                 0.0,
                 {}},
                alone);
}

}  // namespace thigh_grade_detail

using namespace thigh_grade_detail;

void gradeThighBuild(StepWriter& writer)
{
    gradeEnds(writer);
    gradeThirds(writer);
    gradeLine(writer, BuildStep::FrontLine, Slip::FrontLineOff, Handle::FrontLine);
    gradeLine(writer, BuildStep::OuterLine, Slip::OuterLineOff, Handle::OuterLine);
    if (writer.hers().cell == writer.flawless().cell)
        return writer.right(BuildStep::Cell);
    Build alone = writer.flawless();
    alone.cell = writer.hers().cell;
    writer.slip(BuildStep::Cell, {{}, Slip::WrongCell, {}, {}, {}, {}, 0.0, {}}, alone);
}

}  // namespace fb
