#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QLabel>

#include "app/practice/practice_page.h"
#include "tests/support/by_hand_steps.h"

namespace practice_page_by_hand_test {

namespace {

using namespace fb;
using namespace fb::test;

void expectFlawless(OpenWindow& open)
{
    ASSERT_TRUE(open.state().graded);
    const Attempt& attempt = *open.state().graded;
    ASSERT_TRUE(attempt.byHand);
    for (const FlagGrade& flag : attempt.byHand->flags)
        EXPECT_EQ(flag.verdict, FlagVerdict::Found) << wordOf(flag.asked) << " " << flag.distance.value();
    for (const BuildStepGrade& step : attempt.byHand->steps)
        EXPECT_EQ(step.slip, Slip::None) << wordOf(step.step) << " " << step.amount.value();
    EXPECT_TRUE(attempt.byHand->landmarksFound);
    EXPECT_TRUE(attempt.byHand->builtRight);
    EXPECT_TRUE(attempt.byHand->markedRight);
    EXPECT_FALSE(attempt.byHand->first);
}

class EveryConventionByMouse : public testing::TestWithParam<Convention> {};

TEST_P(EveryConventionByMouse, AWholeRequestIsFoundWithoutASlip)
{
    ByHandWindow open(GetParam());
    ASSERT_TRUE(open.isReady);
    ASSERT_EQ(open.state().phase, Phase::Feeling);
    wholeByMouse(open);
    expectFlawless(open);
}

INSTANTIATE_TEST_SUITE_P(PracticePageByHandTest, EveryConventionByMouse,
                         testing::Values(Convention::DeltoidFingers, Convention::DeltoidHalfway,
                                         Convention::VastusThirds, Convention::VastusHandbreadths,
                                         Convention::VentroglutealHand, Convention::VentroglutealMedians));

TEST(PracticePageByHandTest, AWholeRequestIsFoundWithKeysAlone)
{
    ByHandWindow open(Convention::VentroglutealHand);
    ASSERT_TRUE(open.isReady);
    ASSERT_TRUE(open.plate().hasFocus());
    for (const Landmark landmark : askedLandmarks(open.state().convention)) {
        crosshairTo(open, open.placeOfLandmark(landmark));
        QTest::keyClick(&open.plate(), Qt::Key_Return);
        QWidget* field = QApplication::focusWidget();
        ASSERT_NE(field, &open.plate()) << "Enter leads to the name";
        QTest::keyClicks(field, landmarkName(landmark));
        QTest::keyClick(field, Qt::Key_Return);
        ASSERT_TRUE(open.plate().hasFocus()) << "and back to the skin";
    }
    QTest::keyClick(&open.plate(), Qt::Key_2, Qt::AltModifier);
    ASSERT_EQ(open.state().phase, Phase::Building);
    const Side hand = open.flawless().hand->hand;
    ASSERT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("chooseFirst"));
    ASSERT_TRUE(tabTo(open, hand == Side::Right ? "chooseSecond" : "chooseFirst"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    ASSERT_TRUE(open.plate().hasFocus());
    for (const Handle handle : handlesOf(BuildKind::HandOnHip)) {
        ASSERT_EQ(open.now().current, handle);
        const Point to = open.flawlessAt(handle);
        arrowsTo(open, to, [&] { return *open.at(handle); });
        QTest::keyClick(&open.plate(), Qt::Key_Return);
    }
    QTest::keyClick(&open.plate(), Qt::Key_3, Qt::AltModifier);
    ASSERT_EQ(open.state().phase, Phase::Marking);
    crosshairTo(open, open.state().target->ideal);
    QTest::keyClick(&open.plate(), Qt::Key_Return);
    QTest::keyClick(&open.plate(), Qt::Key_Return);
    expectFlawless(open);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(open.state().request->number, 1);
    EXPECT_EQ(open.state().phase, Phase::Feeling);
}

TEST(PracticePageByHandTest, UndoAndRedoGoThroughEveryStageAndBack)
{
    ByHandWindow open(Convention::DeltoidHalfway);
    ASSERT_TRUE(open.isReady);
    plantAllByMouse(open);
    const std::size_t flags = open.now().flags.size();
    click(open, "goOn");
    setByMouse(open, Handle::LineTop, open.flawlessAt(Handle::LineTop));
    ASSERT_TRUE(open.at(Handle::LineTop));
    QTest::keyClick(&open.plate(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(open.at(Handle::LineTop));
    QTest::keyClick(&open.plate(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(open.state().phase, Phase::Feeling) << "to the stage of what is undone";
    EXPECT_EQ(open.now().flags.size(), flags - 1);
    click(open, "redo");
    EXPECT_EQ(open.now().flags.size(), flags);
    QTest::keyClick(&open.plate(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(open.at(Handle::LineTop));
    EXPECT_FALSE(open.find("redo")->isEnabled());
}

TEST(PracticePageByHandTest, StartingOverTakesAwayTheStageAndIsUndone)
{
    ByHandWindow open(Convention::DeltoidHalfway);
    ASSERT_TRUE(open.isReady);
    EXPECT_FALSE(open.find("clearStage")->isEnabled());
    plantAllByMouse(open);
    const auto flags = open.now().flags;
    click(open, "clearStage");
    EXPECT_TRUE(open.now().flags.empty());
    click(open, "undo");
    EXPECT_EQ(open.now().flags, flags);
}

TEST(PracticePageByHandTest, ADragIsOneStepOfUndo)
{
    ByHandWindow open(Convention::VentroglutealHand);
    ASSERT_TRUE(open.isReady);
    plantAllByMouse(open);
    click(open, "goOn");
    chooseByMouse(open);
    const auto before = open.at(Handle::Palm);
    dragByMouse(open, *before, open.flawlessAt(Handle::Palm));
    ASSERT_NE(open.at(Handle::Palm), before);
    click(open, "undo");
    EXPECT_EQ(open.at(Handle::Palm), before);
}

TEST(PracticePageByHandTest, StepsOutOfOrderSayWhatIsMissingAndKeepTheAttempt)
{
    ByHandWindow open(Convention::VastusThirds);
    ASSERT_TRUE(open.isReady);
    const auto notice = [&] { return open.find<QLabel>("noticeText")->text(); };
    click(open, "stageBuild");
    EXPECT_EQ(open.state().notice->problem, Problem::NoFlagPlanted);
    EXPECT_EQ(open.state().phase, Phase::Feeling);
    EXPECT_TRUE(open.find("noticeText")->isVisible());
    plantAllByMouse(open);
    EXPECT_FALSE(open.state().notice) << "an old notice is put away";
    click(open, "stageMark");
    EXPECT_EQ(open.state().notice->problem, Problem::NothingBuilt);
    click(open, "goOn");
    setByMouse(open, Handle::ThighTop, open.flawlessAt(Handle::ThighTop));
    click(open, "goOn");
    EXPECT_EQ(open.state().notice->problem, Problem::BuildNotWhole);
    EXPECT_EQ(open.state().phase, Phase::Building);
    EXPECT_TRUE(open.at(Handle::ThighTop)) << "what was set stays";
    EXPECT_FALSE(notice().isEmpty());
}

TEST(PracticePageByHandTest, AGradeWithoutAMarkSaysSo)
{
    ByHandWindow open(Convention::DeltoidHalfway);
    ASSERT_TRUE(open.isReady);
    plantAllByMouse(open);
    click(open, "goOn");
    buildByMouse(open);
    click(open, "goOn");
    ASSERT_EQ(open.state().phase, Phase::Marking);
    click(open, "grade");
    EXPECT_EQ(open.state().notice->problem, Problem::NoMarkYet);
    EXPECT_FALSE(open.state().graded);
    EXPECT_TRUE(open.now().isWhole);
}

TEST(PracticePageByHandTest, NotHereIsAnAnswerInEveryStage)
{
    const PracticeSetup setup = setupWithFinding(Site::Ventrogluteal, true);
    for (const Phase stage : {Phase::Feeling, Phase::Building}) {
        Preferences preferences = byHandPreferences(Convention::VentroglutealHand);
        preferences.mix.findings = true;
        OpenWindow open(preferences, {1280, 800}, setup.seed);
        ASSERT_TRUE(open.isReady);
        if (stage == Phase::Building) {
            auto& byHand = open.practice().byHand();
            const Point ideal = open.state().target->ideal;
            byHand.feel({ideal.x, ideal.y});
            byHand.plant(landmarkName(Landmark::IliacCrest));
            click(open, "goOn");
        }
        ASSERT_EQ(open.state().phase, stage);
        click(open, "notHere");
        EXPECT_FALSE(open.find("flagName")->isVisible());
        const QByteArray reason = "reason." + QByteArray(wordOf(open.state().request->finding->code).data());
        QTest::mouseClick(open.find(reason.constData()), Qt::LeftButton, {}, {10, 10});
        click(open, "confirmNotHere");
        ASSERT_TRUE(open.state().graded);
        EXPECT_EQ(open.state().graded->refusal->outcome, RefusalOutcome::RightReason);
        EXPECT_FALSE(open.find("undo")->isVisible());
    }
}

TEST(PracticePageByHandTest, TheShowingComesOnceAndTheAttemptSaysSo)
{
    ByHandWindow open(Convention::DeltoidHalfway);
    ASSERT_TRUE(open.isReady);
    click(open, "watchOnce");
    ASSERT_TRUE(open.now().watching);
    EXPECT_EQ(open.now().watching, 0);
    EXPECT_FALSE(open.find("flagName")->isVisible());
    EXPECT_FALSE(open.state().scene.isEmpty());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
    EXPECT_EQ(open.now().watching, 1);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Left);
    EXPECT_EQ(open.now().watching, 0);
    for (int i = 0; i < open.now().watchSteps; ++i)
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
    EXPECT_EQ(open.now().watching, open.now().watchSteps - 1) << "the last step stays";
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(open.now().watching);
    EXPECT_TRUE(open.state().scene.isEmpty()) << "nothing shown stays behind";
    EXPECT_FALSE(open.find("watchOnce")->isEnabled());
    wholeByMouse(open);
    ASSERT_TRUE(open.state().graded);
    EXPECT_TRUE(open.state().graded->watched);
    EXPECT_TRUE(open.find("watchedNote")->isVisible());
    click(open, "next");
    EXPECT_TRUE(open.find("watchOnce")->isEnabled()) << "the next request may be shown again";
}

TEST(PracticePageByHandTest, FingersAreLaidWithTheHandThatDoesNotWrite)
{
    for (const Side writes : kSides) {
        const Preferences preferences = byHandPreferences(Convention::DeltoidFingers);
        Remembered remembered;
        remembered.profile = Profile{.handedness = writes};
        OpenWindow open(preferences, {1280, 800}, 7, remembered);
        ASSERT_TRUE(open.isReady);
        auto& byHand = open.practice().byHand();
        byHand.feel({0.0, 0.0});
        byHand.plant(landmarkName(Landmark::Acromion));
        click(open, "goOn");
        click(open, "chooseSecond");
        ASSERT_TRUE(open.state().byHand->build.fingers);
        EXPECT_EQ(open.state().byHand->build.fingers->count, 3);
        EXPECT_NE(open.state().byHand->build.fingers->hand, writes);
    }
}

TEST(PracticePageByHandTest, APalmLaidTooLowIsNamedFirst)
{
    ByHandWindow open(Convention::VentroglutealHand);
    ASSERT_TRUE(open.isReady);
    plantAllByMouse(open);
    click(open, "goOn");
    buildByMouse(open);
    const Point palm = open.flawlessAt(Handle::Palm);
    const Point low = open.state().target->toViewer(
        {open.state().target->toSkin(palm).x, open.state().target->toSkin(palm).y - 3.5});
    setByMouse(open, Handle::Palm, low);
    click(open, "goOn");
    markByMouse(open, open.state().target->ideal);
    ASSERT_TRUE(open.state().graded);
    const Attempt& attempt = *open.state().graded;
    ASSERT_TRUE(attempt.byHand && attempt.byHand->first);
    EXPECT_EQ(attempt.byHand->first->slip, Slip::PalmOff);
    EXPECT_TRUE(attempt.byHand->luckyMark);
    EXPECT_TRUE(open.find("luckyMark")->isVisible());
    EXPECT_FALSE(open.find<QLabel>("firstCause")->text().isEmpty());
}

}  // namespace

}  // namespace practice_page_by_hand_test
