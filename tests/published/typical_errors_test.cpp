// The textbook's list of typical errors on arm and thigh: see typical_error.h. What a needle too short or too
// long does is no error of the hand and is not among them.
#include "tests/published/typical_error.h"

namespace fb::test::typical_errors_test {

using namespace typical;

TEST(TypicalErrors, OfTheDeltoid)
{
    using enum Direction;
    using enum Tissue;
    const std::vector<TypicalError> rows{
        {"fingers laid above the acromion's edge, or on the soft tip of the shoulder",
         kDeltoid,
         slipOf(Slip::FingersOff, Handle::Fingers, High),
         {High},
         {SubacromialBursa, AcromionBone},
         "too high: bursa, tendon, bone: Vaccine 2020 on shoulder injury; CDC page 40140"},
        {"shoulder not bared, edge taken too high",
         kDeltoid,
         flagOf(Landmark::Acromion, High),
         {High},
         {SubacromialBursa, AcromionBone, Trunk},
         "too high: a published handout, read through a review"},
        {"mark above the band",
         kDeltoid,
         markOf(High),
         {High},
         {SubacromialBursa, AcromionBone},
         "too high: CDC page 40140"},
        {"triangle's base set too far back",
         kDeltoid,
         slipOf(Slip::BaseOff, Handle::BaseBack, Back),
         {Back},
         {AxillaryNerve},
         "too far back: Cetik 2006; Patra 2018"},
        {"mark behind the band",
         kDeltoid,
         markOf(Back),
         {Back},
         {AxillaryNerve},
         "too far back: Cetik 2006; Patra 2018"},
        {"fingers laid too low",
         kDeltoid,
         slipOf(Slip::FingersOff, Handle::Fingers, Low),
         {Low},
         {ThinMuscle, AxillaryNerve, RadialNerve},
         "too low: radial nerve from armpit level down"},
        {"apex set too far forward",
         kDeltoid,
         slipOf(Slip::ApexOff, Handle::Apex, Forward),
         {Forward},
         {ThinMuscle, SubacromialBursa, AxillaryNerve},
         kNoSource},
        {"measured from the soft tip of the shoulder, in front of the bony edge",
         kDeltoid,
         flagOf(Landmark::Acromion, Forward),
         {Forward},
         {ThinMuscle, SubacromialBursa, AxillaryNerve},
         kNoSource},
        {"mark in front of the band",
         kDeltoid,
         markOf(Forward),
         {Forward},
         {ThinMuscle, SubacromialBursa, AxillaryNerve},
         kNoSource},
    };
    for (const TypicalError& row : rows)
        expectNamed(row);
}

// Mid-lateral, and behind it over the triceps.
TEST(TypicalErrors, MarkBelowArmpitLevelMeetsTheRadialNerve)
{
    constexpr const char* kSource = "too low, also along the lateral triceps: radial nerve";
    for (int number = 0; number < kErrorBodies; ++number) {
        SeedStream stream(kErrorSeed);
        const ScriptedLearner learner(sampledPatient(kErrorSeed, number), kDeltoid.convention, kDeltoid.view,
                                      defaultPolicy());
        Attempted attempted = learner.flawless(stream);
        for (const double behind : {0.0, 2.0}) {
            attempted.mark =
                learner.target().toViewer({-behind, -learner.target().axillaDepth.value() - 0.5});
            const Grade mark = learner.gradedMark(attempted.mark);
            EXPECT_EQ(learner.graded(attempted).first, causeOf(markOf(Direction::Low))) << kSource;
            EXPECT_EQ(mark.reason.direction, Direction::Low) << kSource;
            EXPECT_EQ(mark.reason.tissue, Tissue::RadialNerve) << kSource;
            EXPECT_EQ(mark.verdict, Verdict::Unsafe) << kSource;
        }
    }
}

TEST(TypicalErrors, OfTheVastusLateralis)
{
    using enum Direction;
    using enum Tissue;
    using enum ThighRow;
    using enum ThighColumn;
    const std::vector<TypicalError> rows{
        {"inside the front line",
         kThighFront,
         cellOf(Middle, Inside),
         {Forward},
         {RectusFemoris, FemoralVessels},
         "too far forward: cadaver study of 24 thighs; Melbourne Vaccine Education Centre"},
        {"mark on or inside the front line",
         kThighFront,
         markOf(Forward),
         {Forward},
         {RectusFemoris, FemoralVessels},
         "too far forward: cadaver study of 24 thighs"},
        {"upper third", kThighSide, cellOf(Upper, Between), {High}, {HipRegion, ThinMuscle}, kNoSource},
        {"lower third", kThighSide, cellOf(Lower, Between), {Low}, {KneeRegion, ThinMuscle}, kNoSource},
        {"behind the outer line",
         kThighSide,
         cellOf(Middle, Behind),
         {Back},
         {Hamstrings, SciaticNerve},
         kNoSource},
        {"mark behind the outer line",
         kThighSide,
         markOf(Back),
         {Back},
         {Hamstrings, SciaticNerve},
         kNoSource},
        {"mark in the upper third", kThighSide, markOf(High), {High}, {HipRegion, ThinMuscle}, kNoSource},
        {"mark in the lower third", kThighSide, markOf(Low), {Low}, {KneeRegion, ThinMuscle}, kNoSource},
    };
    for (const TypicalError& row : rows)
        expectNamed(row);
}

}  // namespace fb::test::typical_errors_test
