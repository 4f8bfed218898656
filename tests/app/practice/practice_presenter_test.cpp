#include "app/practice/practice_presenter.h"

#include <gtest/gtest.h>

#include <QTest>

#include "tests/support/sample_run.h"

namespace fb::test::practice_presenter_tests {

namespace practice_presenter_test {

constexpr PracticeSetup kPlain{
    .seed = 7, .length = 2, .help = HelpLevel::DrawnAndNamed, .asksSide = false, .mix = {}};

PracticeSetup plainWith(HelpLevel help)
{
    PracticeSetup setup = kPlain;
    setup.help = help;
    return setup;
}

// A presenter with a run open.
struct Opened : SampleRun {
    explicit Opened(const PracticeSetup& setup = kPlain) : SampleRun(setup) {}
    [[nodiscard]] QPointF ideal() const { return {state().target->ideal.x, state().target->ideal.y}; }
    void gradeAt(QPointF cm)
    {
        presenter.placeMark(cm);
        presenter.grade();
    }
};

}  // namespace practice_presenter_test

using namespace practice_presenter_test;

TEST(PracticePresenterTest, NothingCanBeAskedBeforeTheLibraryIsThere)
{
    CountingSeeds seeds;
    PracticePresenter presenter(seeds);
    presenter.placeMark({0.0, -4.0});
    presenter.grade();
    presenter.next();
    presenter.withdrawMark();
    presenter.repeatRun();
    EXPECT_FALSE(presenter.state().ready);
    EXPECT_FALSE(presenter.state().mark.has_value());
    presenter.usePolicyFile(QStringLiteral("x.json"));
    presenter.chooseReason(true);
    presenter.refuse(FindingCode::Rash);
    presenter.setRunSite(Site::Ventrogluteal);
    EXPECT_EQ(presenter.labPolicy(), nullptr);
    EXPECT_FALSE(presenter.state().choosingReason);
}

TEST(PracticePresenterTest, SameSeedAsksTheSameRequests)
{
    const Opened first;
    const Opened second;
    EXPECT_EQ(first.state().request->patient, second.state().request->patient);
    Opened third({.seed = 8, .length = 2, .help = HelpLevel::Nothing, .asksSide = false, .mix = {}});
    EXPECT_NE(first.state().request->patient, third.state().request->patient);
    third.presenter.replaySeed(QStringLiteral(" 7 "));
    EXPECT_EQ(first.state().request->patient, third.state().request->patient);
    EXPECT_EQ(third.state().setup.help, HelpLevel::Nothing);
}

TEST(PracticePresenterTest, TheWalkOfARunEndsInItsSummary)
{
    Opened run;
    EXPECT_EQ(run.state().phase, Phase::Marking);
    run.presenter.grade();
    EXPECT_EQ(run.state().phase, Phase::Marking) << "nothing to grade without a mark";
    run.gradeAt(run.ideal());
    ASSERT_TRUE(run.state().graded.has_value());
    EXPECT_EQ(run.state().graded->grade.verdict, Verdict::OnTarget);
    EXPECT_EQ(run.state().others.size(), 4U) << "of the same site";
    run.presenter.next();
    EXPECT_EQ(run.state().request->number, 1);
    EXPECT_FALSE(run.state().mark.has_value());
    EXPECT_TRUE(run.state().others.empty());
    run.gradeAt({0.0, 0.0});
    EXPECT_EQ(run.state().graded->grade.verdict, Verdict::Unsafe);
    run.presenter.next();
    ASSERT_EQ(run.state().phase, Phase::Summary);
    ASSERT_TRUE(run.state().summary.has_value());
    EXPECT_EQ(run.state().summary->attempts, 2);
    EXPECT_EQ(run.state().summary->hits, 1);
    run.presenter.repeatRun();
    EXPECT_EQ(run.state().phase, Phase::Marking);
    EXPECT_EQ(run.state().request->number, 0);
    EXPECT_FALSE(run.state().summary.has_value());
}

TEST(PracticePresenterTest, AMarkCanBeMovedAndWithdrawnUntilItIsGraded)
{
    Opened run;
    run.presenter.placeMark({0.0, -3.0});
    run.presenter.placeMark({0.5, -4.0});
    EXPECT_EQ(run.state().mark, QPointF(0.5, -4.0));
    run.presenter.withdrawMark();
    EXPECT_FALSE(run.state().mark.has_value());
    run.gradeAt({0.0, -4.0});
    run.presenter.withdrawMark();
    run.presenter.placeMark({1.0, -5.0});
    EXPECT_EQ(run.state().graded->mark, (Point{0.0, -4.0}));
}

TEST(PracticePresenterTest, AMarkOutsideTheBodyIsToldAndTheEarlierOneStays)
{
    Opened run;
    run.presenter.placeMark({0.0, -4.0});
    run.presenter.placeMark({90.0, 90.0});
    ASSERT_TRUE(run.state().notice.has_value());
    EXPECT_EQ(run.state().notice->problem, Problem::MarkOutsideBody);
    EXPECT_EQ(run.state().mark, QPointF(0.0, -4.0));
    run.presenter.placeMark({0.0, -5.0});
    EXPECT_FALSE(run.state().notice.has_value());
}

TEST(PracticePresenterTest, ABadSeedOrLengthLosesNothing)
{
    Opened run;
    run.presenter.placeMark({0.0, -4.0});
    run.presenter.replaySeed(QStringLiteral("twelve"));
    ASSERT_TRUE(run.state().notice.has_value());
    EXPECT_EQ(run.state().notice->problem, Problem::SeedNotANumber);
    EXPECT_EQ(run.state().setup.seed, 7U);
    EXPECT_TRUE(run.state().mark.has_value());
    const auto started = run.presenter.startRun(QStringLiteral("9"), {.seed = 0, .length = 0}, {});
    ASSERT_FALSE(started.has_value());
    EXPECT_EQ(started.error().problem, Problem::RunLengthOutOfRange);
    EXPECT_EQ(run.state().setup.seed, 7U);
    EXPECT_TRUE(run.state().mark.has_value());
}

TEST(PracticePresenterTest, TheClassicSlipIsToldAndRecorded)
{
    Opened run({.seed = 7, .length = 1, .help = HelpLevel::DrawnAndNamed, .asksSide = true, .mix = {}});
    ASSERT_EQ(run.state().phase, Phase::PickingSide);
    const Side asked = run.state().request->patient.side();
    run.presenter.pickSide(asked == Side::Left ? Side::Right : Side::Left);
    EXPECT_TRUE(run.state().pickedWrongSide);
    EXPECT_EQ(run.state().phase, Phase::PickingSide);
    run.presenter.pickSide(asked);
    ASSERT_EQ(run.state().phase, Phase::Marking);
    run.gradeAt(run.ideal());
    EXPECT_EQ(run.state().graded->sideRight, std::optional(false));
    run.presenter.next();
    EXPECT_EQ(run.state().summary->sidesAsked, 1);
    EXPECT_EQ(run.state().summary->sidesRight, 0);
}

TEST(PracticePresenterTest, PeelingBeforeTheGradeIsForTheFirstHelpLevelOnly)
{
    Opened open;
    open.presenter.setPeelShown(Peel::Skin, false);
    EXPECT_FALSE(open.state().layers.contains(Layer::Skin));
    EXPECT_FALSE(open.state().layers.contains(Layer::Cloth));
    for (const HelpLevel help : {HelpLevel::NamedOnly, HelpLevel::Nothing}) {
        Opened shut(plainWith(help));
        shut.presenter.setPeelShown(Peel::Skin, false);
        EXPECT_EQ(shut.state().layers, allLayers());
        shut.gradeAt({0.0, -4.0});
        shut.presenter.setPeelShown(Peel::Skin, false);
        EXPECT_FALSE(shut.state().layers.contains(Layer::Skin));
        shut.presenter.next();
        EXPECT_EQ(shut.state().layers, allLayers()) << "a new request is whole again";
    }
}

TEST(PracticePresenterTest, NothingOfTheAnswerIsInTheSceneBeforeTheGrade)
{
    Opened run;
    for (const SceneShape& shape : run.state().scene)
        EXPECT_EQ(shape.role, Role::Landmark);
    run.gradeAt({0.5, -6.0});
    bool region = false;
    for (const SceneShape& shape : run.state().scene)
        region = region || shape.role == Role::Region;
    EXPECT_TRUE(region);
    Opened blind(plainWith(HelpLevel::Nothing));
    EXPECT_TRUE(blind.state().scene.isEmpty());
}

TEST(PracticePresenterTest, AnotherConventionsPointComesAndGoes)
{
    Opened run;
    run.gradeAt(run.ideal());
    const auto count = [&run] {
        qsizetype others = 0;
        for (const SceneShape& shape : run.state().scene)
            others += shape.role == Role::Other ? 1 : 0;
        return others;
    };
    const Convention other = run.state().others.front().convention;
    EXPECT_EQ(count(), 0);
    run.presenter.setOtherShown(other, true);
    EXPECT_EQ(count(), 1);
    run.presenter.setOtherShown(other, false);
    EXPECT_EQ(count(), 0);
}

TEST(PracticePresenterTest, PicturesAreMadeOffTheCallersThread)
{
    Opened run;
    EXPECT_EQ(run.state().picture, nullptr);
    EXPECT_TRUE(QTest::qWaitFor([&] { return run.state().picture != nullptr; }));
    EXPECT_EQ(run.state().picture->skinTone, run.state().request->skinTone);
    run.gradeAt(run.ideal());
    const auto first = run.state().picture;
    run.presenter.next();
    EXPECT_TRUE(QTest::qWaitFor([&] { return run.state().picture && run.state().picture != first; }));
}

TEST(PracticePresenterTest, APresenterCanGoWhileItsPictureIsBeingMade)
{
    for (int i = 0; i < 5; ++i)
        const Opened run;
    QTest::qWait(20);
}

TEST(PracticePresenterTest, ANewRunHasAFreshSeedAndTheSameSetup)
{
    Opened run;
    const PracticeSetup before = run.state().setup;
    run.presenter.newRun();
    EXPECT_NE(run.state().setup.seed, before.seed);
    EXPECT_EQ(run.state().setup.length, before.length);
    EXPECT_EQ(run.state().setup.help, before.help);
}

}  // namespace fb::test::practice_presenter_tests
