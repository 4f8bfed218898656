#include "app/practice/practice_state.h"

#include <gtest/gtest.h>

namespace fb::test::practice_state_test {

TEST(PracticeStateTest, EveryLayerBelongsToExactlyOnePeel)
{
    for (const Layer layer : kLayers) {
        int owners = 0;
        for (const Peel peel : kPeels)
            owners += layersOf(peel).contains(layer) ? 1 : 0;
        EXPECT_EQ(owners, 1) << wordOf(layer);
        EXPECT_TRUE(allLayers().contains(layer));
    }
}

TEST(PracticeStateTest, AnAnswerIsAwaitedFromTheFirstTouchToTheGrade)
{
    for (const Phase phase : {Phase::Feeling, Phase::Building, Phase::Marking})
        EXPECT_TRUE(isAnswering(phase));
    for (const Phase phase : {Phase::PickingSide, Phase::Graded, Phase::Summary})
        EXPECT_FALSE(isAnswering(phase));
}

TEST(PracticeStateTest, OnlyAFindingOfTheVerySiteAndSideRulesItOut)
{
    const Patient patient = Patient::make(40.0, Sex::Female, Cm{165.0}, Kg{65.0}, Side::Left).value();
    Request request{0, Site::VastusLateralis, View::ThighSide, patient, 0};
    EXPECT_FALSE(isRuledOut(request));
    request.finding = Finding{FindingCode::Rash, BodyPart::Thigh, Side::Left};
    EXPECT_TRUE(isRuledOut(request));
    request.finding = Finding{FindingCode::Rash, BodyPart::Thigh, Side::Right};
    EXPECT_FALSE(isRuledOut(request));
    request.finding = Finding{FindingCode::Fistula, BodyPart::WholeSide, Side::Left};
    EXPECT_FALSE(isRuledOut(request)) << "a thigh is no arm";
}

}  // namespace fb::test::practice_state_test
