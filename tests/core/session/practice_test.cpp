#include "core/session/practice.h"

#include <gtest/gtest.h>

#include "tests/support/core_atlas.h"

using namespace fb;

namespace practice_test {

namespace {

Practice practice(int length = 2, bool asksSide = true)
{
    return {test::atlas(), test::defaultPolicy(), {7, length, HelpLevel::Nothing, asksSide}};
}

Side other(Side side) { return side == Side::Left ? Side::Right : Side::Left; }

}  // namespace

TEST(PracticeTest, OneRunFromTheSideToTheSummary)
{
    Practice run = practice();
    for (int i = 0; i < 2; ++i) {
        ASSERT_EQ(run.phase(), Phase::PickingSide);
        EXPECT_TRUE(run.pickSide(run.request().patient.side()));
        ASSERT_EQ(run.phase(), Phase::Marking);
        ASSERT_TRUE(run.placeMark(run.target().ideal).value());
        EXPECT_TRUE(run.grade());
        ASSERT_EQ(run.phase(), Phase::Graded);
        ASSERT_NE(run.graded(), nullptr);
        EXPECT_EQ(run.graded()->grade.verdict, Verdict::OnTarget);
        EXPECT_EQ(run.graded()->sideRight, true);
        EXPECT_TRUE(run.next());
    }
    EXPECT_EQ(run.phase(), Phase::Summary);
    EXPECT_EQ(run.attempts().size(), 2U);
}

TEST(PracticeTest, AWrongSideIsRecordedAndMayBeTriedAgain)
{
    Practice run = practice(1);
    EXPECT_TRUE(run.pickSide(other(run.request().patient.side())));
    EXPECT_EQ(run.phase(), Phase::PickingSide);
    EXPECT_TRUE(run.pickedWrongSide());
    EXPECT_TRUE(run.pickSide(run.request().patient.side()));
    EXPECT_FALSE(run.pickedWrongSide());
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    EXPECT_TRUE(run.grade());
    EXPECT_EQ(run.graded()->sideRight, false);
}

TEST(PracticeTest, AMarkCanBeMovedAndWithdrawnUntilGraded)
{
    Practice run = practice(1, false);
    EXPECT_EQ(run.phase(), Phase::Marking);
    EXPECT_FALSE(run.grade());
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    ASSERT_TRUE(run.placeMark(run.target().ideal + Point{0.5, 0.0}).value());
    EXPECT_EQ(run.mark(), run.target().ideal + (Point{0.5, 0.0}));
    EXPECT_TRUE(run.withdrawMark());
    EXPECT_FALSE(run.mark());
    EXPECT_FALSE(run.withdrawMark());
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    EXPECT_TRUE(run.grade());
    EXPECT_FALSE(run.placeMark(run.target().ideal).value());
    EXPECT_FALSE(run.withdrawMark());
}

TEST(PracticeTest, AMarkOffTheBodyLeavesTheOldOne)
{
    Practice run = practice(1, false);
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    EXPECT_EQ(run.placeMark({500, 500}).error().problem, Problem::MarkOutsideBody);
    EXPECT_EQ(run.mark(), run.target().ideal);
}

TEST(PracticeTest, CallsOutOfTurnChangeNothing)
{
    Practice run = practice();
    EXPECT_FALSE(run.next());
    EXPECT_FALSE(run.grade());
    EXPECT_FALSE(run.placeMark({0, -5}).value());
    EXPECT_EQ(run.phase(), Phase::PickingSide);
    EXPECT_EQ(run.graded(), nullptr);
}

TEST(PracticeTest, RepeatingAsksTheSameAgain)
{
    Practice run = practice(1, false);
    const Patient first = run.request().patient;
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    run.grade();
    run.next();
    run.repeat();
    EXPECT_EQ(run.phase(), Phase::Marking);
    EXPECT_EQ(run.request().patient, first);
    EXPECT_TRUE(run.attempts().empty());
}

TEST(PracticeTest, ARunHasALengthWithinReason)
{
    EXPECT_TRUE(checkedSetup({1, 1, HelpLevel::Nothing, true}));
    EXPECT_TRUE(checkedSetup({1, 200, HelpLevel::Nothing, true}));
    EXPECT_EQ(checkedSetup({1, 0, HelpLevel::Nothing, true}).error().problem, Problem::RunLengthOutOfRange);
    EXPECT_EQ(checkedSetup({1, 201, HelpLevel::Nothing, true}).error().high, 200.0);
}

namespace {

Practice mixedRun(std::uint64_t seed, int length)
{
    return {test::atlas(),
            test::defaultPolicy(),
            {seed, length, HelpLevel::Nothing, false, RequestMix{SiteSet::all(), true}}};
}

bool ruledOut(const Request& request)
{
    return request.finding && rulesOut(*request.finding, request.site, request.patient.side());
}

}  // namespace

TEST(PracticeTest, EverySiteIsMarkedAndGradedInAMixedRun)
{
    Practice run = mixedRun(11, 40);
    while (run.phase() == Phase::Marking) {
        ASSERT_TRUE(run.placeMark(run.target().ideal).value()) << run.request().number;
        EXPECT_TRUE(run.grade());
        const Attempt& attempt = *run.graded();
        EXPECT_TRUE(attempt.grade.inside);
        EXPECT_EQ(attempt.missedFinding, ruledOut(attempt.request));
        EXPECT_EQ(attempt.grade.verdict, attempt.missedFinding ? Verdict::Unsafe : Verdict::OnTarget);
        EXPECT_EQ(attempt.grade.points, attempt.missedFinding ? 0.0 : 1.0);
        EXPECT_TRUE(run.next());
    }
    EXPECT_EQ(run.attempts().size(), 40U);
}

TEST(PracticeTest, RefusingIsGradedByTheChart)
{
    Practice run = mixedRun(12, 60);
    int right = 0;
    int needless = 0;
    while (run.phase() == Phase::Marking) {
        const Request request = run.request();
        const FindingCode reason = request.finding ? request.finding->code : FindingCode::Rash;
        EXPECT_TRUE(run.refuse(reason));
        ASSERT_NE(run.graded(), nullptr);
        ASSERT_TRUE(run.graded()->refusal);
        EXPECT_EQ(run.graded()->refusal->reason, reason);
        if (ruledOut(request)) {
            EXPECT_EQ(run.graded()->refusal->outcome, RefusalOutcome::RightReason);
            EXPECT_EQ(run.graded()->grade.points, 1.0);
            ++right;
        } else {
            EXPECT_EQ(run.graded()->refusal->outcome, RefusalOutcome::NothingRulesOut);
            EXPECT_EQ(run.graded()->grade.verdict, Verdict::OffTarget);
            EXPECT_EQ(run.graded()->grade.points, 0.0);
            ++needless;
        }
        EXPECT_TRUE(run.next());
    }
    EXPECT_GT(right, 3);
    EXPECT_GT(needless, 10);
}

TEST(PracticeTest, TheWrongReasonEarnsNoPoint)
{
    Practice run = mixedRun(12, 60);
    while (run.phase() == Phase::Marking && !ruledOut(run.request())) {
        run.refuse(FindingCode::Rash);
        run.next();
    }
    ASSERT_EQ(run.phase(), Phase::Marking);
    const FindingCode other =
        run.request().finding->code == FindingCode::Scar ? FindingCode::Rash : FindingCode::Scar;
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    EXPECT_TRUE(run.refuse(other));
    EXPECT_EQ(run.graded()->refusal->outcome, RefusalOutcome::WrongReason);
    EXPECT_EQ(run.graded()->grade.points, 0.0);
    EXPECT_FALSE(run.mark()) << "a refusal takes the place of the mark";
}

TEST(PracticeTest, RefusingOutOfTurnChangesNothing)
{
    Practice run = practice();
    ASSERT_EQ(run.phase(), Phase::PickingSide);
    EXPECT_FALSE(run.refuse(FindingCode::Rash));
    EXPECT_TRUE(run.attempts().empty());
}

TEST(PracticeTest, ARunNeedsASite)
{
    PracticeSetup setup;
    setup.mix.sites.set(Site::Deltoid, false);
    EXPECT_EQ(checkedSetup(setup).error().problem, Problem::NoSiteChosen);
}

TEST(PracticeTest, MorePlatesMayComeWhileARunGoesOn)
{
    // A run that begins with what its first request needs, and gets the rest before the next.
    const PracticeSetup setup{11, 12, HelpLevel::Nothing, false, RequestMix{SiteSet::all(), false}};
    Atlas first;
    first.proportions = test::atlas().proportions;
    for (const View view : neededPlates(requestFrom(setup.seed, 0, setup.mix).view))
        first.plates[static_cast<std::size_t>(view)] = &test::plateOf(view);
    Practice run(first, test::defaultPolicy(), setup);
    ASSERT_TRUE(run.placeMark(run.target().ideal).value());
    run.grade();
    run.useAtlas(test::atlas());
    while (run.next() && run.phase() == Phase::Marking) {
        ASSERT_TRUE(run.placeMark(run.target().ideal).value());
        EXPECT_TRUE(run.grade());
    }
    EXPECT_EQ(run.attempts().size(), 12U);
}

}  // namespace practice_test
