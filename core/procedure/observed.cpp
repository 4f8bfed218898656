#include "core/procedure/observed.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <utility>

namespace fb {

namespace observed_detail {

constexpr std::array<std::string_view, kSeenCount> kSeenWords{"done", "prompted", "not_done"};

std::size_t stepIndex(ProcedureStep step) { return static_cast<std::size_t>(step); }

struct SeenPlace {
    int rank = 0;  // in the order of what was seen
    double at = 0.0;
    bool prompted = false;
};

// What was seen of each step, and which steps are watched for.
class SeenSteps {
public:
    SeenSteps(std::span<const SheetStep> sheet, const Protocol& protocol, std::span<const Observation> seen)
    {
        for (const SheetStep& step : sheet)
            m_watched[stepIndex(step.step)] = belongs(step.step, protocol);
        int rank = 0;
        for (const Observation* one : inOrderOf(seen)) {
            m_places[stepIndex(one->step)] = SeenPlace{rank++, one->at, one->seen == Seen::Prompted};
            m_watched[stepIndex(one->step)] = true;
        }
    }

    [[nodiscard]] const std::optional<SeenPlace>& of(ProcedureStep step) const
    {
        return m_places[stepIndex(step)];
    }
    [[nodiscard]] bool watches(ProcedureStep step) const { return m_watched[stepIndex(step)]; }
    [[nodiscard]] bool inOrder(ProcedureStep first, ProcedureStep then) const
    {
        return of(first) && of(then) && of(first)->rank < of(then)->rank;
    }

private:
    static std::vector<const Observation*> inOrderOf(std::span<const Observation> seen)
    {
        std::array<const Observation*, kProcedureStepCount> last{};
        for (const Observation& one : seen)
            last[stepIndex(one.step)] = &one;
        std::vector<const Observation*> order;
        for (const Observation& one : seen) {
            if (last[stepIndex(one.step)] == &one && one.seen != Seen::NotDone)
                order.push_back(&one);
        }
        std::ranges::stable_sort(order, {}, [](const Observation* one) { return one->at; });
        return order;
    }

    std::array<std::optional<SeenPlace>, kProcedureStepCount> m_places;
    std::array<bool, kProcedureStepCount> m_watched{};
};

bool linksAny(std::span<const Constraint> rows, ProcedureStep first, ProcedureStep then)
{
    return std::ranges::any_of(rows,
                               [&](const Constraint& row) { return row.first == first && row.then == then; });
}

// The constraints of the protocol, and across each step that nobody watches for a link of its neighbours.
std::vector<Constraint> rowsFor(const Protocol& protocol, const SeenSteps& scene)
{
    std::vector<Constraint> rows;
    std::ranges::copy_if(constraints(), std::back_inserter(rows),
                         [&](const Constraint& row) { return holds(row.when, protocol); });
    const std::vector<Constraint> taught = rows;
    for (std::size_t i = 0; i < rows.size(); ++i) {  // links of links are found on the way
        const Constraint row = rows[i];
        if (row.kind != ConstraintKind::Before || scene.watches(row.then))
            continue;
        for (const Constraint& next : taught) {
            if (next.kind == ConstraintKind::Before && next.id == row.id && next.first == row.then &&
                !linksAny(rows, row.first, next.then))
                rows.push_back(
                    {row.id, row.kind, std::max(row.severity, next.severity), row.first, next.then});
        }
    }
    std::erase_if(rows, [&](const Constraint& row) {
        const bool recap = row.kind == ConstraintKind::Never;
        return !scene.watches(row.then) || (!scene.watches(row.first) && !recap);
    });
    return rows;
}

bool isBroken(const Constraint& row, const SeenSteps& scene)
{
    const bool inOrder = scene.inOrder(row.first, row.then);
    switch (row.kind) {
    case ConstraintKind::Before: return scene.of(row.then) && !inOrder;
    case ConstraintKind::After: return scene.of(row.first) && !inOrder;
    case ConstraintKind::Never: return inOrder || !scene.watches(row.first);
    case ConstraintKind::AtLeast: return false;  // by its seconds
    }
    return {};
}

// Clocks give milliseconds; the difference of two of them as seconds need not.
double toMillisecond(double seconds) { return std::round(seconds * 1000.0) / 1000.0; }

std::optional<Breach> breachOf(const Constraint& row, const SeenSteps& scene, std::optional<double> held,
                               std::optional<double> heldAtLeast)
{
    Breach breach{row.id, row.kind, row.severity, row.first, row.then};
    if (row.kind != ConstraintKind::AtLeast)
        return isBroken(row, scene) ? std::optional(breach) : std::nullopt;
    if (!scene.inOrder(row.first, row.then))
        return std::nullopt;
    const bool isHeld = row.first == ProcedureStep::Inject && row.then == ProcedureStep::Withdraw;
    const double between = scene.of(row.then)->at - scene.of(row.first)->at;
    breach.was = toMillisecond(isHeld ? held.value_or(between) : between);
    breach.seconds = isHeld ? heldAtLeast.value_or(row.seconds) : row.seconds;
    return breach.was < breach.seconds ? std::optional(breach) : std::nullopt;
}

// Of one point.
double earnedBy(ProcedureStep step, const SeenSteps& scene, const std::vector<Breach>& breaches,
                double promptedShare)
{
    const auto spoils = [step](const Breach& breach) {
        return breach.severity == Severity::Soft && breach.then == step;
    };
    if (!scene.of(step) || std::ranges::any_of(breaches, spoils))
        return 0.0;
    return scene.of(step)->prompted ? promptedShare : 1.0;
}

}  // namespace observed_detail

using namespace observed_detail;

bool ProcedureGrade::isUnsafe() const
{
    return std::ranges::any_of(breaches,
                               [](const Breach& breach) { return breach.severity == Severity::Hard; });
}

ProcedureGrade judge(std::span<const SheetStep> sheet, const Protocol& protocol,
                     std::span<const Observation> seen, std::optional<double> held, double promptedShare,
                     std::optional<double> heldAtLeast)
{
    const SeenSteps scene(sheet, protocol, seen);
    ProcedureGrade grade;
    for (const Constraint& row : rowsFor(protocol, scene)) {
        if (const auto breach = breachOf(row, scene, held, heldAtLeast))
            grade.breaches.push_back(*breach);
    }
    std::ranges::stable_sort(grade.breaches, {},
                             [](const Breach& breach) { return std::pair(breach.severity, breach.id); });
    for (const SheetStep& step : sheet) {
        if (!belongs(step.step, protocol))
            continue;
        grade.possible += 1.0;
        grade.earned += earnedBy(step.step, scene, grade.breaches, promptedShare);
        const auto& place = scene.of(step.step);
        if (step.critical && (!place || place->prompted))
            grade.missedCritical.push_back(step.step);
    }
    std::ranges::sort(grade.missedCritical);
    return grade;
}

std::string_view wordOf(Seen seen) { return kSeenWords[static_cast<std::size_t>(seen)]; }

std::optional<Seen> seenFrom(std::string_view word)
{
    const auto found = std::ranges::find(kSeenWords, word);
    if (found == kSeenWords.end())
        return std::nullopt;
    return static_cast<Seen>(found - kSeenWords.begin());
}

}  // namespace fb
