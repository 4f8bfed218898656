// On the manikin and at the signature: quick presses are made one after another, and a wrong PIN signs
// nothing.
#include <gtest/gtest.h>

#include "app/checkoff/check_off_presenter.h"
#include "tests/support/check_off_run.h"

namespace check_off_presenter_manikin_test {

namespace {

using namespace fb;
using namespace fb::test;

struct OnManikin : CheckOffRun {
    OnManikin()
    {
        toHandover();
        presenter->takeOver();
    }
};

TEST(CheckOffPresenterManikinTest, QuickPressesWaitForOneAnother)
{
    OnManikin run;
    run.records.waits = true;
    run.presenter->observe(ProcedureStep::Identify, Seen::Done);
    run.presenter->observe(ProcedureStep::Document, Seen::Prompted);
    run.presenter->withdraw(ProcedureStep::Identify);
    EXPECT_TRUE(run.state().observations.empty());
    EXPECT_EQ(run.records.waiting.size(), 1U);
    run.records.answerAll();
    ASSERT_EQ(run.state().observations.size(), 1U);
    EXPECT_EQ(run.state().observations.front().step, ProcedureStep::Document);
    EXPECT_FALSE(run.state().saving);
}

TEST(CheckOffPresenterManikinTest, NoOtherAreaHidesTheClockWhileItRuns)
{
    OnManikin run;
    EXPECT_TRUE(run.presenter->holdsTheWindow());
    run.presenter->pause(QStringLiteral("Fire alarm"));
    EXPECT_TRUE(run.presenter->holdsTheWindow()) << "from a pause it goes on where it was";
    run.presenter->resume();
    run.presenter->restNotDone();
    run.presenter->finish();
    EXPECT_FALSE(run.presenter->holdsTheWindow()) << "no clock runs any more";
}

TEST(CheckOffPresenterManikinTest, TheRestIsMarkedNotDoneAndNothingElse)
{
    OnManikin run;
    run.presenter->observe(ProcedureStep::Document, Seen::Done);
    run.presenter->restNotDone();
    ASSERT_EQ(run.state().observations.size(), 2U);
    EXPECT_EQ(run.state().observations.front().seen, Seen::Done);
    EXPECT_EQ(run.state().observations.back().seen, Seen::NotDone);
    run.presenter->finish();
    EXPECT_EQ(run.state().result.decision.outcome, Outcome::FailCritical);
}

TEST(CheckOffPresenterManikinTest, AnUnratedStepIsTold)
{
    OnManikin run;
    run.presenter->finish();
    EXPECT_EQ(run.state().stage, CheckOffStage::OnManikin);
    EXPECT_EQ(run.state().notice->problem, Problem::StepsNotRated);
    EXPECT_EQ(run.state().notice->what, "2");
}

TEST(CheckOffPresenterManikinTest, TheStopwatchKeepsItsSecondsUntilTheyAreOnDisk)
{
    OnManikin run;
    run.presenter->toggleHolding();
    ASSERT_TRUE(run.wait(Ms{9500}));
    EXPECT_EQ(run.state().holding, Ms{9500});
    run.records.trouble = Fault{Problem::StoreFull, "records.sqlite", {}};
    run.presenter->toggleHolding();
    EXPECT_FALSE(run.state().held.has_value());
    ASSERT_TRUE(run.wait(Ms{5000}));
    EXPECT_EQ(run.state().holding, Ms{9500}) << "stopped is stopped";
    run.records.trouble.reset();
    run.presenter->toggleHolding();
    ASSERT_TRUE(run.state().held.has_value());
    EXPECT_DOUBLE_EQ(*run.state().held, 9.5);
    EXPECT_FALSE(run.state().holding.has_value());
    run.presenter->toggleHolding();
    EXPECT_EQ(run.state().holding, Ms{0}) << "and can be taken anew";
}

TEST(CheckOffPresenterManikinTest, ASafetyStopIsNotLostBehindAnObservation)
{
    OnManikin run;
    run.records.waits = true;
    run.presenter->observe(ProcedureStep::Identify, Seen::Done);
    run.presenter->stopForSafety(QStringLiteral("needle pointed at a hand"));
    run.records.answerAll();
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
    EXPECT_EQ(run.state().result.decision.outcome, Outcome::StoppedSafety);
    EXPECT_EQ(run.state().endNote, QStringLiteral("needle pointed at a hand"));
}

TEST(CheckOffPresenterManikinTest, AWrongPinSignsNothing)
{
    CheckOffRun run;
    run.toClosing();
    run.presenter->sign(1, QLatin1String(CheckOffRun::kPin), 0, {});
    EXPECT_EQ(run.state().notice->problem, Problem::RatingMissing);
    run.presenter->rate(5, {});
    run.presenter->sign(1, QStringLiteral("000000"), 0, {});
    EXPECT_EQ(run.state().notice->problem, Problem::PinWrong);
    EXPECT_FALSE(run.state().signedOff.has_value());
    EXPECT_FALSE(run.state().saving);
    run.presenter->sign(1, QLatin1String(CheckOffRun::kPin), 0, {});
    EXPECT_TRUE(run.state().signedOff.has_value());
    const auto before = run.events().size();
    run.presenter->sign(1, QLatin1String(CheckOffRun::kPin), 0, {});
    EXPECT_EQ(run.events().size(), before) << "signed once";
}

TEST(CheckOffPresenterManikinTest, WhereTwoAreNeededOneDoesNotDo)
{
    Sheet sheet = shortSheet();
    sheet.retest.attempts = 1;
    CheckOffRun run(sheet);
    run.toClosing();
    ASSERT_TRUE(run.state().open->needsSecondAssessor);
    const QString pin = QLatin1String(CheckOffRun::kPin);
    run.presenter->rate(4, {});
    run.presenter->sign(1, pin, 0, {});
    EXPECT_EQ(run.state().notice->problem, Problem::SecondAssessorMissing);
    run.presenter->sign(1, pin, 1, pin);
    EXPECT_EQ(run.state().notice->problem, Problem::SameAssessor);
    run.presenter->sign(1, pin, 2, QStringLiteral("111111"));
    EXPECT_EQ(run.state().notice->problem, Problem::PinWrong);
    run.presenter->sign(1, pin, 2, pin);
    ASSERT_TRUE(run.state().signedOff.has_value());
    EXPECT_EQ(run.state().signedOff->assessors.size(), 2U);
}

TEST(CheckOffPresenterManikinTest, TheFirstAssessorEnrolsAndSignsAtOnce)
{
    CheckOffRun run;
    run.records.people.clear();
    run.presenter->openDesk();
    run.toClosing();
    run.presenter->enrol(QStringLiteral("Vera Holm"), QStringLiteral("12"));
    EXPECT_EQ(run.state().notice->problem, Problem::PinTooShort);
    EXPECT_TRUE(run.state().desk.assessors.empty());
    run.presenter->enrol(QStringLiteral(" Vera Holm "), QStringLiteral("482913"));
    ASSERT_EQ(run.state().desk.assessors.size(), 1U);
    EXPECT_EQ(run.state().desk.assessors.front().name, QStringLiteral("Vera Holm"));
    run.presenter->rate(4, {});
    run.presenter->sign(run.state().desk.assessors.front().id, QStringLiteral("482913"), 0, {});
    EXPECT_TRUE(run.state().signedOff.has_value());
}

TEST(CheckOffPresenterManikinTest, WithoutStepsTheResultComesAtOnce)
{
    Sheet sheet = shortSheet();
    sheet.steps.clear();
    CheckOffRun run(sheet);
    run.toHandover();
    run.presenter->takeOver();
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
    EXPECT_EQ(run.state().result.decision.outcome, Outcome::Pass);
}

}  // namespace

}  // namespace check_off_presenter_manikin_test
