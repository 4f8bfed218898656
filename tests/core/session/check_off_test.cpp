// The course of a check-off; its result and its clock have files of their own.
#include "core/session/check_off.h"

#include <gtest/gtest.h>

#include "tests/support/check_off_course.h"

using namespace fb;
using test::Course;
using test::plainSheet;

namespace check_off_test {

using enum ProcedureStep;

namespace {

Problem problemOf(const Result<CheckOffEvent>& event)
{
    EXPECT_FALSE(event);
    return event ? Problem::AgeNotANumber : event.error().problem;
}

void expectOutOfOrder(const Result<CheckOffEvent>& event, const char* what)
{
    ASSERT_FALSE(event) << what;
    EXPECT_EQ(event.error().problem, Problem::CheckOffOutOfOrder) << what;
}

// Every call that is refused at a stage, but for those named.
void expectOnly(const Course& at, const std::vector<std::string>& allowed)
{
    const CheckOff& off = at.off;
    const auto isAllowed = [&](const char* name) {
        return std::find(allowed.begin(), allowed.end(), name) != allowed.end();
    };
    const auto check = [&](const char* name, const Result<CheckOffEvent>& event) {
        if (isAllowed(name))
            EXPECT_TRUE(event) << name << " at " << wordOf(off.stage());
        else
            expectOutOfOrder(event, name);
    };
    check("confirm", off.confirm(at.now));
    check("start", off.start(at.now));
    if (off.item() < static_cast<int>(off.requests().size()))
        check("answer", off.answer(test::answerTo(off, Verdict::OnTarget, 1.0), at.now));
    check("takeOver", off.takeOver(at.now));
    check("observe", off.observe(Wait, Seen::Done, {}, at.now));
    check("withdraw", off.withdraw(Insert, at.now));
    check("hold", off.hold(10.0, at.now));
    check("finish", off.finish(at.now));
    check("pause", off.pause("fire drill", at.now));
    check("resume", off.resume(at.now));
    check("stop", off.stopForSafety("needle towards the patient", at.now));
    check("void", off.voidTechnical("power cut", at.now));
    check("noShow", off.noShow(at.now));
    check("rate", off.rate(4, {}, at.now));
    check("sign", off.sign(at.now));
}
}  // namespace

TEST(CheckOffTest, GoesFromTheNameToTheSignature)
{
    Course at(plainSheet(2, {Insert}));
    EXPECT_EQ(at.off.stage(), CheckOffStage::Identity);
    ASSERT_TRUE(at.keep(at.off.confirm(at.now)));
    EXPECT_EQ(at.off.stage(), CheckOffStage::Instructions);
    ASSERT_TRUE(at.keep(at.off.start(at.now)));
    EXPECT_EQ(at.off.stage(), CheckOffStage::OnScreen);
    EXPECT_EQ(at.off.item(), 0);
    ASSERT_TRUE(at.answer());
    EXPECT_EQ(at.off.stage(), CheckOffStage::OnScreen);
    EXPECT_EQ(at.off.item(), 1);
    ASSERT_TRUE(at.answer());
    EXPECT_EQ(at.off.stage(), CheckOffStage::Handover);
    ASSERT_TRUE(at.keep(at.off.takeOver(at.now)));
    EXPECT_EQ(at.off.stage(), CheckOffStage::OnManikin);
    ASSERT_TRUE(at.observe(Insert));
    ASSERT_TRUE(at.keep(at.off.finish(at.now)));
    EXPECT_EQ(at.off.stage(), CheckOffStage::Closing);
    ASSERT_TRUE(at.keep(at.off.rate(4, "calm", at.now)));
    EXPECT_EQ(at.off.rating(), 4);
    EXPECT_EQ(at.off.remark(), "calm");
    ASSERT_TRUE(at.keep(at.off.sign(at.now)));
    EXPECT_EQ(at.off.stage(), CheckOffStage::Closed);
    EXPECT_EQ(at.off.result().decision.outcome, Outcome::Pass);
    EXPECT_EQ(at.off.answers().size(), 2U);
}

TEST(CheckOffTest, WithoutStepsTheHandoverLeadsToTheResult)
{
    Course at(plainSheet(1));
    at.goToManikin();
    EXPECT_EQ(at.off.stage(), CheckOffStage::Closing);
}

TEST(CheckOffTest, EachStageTakesOnlyWhatBelongsToIt)
{
    Course at(plainSheet(2, {Insert}));
    expectOnly(at, {"confirm", "void", "noShow"});
    at.keep(at.off.confirm(at.now));
    expectOnly(at, {"start", "void", "noShow"});
    at.keep(at.off.start(at.now));
    expectOnly(at, {"answer", "pause", "stop", "void"});
    at.answerAll();
    expectOnly(at, {"takeOver", "stop", "void"});
    at.keep(at.off.takeOver(at.now));
    at.observe(Insert);
    expectOnly(at, {"observe", "withdraw", "hold", "finish", "pause", "stop", "void"});
    at.keep(at.off.finish(at.now));
    at.keep(at.off.rate(3, {}, at.now));
    expectOnly(at, {"rate", "sign"});
    at.keep(at.off.sign(at.now));
    expectOnly(at, {});
}

TEST(CheckOffTest, WhilePausedItOnlyGoesOnOrEnds)
{
    Course at(plainSheet(1, {Insert}));
    at.begin();
    ASSERT_TRUE(at.keep(at.off.pause("fire drill", at.now)));
    EXPECT_TRUE(at.off.isPaused());
    expectOnly(at, {"resume", "stop", "void"});
    ASSERT_TRUE(at.keep(at.off.resume(at.now)));
    EXPECT_FALSE(at.off.isPaused());
    at.answerAll();
    at.keep(at.off.takeOver(at.now));
    at.observe(Insert);
    ASSERT_TRUE(at.keep(at.off.pause("fire drill", at.now)));
    expectOnly(at, {"resume", "stop", "void"});
    ASSERT_TRUE(at.keep(at.off.stopForSafety("faint", at.now)));
    EXPECT_FALSE(at.off.isPaused());
    EXPECT_EQ(at.off.endNote(), "faint");
}

TEST(CheckOffTest, ReasonsAreAskedFor)
{
    Course at(plainSheet(1));
    at.begin();
    for (const char* blank : {"", " ", "\n\t"}) {
        EXPECT_EQ(problemOf(at.off.pause(blank, at.now)), Problem::ReasonMissing);
        EXPECT_EQ(problemOf(at.off.stopForSafety(blank, at.now)), Problem::ReasonMissing);
        EXPECT_EQ(problemOf(at.off.voidTechnical(blank, at.now)), Problem::ReasonMissing);
    }
    EXPECT_EQ(at.off.stage(), CheckOffStage::OnScreen);
}

TEST(CheckOffTest, AnswersTheItemThatIsOpenAndNoOther)
{
    Course at(plainSheet(3));
    at.begin();
    Answer other = test::answerTo(at.off, Verdict::OnTarget, 1.0);
    other.item = 1;
    expectOutOfOrder(at.off.answer(other, at.now), "another number");
    Answer someoneElse = test::answerTo(at.off, Verdict::OnTarget, 1.0);
    someoneElse.request = at.off.requests()[1].request;
    expectOutOfOrder(at.off.answer(someoneElse, at.now), "another patient");
    Answer nothing = test::answerTo(at.off, Verdict::OnTarget, 1.0);
    nothing.mark.reset();
    expectOutOfOrder(at.off.answer(nothing, at.now), "neither mark nor refusal");
    nothing.refusal = FindingCode::Scar;
    EXPECT_TRUE(at.off.answer(nothing, at.now));
    expectOutOfOrder(at.off.answer(test::silenceTo(at.off), at.now), "time is not up");
}

TEST(CheckOffTest, AskingChangesNothingAndAKeptEventDoes)
{
    Course at(plainSheet(1));
    const auto confirmed = at.off.confirm(at.now);
    ASSERT_TRUE(confirmed);
    EXPECT_EQ(at.off.stage(), CheckOffStage::Identity);
    ASSERT_TRUE(at.off.apply(*confirmed, at.now));
    EXPECT_EQ(at.off.stage(), CheckOffStage::Instructions);
    // Twice it cannot have happened.
    const auto again = at.off.apply(*confirmed, at.now);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error(), (Fault{Problem::CheckOffOutOfOrder, "", "instructions", 0, 0}));
}

TEST(CheckOffTest, AnEventThatCannotHaveHappenedIsRefused)
{
    Course at(plainSheet(1, {Insert}));
    at.goToManikin();
    at.wait(Ms{5000});
    const auto refused = [&](const CheckOffEvent& event) {
        const std::string before = test::stateOf(at.off);
        const auto applied = at.off.apply(event, at.now);
        EXPECT_EQ(test::stateOf(at.off), before);
        return !applied && applied.error().problem == Problem::CheckOffOutOfOrder;
    };
    const CheckOffEvent seen = *at.off.observe(Insert, Seen::Done, {}, at.now);
    CheckOffEvent later = seen;
    later.observation->at = 6.0;
    EXPECT_TRUE(refused(later)) << "seen after it was kept";
    CheckOffEvent bare = seen;
    bare.observation.reset();
    EXPECT_TRUE(refused(bare));
    CheckOffEvent screen = seen;
    screen.onScreen += Ms{1};
    EXPECT_TRUE(refused(screen)) << "a clock that stands does not go on";
    ASSERT_TRUE(at.keep(seen));
    CheckOffEvent back = *at.off.hold(3.0, at.now);
    back.onManikin -= Ms{1};
    EXPECT_TRUE(refused(back)) << "time does not run backwards";
    CheckOffEvent blank = *at.off.pause("drill", at.now);
    blank.note.clear();
    EXPECT_TRUE(refused(blank));
    CheckOffEvent finished = *at.off.finish(at.now);
    ASSERT_TRUE(at.off.apply(finished, at.now));
    EXPECT_TRUE(refused(finished));
}

TEST(CheckOffTest, AnObservationSaidAgainKeepsItsPlaceAndItsTime)
{
    Course at(plainSheet(1, {Identify, Insert}));
    at.goToManikin();
    at.wait(Ms{1000});
    ASSERT_TRUE(at.observe(Identify));
    at.wait(Ms{1000});
    ASSERT_TRUE(at.observe(Insert));
    at.wait(Ms{1000});
    ASSERT_TRUE(at.observe(Identify, Seen::Prompted, "after a nod"));
    ASSERT_EQ(at.off.observations().size(), 2U);
    EXPECT_EQ(at.off.observations()[0], (Observation{Identify, Seen::Prompted, 1.0, "after a nod"}));
    // Not done has no time to keep.
    ASSERT_TRUE(at.observe(Identify, Seen::NotDone));
    at.wait(Ms{500});
    ASSERT_TRUE(at.observe(Identify, Seen::Done));
    EXPECT_EQ(at.off.observations()[0], (Observation{Identify, Seen::Done, 3.5, ""}));
    EXPECT_EQ(at.off.seen(Insert)->at, 2.0);
    EXPECT_EQ(at.off.seen(Wait), nullptr);
}

TEST(CheckOffTest, AnObservationCanBeTakenBack)
{
    Course at(plainSheet(1, {Identify, Insert}));
    at.goToManikin();
    at.observe(Identify);
    at.observe(Recap);
    ASSERT_TRUE(at.keep(at.off.withdraw(Recap, at.now)));
    EXPECT_EQ(at.off.seen(Recap), nullptr);
    EXPECT_NE(at.off.seen(Identify), nullptr);
    expectOutOfOrder(at.off.withdraw(Recap, at.now), "it is gone");
    EXPECT_EQ(at.kept.back().observation->step, Recap);
}

TEST(CheckOffTest, TheStopwatchCountsAgain)
{
    Course at(plainSheet(1, {Insert}));
    at.goToManikin();
    EXPECT_FALSE(at.off.held());
    ASSERT_TRUE(at.keep(at.off.hold(4.2, at.now)));
    ASSERT_TRUE(at.keep(at.off.hold(10.3, at.now)));
    EXPECT_EQ(at.off.held(), 10.3);
    expectOutOfOrder(at.off.hold(-0.1, at.now), "negative");
    expectOutOfOrder(at.off.hold(std::nan(""), at.now), "no number");
    expectOutOfOrder(at.off.hold(3601.0, at.now), "forgotten");
}

TEST(CheckOffTest, FinishingNeedsAWordOnEveryStepOfTheProtocol)
{
    // Aspirating is on the sheet, but the lab's protocol does not ask for it.
    Course at(plainSheet(1, {Identify, Insert, Aspirate}));
    at.goToManikin();
    EXPECT_EQ(at.off.finish(at.now).error(), (Fault{Problem::StepsNotRated, "", "2", 0, 0}));
    at.observe(Insert, Seen::NotDone);
    EXPECT_EQ(at.off.finish(at.now).error().what, "1");
    at.observe(Identify);
    EXPECT_TRUE(at.off.finish(at.now));
    at.keep(at.off.withdraw(Identify, at.now));
    EXPECT_EQ(problemOf(at.off.finish(at.now)), Problem::StepsNotRated);
}

TEST(CheckOffTest, SigningNeedsARatingUnlessNothingCameOfIt)
{
    Course at(plainSheet(1));
    at.goToManikin();
    EXPECT_EQ(problemOf(at.off.sign(at.now)), Problem::RatingMissing);
    EXPECT_EQ(problemOf(at.off.rate(0, {}, at.now)), Problem::RatingMissing);
    EXPECT_EQ(problemOf(at.off.rate(6, {}, at.now)), Problem::RatingMissing);
    at.keep(at.off.rate(1, "slow", at.now));
    at.keep(at.off.rate(5, "quick", at.now));
    EXPECT_EQ(at.off.rating(), 5);
    EXPECT_EQ(at.off.remark(), "quick");
    EXPECT_TRUE(at.off.sign(at.now));

    Course voided(plainSheet(1));
    voided.keep(voided.off.voidTechnical("wrong student chosen", voided.now));
    EXPECT_TRUE(voided.off.sign(voided.now));
    Course absent(plainSheet(1));
    absent.keep(absent.off.noShow(absent.now));
    EXPECT_TRUE(absent.off.sign(absent.now));
    Course stopped(plainSheet(1));
    stopped.begin();
    stopped.keep(stopped.off.stopForSafety("needle towards the patient", stopped.now));
    EXPECT_EQ(problemOf(stopped.off.sign(stopped.now)), Problem::RatingMissing);
}
}  // namespace check_off_test
