// What a check-off comes to: check_off.h, result().
#include <gtest/gtest.h>

#include "tests/support/check_off_course.h"

using namespace fb;
using test::Course;
using test::plainSheet;

namespace check_off_result_test {

using enum ProcedureStep;

namespace {

// Two items answered so, then both steps seen.
CheckOffResult resultOf(Sheet sheet, Verdict verdict, double points, Seen seen = Seen::Done)
{
    Course at(std::move(sheet));
    at.begin();
    while (at.off.stage() == CheckOffStage::OnScreen)
        at.answer(verdict, points);
    at.keep(at.off.takeOver(at.now));
    for (const SheetStep& step : at.off.setup().sheet.steps) {
        at.wait(Ms{1000});
        at.observe(step.step, seen);
    }
    at.keep(at.off.finish(at.now));
    return at.off.result();
}

Sheet sheetOfTwo() { return plainSheet(2, {Identify, Insert}); }

}  // namespace

TEST(CheckOffResultTest, EverythingRightIsAPass)
{
    const CheckOffResult result = resultOf(sheetOfTwo(), Verdict::OnTarget, 1.0);
    EXPECT_EQ(result.decision.outcome, Outcome::Pass);
    EXPECT_EQ(result.decision.percent, 100.0);
    EXPECT_EQ(result.itemsRight, 2);
    EXPECT_TRUE(result.unsafeItems.empty());
    EXPECT_TRUE(result.onScreenKept);
    EXPECT_TRUE(result.onManikinKept);
    EXPECT_EQ(result.procedure.earned, 2.0);
    EXPECT_EQ(result.procedure.possible, 2.0);
}

TEST(CheckOffResultTest, PointsOfItemsAndStepsMakeTheScore)
{
    Sheet sheet = sheetOfTwo();
    sheet.itemWeight = 3.0;
    // (2 * 0.25 * 3 + 2) of (2 * 3 + 2).
    EXPECT_DOUBLE_EQ(resultOf(sheet, Verdict::OffTarget, 0.25).decision.percent, 100.0 * 3.5 / 8.0);
    sheet.itemWeight = 1.0;
    sheet.steps[0].critical = false;
    sheet.steps[1].critical = false;
    sheet.promptedShare = 0.25;
    const CheckOffResult prompted = resultOf(sheet, Verdict::OnTarget, 1.0, Seen::Prompted);
    EXPECT_DOUBLE_EQ(prompted.decision.percent, 100.0 * 2.5 / 4.0);
    EXPECT_EQ(prompted.decision.outcome, Outcome::FailScore);
}

TEST(CheckOffResultTest, AcceptableIsRightAndOffTargetIsNot)
{
    EXPECT_EQ(resultOf(sheetOfTwo(), Verdict::Acceptable, 0.5).itemsRight, 2);
    EXPECT_EQ(resultOf(sheetOfTwo(), Verdict::OffTarget, 0.0).itemsRight, 0);
}

TEST(CheckOffResultTest, AnUnsafeMarkIsNeverBoughtBack)
{
    Course at(plainSheet(3));
    at.begin();
    at.answer();
    at.answer(Verdict::Unsafe, 0.0);
    at.answer();
    at.keep(at.off.takeOver(at.now));
    EXPECT_EQ(at.off.result().unsafeItems, std::vector<int>{1});
    EXPECT_EQ(at.off.result().decision.outcome, Outcome::FailCritical);
    EXPECT_EQ(at.off.result().decision.alsoTrue, std::vector<Outcome>{Outcome::FailScore});
}

TEST(CheckOffResultTest, ACriticalStepMissedFails)
{
    const CheckOffResult result = resultOf(sheetOfTwo(), Verdict::OnTarget, 1.0, Seen::NotDone);
    EXPECT_EQ(result.decision.outcome, Outcome::FailCritical);
    EXPECT_EQ(result.procedure.missedCritical, (std::vector{Identify, Insert}));
}

TEST(CheckOffResultTest, AHardBreachOfOrderFails)
{
    Sheet sheet = plainSheet(1, {Insert, Identify});
    const CheckOffResult result = resultOf(sheet, Verdict::OnTarget, 1.0);
    EXPECT_TRUE(result.procedure.isUnsafe());
    EXPECT_TRUE(result.procedure.missedCritical.empty());
    EXPECT_EQ(result.decision.outcome, Outcome::FailCritical);
}

// The seconds are the sheet's own, and the stopwatch's in place of the two steps' times.
TEST(CheckOffResultTest, HeldTooShortlyIsABreach)
{
    const auto breachesWith = [](double asked, double held) {
        Sheet sheet = plainSheet(1, {Inject, Wait, Withdraw});
        sheet.heldSeconds = asked;
        Course at(sheet);
        at.goToManikin();
        for (const ProcedureStep step : {Inject, Wait, Withdraw})
            at.observe(step);
        at.keep(at.off.hold(held, at.now));
        at.keep(at.off.finish(at.now));
        const auto& breaches = at.off.result().procedure.breaches;
        return std::ranges::count(breaches, ConstraintKind::AtLeast, &Breach::kind);
    };
    EXPECT_EQ(breachesWith(10.0, 10.0), 0);
    EXPECT_EQ(breachesWith(10.0, 9.0), 1);
    EXPECT_EQ(breachesWith(8.0, 9.0), 0);
}

TEST(CheckOffResultTest, WithoutStepsThereIsNoProcedurePart)
{
    const CheckOffResult result = resultOf(plainSheet(2), Verdict::OnTarget, 1.0);
    EXPECT_EQ(result.procedure.possible, 0.0);
    EXPECT_TRUE(result.procedure.breaches.empty());
    EXPECT_EQ(result.decision.outcome, Outcome::Pass);
}

TEST(CheckOffResultTest, EndsBeforeTheManikinMissNoStep)
{
    Course absent(sheetOfTwo());
    absent.keep(absent.off.noShow(absent.now));
    EXPECT_EQ(absent.off.result().decision.outcome, Outcome::NoShow);
    EXPECT_TRUE(absent.off.result().procedure.missedCritical.empty());

    Course voided(sheetOfTwo());
    voided.begin();
    voided.answer();
    voided.keep(voided.off.voidTechnical("power cut", voided.now));
    EXPECT_EQ(voided.off.result().decision.outcome, Outcome::VoidTechnical);
    EXPECT_EQ(voided.off.endNote(), "power cut");
    EXPECT_EQ(voided.off.result().decision.percent, 25.0);

    Course stopped(sheetOfTwo());
    stopped.begin();
    stopped.keep(stopped.off.stopForSafety("faint", stopped.now));
    EXPECT_EQ(stopped.off.result().decision.outcome, Outcome::StoppedSafety);
    EXPECT_TRUE(stopped.off.result().procedure.missedCritical.empty());
    EXPECT_EQ(stopped.off.result().procedure.possible, 2.0);
}

TEST(CheckOffResultTest, AStopOnTheManikinJudgesWhatWasSeen)
{
    Course at(sheetOfTwo());
    at.goToManikin();
    at.observe(Identify);
    at.keep(at.off.stopForSafety("faint", at.now));
    EXPECT_EQ(at.off.result().decision.outcome, Outcome::StoppedSafety);
    EXPECT_EQ(at.off.result().procedure.missedCritical, std::vector{Insert});
    EXPECT_EQ(at.off.result().procedure.earned, 1.0);
}

}  // namespace check_off_result_test
