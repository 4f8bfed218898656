#include "core/grade/build_grade.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace build_grade_test {

namespace {

Target targetOf(Convention convention, Side side = Side::Right)
{
    return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Female, 165, 64, side), convention,
                  askedViews(siteOf(convention)).front())
        .value();
}

const Builder& builder()
{
    static const Builder kBuilder = Builder::from(test::defaultPolicy());
    return kBuilder;
}

std::vector<BuildStepGrade> graded(const Target& target, const Build& build)
{
    return gradeBuild(build, target, builder(), test::defaultPolicy());
}

}  // namespace

TEST(BuildGradeTest, AFlawlessBuildHasNoSlipInAnyStep)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        const auto steps = graded(target, flawlessBuild(target, builder()));
        EXPECT_GE(steps.size(), 2U);
        std::set<BuildStep> seen;
        for (const BuildStepGrade& step : steps) {
            EXPECT_EQ(step.slip, Slip::None) << wordOf(convention) << ' ' << wordOf(step.slip);
            EXPECT_FALSE(step.effect);
            EXPECT_TRUE(seen.insert(step.step).second);
        }
    }
}

TEST(BuildGradeTest, ASlipsEffectIsTheFlawlessBuildButForThatSlip)
{
    const Target target = targetOf(Convention::VentroglutealHand);
    Build build = flawlessBuild(target, builder());
    build.hand = slid(*build.hand, build.hand->palm + Point{4.0, 0.0});
    const auto steps = graded(target, build);
    ASSERT_EQ(steps[1].step, BuildStep::Palm);
    EXPECT_EQ(steps[1].slip, Slip::PalmOff);
    EXPECT_EQ(steps[1].direction, Direction::Low);
    EXPECT_NEAR(steps[1].amount.value(), 4.0, 1e-6);
    ASSERT_TRUE(steps[1].effect);
    EXPECT_LT(distance(steps[1].effect->site, target.ideal + Point{4.0, 0.0}), 1e-6);
    EXPECT_NEAR(steps[1].effect->moved.value(), 4.0, 1e-6);
    EXPECT_NE(steps[1].effect->grade.verdict, Verdict::OnTarget);
    // The finger that went with the palm is the palm's slip.
    EXPECT_EQ(steps[2].slip, Slip::None);
    EXPECT_TRUE(steps[2].carried);
    EXPECT_NEAR(steps[2].amount.value(), 4.0, 1e-6);
    EXPECT_FALSE(steps[0].carried);
}

TEST(BuildGradeTest, TheWrongHandIsNamedAndOpensInFront)
{
    for (const Side side : kSides) {
        const Target target = targetOf(Convention::VentroglutealHand, side);
        Build build = flawlessBuild(target, builder());
        build.hand = swapped(*build.hand);
        const auto steps = graded(target, build);
        EXPECT_EQ(steps[0].slip, Slip::WrongHand);
        ASSERT_TRUE(steps[0].effect);
        EXPECT_GT(target.toSkin(steps[0].effect->site).x, target.idealSkin.x + 1.0);
    }
}

TEST(BuildGradeTest, TheLimitIsThePolicys)
{
    const Target target = targetOf(Convention::DeltoidStrip);
    Build build = flawlessBuild(target, builder());
    build.point(Handle::Apex) = *build.point(Handle::Apex) + Point{0.0, -1.4};
    EXPECT_EQ(graded(target, build).back().slip, Slip::None);
    const Policy strict = test::defaultPolicy().with(PolicyKey::BuildPlace, 1.0);
    const auto steps = gradeBuild(build, target, builder(), strict);
    EXPECT_EQ(steps.back().slip, Slip::ApexOff);
    EXPECT_EQ(steps.back().direction, Direction::Low);
}

TEST(BuildGradeTest, WordsAreOfTheirOwn)
{
    std::set<std::string_view> words;
    for (int i = 0; i < kBuildStepCount; ++i)
        words.insert(wordOf(static_cast<BuildStep>(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kBuildStepCount));
    std::set<std::string_view> slips;
    for (int i = 0; i < kSlipCount; ++i)
        slips.insert(wordOf(static_cast<Slip>(i)));
    EXPECT_EQ(slips.size(), static_cast<std::size_t>(kSlipCount));
    EXPECT_FALSE(slips.contains(""));
}

}  // namespace build_grade_test
