// A run by hand through the practice: practice.h with by_hand.h in it.
#include <gtest/gtest.h>

#include "core/session/practice.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace practice_by_hand_test {

namespace {

Practice byHandRun(Site site, bool asksSide = false)
{
    PracticeSetup setup{11, 2, HelpLevel::Nothing, asksSide, {SiteSet::only(site), false}, true};
    return {test::atlas(), test::defaultPolicy(), setup};
}

void plantAll(Practice& run)
{
    for (const Landmark asked : askedLandmarks(run.target().convention)) {
        const auto points = placeOf(run.target(), asked)->points;
        ASSERT_TRUE(run.plant(asked, points[points.size() / 2])) << wordOf(asked);
    }
}

void buildAll(ByHand& hand, const Target& target)
{
    const Build wanted = flawlessBuild(target, hand.builder());
    if (wanted.hand)
        hand.chooseHand(wanted.hand->hand);
    if (wanted.fingers)
        hand.chooseFingers(wanted.fingers->count, wanted.fingers->hand);
    for (const Handle handle : handlesOf(buildKindOf(target.convention)))
        hand.setHandle(handle, *handleAt(wanted, target, hand.builder(), handle));
    if (wanted.cell)
        hand.chooseCell(*wanted.cell);
}

}  // namespace

TEST(PracticeByHandTest, ARequestGoesFromFeelingOverBuildingToTheMark)
{
    for (const Site site : kSites) {
        Practice run = byHandRun(site, true);
        ASSERT_EQ(run.phase(), Phase::PickingSide);
        EXPECT_EQ(run.byHand(), nullptr);
        ASSERT_TRUE(run.pickSide(run.request().patient.side()));
        ASSERT_EQ(run.phase(), Phase::Feeling);
        ASSERT_NE(run.byHand(), nullptr);
        plantAll(run);
        ASSERT_TRUE(run.byHand()->goTo(ByHandStage::Building));
        EXPECT_EQ(run.phase(), Phase::Building);
        EXPECT_FALSE(run.placeMark(run.target().ideal).value());
        buildAll(*run.byHand(), run.target());
        ASSERT_TRUE(run.byHand()->goTo(ByHandStage::Marking)) << wordOf(site);
        ASSERT_EQ(run.phase(), Phase::Marking);
        ASSERT_TRUE(run.placeMark(run.target().ideal).value());
        ASSERT_TRUE(run.gradeByHand().value());
        ASSERT_EQ(run.phase(), Phase::Graded);
        EXPECT_EQ(run.byHand(), nullptr);
        const Attempt& attempt = *run.graded();
        ASSERT_TRUE(attempt.byHand);
        EXPECT_FALSE(attempt.byHand->first);
        EXPECT_DOUBLE_EQ(attempt.grade.points, 3.0);
        EXPECT_EQ(attempt.flags.size(), askedLandmarks(run.target().convention).size());
        EXPECT_TRUE(attempt.build);
        EXPECT_FALSE(attempt.watched);
        ASSERT_TRUE(run.next());
        EXPECT_EQ(run.phase(), Phase::PickingSide);
    }
}

TEST(PracticeByHandTest, GradingTooEarlySaysWhatIsMissingAndKeepsTheAttempt)
{
    Practice run = byHandRun(Site::Ventrogluteal);
    EXPECT_FALSE(run.grade());
    EXPECT_EQ(run.gradeByHand().error().problem, Problem::NoFlagPlanted);
    plantAll(run);
    EXPECT_EQ(run.gradeByHand().error().problem, Problem::NothingBuilt);
    ASSERT_TRUE(run.byHand()->goTo(ByHandStage::Building));
    buildAll(*run.byHand(), run.target());
    EXPECT_EQ(run.gradeByHand().error().problem, Problem::NoMarkYet);
    EXPECT_EQ(run.byHand()->flags().size(), 3U);
    EXPECT_EQ(run.phase(), Phase::Building);
}

TEST(PracticeByHandTest, AFlagOutsideTheBodyIsRefusedAndTheOthersStay)
{
    Practice run = byHandRun(Site::Ventrogluteal);
    plantAll(run);
    const auto outside = run.plant(Landmark::GreaterTrochanter, {0.0, 90.0});
    ASSERT_FALSE(outside);
    EXPECT_EQ(outside.error().problem, Problem::MarkOutsideBody);
    EXPECT_EQ(run.byHand()->flags().size(), 3U);
    EXPECT_EQ(run.byHand()->flags()[0].at, run.target().landmarks.at("greater_trochanter"));
}

TEST(PracticeByHandTest, TheBoneIsFeltWhereItLies)
{
    Practice run = byHandRun(Site::VastusLateralis);
    const auto patella = run.feelAt(run.target().landmarks.at("patella"));
    ASSERT_TRUE(patella);
    EXPECT_EQ(patella->firmness, Firmness::Hard);
    const auto muscle = run.feelAt(run.target().ideal);
    ASSERT_TRUE(muscle);
    EXPECT_NE(muscle->firmness, Firmness::Hard);
    EXPECT_EQ(run.feelAt({0.0, 90.0}).error().problem, Problem::MarkOutsideBody);
}

TEST(PracticeByHandTest, AMarkIsWithdrawnAndUndoneLikeAnyOtherStep)
{
    Practice run = byHandRun(Site::Deltoid);
    plantAll(run);
    buildAll(*run.byHand(), run.target());
    ASSERT_TRUE(run.byHand()->goTo(ByHandStage::Marking));
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    EXPECT_TRUE(run.withdrawMark());
    EXPECT_FALSE(run.mark());
    EXPECT_FALSE(run.withdrawMark());
    EXPECT_TRUE(run.byHand()->undo());
    EXPECT_EQ(run.mark(), run.target().ideal);
}

TEST(PracticeByHandTest, AWatchedAttemptSaysSo)
{
    Practice run = byHandRun(Site::Deltoid);
    ASSERT_TRUE(run.byHand()->watch());
    plantAll(run);
    buildAll(*run.byHand(), run.target());
    ASSERT_TRUE(run.byHand()->goTo(ByHandStage::Marking));
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    ASSERT_TRUE(run.gradeByHand().value());
    EXPECT_TRUE(run.graded()->watched);
}

TEST(PracticeByHandTest, ARefusalFitsEveryStageAndEarnsTheWholeRequest)
{
    PracticeSetup setup{5, 40, HelpLevel::Nothing, false, {SiteSet::all(), true}, true};
    Practice run{test::atlas(), test::defaultPolicy(), setup};
    while (!run.request().finding ||
           !rulesOut(*run.request().finding, run.request().site, run.request().patient.side())) {
        ASSERT_TRUE(run.refuse(FindingCode::Rash));
        ASSERT_TRUE(run.next());
        ASSERT_NE(run.phase(), Phase::Summary);
    }
    EXPECT_EQ(run.phase(), Phase::Feeling);
    ASSERT_TRUE(run.refuse(run.request().finding->code));
    EXPECT_DOUBLE_EQ(run.graded()->grade.points, 3.0);
    EXPECT_FALSE(run.graded()->byHand);
}

}  // namespace practice_by_hand_test
