// What judge() should say, read slowly from the rules: another way to the same breaches, for laws. Of
// observations that lie in order, one a step.
#pragma once

#include <optional>
#include <set>

#include "tests/support/seen_steps.h"

namespace fb::test {

// What an assessor may have put in, however odd.
struct Judged {
    Protocol protocol;
    std::vector<SheetStep> sheet;
    std::vector<Observation> seen;
    std::optional<double> held, heldAtLeast;
};

// The rules of core/procedure/observed.h once more, as they read.
class SlowReading {
public:
    explicit SlowReading(const Judged& judged) : m_judged(judged) {}

    [[nodiscard]] std::multiset<std::string> breaches() const
    {
        std::multiset<std::string> lines;
        for (const Constraint& row : constraints()) {
            if (!holds(row.when, m_judged.protocol))
                continue;
            if (row.kind == ConstraintKind::Before)
                follow(row, row.first, row.severity, lines);
            else if (isBroken(row))
                lines.insert(told(row.id, row.kind, row.severity, row.first, row.then, asked(row)));
        }
        return lines;
    }
    [[nodiscard]] bool watched(ProcedureStep step) const
    {
        const auto on = std::ranges::find(m_judged.sheet, step, &SheetStep::step);
        return (on != m_judged.sheet.end() && belongs(step, m_judged.protocol)) || seen(step) != nullptr;
    }
    // Drawn observations are one a step and lie in order.
    [[nodiscard]] const Observation* seen(ProcedureStep step) const
    {
        for (const Observation& one : m_judged.seen) {
            if (one.step == step && one.seen != Seen::NotDone)
                return &one;
        }
        return nullptr;
    }

private:
    // From `first` by links of one chain to the next step that is watched.
    void follow(const Constraint& row, ProcedureStep first, Severity severity,
                std::multiset<std::string>& lines) const
    {
        const bool direct = row.first == first;
        if (!watched(first) || (!direct && linked(first, row.then)))
            return;
        if (watched(row.then)) {
            if (seen(row.then) != nullptr && !(seen(first) != nullptr && seen(first) < seen(row.then)))
                lines.insert(told(row.id, row.kind, severity, first, row.then, 0.0));
            return;
        }
        for (const Constraint& next : constraints()) {
            if (holds(next.when, m_judged.protocol) && next.kind == ConstraintKind::Before &&
                next.id == row.id && next.first == row.then)
                follow(next, first, severity == Severity::Soft ? severity : next.severity, lines);
        }
    }
    [[nodiscard]] bool linked(ProcedureStep first, ProcedureStep then) const
    {
        return std::ranges::any_of(constraints(), [&](const Constraint& row) {
            return holds(row.when, m_judged.protocol) && row.first == first && row.then == then;
        });
    }
    [[nodiscard]] double asked(const Constraint& row) const
    {
        return row.id == 13 ? m_judged.heldAtLeast.value_or(row.seconds) : row.seconds;
    }
    [[nodiscard]] bool isBroken(const Constraint& row) const
    {
        const Observation* first = seen(row.first);
        const Observation* then = seen(row.then);
        const bool inOrder = first != nullptr && then != nullptr && first < then;
        if (row.kind == ConstraintKind::Never)
            return then != nullptr && (inOrder || !watched(row.first));
        if (row.kind == ConstraintKind::After)
            return first != nullptr && watched(row.then) && !inOrder;
        if (!inOrder)
            return false;
        const double between = then->at - first->at;
        return (row.id == 13 ? m_judged.held.value_or(between) : between) < asked(row);
    }

    const Judged& m_judged;
};

}  // namespace fb::test
