// "Not here", companions and the summary of several sites, as the presenter tells them.
#include <gtest/gtest.h>

#include <QTest>
#include <algorithm>

#include "app/practice/practice_presenter.h"
#include "tests/support/sample_run.h"

namespace fb::test::practice_refusal_tests {

namespace practice_refusal_test {

bool has(const Scene& scene, Role role)
{
    return std::any_of(scene.begin(), scene.end(), [role](const SceneShape& s) { return s.role == role; });
}

}  // namespace practice_refusal_test

using practice_refusal_test::has;

TEST(PracticeRefusalTest, ARefusalIsChosenThenConfirmedAndEndsTheRequest)
{
    SampleRun run(setupWithFinding(Site::VastusLateralis, true));
    ASSERT_TRUE(run.state().canRefuse);
    const FindingCode chart = run.state().request->finding->code;
    run.presenter.refuse(chart);
    EXPECT_FALSE(run.state().graded.has_value()) << "nothing is refused by one slip";
    run.presenter.chooseReason(true);
    EXPECT_TRUE(run.state().choosingReason);
    run.presenter.refuse(chart);
    ASSERT_TRUE(run.state().graded.has_value());
    ASSERT_TRUE(run.state().graded->refusal.has_value());
    EXPECT_EQ(run.state().graded->refusal->outcome, RefusalOutcome::RightReason);
    EXPECT_FALSE(run.state().choosingReason);
    EXPECT_FALSE(run.state().canRefuse);
}

TEST(PracticeRefusalTest, AChoiceOfReasonsCanBeLeftAndTheMarkIsStillThere)
{
    SampleRun run(setupWithFinding(Site::Deltoid, true));
    const Point ideal = run.state().target->ideal;
    run.presenter.placeMark({ideal.x, ideal.y});
    run.presenter.chooseReason(true);
    run.presenter.placeMark({ideal.x, ideal.y - 1.0});
    run.presenter.grade();
    run.presenter.withdrawMark();
    EXPECT_EQ(run.state().mark, QPointF(ideal.x, ideal.y)) << "the plate waits";
    run.presenter.chooseReason(false);
    run.presenter.grade();
    EXPECT_TRUE(run.state().graded->missedFinding);
    EXPECT_EQ(run.state().graded->grade.verdict, Verdict::Unsafe);
}

TEST(PracticeRefusalTest, WithoutChartsThereIsNothingToRefuse)
{
    SampleRun run;
    EXPECT_FALSE(run.state().canRefuse);
    run.presenter.chooseReason(true);
    EXPECT_FALSE(run.state().choosingReason);
}

TEST(PracticeRefusalTest, TheTargetIsShownAfterARefusalOnlyWhereTheSiteCouldBeUsed)
{
    SampleRun ruledOut(setupWithFinding(Site::Ventrogluteal, true));
    ruledOut.refuse(FindingCode::Rash);
    EXPECT_FALSE(has(ruledOut.state().scene, Role::Region));
    EXPECT_FALSE(has(ruledOut.state().scene, Role::Arrow));
    SampleRun usable(setupWithFinding(Site::Ventrogluteal, false));
    usable.refuse(FindingCode::Rash);
    EXPECT_TRUE(has(usable.state().scene, Role::Region));
    EXPECT_FALSE(has(usable.state().scene, Role::Arrow)) << "there is no mark";
}

TEST(PracticeRefusalTest, TheCompanionIsTheOtherViewOfTheSiteAndKeepsTheAnswerUntilTheGrade)
{
    for (const Site site : kSites) {
        SampleRun run(setupOf(site));
        run.presenter.setCompanionShown(true);
        ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().companion != nullptr; }, 20000));
        EXPECT_EQ(run.state().companion->plate->view, companionOf(run.state().request->view));
        for (const SceneShape& shape : run.state().companionScene)
            EXPECT_EQ(shape.role, Role::Landmark) << wordOf(site);
        run.gradeAt({});
        EXPECT_TRUE(has(run.state().companionScene, Role::Region)) << wordOf(site);
        run.presenter.next();
        EXPECT_EQ(run.state().companion, nullptr) << "the old body's companion is gone";
        EXPECT_TRUE(QTest::qWaitFor([&] { return run.state().companion != nullptr; }, 20000));
    }
}

TEST(PracticeRefusalTest, ASummaryOfSeveralSitesDrawsEachOnABodyOfItsOwn)
{
    PracticeSetup setup = setupOf(Site::Deltoid, 8);
    setup.mix = {{{false, true, true}}, true};
    SampleRun run(setup);
    for (int i = 0; i < setup.length; ++i) {
        if (isRuledOut(*run.state().request))
            run.refuse(run.state().request->finding->code);
        else
            run.gradeAt({});
        run.presenter.next();
    }
    ASSERT_EQ(run.state().bySite.size(), 2U);
    EXPECT_EQ(run.state().runSite, Site::VastusLateralis);
    int attempts = 0;
    for (const SiteSummary& each : run.state().bySite)
        attempts += each.summary.attempts;
    EXPECT_EQ(attempts, run.state().summary->attempts);
    EXPECT_EQ(run.state().summary->ruledOut, run.state().summary->refusedRight);
    const auto marks = [&run](std::size_t site) {
        const auto count = std::count_if(run.state().runScene.begin(), run.state().runScene.end(),
                                         [](const SceneShape& s) { return s.role == Role::MarkOnTarget; });
        EXPECT_EQ(count, run.state().bySite[site].summary.marked);
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().runPicture != nullptr; }, 20000));
    EXPECT_EQ(run.state().runPicture->plate->view, View::ThighSide);
    marks(0);
    run.presenter.setRunSite(Site::Ventrogluteal);
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().runPicture->plate->view == View::HipSide; }, 20000));
    marks(1);
}

TEST(PracticeRefusalTest, TheHandIsShownUntilTheLearnerHidesIt)
{
    SampleRun run;
    EXPECT_TRUE(run.state().handShown);
    run.presenter.setHandShown(false);
    EXPECT_FALSE(run.state().handShown);
    run.gradeAt({});
    run.presenter.next();
    EXPECT_FALSE(run.state().handShown) << "it stays as the learner left it";
}

}  // namespace fb::test::practice_refusal_tests
