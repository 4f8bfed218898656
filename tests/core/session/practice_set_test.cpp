// Practice over requests that are set and not drawn: practice.h, its second constructor.
#include <gtest/gtest.h>

#include "core/session/practice.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace practice_set_test {

namespace {

std::vector<SetRequest> threeRequests()
{
    std::vector<SetRequest> set;
    const RequestMix mix{SiteSet::all(), false};
    for (int i = 0; i < 3; ++i)
        set.push_back({requestFrom(40, i, mix), HelpLevel::Nothing, false});
    set[0].request.site = Site::Deltoid;
    set[0].request.view = View::ShoulderSide;
    set[1].request.site = Site::VastusLateralis;
    set[1].request.view = View::ThighFront;
    set[1].help = HelpLevel::DrawnAndNamed;
    set[2].request.site = Site::Ventrogluteal;
    set[2].request.view = View::HipSide;
    set[2].byHand = true;
    return set;
}

Practice practiceFrom(int from) { return {test::atlas(), test::defaultPolicy(), threeRequests(), from}; }

void expectAsked(const Practice& run, int number)
{
    const SetRequest wanted = threeRequests()[static_cast<std::size_t>(number)];
    EXPECT_EQ(run.request().number, number);
    EXPECT_EQ(run.request().site, wanted.request.site);
    EXPECT_EQ(run.request().view, wanted.request.view);
    EXPECT_EQ(run.request().patient, wanted.request.patient);
    EXPECT_EQ(run.setup().help, wanted.help);
    EXPECT_EQ(run.setup().byHand, wanted.byHand);
    EXPECT_EQ(run.target().view, wanted.request.view);
    EXPECT_EQ(run.phase(), wanted.byHand ? Phase::Feeling : Phase::Marking);
    EXPECT_EQ(run.byHand() != nullptr, wanted.byHand);
}

}  // namespace

TEST(PracticeSetTest, AsksExactlyTheseEachInItsOwnWay)
{
    Practice run = practiceFrom(0);
    EXPECT_EQ(run.setup().length, 3);
    EXPECT_FALSE(run.setup().asksSide);
    for (int i = 0; i < 3; ++i) {
        expectAsked(run, i);
        if (i == 2)
            break;
        ASSERT_TRUE(run.placeMark(run.target().ideal).value());
        ASSERT_TRUE(run.grade());
        EXPECT_EQ(run.graded()->grade.verdict, Verdict::OnTarget);
        EXPECT_FALSE(run.graded()->sideRight);
        ASSERT_TRUE(run.next());
    }
    EXPECT_EQ(run.gradeByHand().error().problem, Problem::NoFlagPlanted);
}

TEST(PracticeSetTest, StartsAtTheOneItIsTold)
{
    for (int from = 0; from < 3; ++from) {
        Practice run = practiceFrom(from);
        expectAsked(run, from);
        EXPECT_TRUE(run.attempts().empty());
    }
}

TEST(PracticeSetTest, EndsAfterTheLast)
{
    Practice run = practiceFrom(2);
    ASSERT_TRUE(run.refuse(FindingCode::Rash));
    EXPECT_EQ(run.graded()->refusal->outcome, RefusalOutcome::NothingRulesOut);
    ASSERT_TRUE(run.next());
    EXPECT_EQ(run.phase(), Phase::Summary);
    EXPECT_EQ(run.attempts().size(), 1U);
    EXPECT_FALSE(run.next());
}

TEST(PracticeSetTest, RepeatedItBeginsWithTheFirst)
{
    Practice run = practiceFrom(1);
    run.repeat();
    expectAsked(run, 0);
}

// Numbers follow the place in the set, whatever the requests said before.
TEST(PracticeSetTest, NumbersAreThoseOfTheSet)
{
    std::vector<SetRequest> set = threeRequests();
    std::swap(set[0], set[1]);
    const Practice run(test::atlas(), test::defaultPolicy(), set, 0);
    EXPECT_EQ(run.request().number, 0);
    EXPECT_EQ(run.request().site, Site::VastusLateralis);
}

}  // namespace practice_set_test
