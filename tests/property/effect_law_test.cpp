// A slip alone puts the site where a build that has only this slip leads; and what cannot be helped or
// does no harm is no slip.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>

#include "core/build/arm_build.h"
#include "core/build/hip_build.h"
#include "core/build/thigh_build.h"
#include "core/grade/build_grade.h"
#include "core/session/by_hand.h"
#include "tests/property/sampling.h"

namespace fb::test::effect_law_test {

namespace effect_law_detail {

constexpr std::uint64_t kSeed = 107;

bool isSlip(const BuildStepGrade& step) { return step.slip != Slip::None; }

// One whole build on one body, moved away from the flawless one.
struct Bench {
    Bench(const Patient& patient, Convention convention, View view, const Policy& by = defaultPolicy())
        : policy(by),
          target(targetIn(patient, {convention, view}, by)),
          builder(Builder::from(by)),
          build(flawlessBuild(target, builder))
    {
    }

    void move(Handle handle, Point by)
    {
        build = placed(build, target, builder, handle, *handleAt(build, target, builder, handle) + by);
    }
    [[nodiscard]] std::vector<BuildStepGrade> steps() const
    {
        return gradeBuild(build, target, builder, policy);
    }

    Policy policy;
    Target target;
    Builder builder;
    Build build;
};

// What halves or divides a line goes with its ends, as a learner measures it from them.
void divideAnew(Bench& bench)
{
    const Build right = flawlessBuild(bench.target, bench.builder);
    Build& build = bench.build;
    if (buildKindOf(build.convention) == BuildKind::HalvedLine)
        build.point(Handle::LineMiddle) =
            lerp(*build.point(Handle::LineTop), *build.point(Handle::LineBottom), middleShare(right));
    if (buildKindOf(build.convention) == BuildKind::TriangleAndMedians)
        for (const Handle foot : {Handle::FootTrochanter, Handle::FootTubercle, Handle::FootSpine})
            build.point(foot) =
                lerp(*build.point(medianOf(foot).sideFrom), *build.point(medianOf(foot).sideTo), 0.5);
    if (buildKindOf(build.convention) == BuildKind::ThighGrid)
        for (const Handle line : {Handle::UpperLine, Handle::LowerLine})
            build.point(line) = lerp(*build.point(Handle::ThighTop), *build.point(Handle::ThighBottom),
                                     lineShare(right, bench.target, line));
}

bool isDivided(Handle handle)
{
    constexpr std::array kEnds{Handle::LineTop,     Handle::LineBottom,       Handle::ThighTop,
                               Handle::ThighBottom, Handle::CornerTrochanter, Handle::CornerTubercle,
                               Handle::CornerSpine};
    return std::ranges::find(kEnds, handle) != kEnds.end();
}

void expectEffectOf(const Bench& bench, const std::string& what)
{
    const auto steps = bench.steps();
    if (std::ranges::count_if(steps, isSlip) != 1)
        return;
    const auto step = std::ranges::find_if(steps, isSlip);
    ASSERT_TRUE(step->effect.has_value()) << what;
    const Point hers = *siteBy(bench.build, bench.target, bench.builder);
    EXPECT_LT(distance(step->effect->site, hers), 1e-6) << what << ": " << wordOf(step->slip);
    EXPECT_EQ(step->effect->moved, step->effect->grade.distanceToIdeal) << what;
}

}  // namespace effect_law_detail

TEST(EffectLaw, ALoneSlipPutsTheSiteWhereItsBuildLeads)
{
    using namespace effect_law_detail;
    for (int number = 0; number < rounds(300); ++number) {
        SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
        const Patient patient = sampledPatient(kSeed, number);
        for (const Convention convention : kConventions) {
            for (const View view : askedViews(siteOf(convention))) {
                for (const Handle handle : handlesOf(buildKindOf(convention))) {
                    Bench bench(patient, convention, view);
                    bench.move(handle, pointIn(stream, {{-4.0, -4.0}, {4.0, 4.0}}));
                    if (isDivided(handle))
                        divideAnew(bench);
                    expectEffectOf(bench,
                                   std::string(wordOf(convention)) + " number " + std::to_string(number));
                    ASSERT_FALSE(HasFailure());
                }
            }
        }
    }
}

TEST(EffectLaw, ALineHalvedFromAWrongEndMovesTheSiteByHalf)
{
    using namespace effect_law_detail;
    Bench bench(sampledPatient(kSeed, 1), Convention::DeltoidHalfway, View::ShoulderSide);
    bench.move(Handle::LineTop, {0.0, -3.0});
    divideAnew(bench);
    const BuildStepGrade ends = bench.steps().front();
    ASSERT_EQ(ends.slip, Slip::TopOff);
    EXPECT_EQ(ends.direction, Direction::Low);
    EXPECT_NEAR(ends.effect->moved.value(), 1.5, 0.05);
}

TEST(EffectLaw, TooManyFingersEndWhereTheLastOfThemEnds)
{
    using namespace effect_law_detail;
    const Policy broad = defaultPolicy().with(PolicyKey::DeltoidFingerWidth, 2.2);
    Bench bench(sampledPatient(kSeed, 2), Convention::DeltoidStrip, View::ShoulderSide, broad);
    bench.build = withFingers(bench.build, bench.target, bench.builder, 3, Side::Left);
    const auto steps = bench.steps();
    const auto step = std::ranges::find(steps, Slip::FingerCount, &BuildStepGrade::slip);
    ASSERT_NE(step, steps.end());
    EXPECT_NEAR(bench.target.toSkin(step->effect->site).y, -6.6, 1e-6);
    EXPECT_NEAR(step->amount.value(), 6.6, 1e-6);
    EXPECT_EQ(step->direction, Direction::Low);
}

// siteBy() takes the higher line for the upper one: so does the grade.
TEST(EffectLaw, LinesAcrossMayBeSetInEitherOrder)
{
    using namespace effect_law_detail;
    for (const View view : askedViews(Site::VastusLateralis)) {
        Bench bench(sampledPatient(kSeed, 3), Convention::VastusThirds, view);
        std::swap(bench.build.point(Handle::UpperLine), bench.build.point(Handle::LowerLine));
        EXPECT_TRUE(std::ranges::none_of(bench.steps(), isSlip));
    }
}

TEST(EffectLaw, ALineSetBesideTheLimbIsOff)
{
    using namespace effect_law_detail;
    Bench fromSide(sampledPatient(kSeed, 4), Convention::VastusThirds, View::ThighSide);
    fromSide.move(Handle::FrontLine, {0.0, 4.0});
    const auto front = fromSide.steps();
    const auto step = std::ranges::find(front, Slip::FrontLineOff, &BuildStepGrade::slip);
    ASSERT_NE(step, front.end());
    EXPECT_EQ(step->direction, Direction::Forward);
    Bench fromFront(sampledPatient(kSeed, 4), Convention::VastusThirds, View::ThighFront);
    fromFront.move(Handle::OuterLine, {0.0, -4.0});
    const auto outer = fromFront.steps();
    EXPECT_NE(std::ranges::find(outer, Slip::OuterLineOff, &BuildStepGrade::slip), outer.end());
}

// The program turns a hand about its palm: the palm stays where it lies well.
TEST(EffectLaw, AFingerThatPointsAsideIsNoSlipOfThePalm)
{
    using namespace effect_law_detail;
    for (int number = 0; number < rounds(1'000); ++number) {
        SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
        const Policy policy = defaultPolicy().with(PolicyKey::HandLength, stream.between(15.0, 22.0));
        Bench bench(sampledPatient(kSeed, number), Convention::VentroglutealHand, View::HipSide, policy);
        bench.move(Handle::Palm, pointIn(stream, {{-0.8, -0.8}, {0.8, 0.8}}));
        bench.build.hand->turn = bench.build.hand->turn + Degrees{stream.between(12.0, 40.0)};
        const auto steps = bench.steps();
        ASSERT_EQ(std::ranges::find(steps, BuildStep::Palm, &BuildStepGrade::step)->slip, Slip::None)
            << number;
        ASSERT_NE(std::ranges::find(steps, BuildStep::IndexFinger, &BuildStepGrade::step)->slip, Slip::None)
            << number;
    }
}

// As the text has it: the palm over the trochanter, the index finger toward the spine. Where a hand is too
// short or too long for both, the palm is not to blame.
TEST(EffectLaw, APalmRightOverTheTrochanterIsNoSlip)
{
    using namespace effect_law_detail;
    int slips = 0;
    for (int number = 0; number < rounds(1'000); ++number) {
        SeedStream stream(kSeed + static_cast<std::uint64_t>(number));
        const Policy policy = defaultPolicy().with(PolicyKey::HandLength, stream.between(15.0, 22.0));
        Bench bench(sampledPatient(kSeed, number), Convention::VentroglutealHand, View::HipSide, policy);
        const auto at = [&](const char* name) { return bench.target.landmarks.at(name); };
        bench.build =
            placed(bench.build, bench.target, bench.builder, Handle::Palm, at("greater_trochanter"));
        bench.build = placed(bench.build, bench.target, bench.builder, Handle::IndexTip, at("asis"));
        const auto steps = bench.steps();
        ASSERT_EQ(std::ranges::find(steps, BuildStep::Palm, &BuildStepGrade::step)->slip, Slip::None)
            << number;
        slips += std::ranges::any_of(steps, isSlip) ? 1 : 0;
        expectEffectOf(bench, std::to_string(number));
    }
    EXPECT_GT(slips, 0) << "some fingers do not reach";
}

TEST(EffectLaw, AHandleDraggedBackIsNoStep)
{
    using namespace effect_law_detail;
    const Target target = targetOf(sampledPatient(kSeed, 5), Convention::DeltoidHalfway);
    ByHand by(target, defaultPolicy());
    by.setHandle(Handle::LineTop, {0.0, 0.0});
    by.beginDrag();
    by.setHandle(Handle::LineTop, {1.0, 1.0});
    by.setHandle(Handle::LineTop, {0.0, 0.0});
    by.endDrag();
    EXPECT_TRUE(by.undo());
    EXPECT_FALSE(by.canUndo());
    EXPECT_TRUE(isEmpty(by.build()));
}

TEST(EffectLaw, FingersChosenAgainChangeHands)
{
    using namespace effect_law_detail;
    Bench bench(sampledPatient(kSeed, 6), Convention::DeltoidStrip, View::ShoulderSide);
    const Point lies = bench.build.fingers->top;
    for (const Side side : kSides) {
        bench.build = withFingers(bench.build, bench.target, bench.builder, 2, side);
        EXPECT_EQ(bench.build.fingers->hand, side);
        EXPECT_EQ(bench.build.fingers->top, lies);
    }
}

}  // namespace fb::test::effect_law_test
