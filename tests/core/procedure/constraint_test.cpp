#include "core/procedure/constraint.h"

#include <gtest/gtest.h>

#include <set>
#include <tuple>

#include "tests/support/seen_steps.h"

using namespace fb;
using namespace fb::test;

namespace constraint_test {

TEST(ConstraintTest, AreP1ToP18InTheirOrder)
{
    int last = 0;
    for (const Constraint& row : constraints()) {
        EXPECT_TRUE(row.id == last || row.id == last + 1) << told(row);
        last = row.id;
    }
    EXPECT_EQ(last, 18);
}

TEST(ConstraintTest, AConditionHoldsUnderItsProtocolAlone)
{
    for (const Protocol& protocol : everyProtocol()) {
        EXPECT_TRUE(holds(Condition::Always, protocol));
        EXPECT_EQ(holds(Condition::CleansSkin, protocol), protocol.cleansSkin);
        EXPECT_EQ(holds(Condition::ZTrack, protocol), protocol.zTrack);
        EXPECT_EQ(holds(Condition::Aspirates, protocol), protocol.aspirates);
        EXPECT_EQ(holds(Condition::FilterNeedle, protocol), protocol.filterNeedle);
        EXPECT_EQ(holds(Condition::NoFilterNeedle, protocol), !protocol.filterNeedle);
    }
}

TEST(ConstraintTest, NoPairIsHeldTwiceInOneWay)
{
    for (const Protocol& protocol : everyProtocol()) {
        std::set<std::tuple<ConstraintKind, ProcedureStep, ProcedureStep>> pairs;
        for (const Constraint& row : constraints()) {
            if (holds(row.when, protocol)) {
                EXPECT_TRUE(pairs.insert({row.kind, row.first, row.then}).second) << told(row);
            }
        }
    }
}

TEST(ConstraintTest, HoldsOnlyWhereBothStepsBelongToTheProtocol)
{
    for (const Protocol& protocol : everyProtocol()) {
        for (const Constraint& row : constraints()) {
            if (!holds(row.when, protocol))
                continue;
            EXPECT_TRUE(belongs(row.first, protocol)) << told(row) << ": " << told(protocol);
            EXPECT_EQ(belongs(row.then, protocol), row.kind != ConstraintKind::Never) << told(row);
        }
    }
}

TEST(ConstraintTest, SecondsStandWhereTheyAreAskedFor)
{
    for (const Constraint& row : constraints())
        EXPECT_EQ(row.seconds > 0.0, row.kind == ConstraintKind::AtLeast) << told(row);
}

// Only these three may stand anywhere: read the order, check the label on obtaining, explain.
TEST(ConstraintTest, EveryOtherStepIsHeldByOne)
{
    std::set<ProcedureStep> held;
    for (const Constraint& row : constraints()) {
        held.insert(row.first);
        held.insert(row.then);
    }
    using enum ProcedureStep;
    const std::set<ProcedureStep> anywhere{ReadOrder, LabelCheck, Explain};
    for (int i = 0; i < kProcedureStepCount; ++i)
        EXPECT_NE(held.contains(procedureStepAt(i)), anywhere.contains(procedureStepAt(i)))
            << wordOf(procedureStepAt(i));
}

}  // namespace constraint_test
