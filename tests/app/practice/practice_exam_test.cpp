// The exam manner at the presenter: nothing is told, and what is confirmed stays until the next item.
#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "app/practice/practice_presenter.h"
#include "tests/support/exam_run.h"
#include "tests/support/hand_learner.h"

namespace practice_exam_test {

namespace {

using namespace fb;
using namespace fb::test;

void expectNothingTold(const PracticeState& state)
{
    EXPECT_TRUE(state.exam);
    EXPECT_FALSE(state.graded.has_value());
    EXPECT_TRUE(state.others.empty());
    EXPECT_EQ(state.hand, nullptr);
    EXPECT_FALSE(state.summary.has_value());
    EXPECT_TRUE(state.runScene.empty());
    EXPECT_FALSE(state.canRefuse);
}

TEST(PracticeExamTest, AConfirmedAnswerTellsNothingAndCanNotBeChanged)
{
    ExamRun exam({Site::Deltoid, Site::Deltoid});
    QSignalSpy confirmed(&exam.presenter, &PracticePresenter::confirmed);
    exam.presenter.grade();
    EXPECT_EQ(confirmed.count(), 0) << "nothing is marked yet";
    EXPECT_EQ(exam.presenter.confirmedAnswer(), nullptr);
    const Scene before = exam.state().scene;
    exam.presenter.placeMark({0.0, -4.0});
    exam.presenter.placeMark({0.5, -4.5});
    exam.presenter.grade();
    EXPECT_EQ(confirmed.count(), 1);
    ASSERT_NE(exam.presenter.confirmedAnswer(), nullptr);
    EXPECT_EQ(exam.presenter.confirmedAnswer()->mark, (Point{0.5, -4.5}));
    expectNothingTold(exam.state());
    EXPECT_EQ(exam.state().scene.size(), before.size()) << "no target, no hazard, no arrow";
    EXPECT_FALSE(isAnswering(exam.state().phase));
    EXPECT_EQ(exam.state().mark, QPointF(0.5, -4.5)) << "the mark stays in sight";
    exam.presenter.placeMark({0.0, -3.0});
    exam.presenter.withdrawMark();
    exam.presenter.next();
    exam.presenter.repeatRun();
    exam.presenter.newRun();
    exam.presenter.replaySeed(QStringLiteral("7"));
    exam.presenter.usePolicyFile({});
    exam.presenter.setOtherShown(Convention::DeltoidTwoInches, true);
    exam.presenter.refuse(FindingCode::Rash);
    exam.presenter.retranslate();
    exam.presenter.setHandShown(true);
    expectNothingTold(exam.state());
    EXPECT_EQ(exam.state().mark, QPointF(0.5, -4.5));
    EXPECT_EQ(exam.state().request->number, 0);
    EXPECT_EQ(exam.presenter.confirmedAnswer()->mark, (Point{0.5, -4.5}));
}

TEST(PracticeExamTest, ConfirmAsksOnceAndAgainOnlyAfterAFailure)
{
    ExamRun exam({Site::Deltoid});
    QSignalSpy confirmed(&exam.presenter, &PracticePresenter::confirmed);
    exam.presenter.placeMark({0.0, -4.0});
    exam.presenter.grade();
    exam.presenter.grade();
    EXPECT_EQ(confirmed.count(), 1) << "it is on its way";
    EXPECT_EQ(exam.state().keeping, Keeping::Saving);
    exam.presenter.setKeeping(Keeping::Failed);
    exam.presenter.placeMark({0.0, -3.0});
    EXPECT_EQ(exam.state().mark, QPointF(0.0, -4.0));
    exam.presenter.grade();
    EXPECT_EQ(confirmed.count(), 2);
    EXPECT_EQ(exam.state().keeping, Keeping::Saving);
    EXPECT_EQ(exam.presenter.confirmedAnswer()->mark, (Point{0.0, -4.0}));
}

TEST(PracticeExamTest, WhoeverGaveTheItemsGoesOnToTheNext)
{
    ExamRun exam({Site::Deltoid, Site::Ventrogluteal});
    exam.presenter.placeMark({0.0, -4.0});
    exam.presenter.grade();
    exam.examine(1);
    EXPECT_EQ(exam.state().request->site, Site::Ventrogluteal);
    EXPECT_EQ(exam.state().request->number, 1);
    EXPECT_EQ(exam.state().setup.length, 2);
    EXPECT_FALSE(exam.state().mark.has_value());
    EXPECT_EQ(exam.state().keeping, Keeping::Open);
    EXPECT_TRUE(isAnswering(exam.state().phase));
    EXPECT_EQ(exam.presenter.confirmedAnswer(), nullptr);
}

TEST(PracticeExamTest, HelpIsWhatTheItemGrantsAndPeelsNoMoreThanThat)
{
    ExamRun nothing({Site::Deltoid}, HelpLevel::Nothing);
    EXPECT_TRUE(nothing.state().scene.empty());
    EXPECT_FALSE(nothing.state().canPeel);
    nothing.presenter.setPeelShown(Peel::Skin, false);
    EXPECT_TRUE(nothing.state().layers.contains(Layer::Skin));
    ExamRun drawn({Site::Deltoid}, HelpLevel::DrawnAndNamed);
    EXPECT_FALSE(drawn.state().scene.empty());
    EXPECT_TRUE(drawn.state().canPeel);
    drawn.presenter.placeMark({0.0, -4.0});
    drawn.presenter.grade();
    EXPECT_FALSE(drawn.state().canPeel);
    drawn.presenter.setPeelShown(Peel::Skin, false);
    EXPECT_TRUE(drawn.state().layers.contains(Layer::Skin));
}

TEST(PracticeExamTest, TheOtherViewShowsNoMoreThanTheHelp)
{
    ExamRun exam({Site::Deltoid}, HelpLevel::Nothing);
    exam.presenter.setCompanionShown(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return exam.state().companion != nullptr; }));
    EXPECT_TRUE(exam.state().companionScene.empty());
    exam.presenter.placeMark({0.0, -4.0});
    exam.presenter.grade();
    EXPECT_TRUE(exam.state().companionScene.empty());
    exam.presenter.setCompanionShown(false);
    exam.presenter.setCompanionShown(true);
    EXPECT_TRUE(exam.state().companionScene.empty());
}

TEST(PracticeExamTest, ByHandKeepsItsStagesButNothingIsShownHow)
{
    ExamRun exam({Site::Ventrogluteal}, HelpLevel::Nothing, true);
    HandLearner learner(exam.presenter);
    ASSERT_TRUE(exam.state().byHand.has_value());
    learner.hand().watch();
    EXPECT_FALSE(exam.state().byHand->watching.has_value());
    EXPECT_FALSE(exam.state().byHand->watched);
    learner.press(Landmark::GreaterTrochanter);
    learner.hand().plant(QStringLiteral("greater trochantar"));
    EXPECT_EQ(exam.state().byHand->planted, Landmark::GreaterTrochanter);
    EXPECT_FALSE(exam.state().byHand->misspelt);
    learner.hand().undo();
    EXPECT_TRUE(exam.state().byHand->flags.empty());
    learner.hand().redo();
    learner.plant();
    learner.build();
    learner.grade();
    ASSERT_NE(exam.presenter.confirmedAnswer(), nullptr);
    EXPECT_TRUE(exam.presenter.confirmedAnswer()->byHand.has_value());
    expectNothingTold(exam.state());
    ASSERT_TRUE(exam.state().byHand.has_value()) << "what was built stays in sight";
    EXPECT_FALSE(exam.state().byHand->canUndo);
    const auto flags = exam.state().byHand->flags;
    learner.hand().undo();
    learner.hand().clearStage();
    learner.hand().goTo(ByHandStage::Feeling);
    learner.hand().watch();
    EXPECT_EQ(exam.state().byHand->flags, flags);
    EXPECT_EQ(exam.state().byHand->stage, ByHandStage::Marking);
}

TEST(PracticeExamTest, WhenTimeIsUpTheItemIsShutWithoutAnAnswer)
{
    for (const bool byHand : {false, true}) {
        ExamRun exam({Site::Ventrogluteal}, HelpLevel::Nothing, byHand);
        exam.presenter.setKeeping(Keeping::Saving);
        EXPECT_FALSE(isAnswering(exam.state().phase));
        exam.presenter.placeMark({0.0, 5.0});
        exam.presenter.byHand().feel({0.0, 5.0});
        exam.presenter.byHand().plant(QStringLiteral("greater trochanter"));
        exam.presenter.grade();
        EXPECT_FALSE(exam.state().mark.has_value());
        EXPECT_EQ(exam.presenter.confirmedAnswer(), nullptr);
        EXPECT_TRUE(!byHand || exam.state().byHand->flags.empty());
        expectNothingTold(exam.state());
    }
}

TEST(PracticeExamTest, NothingIsAskedWithoutALibraryAndNoRunIsOpenedWithALentOne)
{
    CountingSeeds seeds;
    PracticePresenter presenter(seeds);
    presenter.examine(examSet({Site::Deltoid}), 0, Library::load().value()->defaultPolicy());
    presenter.setKeeping(Keeping::Saving);
    EXPECT_FALSE(presenter.state().ready);
    EXPECT_EQ(presenter.state().keeping, Keeping::Open);
    presenter.lendLibrary(Library::load().value());
    presenter.newRun();
    presenter.usePolicyFile({});
    EXPECT_FALSE(presenter.state().ready);
    EXPECT_EQ(presenter.labPolicy(), nullptr);
}

}  // namespace

}  // namespace practice_exam_test
