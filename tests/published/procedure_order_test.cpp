// The precedence constraints P1 to P18, each with the order that keeps it and one that breaks it, and the
// textbook's own order. Sources: OpenStax, Pharmacology for Nurses (steps to administering an intramuscular
// medication, vials, ampoules, aspiration, Z-track); OSHA, 29 CFR 1910.1030(d)(2)(vii); WHO, My Five Moments
// for Hand Hygiene. Hard or soft: lab's choice.
#include <gtest/gtest.h>

#include <set>

#include "tests/support/seen_steps.h"

namespace fb::test::procedure_order_test {

namespace procedure_order_detail {

using enum ProcedureStep;
using enum Condition;

// One thing done wrong in an order that is right otherwise.
enum class Wrong { MovedAfter, MovedBefore, LeftOut, Hurried, Recapped };

struct Told {
    const char* breach = "";
    Condition when = Always;
};

struct BrokenOrder {
    Wrong wrong{};
    ProcedureStep step{};
    ProcedureStep beside{};  // MovedAfter, MovedBefore, Recapped (after it); Hurried: up to it
    std::vector<Told> breaches;
};

const std::vector<BrokenOrder>& brokenOrders()
{
    using enum Wrong;
    static const std::vector<BrokenOrder> orders{
        {MovedAfter, Assess, Insert, {{"P1 hard assess before insert"}}},
        {MovedAfter, CheckDrug, Insert, {{"P1 hard check_drug before insert"}}},
        {MovedAfter, Identify, Insert, {{"P1 hard identify before insert"}}},
        {MovedAfter, Allergies, Insert, {{"P1 hard allergies before insert"}}},
        {MovedAfter, BedsideCheck, Insert, {{"P1 hard bedside_check before insert"}}},
        {LeftOut, Identify, {}, {{"P1 hard identify before insert"}}},
        {MovedAfter,
         HandHygiene,
         Insert,
         {{"P2 hard hand_hygiene before insert"}, {"P2 soft hand_hygiene before draw_up"}}},
        {MovedAfter, HandHygiene, DrawUp, {{"P2 soft hand_hygiene before draw_up"}}},
        {MovedAfter,
         SwabStopper,
         DrawUp,
         {{"P3 hard swab_stopper before draw_up"}, {"P3 soft swab_stopper before stopper_dry"}}},
        {MovedAfter, SwabStopper, StopperDry, {{"P3 soft swab_stopper before stopper_dry"}}},
        {MovedAfter, StopperDry, DrawUp, {{"P3 soft stopper_dry before draw_up"}}},
        {Hurried, SwabStopper, DrawUp, {{"P3 soft swab_stopper 10 s before draw_up"}}},
        {MovedAfter,
         DrawUp,
         Insert,
         {{"P4 hard draw_up before insert"},
          {"P5 hard draw_up before change_needle", FilterNeedle},
          {"P5 soft draw_up before change_needle", NoFilterNeedle}}},
        {MovedBefore,
         ChangeNeedle,
         DrawUp,
         {{"P5 hard draw_up before change_needle", FilterNeedle},
          {"P5 soft draw_up before change_needle", NoFilterNeedle}}},
        {MovedAfter,
         ChangeNeedle,
         Insert,
         {{"P5 hard change_needle before insert", FilterNeedle},
          {"P5 soft change_needle before insert", NoFilterNeedle}}},
        {MovedAfter, PreparedLabel, Insert, {{"P5 soft prepared_label before insert"}}},
        {MovedAfter, SelectSite, Landmarks, {{"P6 hard select_site before landmarks"}}},
        {MovedAfter,
         Landmarks,
         Insert,
         {{"P6 hard landmarks before insert"}, {"P7 soft landmarks before clean_skin", CleansSkin}}},
        {MovedAfter, Expose, Landmarks, {{"P7 soft expose before landmarks"}}},
        {MovedAfter, Landmarks, CleanSkin, {{"P7 soft landmarks before clean_skin", CleansSkin}}},
        {MovedAfter,
         CleanSkin,
         Insert,
         {{"P8 hard clean_skin before insert", CleansSkin},
          {"P9 soft clean_skin before skin_dry", CleansSkin}}},
        {MovedBefore, SkinDry, CleanSkin, {{"P9 soft clean_skin before skin_dry", CleansSkin}}},
        {MovedAfter, SkinDry, CapOff, {{"P9 soft skin_dry before cap_off", CleansSkin}}},
        {MovedAfter, CapOff, Insert, {{"P9 soft cap_off before insert"}}},
        {Hurried, CleanSkin, Insert, {{"P9 soft clean_skin 10 s before insert", CleansSkin}}},
        {MovedAfter, GlovesOn, Insert, {{"P10 soft gloves_on before insert"}}},
        {MovedAfter, ShiftSkin, Insert, {{"P11 hard shift_skin before insert", ZTrack}}},
        {MovedBefore, ReleaseSkin, Withdraw, {{"P11 hard withdraw before release_skin", ZTrack}}},
        {MovedAfter,
         Insert,
         Inject,
         {{"P12 hard insert before inject"}, {"P14 soft insert before aspirate", Aspirates}}},
        {MovedAfter,
         Inject,
         Withdraw,
         {{"P12 hard inject before withdraw"}, {"P13 soft inject before wait", ZTrack}}},
        {MovedBefore, Pressure, Withdraw, {{"P12 soft withdraw before pressure"}}},
        {MovedBefore, Wait, Inject, {{"P13 soft inject before wait", ZTrack}}},
        {MovedAfter, Wait, Withdraw, {{"P13 soft wait before withdraw", ZTrack}}},
        {Hurried, Inject, Withdraw, {{"P13 soft inject 10 s before withdraw", ZTrack}}},
        {MovedBefore, Aspirate, Insert, {{"P14 soft insert before aspirate", Aspirates}}},
        {MovedAfter, Aspirate, Inject, {{"P14 soft aspirate before inject", Aspirates}}},
        {LeftOut, Aspirate, {}, {{"P14 soft aspirate before inject", Aspirates}}},
        {Recapped, Recap, Insert, {{"P15 hard insert never then recap"}}},
        {Recapped, Recap, Withdraw, {{"P15 hard insert never then recap"}}},
        {Recapped, Recap, Evaluate, {{"P15 hard insert never then recap"}}},
        {Recapped, Recap, CapOff, {}},  // of a clean needle
        {MovedBefore, SafetyDevice, Withdraw, {{"P16 soft withdraw before safety_device"}}},
        {MovedAfter, SafetyDevice, Sharps, {{"P16 soft safety_device before sharps"}}},
        {LeftOut, Sharps, {}, {{"P16 hard withdraw leaves sharps"}, {"P17 soft sharps before gloves_off"}}},
        {MovedBefore,
         Sharps,
         Withdraw,
         {{"P16 hard withdraw leaves sharps"}, {"P16 soft safety_device before sharps"}}},
        {MovedBefore, GlovesOff, Sharps, {{"P17 soft sharps before gloves_off"}}},
        {MovedBefore, HandHygieneAfter, GlovesOff, {{"P17 soft gloves_off before hand_hygiene_after"}}},
        {MovedBefore, Document, Inject, {{"P18 hard inject before document"}}},
        {MovedBefore, Evaluate, Inject, {{"P18 soft inject before evaluate"}}},
    };
    return orders;
}

StepList changed(StepList steps, const BrokenOrder& order)
{
    std::erase(steps, order.step);
    const auto beside = std::ranges::find(steps, order.beside);
    if (order.wrong == Wrong::MovedBefore)
        steps.insert(beside, order.step);
    if (order.wrong == Wrong::MovedAfter || order.wrong == Wrong::Recapped)
        steps.insert(beside + 1, order.step);
    return steps;
}

// The steps up to `to` crowded together so that it comes `seconds` after `from`.
std::vector<Observation> hurried(std::vector<Observation> seen, ProcedureStep from, ProcedureStep to,
                                 double seconds)
{
    const auto first = std::ranges::find(seen, from, &Observation::step);
    const auto last = std::ranges::find(seen, to, &Observation::step);
    for (auto one = first + 1; one <= last; ++one)
        one->at = first->at + seconds * static_cast<double>(one - first) / static_cast<double>(last - first);
    return seen;
}

std::vector<Observation> seenIn(const BrokenOrder& order, double seconds)
{
    if (order.wrong == Wrong::Hurried)
        return hurried(doneInOrder(everyStep()), order.step, order.beside, seconds);
    return doneInOrder(changed(everyStep(), order));
}

std::vector<std::string> expectedOf(const BrokenOrder& order, const Protocol& protocol)
{
    std::vector<std::string> lines;
    for (const Told& one : order.breaches) {
        if (holds(one.when, protocol))
            lines.emplace_back(one.breach);
    }
    // Hard ones first.
    std::ranges::stable_partition(
        lines, [](const std::string& line) { return line.find(" hard ") != std::string::npos; });
    return lines;
}

// The order of the textbook's list, its numbers beside it; drugs are drawn up beside the patient.
StepList textbookOrder()
{
    return {ReadOrder,                                                              // 1
            Assess,       CheckDrug,   LabelCheck, HandHygiene,                     // 2 to 5
            GlovesOn,     Identify,    Allergies,  BedsideCheck,                    // 6 to 8
            Explain,                                                                // 9
            SwabStopper,  StopperDry,  DrawUp,     PreparedLabel,    ChangeNeedle,  // 10
            SelectSite,   Expose,      Landmarks,                                   // 11, 12
            CleanSkin,    SkinDry,     CapOff,                                      // 13 to 15
            ShiftSkin,    Insert,      Aspirate,   Inject,           Wait,          // 16 to 18
            Withdraw,     ReleaseSkin, Pressure,                                    // 19, 20
            SafetyDevice, Sharps,      GlovesOff,  HandHygieneAfter,                // 21 to 23
            Document,     Evaluate};                                                // 24, 25
}

}  // namespace procedure_order_detail

using namespace procedure_order_detail;

TEST(ProcedureOrderTest, TextbookAndTeachingOrderPassUnderEveryProtocol)
{
    ASSERT_TRUE(std::ranges::is_permutation(textbookOrder(), everyStep()));
    for (const Protocol& protocol : everyProtocol()) {
        for (const StepList& all : {textbookOrder(), everyStep()}) {
            const StepList steps = ofProtocol(all, protocol);
            const auto grade = judge(sheetOf(steps, true), protocol, doneInOrder(steps), std::nullopt, 0.5);
            EXPECT_EQ(told(grade.breaches), std::vector<std::string>{}) << told(protocol);
            EXPECT_TRUE(grade.missedCritical.empty()) << told(protocol);
            EXPECT_EQ(grade.earned, static_cast<double>(steps.size())) << told(protocol);
            EXPECT_EQ(grade.possible, grade.earned) << told(protocol);
        }
    }
}

TEST(ProcedureOrderTest, EveryBrokenOrderIsNamedWithNothingElse)
{
    for (const Protocol& protocol : everyProtocol()) {
        for (const BrokenOrder& order : brokenOrders()) {
            // All steps are done, asked for or not, so that what is silent is so by its condition.
            const auto grade = judge(sheetOf(everyStep()), protocol, seenIn(order, 9.999), std::nullopt, 0.5);
            EXPECT_EQ(told(grade.breaches), expectedOf(order, protocol))
                << wordOf(order.step) << " beside " << wordOf(order.beside) << ": " << told(protocol);
        }
    }
}

TEST(ProcedureOrderTest, EveryConstraintHasAnOrderThatBreaksIt)
{
    std::set<std::string> broken;
    for (const BrokenOrder& order : brokenOrders()) {
        for (const Told& one : order.breaches)
            broken.insert(one.breach);
    }
    std::set<std::string> all;
    for (const Constraint& row : constraints())
        all.insert(told(row));
    EXPECT_EQ(all, broken);
}

TEST(ProcedureOrderTest, TenSecondsAreEnough)
{
    int timed = 0;
    for (const BrokenOrder& order : brokenOrders()) {
        if (order.wrong != Wrong::Hurried)
            continue;
        ++timed;
        const auto grade = judge(sheetOf(everyStep()), {}, seenIn(order, 10.0), std::nullopt, 0.5);
        EXPECT_TRUE(grade.breaches.empty()) << wordOf(order.step);
    }
    EXPECT_EQ(timed, 3);
}

TEST(ProcedureOrderTest, DrawnUpBeforeOrAfterThePatientIsIdentifiedPasses)
{
    const auto place = [](const StepList& steps, ProcedureStep step) { return std::ranges::find(steps, step); };
    const StepList bedside = textbookOrder();
    const StepList room = everyStep();
    ASSERT_LT(place(bedside, Identify), place(bedside, DrawUp));
    ASSERT_LT(place(room, DrawUp), place(room, Identify));
    for (const StepList& steps : {bedside, room})
        EXPECT_TRUE(
            judge(sheetOf(steps), {true, true, true, false}, doneInOrder(steps), {}, 0.5).breaches.empty());
}

TEST(ProcedureOrderTest, GlovesAtAnyEarlierPlacePass)
{
    StepList without = everyStep();
    std::erase(without, GlovesOn);
    const auto needle = std::ranges::find(without, Insert) - without.begin();
    for (auto place = 0; place <= needle; ++place) {
        StepList steps = without;
        steps.insert(steps.begin() + place, GlovesOn);
        EXPECT_TRUE(judge(sheetOf(steps), {}, doneInOrder(steps), {}, 0.5).breaches.empty()) << place;
    }
}

TEST(ProcedureOrderTest, AspiratingWhereNobodyAsksForItIsNoBreach)
{
    for (const ProcedureStep after : {ReadOrder, Insert, Inject, Withdraw}) {
        const StepList steps = changed(everyStep(), {Wrong::MovedAfter, Aspirate, after, {}});
        EXPECT_TRUE(judge(sheetOf(steps), {}, doneInOrder(steps), {}, 0.5).breaches.empty()) << wordOf(after);
    }
}

}  // namespace fb::test::procedure_order_test
