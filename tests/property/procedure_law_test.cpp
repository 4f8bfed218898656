// Orders of steps by the thousand: any that keeps the constraints passes, what breaks one is named with
// nothing else, and the grade is that of a slow reading of the rules.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "core/basics/seed_stream.h"
#include "tests/property/sampling.h"
#include "tests/support/seen_steps.h"
#include "tests/support/slow_reading.h"

namespace fb::test::procedure_law_test {

namespace procedure_law_detail {

constexpr std::uint64_t kSeed = 1910;

Protocol drawnProtocol(SeedStream& stream)
{
    return everyProtocol()[static_cast<std::size_t>(stream.below(16))];
}

template <class T>
T drawnFrom(const std::vector<T>& all, SeedStream& stream)
{
    return all[static_cast<std::size_t>(stream.below(static_cast<int>(all.size())))];
}

template <class T>
T& drawnPlace(std::vector<T>& all, SeedStream& stream)
{
    return all[static_cast<std::size_t>(stream.below(static_cast<int>(all.size())))];
}

bool isOrdered(const Constraint& row, const Protocol& protocol)
{
    return holds(row.when, protocol) &&
           (row.kind == ConstraintKind::Before || row.kind == ConstraintKind::After);
}

// Any order that keeps the constraints.
StepList drawnOrder(const Protocol& protocol, SeedStream& stream)
{
    StepList left = ofProtocol(everyStep(), protocol);
    std::map<ProcedureStep, StepList> needs;
    for (const Constraint& row : constraints()) {
        if (isOrdered(row, protocol))
            needs[row.then].push_back(row.first);
    }
    StepList order;
    while (!left.empty()) {
        StepList free;
        std::ranges::copy_if(left, std::back_inserter(free), [&](ProcedureStep step) {
            return std::ranges::none_of(needs[step], [&](ProcedureStep needed) {
                return std::ranges::find(left, needed) != left.end();
            });
        });
        order.push_back(drawnFrom(free, stream));
        std::erase(left, order.back());
    }
    return order;
}

std::vector<Observation> unhurried(const StepList& order, SeedStream& stream)
{
    double at = 0.0;
    std::vector<Observation> seen;
    for (const ProcedureStep step : order)
        seen.push_back({step, Seen::Done, at += stream.between(kUnhurried, 60.0)});
    return seen;
}

std::string shown(const StepList& order, const Protocol& protocol, int round)
{
    std::string text =
        "seed " + std::to_string(kSeed) + " round " + std::to_string(round) + ": " + told(protocol);
    for (const ProcedureStep step : order)
        text += " " + std::string(wordOf(step));
    return text;
}

Judged drawnCheckOff(SeedStream& stream)
{
    Judged drawn{drawnProtocol(stream), {}, {}, {}, {}};
    const double onSheet = stream.unit();
    for (const ProcedureStep step : everyStep()) {
        if (stream.unit() < onSheet)
            drawn.sheet.push_back({step, stream.below(2) == 0});
    }
    const double observed = stream.unit();
    StepList order = drawnOrder({true, true, true, true}, stream);
    order.insert(order.begin() + stream.below(static_cast<int>(order.size())), ProcedureStep::Recap);
    for (int i = 0; i < 4; ++i)
        std::swap(drawnPlace(order, stream), drawnPlace(order, stream));
    double at = 0.0;
    for (const ProcedureStep step : order) {
        if (stream.unit() > observed)
            continue;
        at += stream.below(4) * 3.0;  // some at the same moment
        const Seen seen = drawnFrom<Seen>({Seen::Done, Seen::Done, Seen::Prompted, Seen::NotDone}, stream);
        drawn.seen.push_back({step, seen, at});
    }
    if (stream.below(2) == 0)
        drawn.held = stream.below(20000) / 1000.0;
    if (stream.below(2) == 0)
        drawn.heldAtLeast = stream.below(20);
    return drawn;
}

std::string shown(const Judged& drawn, int round)
{
    StepList order;
    for (const Observation& one : drawn.seen)
        order.push_back(one.step);
    return shown(order, drawn.protocol, round);
}

ProcedureGrade gradeOf(const Judged& drawn)
{
    return judge(drawn.sheet, drawn.protocol, drawn.seen, drawn.held, 0.5, drawn.heldAtLeast);
}

}  // namespace procedure_law_detail

using namespace procedure_law_detail;

TEST(ProcedureLawTest, AnyOrderThatKeepsTheConstraintsPasses)
{
    SeedStream stream(kSeed);
    std::set<StepList> different;
    for (int round = 0; round < rounds(20000); ++round) {
        const Protocol protocol = drawnProtocol(stream);
        const StepList order = drawnOrder(protocol, stream);
        different.insert(order);
        const auto grade = judge(sheetOf(order, true), protocol, unhurried(order, stream), {}, 0.5);
        ASSERT_EQ(told(grade.breaches), std::vector<std::string>{}) << shown(order, protocol, round);
        ASSERT_EQ(grade.earned, static_cast<double>(order.size())) << shown(order, protocol, round);
        ASSERT_TRUE(grade.missedCritical.empty()) << shown(order, protocol, round);
    }
    EXPECT_GT(different.size(), static_cast<std::size_t>(rounds(20000)) * 9 / 10);
}

TEST(ProcedureLawTest, ASwapIsNamedByEveryConstraintItBreaksAndByNoOther)
{
    SeedStream stream(kSeed + 1);
    std::map<std::string, int> broken;
    for (int round = 0; round < rounds(20000); ++round) {
        const Protocol protocol = drawnProtocol(stream);
        StepList order = drawnOrder(protocol, stream);
        std::swap(drawnPlace(order, stream), drawnPlace(order, stream));
        std::multiset<std::string> expected;
        for (const Constraint& row : constraints()) {
            if (isOrdered(row, protocol) &&
                std::ranges::find(order, row.then) < std::ranges::find(order, row.first))
                expected.insert(told(row));
        }
        const auto lines = told(judge(sheetOf(order), protocol, unhurried(order, stream), {}, 0.5).breaches);
        ASSERT_EQ(std::multiset<std::string>(lines.begin(), lines.end()), expected)
            << shown(order, protocol, round);
        for (const std::string& line : lines)
            ++broken[line];
    }
    // Every constraint of an order was broken on the way.
    for (const Constraint& row : constraints()) {
        if (row.kind == ConstraintKind::Before || row.kind == ConstraintKind::After) {
            EXPECT_GT(broken[told(row)], 0) << told(row);
        }
    }
}

TEST(ProcedureLawTest, AnyStepLeftOutIsNamedByWhateverWaitedForIt)
{
    SeedStream stream(kSeed + 2);
    for (int round = 0; round < rounds(5000); ++round) {
        const Protocol protocol = drawnProtocol(stream);
        const StepList sheet = drawnOrder(protocol, stream);
        const ProcedureStep missing = drawnFrom(sheet, stream);
        StepList done = sheet;
        std::erase(done, missing);
        std::multiset<std::string> expected;
        for (const Constraint& row : constraints()) {
            const ProcedureStep needed = row.kind == ConstraintKind::After ? row.then : row.first;
            if (isOrdered(row, protocol) && needed == missing)
                expected.insert(told(row));
        }
        const auto grade = judge(sheetOf(sheet, true), protocol, unhurried(done, stream), {}, 0.5);
        const auto lines = told(grade.breaches);
        ASSERT_EQ(std::multiset<std::string>(lines.begin(), lines.end()), expected) << wordOf(missing);
        ASSERT_EQ(grade.missedCritical, StepList{missing});
    }
}

TEST(ProcedureLawTest, OddCheckOffsAreJudgedAsTheRulesRead)
{
    SeedStream stream(kSeed + 3);
    int bridged = 0;
    for (int round = 0; round < rounds(20000); ++round) {
        const Judged drawn = drawnCheckOff(stream);
        const SlowReading reading(drawn);
        const ProcedureGrade grade = gradeOf(drawn);
        const auto lines = told(grade.breaches);
        ASSERT_EQ(std::multiset<std::string>(lines.begin(), lines.end()), reading.breaches())
            << shown(drawn, round);
        double earned = 0.0;
        double possible = 0.0;
        StepList missed;
        for (const SheetStep& step : drawn.sheet) {
            if (!belongs(step.step, drawn.protocol))
                continue;
            const Observation* seen = reading.seen(step.step);
            possible += 1.0;
            const bool spoilt = std::ranges::any_of(grade.breaches, [&](const Breach& breach) {
                return breach.severity == Severity::Soft && breach.then == step.step;
            });
            if (seen != nullptr && !spoilt)
                earned += seen->seen == Seen::Done ? 1.0 : 0.5;
            if (step.critical && (seen == nullptr || seen->seen != Seen::Done))
                missed.push_back(step.step);
        }
        ASSERT_EQ(grade.earned, earned) << shown(drawn, round);
        ASSERT_EQ(grade.possible, possible) << shown(drawn, round);
        ASSERT_EQ(grade.missedCritical, missed) << shown(drawn, round);
        for (const Breach& breach : grade.breaches)
            bridged += std::ranges::none_of(constraints(), [&](const Constraint& row) {
                return row.first == breach.first && row.then == breach.then;
            });
    }
    EXPECT_GT(bridged, 100) << "neighbours of unwatched steps were hardly met";
}

TEST(ProcedureLawTest, WhenItBeganAndHowItWasListedChangeNothing)
{
    SeedStream stream(kSeed + 4);
    for (int round = 0; round < rounds(5000); ++round) {
        const Protocol protocol = drawnProtocol(stream);
        StepList order = drawnOrder(protocol, stream);
        std::swap(drawnPlace(order, stream), drawnPlace(order, stream));
        auto seen = unhurried(order, stream);
        const auto grade = judge(sheetOf(order), protocol, seen, {}, 0.5);
        const double later = stream.below(5000);
        for (Observation& one : seen)
            one.at += later;
        for (int i = 0; i < 20; ++i)
            std::swap(drawnPlace(seen, stream), drawnPlace(seen, stream));
        auto sheet = sheetOf(order);
        std::ranges::reverse(sheet);
        const auto again = judge(sheet, protocol, seen, {}, 0.5);
        ASSERT_EQ(again.breaches, grade.breaches) << shown(order, protocol, round);
        ASSERT_EQ(again.earned, grade.earned) << shown(order, protocol, round);
    }
}

}  // namespace fb::test::procedure_law_test
