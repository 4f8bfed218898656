// Time, pauses and crashes: nothing but a student's own seconds is counted, and nothing that was kept is
// lost.
#include <gtest/gtest.h>

#include "app/checkoff/check_off_presenter.h"
#include "tests/support/check_off_run.h"
#include "tests/support/hand_learner.h"

namespace check_off_presenter_time_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(CheckOffPresenterTimeTest, WhenTheItemsTimeIsUpTheNextOneComes)
{
    CheckOffRun run;
    run.toItems();
    EXPECT_EQ(run.state().itemLeft, Ms{60000});
    ASSERT_TRUE(run.wait(Ms{30000}));
    EXPECT_EQ(run.state().itemLeft, Ms{30000});
    EXPECT_EQ(run.state().used, Ms{30000});
    run.mark();
    ASSERT_TRUE(run.wait(Ms{30100}));
    EXPECT_EQ(run.state().item, 1);
    EXPECT_TRUE(run.state().itemTimeUp);
    EXPECT_FALSE(run.items().state().mark.has_value());
    EXPECT_EQ(run.items().state().request->number, 1);
    ASSERT_TRUE(run.events().back().answer.has_value());
    EXPECT_TRUE(run.events().back().answer->timeUp);
    EXPECT_FALSE(run.events().back().answer->mark.has_value()) << "what was not confirmed is no answer";
    run.confirm();
    EXPECT_FALSE(run.state().itemTimeUp);
}

TEST(CheckOffPresenterTimeTest, ExtraTimeIsGranted)
{
    CheckOffRun run;
    run.presenter->begin(QStringLiteral("S-2"));
    run.presenter->confirmIdentity();
    run.presenter->startItems();
    EXPECT_EQ(run.state().itemLeft, Ms{90000});
    EXPECT_EQ(run.records.kept.at(1).open.order.extraPercent, 50);
}

TEST(CheckOffPresenterTimeTest, TimeThatIsUpWhileTheDiskIsFullIsKeptOnceThereIsRoom)
{
    CheckOffRun run;
    run.toItems();
    run.records.trouble = Fault{Problem::StoreFull, "records.sqlite", {}};
    ASSERT_TRUE(run.wait(Ms{61000}));
    EXPECT_EQ(run.state().item, 0);
    EXPECT_EQ(run.items().state().keeping, Keeping::Failed);
    run.items().placeMark({0.0, -4.0});
    EXPECT_FALSE(run.items().state().mark.has_value()) << "it is too late for another";
    run.records.trouble.reset();
    ASSERT_TRUE(run.wait(Ms{4000})) << "it is tried again by itself";
    EXPECT_EQ(run.state().item, 1);
    EXPECT_FALSE(run.state().notice.has_value());
    EXPECT_TRUE(run.state().itemTimeUp);
}

TEST(CheckOffPresenterTimeTest, NeitherPauseNorSleepIsCounted)
{
    CheckOffRun run;
    run.toItems();
    ASSERT_TRUE(run.wait(Ms{10000}));
    run.presenter->pause(QStringLiteral(" fire alarm "));
    EXPECT_TRUE(run.state().paused);
    EXPECT_EQ(run.state().pauseReason, QStringLiteral("fire alarm"));
    ASSERT_TRUE(run.wait(Ms{20000}));
    run.presenter->resume();
    EXPECT_FALSE(run.state().paused);
    run.records.clock.now += Ms{3600000};
    ASSERT_TRUE(run.wait(Ms{1000}));
    EXPECT_EQ(run.state().used, Ms{10000}) << "an hour of sleep and the second after it are left out";
    ASSERT_TRUE(run.wait(Ms{1000}));
    EXPECT_EQ(run.state().used, Ms{11000});
    run.presenter->pause(QStringLiteral("  "));
    ASSERT_TRUE(run.state().notice.has_value());
    EXPECT_EQ(run.state().notice->problem, Problem::ReasonMissing);
}

TEST(CheckOffPresenterTimeTest, CountedTimeIsKeptEveryFewSeconds)
{
    CheckOffRun run;
    run.toItems();
    ASSERT_TRUE(run.wait(Ms{9500}));
    EXPECT_GE(run.records.timesKept, 2);
    EXPECT_LE(run.records.timesKept, 4);
    EXPECT_GE(run.records.kept.at(1).open.onScreen, Ms{7000});
    const int before = run.records.timesKept;
    run.presenter->pause(QStringLiteral("fire alarm"));
    ASSERT_TRUE(run.wait(Ms{6000}));
    EXPECT_EQ(run.records.timesKept, before);
}

TEST(CheckOffPresenterTimeTest, AfterACrashItGoesOnAtTheSameItemWithTheTimeUsed)
{
    Sheet sheet = shortSheet();
    sheet.items[1].byHand = true;
    sheet.secondsPerItem = 0;
    sheet.secondsOnScreen = 600;
    CheckOffRun run(sheet);
    run.toItems();
    run.confirm();
    ASSERT_TRUE(run.wait(Ms{8000}));
    HandLearner(run.items()).plant();
    ASSERT_FALSE(run.items().state().byHand->flags.empty());
    const Patient patient = run.items().state().request->patient;
    const Ms kept = run.records.kept.at(1).open.onScreen;
    EXPECT_GE(kept, Ms{5000});
    run.restart();
    ASSERT_TRUE(run.state().desk.running.has_value());
    EXPECT_FALSE(run.state().open.has_value()) << "it is offered, not forced";
    run.presenter->begin(QStringLiteral("S-2"));
    ASSERT_TRUE(run.state().notice.has_value());
    EXPECT_EQ(run.state().notice->problem, Problem::CheckOffRunning);
    run.records.clock.now += Ms{900000};
    run.presenter->goOn();
    EXPECT_EQ(run.state().stage, CheckOffStage::OnScreen);
    EXPECT_EQ(run.state().item, 1);
    EXPECT_EQ(run.state().used, kept);
    EXPECT_EQ(run.items().state().request->patient, patient);
    ASSERT_TRUE(run.items().state().byHand.has_value());
    EXPECT_TRUE(run.items().state().byHand->flags.empty()) << "by hand it begins anew";
    EXPECT_FALSE(run.state().notice.has_value());
}

TEST(CheckOffPresenterTimeTest, ACrashInAPauseComesBackPaused)
{
    CheckOffRun run;
    run.toItems();
    run.presenter->pause(QStringLiteral("fire alarm"));
    run.restart();
    run.presenter->goOn();
    EXPECT_TRUE(run.state().paused);
    EXPECT_EQ(run.state().pauseReason, QStringLiteral("fire alarm"));
}

TEST(CheckOffPresenterTimeTest, ItIsGradedByThePolicyItWasBegunWith)
{
    CheckOffRun run;
    run.presenter->useLibrary(wholeLibrary(), wholeLibrary()->defaultPolicy(),
                              QStringLiteral(R"({"conventions": {"deltoid": "deltoid.two-inches"}})"));
    run.toItems();
    run.restart();
    run.presenter->goOn();
    EXPECT_EQ(run.items().state().convention, Convention::DeltoidTwoInches);
    run.records.kept.at(1).open.order.policyText = QStringLiteral("{");
    run.restart();
    run.presenter->goOn();
    EXPECT_FALSE(run.state().open.has_value());
    EXPECT_TRUE(run.state().notice.has_value());
}

}  // namespace

}  // namespace check_off_presenter_time_test
