#include "core/procedure/step.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

#include "tests/support/seen_steps.h"

using namespace fb;
using namespace fb::test;

namespace step_test {

TEST(StepTest, EveryWordLeadsBack)
{
    std::set<std::string> words;
    for (int i = 0; i < kProcedureStepCount; ++i) {
        const std::string word(wordOf(procedureStepAt(i)));
        EXPECT_TRUE(words.insert(word).second) << word << " stands twice";
        EXPECT_EQ(word.find_first_not_of("abcdefghijklmnopqrstuvwxyz_"), std::string::npos) << word;
        EXPECT_EQ(procedureStepFrom(word), procedureStepAt(i)) << word;
    }
    for (const char* none : {"", "Insert", "no_such_step"})
        EXPECT_FALSE(procedureStepFrom(none)) << none;
}

// Words stand in files: one that slips by a place would turn one step into another.
TEST(StepTest, WordsNameTheirOwnStep)
{
    using enum ProcedureStep;
    EXPECT_EQ(wordOf(ReadOrder), "read_order");
    EXPECT_EQ(wordOf(Assess), "assess");
    EXPECT_EQ(wordOf(CheckDrug), "check_drug");
    EXPECT_EQ(wordOf(LabelCheck), "label_check");
    EXPECT_EQ(wordOf(HandHygiene), "hand_hygiene");
    EXPECT_EQ(wordOf(SwabStopper), "swab_stopper");
    EXPECT_EQ(wordOf(StopperDry), "stopper_dry");
    EXPECT_EQ(wordOf(DrawUp), "draw_up");
    EXPECT_EQ(wordOf(PreparedLabel), "prepared_label");
    EXPECT_EQ(wordOf(ChangeNeedle), "change_needle");
    EXPECT_EQ(wordOf(GlovesOn), "gloves_on");
    EXPECT_EQ(wordOf(Identify), "identify");
    EXPECT_EQ(wordOf(Allergies), "allergies");
    EXPECT_EQ(wordOf(BedsideCheck), "bedside_check");
    EXPECT_EQ(wordOf(Explain), "explain");
    EXPECT_EQ(wordOf(SelectSite), "select_site");
    EXPECT_EQ(wordOf(Expose), "expose");
    EXPECT_EQ(wordOf(Landmarks), "landmarks");
    EXPECT_EQ(wordOf(CleanSkin), "clean_skin");
    EXPECT_EQ(wordOf(SkinDry), "skin_dry");
    EXPECT_EQ(wordOf(CapOff), "cap_off");
    EXPECT_EQ(wordOf(ShiftSkin), "shift_skin");
    EXPECT_EQ(wordOf(Insert), "insert");
    EXPECT_EQ(wordOf(Aspirate), "aspirate");
    EXPECT_EQ(wordOf(Inject), "inject");
    EXPECT_EQ(wordOf(Wait), "wait");
    EXPECT_EQ(wordOf(Withdraw), "withdraw");
    EXPECT_EQ(wordOf(ReleaseSkin), "release_skin");
    EXPECT_EQ(wordOf(Pressure), "pressure");
    EXPECT_EQ(wordOf(SafetyDevice), "safety_device");
    EXPECT_EQ(wordOf(Sharps), "sharps");
    EXPECT_EQ(wordOf(GlovesOff), "gloves_off");
    EXPECT_EQ(wordOf(HandHygieneAfter), "hand_hygiene_after");
    EXPECT_EQ(wordOf(Document), "document");
    EXPECT_EQ(wordOf(Evaluate), "evaluate");
    EXPECT_EQ(wordOf(Recap), "recap");
}

// Where a skills lab teaches them, whatever the textbook's list.
TEST(StepTest, ThreeStepsStandWhereALabTeachesThem)
{
    using enum ProcedureStep;
    const auto follows = [](ProcedureStep step, ProcedureStep before) {
        return static_cast<int>(step) == static_cast<int>(before) + 1;
    };
    EXPECT_TRUE(follows(HandHygiene, Assess)) << "before the drug is handled";
    EXPECT_TRUE(follows(CheckDrug, HandHygiene));
    EXPECT_TRUE(follows(GlovesOn, Landmarks)) << "over a site that was found";
    EXPECT_TRUE(follows(CleanSkin, GlovesOn));
    EXPECT_TRUE(follows(SafetyDevice, ReleaseSkin)) << "no bare needle in hand while the site is pressed";
    EXPECT_TRUE(follows(Pressure, SafetyDevice));
}

TEST(StepTest, WhatTheProtocolDoesNotAskForDoesNotBelong)
{
    using enum ProcedureStep;
    for (const Protocol& protocol : everyProtocol()) {
        for (int i = 0; i < kProcedureStepCount; ++i) {
            const ProcedureStep step = procedureStepAt(i);
            bool expected = step != Recap;
            if (step == CleanSkin || step == SkinDry)
                expected = protocol.cleansSkin;
            if (step == ShiftSkin || step == Wait || step == ReleaseSkin)
                expected = protocol.zTrack;
            if (step == Aspirate)
                expected = protocol.aspirates;
            EXPECT_EQ(belongs(step, protocol), expected) << wordOf(step) << ": " << told(protocol);
        }
    }
}

}  // namespace step_test
