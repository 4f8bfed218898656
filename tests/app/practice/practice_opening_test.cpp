// How runs are opened: sites, conventions, hand, policy files and plates that are still being read.
#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <set>

#include "app/practice/practice_presenter.h"
#include "tests/support/sample_run.h"

namespace fb::test::practice_opening_tests {

namespace practice_opening_test {

QString fileWith(const QTemporaryDir& folder, const char* name, const char* text)
{
    QFile file(folder.filePath(QLatin1String(name)));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return file.fileName();
}

constexpr const char* kWardThree = R"({"name": "Ward 3", "conventions": {"deltoid": "deltoid.fingers"}})";

}  // namespace practice_opening_test

using namespace practice_opening_test;

TEST(PracticeOpeningTest, EverySiteAloneAsksThatSiteInItsViewsOnly)
{
    for (const Site site : kSites) {
        SampleRun run(setupOf(site, 6));
        for (int i = 0; i < 6; ++i) {
            EXPECT_EQ(run.state().request->site, site);
            EXPECT_EQ(siteOf(run.state().request->view), site);
            EXPECT_EQ(run.state().target->view, run.state().request->view);
            EXPECT_EQ(siteOf(run.state().convention), site);
            run.gradeAt({});
            EXPECT_TRUE(run.state().graded->grade.inside) << wordOf(site) << " request " << i;
            run.presenter.next();
        }
        EXPECT_EQ(run.state().phase, Phase::Summary);
    }
}

TEST(PracticeOpeningTest, AMixedRunAsksEverySiteWithThePictureOfItsView)
{
    PracticeSetup setup = setupOf(Site::Deltoid, 12);
    setup.mix.sites = SiteSet::all();
    SampleRun run(setup);
    std::set<Site> seen;
    for (int i = 0; i < setup.length; ++i) {
        seen.insert(run.state().request->site);
        ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().picture != nullptr; }));
        EXPECT_EQ(run.state().picture->plate->view, run.state().request->view);
        run.gradeAt({});
        run.presenter.next();
    }
    EXPECT_EQ(seen.size(), kSites.size());
    EXPECT_EQ(run.state().bySite.size(), kSites.size());
}

TEST(PracticeOpeningTest, ARunWithoutASiteOrWithAHandOutOfRangeLosesNothing)
{
    SampleRun run;
    run.presenter.placeMark({0.0, -4.0});
    PracticeSetup none = run.state().setup;
    none.mix.sites = {{false, false, false}};
    const auto started = run.presenter.startRun(QStringLiteral("9"), none, {});
    ASSERT_FALSE(started.has_value());
    EXPECT_EQ(started.error().problem, Problem::NoSiteChosen);
    for (const double length : {12.9, 24.1, 0.0}) {
        OwnChoices own;
        own.handLength = Cm{length};
        const auto hand = run.presenter.startRun(QStringLiteral("9"), run.state().setup, own);
        ASSERT_FALSE(hand.has_value()) << length;
        EXPECT_EQ(hand.error().problem, Problem::HandLengthOutOfRange);
    }
    EXPECT_EQ(run.state().setup.seed, 7U);
    EXPECT_TRUE(run.state().mark.has_value());
}

TEST(PracticeOpeningTest, ChosenConventionsAreGradedByAndThePolicysOwnAreNoChoice)
{
    SampleRun run;
    OwnChoices own;
    own.choose(Convention::DeltoidHalfway);
    own.choose(Convention::VastusHandbreadths);
    own.choose(Convention::VentroglutealHand);
    ASSERT_TRUE(run.presenter.startRun(QStringLiteral("7"), run.state().setup, own));
    EXPECT_EQ(run.state().convention, Convention::DeltoidHalfway);
    EXPECT_EQ(run.state().target->convention, Convention::DeltoidHalfway);
    EXPECT_EQ(run.state().policy->convention(Site::VastusLateralis), Convention::VastusHandbreadths);
    EXPECT_EQ(run.state().own.convention(Site::Deltoid), std::optional(Convention::DeltoidHalfway));
    EXPECT_EQ(run.state().own.convention(Site::Ventrogluteal), std::nullopt) << "the policy's own";
    run.presenter.newRun();
    EXPECT_EQ(run.state().convention, Convention::DeltoidHalfway) << "a new run keeps the choice";
}

TEST(PracticeOpeningTest, TheLearnersHandIsTheHandThatIsLaid)
{
    OwnChoices own;
    own.handLength = Cm{20.5};
    SampleRun run(setupOf(Site::Ventrogluteal), own);
    ASSERT_TRUE(run.state().target->hand.has_value());
    EXPECT_EQ(run.state().target->hand->length, Cm{20.5});
    EXPECT_EQ(run.state().own.handLength, std::optional(Cm{20.5}));
    own.handLength = Cm{run.presenter.labPolicy()->value(PolicyKey::HandLength)};
    ASSERT_TRUE(run.presenter.startRun(QStringLiteral("7"), run.state().setup, own));
    EXPECT_EQ(run.state().own.handLength, std::nullopt) << "the policy's own";
}

TEST(PracticeOpeningTest, TheLearnersFingerIsTheFingerThatIsLaid)
{
    OwnChoices own;
    own.choose(Convention::DeltoidFingers);
    own.fingerWidth = Cm{2.1};
    SampleRun run(setupOf(Site::Deltoid), own);
    EXPECT_EQ(run.state().policy->value(PolicyKey::DeltoidFingerWidth), 2.1);
    const double broad = run.state().target->ideal.y;
    own.fingerWidth = Cm{1.3};
    ASSERT_TRUE(run.presenter.startRun(QStringLiteral("7"), run.state().setup, own));
    EXPECT_GT(run.state().target->ideal.y, broad) << "narrow fingers reach less far down";
    own.fingerWidth = Cm{run.presenter.labPolicy()->value(PolicyKey::DeltoidFingerWidth)};
    ASSERT_TRUE(run.presenter.startRun(QStringLiteral("7"), run.state().setup, own));
    EXPECT_EQ(run.state().own.fingerWidth, std::nullopt) << "the policy's own";
}

TEST(PracticeOpeningTest, AHandThatChangesIsUsedAtOnceOnlyWhileNothingIsLost)
{
    SampleRun run(setupOf(Site::Ventrogluteal));
    OwnChoices hand;
    hand.handLength = Cm{21.0};
    run.presenter.setHand(hand);
    EXPECT_EQ(run.state().target->hand->length, Cm{21.0});
    const Point ideal = run.state().target->ideal;
    run.presenter.placeMark({ideal.x, ideal.y});
    hand.handLength = Cm{15.0};
    run.presenter.setHand(hand);
    EXPECT_TRUE(run.state().mark.has_value());
    EXPECT_EQ(run.state().target->hand->length, Cm{21.0});
    EXPECT_EQ(run.state().own.handLength, std::optional(Cm{15.0})) << "of the next run";
    run.presenter.newRun();
    EXPECT_EQ(run.state().target->hand->length, Cm{15.0});
}

TEST(PracticeOpeningTest, AHandThatIsThePolicysOwnIsStillTheLearnersUnderAnotherPolicy)
{
    SampleRun run(setupOf(Site::Ventrogluteal));
    const Cm usual{run.presenter.labPolicy()->value(PolicyKey::HandLength)};
    OwnChoices hand;
    hand.handLength = usual;
    run.presenter.setHand(hand);
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("ward.json")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(R"({"hand": {"length_cm": {"value": 16.5, "source": "ward"}}})");
    file.close();
    run.presenter.usePolicyFile(file.fileName());
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().policyFile == file.fileName(); }));
    EXPECT_EQ(run.presenter.labPolicy()->value(PolicyKey::HandLength), 16.5);
    EXPECT_EQ(run.state().policy->value(PolicyKey::HandLength), usual.value());
}

TEST(PracticeOpeningTest, AHandIsEstimatedFromSexAndStature)
{
    SampleRun run;
    const auto woman = run.presenter.estimatedHand(Sex::Female, Cm{165.0});
    const auto taller = run.presenter.estimatedHand(Sex::Female, Cm{175.0});
    ASSERT_TRUE(woman && taller);
    EXPECT_TRUE(checkedHandLength(*woman).has_value());
    EXPECT_LT(*woman, *taller);
    EXPECT_EQ(run.presenter.estimatedHand(Sex::Male, Cm{400.0}).error().problem, Problem::StatureOutOfRange);
}

TEST(PracticeOpeningTest, PlatesAreReadOffTheCallersThreadAndTheRunOpensWhenTheyAreThere)
{
    CountingSeeds seeds;
    PracticePresenter presenter(seeds);
    PracticeSetup setup = setupOf(Site::VastusLateralis);
    setup.mix.sites = {{false, true, true}};
    presenter.setUp(setup, {});
    const auto library = Library::load().value();
    presenter.useLibrary(library);
    EXPECT_FALSE(presenter.state().ready) << "nothing is read on the caller's thread";
    ASSERT_TRUE(QTest::qWaitFor([&] { return presenter.state().ready; }, 20000));
    EXPECT_TRUE(QTest::qWaitFor([&] { return presenter.state().picture != nullptr; }, 20000));
    // What later requests need is read ahead; what no request of the mix needs is not.
    EXPECT_TRUE(QTest::qWaitFor([&] { return library->isRead(View::HipSide); }, 20000));
    EXPECT_TRUE(library->isRead(View::ThighFront));
    EXPECT_FALSE(library->isRead(View::ShoulderSide));
}

TEST(PracticeOpeningTest, OfTwoRunsAskedForWhilePlatesAreReadTheLastOneOpens)
{
    CountingSeeds seeds;
    PracticePresenter presenter(seeds);
    presenter.setUp(setupOf(Site::Ventrogluteal), {});
    presenter.useLibrary(Library::load().value());
    ASSERT_TRUE(presenter.startRun(QStringLiteral("21"), setupOf(Site::Deltoid), {}));
    ASSERT_TRUE(QTest::qWaitFor([&] { return presenter.state().ready; }, 20000));
    QTest::qWait(100);
    EXPECT_EQ(presenter.state().request->site, Site::Deltoid);
    EXPECT_EQ(presenter.state().setup.seed, 21U);
}

TEST(PracticeOpeningTest, APolicyFileIsReadOffTheCallersThreadAndUsedWholeOrNotAtAll)
{
    const QTemporaryDir folder;
    const QString good = fileWith(folder, "good.json", kWardThree);
    const QString cut = fileWith(folder, "cut.json", R"({"name": "Ward 3", "conventions")");
    SampleRun run;
    run.presenter.usePolicyFile(cut);
    EXPECT_FALSE(run.state().notice.has_value()) << "not read yet";
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().notice.has_value(); }));
    EXPECT_EQ(run.state().notice->problem, Problem::PolicyCutShort);
    EXPECT_EQ(run.state().convention, Convention::DeltoidStrip);
    run.presenter.usePolicyFile(good);
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().policyFile == good; }));
    EXPECT_EQ(run.state().convention, Convention::DeltoidFingers);
    EXPECT_FALSE(run.state().notice.has_value());
    run.presenter.usePolicyFile({});
    EXPECT_EQ(run.state().convention, Convention::DeltoidStrip);
    EXPECT_TRUE(run.state().policyFile.isEmpty());
}

TEST(PracticeOpeningTest, OfTwoPolicyFilesTheLastOneCounts)
{
    const QTemporaryDir folder;
    SampleRun run;
    run.presenter.usePolicyFile(fileWith(folder, "good.json", kWardThree));
    run.presenter.usePolicyFile({});
    QTest::qWait(100);
    EXPECT_TRUE(run.state().policyFile.isEmpty());
    EXPECT_EQ(run.state().convention, Convention::DeltoidStrip);
}

TEST(PracticeOpeningTest, APolicyThatWouldLoseMarksIsOfferedAndWaitsForTheLearnersWord)
{
    const QTemporaryDir folder;
    const QString good = fileWith(folder, "good.json", kWardThree);
    SampleRun run;
    run.presenter.placeMark({0.0, -4.0});
    run.presenter.usePolicyFile(good);
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().policyOffered; }));
    EXPECT_EQ(run.state().offeredPolicy, good);
    EXPECT_TRUE(run.state().mark.has_value());
    run.presenter.answerOffer(false);
    EXPECT_FALSE(run.state().policyOffered);
    EXPECT_EQ(run.state().convention, Convention::DeltoidStrip);
    EXPECT_TRUE(run.state().mark.has_value());
    run.presenter.usePolicyFile(good);
    ASSERT_TRUE(QTest::qWaitFor([&] { return run.state().policyOffered; }));
    run.presenter.answerOffer(true);
    EXPECT_EQ(run.state().convention, Convention::DeltoidFingers);
    EXPECT_FALSE(run.state().mark.has_value());
}

TEST(PracticeOpeningTest, APolicyFileLostSinceTheLastStartIsToldAndTheShippedOneStandsIn)
{
    CountingSeeds seeds;
    PracticePresenter presenter(seeds);
    const auto library = libraryFor(PracticeSetup{});
    const QString gone = QStringLiteral("/nowhere/policy.json");
    presenter.setUp({.seed = 7, .length = 2, .help = {}, .asksSide = false, .mix = {}}, {});
    presenter.useLibrary(library, LabPolicy{gone, library->policyWith(gone)});
    EXPECT_TRUE(presenter.state().ready);
    ASSERT_TRUE(presenter.state().notice.has_value());
    EXPECT_EQ(presenter.state().notice->problem, Problem::PolicyNotReadable);
    EXPECT_TRUE(presenter.state().policyFile.isEmpty());
}

}  // namespace fb::test::practice_opening_tests
