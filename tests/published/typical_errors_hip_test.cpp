// The textbook's list of typical errors on the hip: see typical_error.h.
#include "tests/published/typical_error.h"

namespace fb::test::typical_errors_hip_test {

using namespace typical;

TEST(TypicalErrorsHip, OfTheVentroglutealSite)
{
    using enum Direction;
    using enum Tissue;
    const std::vector<TypicalError> rows{
        {"wrong hand: the V opens in front of the spine",
         kHip,
         slipOf(Slip::WrongHand, {}, None),
         {Forward},
         {FrontOfHip},
         "OpenStax Pharmacology for Nurses; effect derived"},
        {"index on the crest",
         kHip,
         slipOf(Slip::IndexOnCrest, Handle::IndexTip, None),
         {Back},
         {SuperiorGluteal, HipMuscle},
         kNoSource},
        {"palm too high, above the crest",
         kHip,
         slipOf(Slip::PalmOff, Handle::Palm, High),
         {High},
         {AbdominalWall, CrestBone, HipMuscle},
         kNoSource},
        {"mark above the crest",
         kHip,
         markOf(High),
         {High},
         {AbdominalWall, CrestBone, HipMuscle},
         kNoSource},
        {"mark behind the V, in dorsogluteal territory",
         kHip,
         markOf(Back),
         {Back},
         {SuperiorGluteal, SciaticNerve, HipMuscle},
         "24 buttocks: the back branch of the superior gluteal nerve"},
        {"mark in front of the spine", kHip, markOf(Forward), {Forward}, {FrontOfHip, HipMuscle}, kNoSource},
    };
    for (const TypicalError& row : rows)
        expectNamed(row);
}

// The hand slid down until what belongs between its fingers lies round the trochanter, which is not felt.
TEST(TypicalErrorsHip, PalmTooLowLeadsToTheTrochanter)
{
    const char* source = "too low, tendon and bone: a study of hands and hips; harm derived";
    int harms = 0;
    for (int number = 0; number < kErrorBodies; ++number) {
        SeedStream stream(kErrorSeed + static_cast<std::uint64_t>(number));
        const ScriptedLearner learner(sampledPatient(kErrorSeed, number), kHip.convention, kHip.view,
                                      defaultPolicy());
        Attempted attempted = learner.flawless(stream);
        const FreeHand right = *flawlessBuild(learner.target(), learner.builder()).hand;
        const Point trochanter = placeOf(learner.target(), Landmark::GreaterTrochanter)->points.front();
        const Point down = trochanter - learner.target().ideal;
        // Within the 4 cm that lie nearest the bone on the reference stature.
        const double left = stream.between(1.5, 3.5) * learner.target().scale / length(down);
        attempted.build.hand = slid(right, right.palm + down * (1.0 - left));
        if (distance(attempted.build.hand->palm, trochanter) <= defaultPolicy().value(PolicyKey::BuildPalm))
            continue;
        const ByHandGrade grade = learner.graded(attempted);
        ASSERT_EQ(grade.first, causeOf(slipOf(Slip::PalmOff, Handle::Palm, Direction::Low))) << source;
        const auto step = std::ranges::find(grade.steps, Slip::PalmOff, &BuildStepGrade::slip);
        EXPECT_EQ(step->direction, Direction::Low) << source;
        const Grade& needle = step->effect->grade;
        if (needle.inside)
            continue;
        ++harms;
        EXPECT_EQ(needle.reason.direction, Direction::Low) << source << ", number " << number;
        EXPECT_TRUE(needle.reason.tissue == Tissue::TrochanterTendons ||
                    needle.reason.tissue == Tissue::TrochanterBone)
            << wordOf(needle.reason.tissue) << ", number " << number << "\n  source: " << source;
    }
    EXPECT_GE(harms, 3) << source;
}

// The hand laid well, the needle set at its heel.
TEST(TypicalErrorsHip, MarkAtTheTrochanterMeetsTendonAndBone)
{
    const char* source = "too low, tendon and bone: a study of hands and hips; harm derived";
    for (int number = 0; number < kErrorBodies; ++number) {
        SeedStream stream(kErrorSeed + static_cast<std::uint64_t>(number));
        const ScriptedLearner learner(sampledPatient(kErrorSeed, number), kHip.convention, kHip.view,
                                      defaultPolicy());
        Attempted attempted = learner.flawless(stream);
        const Point trochanter = placeOf(learner.target(), Landmark::GreaterTrochanter)->points.front();
        const Point up = learner.target().ideal - trochanter;
        for (const double above : {0.0, 2.5}) {
            attempted.mark = trochanter + up * (above * learner.target().scale / length(up));
            const Grade mark = learner.gradedMark(attempted.mark);
            EXPECT_EQ(learner.graded(attempted).first, causeOf(markOf(Direction::Low))) << source;
            EXPECT_EQ(mark.reason.direction, Direction::Low) << source;
            EXPECT_EQ(mark.reason.tissue, above > 0.0 ? Tissue::TrochanterTendons : Tissue::TrochanterBone)
                << wordOf(mark.reason.tissue) << ", number " << number << "\n  source: " << source;
            EXPECT_EQ(mark.verdict, Verdict::Unsafe) << source;
        }
    }
}

// No way of its own: what is hurt is the finger that is left no room beside.
TEST(TypicalErrorsHip, ClosedFingersAreNamedWithTheirAngle)
{
    const PlantedError closed = slipOf(Slip::FingersClosed, Handle::MiddleTip, Direction::None);
    for (int number = 0; number < kErrorBodies; ++number) {
        SeedStream stream(kErrorSeed + static_cast<std::uint64_t>(number));
        const ScriptedLearner learner(sampledPatient(kErrorSeed, number), kHip.convention, kHip.view,
                                      defaultPolicy());
        const ByHandGrade grade = learner.graded(*learner.planted(closed, stream));
        ASSERT_EQ(grade.first, causeOf(closed)) << kNoSource;
        const auto step = std::ranges::find(grade.steps, Slip::FingersClosed, &BuildStepGrade::slip);
        EXPECT_LT(step->degrees.value(), 25.0) << kNoSource;
        EXPECT_GE(step->degrees.value(), kClosedOpening) << kNoSource;
    }
}

}  // namespace fb::test::typical_errors_hip_test
