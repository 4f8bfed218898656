// The clock of a check-off: check_off.h, look(), limits and what a crash costs.
#include <gtest/gtest.h>

#include "tests/support/check_off_course.h"

using namespace fb;
using test::Course;
using test::plainSheet;
using namespace std::chrono_literals;

namespace check_off_clock_test {

namespace {

Sheet timedSheet(int perItem, int onScreen, int onManikin = 0)
{
    Sheet sheet = plainSheet(3, {ProcedureStep::Insert});
    sheet.secondsPerItem = perItem;
    sheet.secondsOnScreen = onScreen;
    sheet.secondsOnManikin = onManikin;
    return sheet;
}

Course begun(Sheet sheet, int extraPercent = 0)
{
    Course at(std::move(sheet), extraPercent);
    at.begin();
    return at;
}

}  // namespace

TEST(CheckOffClockTest, NothingIsCountedBeforeTheFirstItemNorBetweenThePhases)
{
    Course at(timedSheet(60, 0));
    at.wait(30s);
    at.keep(at.off.confirm(at.now));
    at.wait(30s);
    at.keep(at.off.start(at.now));
    EXPECT_EQ(at.off.onScreen(), 0ms);
    at.wait(1500ms);
    at.answerAll();
    EXPECT_EQ(at.off.onScreen(), 1500ms);
    at.wait(30s);
    EXPECT_EQ(at.off.onScreen(), 1500ms);
    at.keep(at.off.takeOver(at.now));
    at.wait(2500ms);
    EXPECT_EQ(at.off.onScreen(), 1500ms);
    EXPECT_EQ(at.off.onManikin(), 2500ms);
    at.observe(ProcedureStep::Insert);
    at.keep(at.off.finish(at.now));
    at.wait(30s);
    EXPECT_EQ(at.off.onManikin(), 2500ms);
}

TEST(CheckOffClockTest, WithoutALimitNothingIsLeft)
{
    Course at = begun(timedSheet(0, 0));
    EXPECT_FALSE(at.off.itemLeft());
    EXPECT_FALSE(at.off.screenLeft());
    EXPECT_FALSE(at.off.manikinLeft());
    at.wait(1h);
    EXPECT_FALSE(at.off.isTimeUp());
    at.answerAll();
    EXPECT_TRUE(at.off.result().onScreenKept);
    EXPECT_TRUE(at.off.result().onManikinKept);
}

TEST(CheckOffClockTest, EachItemHasItsOwnTime)
{
    Course at = begun(timedSheet(60, 0));
    at.wait(59500ms);
    EXPECT_EQ(at.off.itemLeft(), 500ms);
    EXPECT_FALSE(at.off.isTimeUp());
    at.answer();
    EXPECT_EQ(at.off.itemLeft(), 60s);
    at.wait(60s);
    EXPECT_TRUE(at.off.isTimeUp());
    EXPECT_EQ(at.off.itemLeft(), 0ms);
    at.wait(5s);
    EXPECT_EQ(at.off.itemLeft(), 0ms);
    EXPECT_FALSE(at.off.answer(test::answerTo(at.off, Verdict::OnTarget, 1.0), at.now));
    ASSERT_TRUE(at.answerSilent());
    EXPECT_FALSE(at.off.isTimeUp());
    at.answer();
    // One that was not answered in its time is worth nothing, and that is all.
    const CheckOffResult result = at.off.result();
    EXPECT_TRUE(result.onScreenKept);
    EXPECT_EQ(result.itemsRight, 2);
}

// The confirm that comes between the last look and the end of the time still counts.
TEST(CheckOffClockTest, AConfirmIsTakenUntilTheTimeWasSeenToBeUp)
{
    Course at = begun(timedSheet(60, 0));
    at.wait(59800ms);
    at.now += 300ms;
    EXPECT_TRUE(at.answer());
    EXPECT_EQ(at.off.onScreen(), 60100ms);
}

TEST(CheckOffClockTest, OnceTheScreensTimeIsUpEveryItemLeftIsClosedAtOnce)
{
    Course at = begun(timedSheet(60, 90));
    at.wait(50s);
    at.answer();
    at.wait(40s);
    EXPECT_EQ(at.off.screenLeft(), 0ms);
    EXPECT_EQ(at.off.itemLeft(), 20s);
    EXPECT_TRUE(at.off.isTimeUp());
    EXPECT_TRUE(at.off.result().onScreenKept);
    ASSERT_TRUE(at.answerSilent());
    EXPECT_TRUE(at.off.isTimeUp());
    EXPECT_FALSE(at.answer());
    ASSERT_TRUE(at.answerSilent());
    EXPECT_EQ(at.off.stage(), CheckOffStage::Handover);
    EXPECT_FALSE(at.off.isTimeUp());
    EXPECT_FALSE(at.off.result().onScreenKept);
    at.keep(at.off.takeOver(at.now));
    at.observe(ProcedureStep::Insert);
    EXPECT_EQ(at.off.result().decision.outcome, Outcome::FailTime);
}

TEST(CheckOffClockTest, TheManikinPhaseIsKeptWhenItIsFinishedInTime)
{
    for (const auto& [time, kept] : {std::pair(120s, true), std::pair(121s, false)}) {
        Course at(timedSheet(0, 0, 120));
        at.goToManikin();
        at.wait(time);
        EXPECT_EQ(at.off.manikinLeft(), 0ms);
        at.observe(ProcedureStep::Insert);
        EXPECT_TRUE(at.keep(at.off.finish(at.now)));
        EXPECT_EQ(at.off.result().onManikinKept, kept);
        EXPECT_EQ(at.off.result().decision.outcome, kept ? Outcome::Pass : Outcome::FailTime);
    }
}

TEST(CheckOffClockTest, ExtraTimeStretchesEveryLimit)
{
    for (const int extra : {0, 25, 50, 100, 200}) {
        const Course at = begun(timedSheet(60, 90, 120), extra);
        const Ms whole = 1000ms * (100 + extra) / 100;
        EXPECT_EQ(at.off.itemLeft(), 60 * whole) << extra;
        EXPECT_EQ(at.off.screenLeft(), 90 * whole) << extra;
        EXPECT_EQ(at.off.manikinLeft(), 120 * whole) << extra;
    }
    Course at = begun(timedSheet(60, 0), 50);
    at.wait(89s);
    EXPECT_FALSE(at.off.isTimeUp());
    at.wait(1s);
    EXPECT_TRUE(at.off.isTimeUp());
}

TEST(CheckOffClockTest, APauseCostsNothing)
{
    Course at = begun(timedSheet(60, 90));
    at.wait(10s);
    at.keep(at.off.pause("fire drill", at.now));
    at.wait(10min);
    EXPECT_EQ(at.off.onScreen(), 10s);
    EXPECT_FALSE(at.off.isTimeUp());
    at.keep(at.off.resume(at.now));
    at.wait(5s);
    EXPECT_EQ(at.off.onScreen(), 15s);
    EXPECT_EQ(at.off.itemLeft(), 45s);
}

TEST(CheckOffClockTest, SleepAndJumpsCostNothing)
{
    Course at = begun(timedSheet(60, 0));
    at.wait(10s);
    for (const Ms jump : {Ms{2001}, Ms{3'600'000}, Ms{-3'600'000}, Ms{-5}}) {
        at.now += jump;
        at.off.look(at.now);
    }
    EXPECT_EQ(at.off.onScreen(), 10s);
    at.wait(1s);
    EXPECT_EQ(at.off.onScreen(), 11s);
}

// A slow disk is not the student's.
TEST(CheckOffClockTest, KeepingAnAnswerCostsNothing)
{
    Course at = begun(timedSheet(60, 0));
    at.wait(10s);
    const auto answered = at.off.answer(test::answerTo(at.off, Verdict::OnTarget, 1.0), at.now);
    at.wait(4s);
    ASSERT_TRUE(at.off.apply(*answered, at.now));
    EXPECT_EQ(at.off.onScreen(), 10s);
    EXPECT_EQ(at.off.itemLeft(), 60s);
    at.wait(1s);
    EXPECT_EQ(at.off.onScreen(), 11s);
}

// The assessor may note the next step before the last is on the disk.
TEST(CheckOffClockTest, ObservationsMayOverlap)
{
    Course at(timedSheet(0, 0));
    at.goToManikin();
    at.wait(10s);
    const auto first = at.off.observe(ProcedureStep::Insert, Seen::Done, {}, at.now);
    at.wait(1s);
    const auto second = at.off.observe(ProcedureStep::Recap, Seen::Done, {}, at.now);
    at.wait(1s);
    ASSERT_TRUE(at.off.apply(*first, at.now));
    EXPECT_EQ(at.off.onManikin(), 12s);
    const auto third = at.off.hold(9.0, at.now);
    ASSERT_TRUE(at.off.apply(*second, at.now));
    ASSERT_TRUE(at.off.apply(*third, at.now));
    EXPECT_EQ(at.off.onManikin(), 12s);
    EXPECT_EQ(at.off.seen(ProcedureStep::Insert)->at, 10.0);
    EXPECT_EQ(at.off.seen(ProcedureStep::Recap)->at, 11.0);
}

// Said twice before the first word was kept: the time of the first counts.
TEST(CheckOffClockTest, AStepSaidTwiceWhileItIsKeptHasItsFirstTime)
{
    Course at(timedSheet(0, 0));
    at.goToManikin();
    at.wait(10s);
    const auto done = at.off.observe(ProcedureStep::Insert, Seen::Done, {}, at.now);
    at.wait(1s);
    const auto prompted = at.off.observe(ProcedureStep::Insert, Seen::Prompted, {}, at.now);
    ASSERT_TRUE(at.off.apply(*done, at.now));
    ASSERT_TRUE(at.off.apply(*prompted, at.now));
    EXPECT_EQ(*at.off.seen(ProcedureStep::Insert),
              (Observation{ProcedureStep::Insert, Seen::Prompted, 10.0, ""}));
}

TEST(CheckOffClockTest, AfterACrashItGoesOnWithWhatWasCounted)
{
    Course at = begun(timedSheet(60, 0));
    at.wait(10s);
    at.answer();
    at.wait(7s);
    for (const auto& [later, expected] : {std::pair(Ms{0}, Ms{10'000}), std::pair(Ms{16'500}, Ms{16'500})}) {
        CheckOff again(at.off.setup());
        for (const CheckOffEvent& event : at.kept)
            ASSERT_TRUE(again.apply(event, std::nullopt));
        again.look(5h);
        EXPECT_EQ(again.onScreen(), 10s);
        again.resumeAt(9h, later, 0ms);
        EXPECT_EQ(again.item(), 1);
        EXPECT_EQ(again.onScreen(), expected);
        again.look(9h + 500ms);
        EXPECT_EQ(again.onScreen(), expected + 500ms);
        EXPECT_EQ(again.itemLeft(), 70s - expected - 500ms);
    }
}

TEST(CheckOffClockTest, ACrashWhilePausedStaysPaused)
{
    Course at = begun(timedSheet(60, 0));
    at.wait(10s);
    at.keep(at.off.pause("fire drill", at.now));
    CheckOff again(at.off.setup());
    for (const CheckOffEvent& event : at.kept)
        ASSERT_TRUE(again.apply(event, std::nullopt));
    again.resumeAt(1h, 30s, 30s);
    again.look(1h + 1s);
    EXPECT_TRUE(again.isPaused());
    EXPECT_EQ(again.onScreen(), 10s);
    EXPECT_EQ(again.onManikin(), 0s);
}

}  // namespace check_off_clock_test
