// The way of a check-off from the desk to the signature: nothing is shown that is not kept.
#include "app/checkoff/check_off_presenter.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "tests/support/check_off_run.h"

namespace check_off_presenter_test {

namespace {

using namespace fb;
using namespace fb::test;

std::vector<CheckOffEventKind> kindsOf(const std::vector<CheckOffEvent>& events)
{
    std::vector<CheckOffEventKind> kinds;
    for (const CheckOffEvent& event : events)
        kinds.push_back(event.kind);
    return kinds;
}

TEST(CheckOffPresenterTest, TheWholeWayIsKeptEventByEvent)
{
    using enum CheckOffEventKind;
    CheckOffRun run;
    ASSERT_TRUE(run.state().ready);
    run.toItems();
    EXPECT_EQ(run.state().stage, CheckOffStage::OnScreen);
    EXPECT_EQ(run.state().itemCount, 3);
    run.confirm();
    EXPECT_EQ(run.state().item, 1);
    EXPECT_EQ(run.items().state().request->number, 1);
    EXPECT_EQ(run.items().state().setup.help, HelpLevel::DrawnAndNamed) << "each item has its own help";
    run.confirm({0.0, 30.0});
    EXPECT_EQ(run.state().item, 1) << "beside the body nothing is marked";
    run.confirm();
    run.confirm();
    EXPECT_EQ(run.state().stage, CheckOffStage::Handover);
    run.presenter->takeOver();
    EXPECT_EQ(run.state().stage, CheckOffStage::OnManikin);
    run.presenter->observe(ProcedureStep::Identify, Seen::Done, QStringLiteral(" asked twice "));
    run.presenter->observe(ProcedureStep::Document, Seen::Prompted);
    run.presenter->finish();
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
    EXPECT_EQ(run.state().result.itemsRight, 3);
    run.sign();
    ASSERT_TRUE(run.state().signedOff.has_value());
    EXPECT_EQ(run.state().signedOff->assessors.front().name, QStringLiteral("Vera Holm"));
    EXPECT_EQ(run.state().stage, CheckOffStage::Closed);
    EXPECT_EQ(kindsOf(run.events()), (std::vector{Confirmed, Started, Answered, Answered, Answered, TookOver,
                                                  Observed, Observed, Finished, Rated, Signed}));
    EXPECT_EQ(run.events()[6].observation->remark, "asked twice");
    EXPECT_EQ(run.state().desk.students.front().where.standing, Standing::Passed) << "the desk knows at once";
}

TEST(CheckOffPresenterTest, WhatIsKeptIsEnoughToReplayTheGrade)
{
    CheckOffRun run;
    run.presenter->setPixelsPerMm(3.78);
    run.toHandover();
    const CheckOffOrder& order = run.records.kept.at(1).open.order;
    EXPECT_EQ(order.seed, 7U);
    EXPECT_EQ(order.policyText, QStringLiteral("{}"));
    EXPECT_DOUBLE_EQ(order.pixelsPerMm, 3.78);
    EXPECT_TRUE(order.plateHashes.contains(QStringLiteral("shoulder-side=")));
    EXPECT_TRUE(order.plateHashes.contains(QStringLiteral("hip-side=")));
    const Library& library = *wholeLibrary();
    for (const CheckOffEvent& event : run.events()) {
        if (!event.answer)
            continue;
        const auto atlas = library.atlas(event.answer->request.view).value();
        const auto again = regraded(*event.answer, atlas, library.defaultPolicy());
        ASSERT_TRUE(again.has_value());
        EXPECT_EQ(again->grade.verdict, event.answer->verdict);
        EXPECT_EQ(event.answer->verdict, Verdict::OnTarget);
    }
}

TEST(CheckOffPresenterTest, TheScreenWaitsForTheDisk)
{
    CheckOffRun run;
    run.toItems();
    run.records.waits = true;
    run.mark();
    run.items().grade();
    EXPECT_TRUE(run.state().saving);
    EXPECT_EQ(run.state().item, 0);
    EXPECT_EQ(run.items().state().keeping, Keeping::Saving);
    EXPECT_TRUE(run.items().state().mark.has_value()) << "the mark stays in sight";
    run.items().grade();
    run.presenter->pause(QStringLiteral("hasty"));
    EXPECT_EQ(run.records.waiting.size(), 1U) << "pressed again, nothing is asked twice";
    run.records.answerAll();
    EXPECT_FALSE(run.state().saving);
    EXPECT_EQ(run.state().item, 1);
    EXPECT_EQ(run.items().state().keeping, Keeping::Open);
    EXPECT_FALSE(run.state().paused);
}

TEST(CheckOffPresenterTest, AnAnswerThatCouldNotBeKeptIsKeptByTheNextPress)
{
    CheckOffRun run;
    run.toItems();
    const std::size_t before = run.events().size();
    run.records.trouble = Fault{Problem::StoreFull, "records.sqlite", {}};
    run.mark({0.1, 0.1});
    const QPointF marked = *run.items().state().mark;
    run.items().grade();
    ASSERT_TRUE(run.state().notice.has_value());
    EXPECT_EQ(run.state().notice->problem, Problem::StoreFull);
    EXPECT_EQ(run.state().item, 0);
    EXPECT_FALSE(run.state().saving);
    EXPECT_EQ(run.items().state().keeping, Keeping::Failed);
    run.items().grade();
    EXPECT_EQ(run.events().size(), before) << "still full";
    EXPECT_EQ(run.items().state().mark, marked);
    // Whatever time it takes to make room is not the student's.
    const Ms used = run.state().used;
    EXPECT_TRUE(run.wait(Ms{90000}));
    EXPECT_EQ(run.state().item, 0);
    EXPECT_EQ(run.state().used, used);
    run.records.trouble.reset();
    run.items().grade();
    EXPECT_EQ(run.state().item, 1);
    EXPECT_FALSE(run.state().notice.has_value());
    ASSERT_EQ(run.events().size(), before + 1) << "nothing doubled, nothing lost";
    EXPECT_EQ(run.events().back().answer->mark, (Point{marked.x(), marked.y()}));
}

TEST(CheckOffPresenterTest, AFailedKeepChangesNothingAtAnyStage)
{
    CheckOffRun run;
    const auto fails = [&](CheckOffStage stage, const std::function<void()>& press) {
        run.records.trouble = Fault{Problem::StoreReadOnly, "records.sqlite", {}};
        press();
        EXPECT_EQ(run.state().stage, stage);
        ASSERT_TRUE(run.state().notice.has_value());
        EXPECT_FALSE(run.state().saving);
        run.records.trouble.reset();
        press();
        EXPECT_FALSE(run.state().notice.has_value());
    };
    run.presenter->begin(QStringLiteral("S-1"));
    fails(CheckOffStage::Identity, [&] { run.presenter->confirmIdentity(); });
    fails(CheckOffStage::Instructions, [&] { run.presenter->startItems(); });
    fails(CheckOffStage::OnScreen, [&] { run.presenter->pause(QStringLiteral("fire alarm")); });
    fails(CheckOffStage::OnScreen, [&] { run.presenter->resume(); });
    while (run.state().stage == CheckOffStage::OnScreen)
        run.confirm();
    fails(CheckOffStage::Handover, [&] { run.presenter->takeOver(); });
    fails(CheckOffStage::OnManikin, [&] { run.presenter->observe(ProcedureStep::Identify, Seen::Done); });
    fails(CheckOffStage::OnManikin, [&] { run.presenter->withdraw(ProcedureStep::Identify); });
    run.presenter->restNotDone();
    fails(CheckOffStage::OnManikin, [&] { run.presenter->finish(); });
    fails(CheckOffStage::Closing, [&] { run.presenter->rate(3, {}); });
    fails(CheckOffStage::Closing, [&] { run.presenter->sign(1, QLatin1String(CheckOffRun::kPin), 0, {}); });
    EXPECT_TRUE(run.state().signedOff.has_value());
}

TEST(CheckOffPresenterTest, NothingIsAskedBeforeTheDeskIsRead)
{
    MemoryRecords records;
    CountingSeeds seeds;
    CheckOffPresenter presenter(records, records.clock, seeds);
    presenter.begin(QStringLiteral("S-1"));
    presenter.goOn();
    presenter.nextStudent();
    presenter.confirmIdentity();
    presenter.startItems();
    presenter.takeOver();
    presenter.observe(ProcedureStep::Identify, Seen::Done);
    presenter.restNotDone();
    presenter.toggleHolding();
    presenter.finish();
    presenter.stopForSafety(QStringLiteral("x"));
    presenter.voidTechnical(QStringLiteral("x"));
    presenter.noShow();
    presenter.rate(3, {});
    presenter.sign(1, {}, 0, {});
    presenter.backToDesk();
    EXPECT_FALSE(presenter.state().ready);
    EXPECT_FALSE(presenter.state().open.has_value());
    EXPECT_FALSE(presenter.state().notice.has_value());
    records.trouble = Fault{Problem::StoreBroken, "records.sqlite", {}};
    presenter.openDesk();
    EXPECT_FALSE(presenter.state().ready);
    ASSERT_TRUE(presenter.state().notice.has_value());
    EXPECT_EQ(presenter.state().notice->problem, Problem::StoreBroken);
}

}  // namespace

}  // namespace check_off_presenter_test
