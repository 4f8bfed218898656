#include "core/build/build.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <set>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace build_test {

namespace {

Target targetOf(Convention convention, Side side = Side::Right)
{
    return locate(test::atlas(), test::defaultPolicy(), test::adult(Sex::Male, 178, 80, side), convention,
                  askedViews(siteOf(convention)).front())
        .value();
}

const Builder& builder()
{
    static const Builder kBuilder = Builder::from(test::defaultPolicy());
    return kBuilder;
}

}  // namespace

TEST(BuildTest, AFlawlessBuildIsWholeAndLeadsToTheIdealPoint)
{
    for (const Convention convention : kConventions) {
        for (const Side side : kSides) {
            const Target target = targetOf(convention, side);
            const Build build = flawlessBuild(target, builder());
            EXPECT_TRUE(isWhole(build)) << wordOf(convention);
            EXPECT_EQ(build.side, side);
            const auto site = siteBy(build, target, builder());
            ASSERT_TRUE(site);
            EXPECT_LT(distance(*site, target.ideal), 1e-6) << wordOf(convention);
        }
    }
}

TEST(BuildTest, AnEmptyBuildIsEmptyAndLeadsNowhere)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        const Build build = emptyBuild(target);
        EXPECT_TRUE(isEmpty(build));
        EXPECT_FALSE(isWhole(build));
        EXPECT_FALSE(siteBy(build, target, builder()));
        EXPECT_EQ(missingHandles(build).size(), handlesOf(buildKindOf(convention)).size());
        EXPECT_TRUE(figuresOf(build, target, builder()).empty());
        for (const Handle handle : handlesOf(buildKindOf(convention)))
            EXPECT_FALSE(handleAt(build, target, builder(), handle)) << wordOf(handle);
    }
}

// Handle by handle to where the flawless build has it: the same build.
TEST(BuildTest, SettingEveryHandleInOrderMakesTheFlawlessBuild)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        const Build wanted = flawlessBuild(target, builder());
        Build build = emptyBuild(target);
        if (wanted.hand)
            build = withHand(build, target, builder(), wanted.hand->hand);
        if (wanted.fingers)
            build = withFingers(build, target, builder(), wanted.fingers->count, Side::Left);
        for (const Handle handle : handlesOf(buildKindOf(convention))) {
            ASSERT_TRUE(isReady(build, handle)) << wordOf(handle);
            build = placed(build, target, builder(), handle, *handleAt(wanted, target, builder(), handle));
        }
        if (choiceOf(buildKindOf(convention)) == BuildChoice::WhichCell)
            build.cell = cellAt(build, target, target.ideal);
        ASSERT_TRUE(isWhole(build)) << wordOf(convention);
        EXPECT_LT(distance(*siteBy(build, target, builder()), target.ideal), 1e-3) << wordOf(convention);
    }
}

TEST(BuildTest, AHandleThatNeedsOthersFirstLeavesTheBuildAsItWas)
{
    const Target thigh = targetOf(Convention::VastusThirds);
    const Build empty = emptyBuild(thigh);
    for (const Handle handle : {Handle::UpperLine, Handle::LowerLine, Handle::FrontLine, Handle::OuterLine}) {
        EXPECT_FALSE(isReady(empty, handle));
        EXPECT_EQ(placed(empty, thigh, builder(), handle, {1.0, 1.0}), empty);
    }
    const Target hip = targetOf(Convention::VentroglutealHand);
    EXPECT_FALSE(isReady(emptyBuild(hip), Handle::Palm));
    EXPECT_EQ(placed(emptyBuild(hip), hip, builder(), Handle::Palm, {1.0, 1.0}), emptyBuild(hip));
    // A handle of another kind of build.
    EXPECT_FALSE(isReady(emptyBuild(hip), Handle::Apex));
    EXPECT_EQ(placed(emptyBuild(hip), hip, builder(), Handle::Apex, {1.0, 1.0}), emptyBuild(hip));
}

TEST(BuildTest, APlaceThatIsNoPointChangesNothing)
{
    const Target target = targetOf(Convention::DeltoidStrip);
    const Build build = emptyBuild(target);
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(placed(build, target, builder(), Handle::Apex, {nan, 0.0}), build);
}

TEST(BuildTest, AHandIsLaidWhereNothingIsFoundYetAndChangesHandsInItsPlace)
{
    for (const Side side : kSides) {
        const Target target = targetOf(Convention::VentroglutealHand, side);
        const Build build = withHand(emptyBuild(target), target, builder(), Side::Right);
        ASSERT_TRUE(build.hand);
        EXPECT_FALSE(isEmpty(build));
        EXPECT_DOUBLE_EQ(build.hand->opening.value(), kClosedOpening);
        EXPECT_GT(distance(build.hand->palm, target.landmarks.at("greater_trochanter")), 10.0);
        // Its fingers point to the head.
        const HandPose pose = poseOf(*build.hand, builder().hand);
        EXPECT_GT(target.toSkin(pose.indexTip).y, target.toSkin(pose.wrist).y + 10.0);
        const Build other = withHand(build, target, builder(), Side::Left);
        EXPECT_EQ(other.hand->palm, build.hand->palm);
        EXPECT_EQ(other.hand->hand, Side::Left);
    }
}

TEST(BuildTest, FingersAreLaidTwoOrThreeAndKeepTheirPlaceWhenCountedAnew)
{
    const Target target = targetOf(Convention::DeltoidStrip);
    Build build = withFingers(emptyBuild(target), target, builder(), 2, Side::Right);
    ASSERT_TRUE(build.fingers);
    EXPECT_EQ(build.fingers->hand, Side::Right);
    build = placed(build, target, builder(), Handle::Fingers, {0.5, -2.0});
    const Point top = build.fingers->top;
    build = withFingers(build, target, builder(), 3, Side::Right);
    EXPECT_EQ(build.fingers->count, 3);
    EXPECT_EQ(build.fingers->top, top);
    EXPECT_EQ(withFingers(build, target, builder(), 4, Side::Right), build);
    EXPECT_EQ(withFingers(build, target, builder(), 1, Side::Right), build);
}

TEST(BuildTest, FiguresAreWhatTheTargetsOwnConstructionCallsThem)
{
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        const Steps figures = figuresOf(flawlessBuild(target, builder()), target, builder());
        EXPECT_GE(figures.size(), 2U) << wordOf(convention);
        for (const Step& step : figures)
            for (const Point p : step.points)
                EXPECT_TRUE(isFinite(p));
    }
}

TEST(BuildTest, WordsAreOfTheirOwn)
{
    std::set<std::string_view> words;
    for (int i = 0; i < kHandleCount; ++i)
        words.insert(wordOf(static_cast<Handle>(i)));
    for (int i = 0; i < kBuildChoiceCount; ++i)
        words.insert(wordOf(static_cast<BuildChoice>(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kHandleCount + kBuildChoiceCount));
    EXPECT_FALSE(words.contains(""));
    std::set<std::string_view> kinds;
    for (const Convention convention : kConventions)
        kinds.insert(wordOf(buildKindOf(convention)));
    EXPECT_EQ(kinds.size(), 5U);
}

}  // namespace build_test
