// The textbook's list of typical errors: each is made on purpose by a scripted learner, on many bodies,
// and the grader must name it, the way it went and the harm a needle would do there.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "tests/property/sampling.h"
#include "tests/support/scripted_learner.h"

namespace fb::test::typical_errors_test {

namespace typical_errors_detail {

constexpr int kBodies = 60;
constexpr std::uint64_t kSeed = 101;

struct TypicalError {
    const char* what = "";
    Shown shown;
    PlantedError error;
    // The way and the tissue of a needle where the slip alone, or her own mark, leads; only those count
    // that leave the region.
    std::set<Direction> ways;
    std::set<Tissue> harms;
    const char* source = "";
};

PlantedError slipOf(Slip slip, std::optional<Handle> at, Direction way)
{
    return {PlantedError::Kind::Slip, {}, {}, slip, at, {}, way};
}

PlantedError cellOf(ThighRow row, ThighColumn column)
{
    return {PlantedError::Kind::Slip, {}, {}, Slip::WrongCell, {}, ThighCell{row, column}, {}};
}

PlantedError flagOf(Landmark landmark, Direction way)
{
    return {PlantedError::Kind::FlagOff, landmark, {}, {}, {}, {}, way};
}

PlantedError markOf(Direction way) { return {PlantedError::Kind::Mark, {}, {}, {}, {}, {}, way}; }

constexpr Shown kDeltoid{Convention::DeltoidStrip, View::ShoulderSide};
constexpr Shown kThighFront{Convention::VastusThirds, View::ThighFront};
constexpr Shown kThighSide{Convention::VastusThirds, View::ThighSide};
constexpr Shown kHip{Convention::VentroglutealHand, View::HipSide};
constexpr const char* kNoSource = "common practice, no source";

// Where the needle goes by this error: the slip's own effect, else her mark.
Grade needleOf(const TypicalError& row, const ScriptedLearner& learner, const Attempted& attempted,
               const ByHandGrade& grade)
{
    if (row.error.kind == PlantedError::Kind::Slip) {
        const auto step = std::ranges::find(grade.steps, row.error.slip, &BuildStepGrade::slip);
        return step->effect->grade;
    }
    return learner.gradedMark(attempted.mark);
}

// How many of the bodies were harmed.
int harmed(const TypicalError& row)
{
    int count = 0;
    for (int number = 0; number < kBodies; ++number) {
        SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
        const ScriptedLearner learner(sampledPatient(kSeed, number), row.shown.convention, row.shown.view,
                                      defaultPolicy());
        const auto attempted = learner.planted(row.error, stream);
        if (!attempted)
            continue;
        const ByHandGrade grade = learner.graded(*attempted);
        EXPECT_EQ(grade.first, causeOf(row.error)) << row.what << "\n  source: " << row.source;
        if (grade.first != causeOf(row.error))
            return count;
        const Grade needle = needleOf(row, learner, *attempted, grade);
        if (needle.inside)
            continue;
        ++count;
        EXPECT_TRUE(row.ways.contains(needle.reason.direction))
            << row.what << ": " << wordOf(needle.reason.direction) << ", seed " << kSeed << " number "
            << number << "\n  source: " << row.source;
        EXPECT_TRUE(row.harms.contains(needle.reason.tissue))
            << row.what << ": " << wordOf(needle.reason.tissue) << ", seed " << kSeed << " number " << number
            << "\n  source: " << row.source;
    }
    return count;
}

void expectNamed(const TypicalError& row)
{
    EXPECT_GE(harmed(row), 3) << row.what << " harms somebody\n  source: " << row.source;
}

}  // namespace typical_errors_detail

TEST(TypicalErrors, OfTheDeltoid)
{
    using namespace typical_errors_detail;
    using enum Direction;
    using enum Tissue;
    const std::vector<TypicalError> rows{
        {"fingers laid above the acromion's edge",
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

TEST(TypicalErrors, MarkBelowArmpitLevelMeetsTheRadialNerve)
{
    using namespace typical_errors_detail;
    for (int number = 0; number < kBodies; ++number) {
        SeedStream stream(kSeed);
        const ScriptedLearner learner(sampledPatient(kSeed, number), kDeltoid.convention, kDeltoid.view,
                                      defaultPolicy());
        Attempted attempted = learner.flawless(stream);
        attempted.mark = learner.target().toViewer({0.0, -learner.target().axillaDepth.value() - 0.5});
        const Grade mark = learner.gradedMark(attempted.mark);
        EXPECT_EQ(learner.graded(attempted).first, causeOf(markOf(Direction::Low)));
        EXPECT_EQ(mark.reason.direction, Direction::Low);
        EXPECT_EQ(mark.reason.tissue, Tissue::RadialNerve) << "too low: radial nerve";
        EXPECT_EQ(mark.verdict, Verdict::Unsafe);
    }
}

TEST(TypicalErrors, OfTheVastusLateralis)
{
    using namespace typical_errors_detail;
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

TEST(TypicalErrors, OfTheVentroglutealSite)
{
    using namespace typical_errors_detail;
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
    };
    for (const TypicalError& row : rows)
        expectNamed(row);
}

// The hand slid down until what belongs between its fingers lies round the trochanter, which is not felt.
TEST(TypicalErrors, PalmTooLowLeadsToTheTrochanter)
{
    using namespace typical_errors_detail;
    const char* source = "too low, tendon and bone: a study of hands and hips; harm derived";
    int harms = 0;
    for (int number = 0; number < kBodies; ++number) {
        SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
        const ScriptedLearner learner(sampledPatient(kSeed, number), kHip.convention, kHip.view,
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

// No way of its own: what is hurt is the finger that is left no room beside.
TEST(TypicalErrors, ClosedFingersAreNamedWithTheirAngle)
{
    using namespace typical_errors_detail;
    const PlantedError closed = slipOf(Slip::FingersClosed, Handle::MiddleTip, Direction::None);
    for (int number = 0; number < kBodies; ++number) {
        SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
        const ScriptedLearner learner(sampledPatient(kSeed, number), kHip.convention, kHip.view,
                                      defaultPolicy());
        const ByHandGrade grade = learner.graded(*learner.planted(closed, stream));
        ASSERT_EQ(grade.first, causeOf(closed)) << kNoSource;
        const auto step = std::ranges::find(grade.steps, Slip::FingersClosed, &BuildStepGrade::slip);
        EXPECT_LT(step->degrees.value(), 25.0) << kNoSource;
        EXPECT_GE(step->degrees.value(), kClosedOpening) << kNoSource;
    }
}

}  // namespace fb::test::typical_errors_test
