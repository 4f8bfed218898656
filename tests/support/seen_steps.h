// What an assessor saw, for tests of the procedure: whole orders of steps with time enough between them, and
// breaches told in one line each.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "core/procedure/observed.h"

namespace fb::test {

using StepList = std::vector<ProcedureStep>;

// Longer than any step has to be waited for.
inline constexpr double kUnhurried = 11.0;

[[nodiscard]] inline std::vector<Protocol> everyProtocol()
{
    std::vector<Protocol> all;
    for (int bits = 0; bits < 16; ++bits)
        all.push_back({(bits & 1) != 0, (bits & 2) != 0, (bits & 4) != 0, (bits & 8) != 0});
    return all;
}

// All but the recap, in the order of teaching.
[[nodiscard]] inline StepList everyStep()
{
    StepList all;
    for (int i = 0; i < kProcedureStepCount; ++i) {
        if (procedureStepAt(i) != ProcedureStep::Recap)
            all.push_back(procedureStepAt(i));
    }
    return all;
}

[[nodiscard]] inline StepList ofProtocol(StepList steps, const Protocol& protocol)
{
    std::erase_if(steps, [&](ProcedureStep step) { return !belongs(step, protocol); });
    return steps;
}

[[nodiscard]] inline std::vector<SheetStep> sheetOf(const StepList& steps, bool critical = false)
{
    std::vector<SheetStep> sheet;
    for (const ProcedureStep step : steps)
        sheet.push_back({step, critical});
    return sheet;
}

[[nodiscard]] inline std::vector<Observation> doneInOrder(const StepList& steps)
{
    std::vector<Observation> seen;
    for (const ProcedureStep step : steps)
        seen.push_back({step, Seen::Done, kUnhurried * static_cast<double>(seen.size())});
    return seen;
}

// "P1 hard identify before insert", "P3 soft swab_stopper 10 s before draw_up".
[[nodiscard]] inline std::string told(ConstraintId id, ConstraintKind kind, Severity severity,
                                      ProcedureStep first, ProcedureStep then, double seconds)
{
    std::string text = "P" + std::to_string(id) + (severity == Severity::Hard ? " hard " : " soft ");
    text += wordOf(first);
    switch (kind) {
    case ConstraintKind::Before: text += " before "; break;
    case ConstraintKind::After: text += " leaves "; break;
    case ConstraintKind::Never: text += " never then "; break;
    case ConstraintKind::AtLeast:
        text += " " + std::to_string(static_cast<int>(seconds)) + " s before ";
        break;
    }
    return text + std::string(wordOf(then));
}

[[nodiscard]] inline std::string told(const Breach& one)
{
    return told(one.id, one.kind, one.severity, one.first, one.then, one.seconds);
}

[[nodiscard]] inline std::string told(const Constraint& one)
{
    return told(one.id, one.kind, one.severity, one.first, one.then, one.seconds);
}

[[nodiscard]] inline std::vector<std::string> told(const std::vector<Breach>& breaches)
{
    std::vector<std::string> lines;
    for (const Breach& one : breaches)
        lines.push_back(told(one));
    return lines;
}

[[nodiscard]] inline std::string told(const Protocol& protocol)
{
    return std::string(protocol.cleansSkin ? "cleans " : "") + (protocol.zTrack ? "z-track " : "") +
           (protocol.aspirates ? "aspirates " : "") + (protocol.filterNeedle ? "filter" : "");
}

}  // namespace fb::test
