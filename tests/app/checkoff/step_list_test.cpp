#include "app/checkoff/step_list.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include "app/checkoff/seen_button.h"
#include "app/checkoff/step_row.h"
#include "tests/support/manikin_sample.h"

namespace step_list_test {

namespace {

using namespace fb;
using namespace fb::test;

// A list whose wishes are kept at once.
class StepListTest : public ::testing::Test {
protected:
    StepListTest()
    {
        list.setScheme(dressed());
        list.resize(924, 709);  // what a window of 1280 x 800 leaves
        list.show();
        QObject::connect(&list, &StepList::observeAsked, &list,
                         [this](ProcedureStep step, Seen seen, const QString& remark) {
                             observe(state, step, seen, ++clock, remark.toStdString());
                             list.showState(state);
                         });
        QObject::connect(&list, &StepList::withdrawAsked, &list, [this](ProcedureStep step) {
            withdraw(state, step);
            list.showState(state);
        });
        list.showState(state);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&list));
    }
    [[nodiscard]] ProcedureStep current() const { return list.current()->step().step; }
    void answerCalmly(Seen seen)
    {
        QTest::qWait(StepList::kBounceMs + 20);
        list.answer(seen);
    }
    [[nodiscard]] std::optional<Seen> seen(ProcedureStep step) const
    {
        const auto at = std::ranges::find(state.observations, step, &Observation::step);
        return at == state.observations.end() ? std::nullopt : std::optional(at->seen);
    }

    CheckOffState state = manikinState();
    StepList list;
    double clock = 0.0;
};

TEST_F(StepListTest, ThirtyFourStepsAreAllInSightAtOnceInTheSmallestWindow)
{
    ASSERT_GE(list.count(), 30);
    EXPECT_TRUE(QTest::qWaitFor([this] { return list.verticalScrollBar()->maximum() == 0; }))
        << "something has to be hunted for";
    for (const StepRow* row : list.findChildren<StepRow*>())
        EXPECT_GE(row->height(), 32) << row->objectName().toStdString();
}

TEST_F(StepListTest, AGroupThatGoesOnInTheNextColumnSaysSo)
{
    const auto again = [this] {
        QList<QLabel*> shown = list.findChildren<QLabel*>("groupAgain");
        shown.removeIf([](const QLabel* name) { return !name->isVisible(); });
        return shown;
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return list.columns() == 2 && again().size() == 1; }));
    for (const QLabel* name : again()) {
        EXPECT_EQ(name->text(), groupName(StepGroup::FindSite) + QStringLiteral(" (continued)"));
        EXPECT_LT(name->mapTo(&list, QPoint()).y(), name->height() + 12) << "at the top of its column";
    }
    state.open->sheet.sheet.steps.resize(5);
    list.showState(state);
    EXPECT_TRUE(QTest::qWaitFor([&] { return again().isEmpty(); })) << "nothing goes on anywhere";
}

TEST_F(StepListTest, AnAnswerFromElsewhereMovesOnAsWell)
{
    const auto& steps = state.open->sheet.sheet.steps;
    for (int i = 0; i < 3; ++i)
        observe(state, steps[static_cast<std::size_t>(i)].step, Seen::Done, i);
    list.showState(state);
    EXPECT_EQ(current(), steps[3].step) << "as after a crash, when all of them come back at once";
    list.move(-1);
    list.showState(state);
    EXPECT_EQ(current(), steps[2].step) << "what was answered before is looked at again in peace";
}

TEST_F(StepListTest, GroupsStandInTheOrderTheyAreTaughtWithTheirCounts)
{
    const auto names = list.findChildren<QLabel*>("groupName");
    ASSERT_EQ(names.size(), kStepGroupCount);
    for (int i = 0; i < kStepGroupCount; ++i)
        EXPECT_EQ(names[i]->text(), groupName(static_cast<StepGroup>(i)));
    list.answer(Seen::Done);
    EXPECT_TRUE(list.findChildren<QLabel*>("groupCount")[0]->text().startsWith(QLatin1String("1 of ")));
}

TEST_F(StepListTest, AfterAnAnswerTheNextStepWithoutOneIsCurrent)
{
    const auto& steps = state.open->sheet.sheet.steps;
    observe(state, steps[1].step, Seen::Done, 1.0);
    list.showState(state);
    EXPECT_EQ(current(), steps[0].step);
    list.answer(Seen::Prompted);
    EXPECT_EQ(seen(steps[0].step), Seen::Prompted);
    EXPECT_EQ(current(), steps[2].step) << "what has an answer is passed over";
    EXPECT_TRUE(list.current()->hasFocus());
}

TEST_F(StepListTest, AfterTheLastStepTheFirstWithoutAnAnswerIsCurrent)
{
    list.move(list.count());
    EXPECT_EQ(current(), state.open->sheet.sheet.steps.back().step);
    list.answer(Seen::NotDone);
    EXPECT_EQ(current(), state.open->sheet.sheet.steps.front().step);
}

TEST_F(StepListTest, TheSameKeyTwiceInOneTouchIsOneAnswer)
{
    const auto& steps = state.open->sheet.sheet.steps;
    list.answer(Seen::Done);
    list.answer(Seen::Done);
    EXPECT_EQ(list.answered(), 1);
    EXPECT_EQ(current(), steps[1].step);
    answerCalmly(Seen::Done);
    EXPECT_EQ(list.answered(), 2) << "two touches are two answers";
    list.answer(Seen::NotDone);
    EXPECT_EQ(list.answered(), 3) << "another key is another answer however fast";
}

TEST_F(StepListTest, AStepSaidAgainTakesTheLaterWordAndTheSameWordTakesItBack)
{
    const ProcedureStep first = current();
    list.answer(Seen::Done);
    list.move(-1);
    list.answer(Seen::Prompted);
    EXPECT_EQ(seen(first), Seen::Prompted);
    EXPECT_EQ(list.answered(), 1);
    list.move(-1);
    answerCalmly(Seen::Prompted);
    EXPECT_EQ(seen(first), std::nullopt);
    EXPECT_EQ(current(), first) << "what is open again stays current";
}

TEST_F(StepListTest, AClickAnswersAnyStepAndADoubleClickDoesNotTakeItBack)
{
    auto* row = list.findChild<StepRow*>("step.sharps");
    auto* done = row->findChild<SeenButton*>("seen.done");
    QTest::mouseClick(done, Qt::LeftButton);
    EXPECT_EQ(seen(ProcedureStep::Sharps), Seen::Done);
    EXPECT_EQ(current(), ProcedureStep::GlovesOff);
    auto* other = list.findChild<StepRow*>("step.inject")->findChild<SeenButton*>("seen.done");
    doubleClick(*other);
    EXPECT_EQ(seen(ProcedureStep::Inject), Seen::Done);
}

TEST_F(StepListTest, ARemarkGoesAlongWithTheAnswerAndStaysWhenTheAnswerChanges)
{
    const ProcedureStep first = current();
    auto* row = const_cast<StepRow*>(list.current());
    list.editRemark();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("slow"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(row->hasFocus()) << "the keys belong to the steps again";
    list.answer(Seen::Done);
    list.move(-1);
    list.answer(Seen::Prompted);
    const auto at = std::ranges::find(state.observations, first, &Observation::step);
    EXPECT_EQ(at->remark, "slow");
    EXPECT_EQ(at->seen, Seen::Prompted);
}

TEST_F(StepListTest, WhatIsOnItsWayToTheDiskCountsAsAnswered)
{
    QObject::disconnect(&list, &StepList::observeAsked, nullptr, nullptr);
    const auto& steps = state.open->sheet.sheet.steps;
    list.answer(Seen::Done);
    list.answer(Seen::NotDone);
    EXPECT_EQ(current(), steps[2].step);
    list.goToFirstOpen();
    EXPECT_EQ(current(), steps[2].step);
    state.notice = Fault{Problem::StoreFull, {}, {}, 0.0, 0.0};
    list.showState(state);
    list.goToFirstOpen();
    EXPECT_EQ(current(), steps[0].step) << "what could not be kept is open again";
}

TEST_F(StepListTest, WhereAllCannotBeInSightTheCurrentStepIsScrolledThere)
{
    list.resize(500, 300);
    QTest::qWait(20);
    list.move(list.count());
    const StepRow* row = list.current();
    EXPECT_TRUE(list.viewport()->rect().contains(QRect(row->mapTo(list.viewport(), QPoint()), row->size())));
}

TEST_F(StepListTest, WhereThereIsRoomTheRowsStandFartherApart)
{
    const auto inSight = [this] { return list.verticalScrollBar()->maximum() == 0; };
    ASSERT_TRUE(QTest::qWaitFor(inSight));
    const StepRow* row = list.findChild<StepRow*>("step.stopper_dry");
    const int dense = row->height();
    list.resize(924, 900);
    EXPECT_TRUE(QTest::qWaitFor([&] { return row->height() >= dense + 4 && inSight(); }));
    list.resize(924, 709);
    EXPECT_TRUE(QTest::qWaitFor([&] { return row->height() == dense && inSight(); }));
}

TEST_F(StepListTest, AFewStepsStandInOneColumnWithWordsOnTheirAnswers)
{
    state.open->sheet.sheet.steps.resize(5);
    list.showState(state);
    QTest::qWait(20);
    EXPECT_EQ(list.columns(), 1);
    EXPECT_EQ(list.findChild<SeenButton*>("seen.prompted")->toolButtonStyle(), Qt::ToolButtonTextBesideIcon);
}

TEST(ColumnBreaksTest, TheTallestColumnIsAsLowAsCanBe)
{
    const std::vector<int> anywhere(6, 0);
    EXPECT_EQ(columnBreaks({1, 1, 1, 1, 1, 1}, anywhere, 1), (std::vector<int>{0}));
    EXPECT_EQ(columnBreaks({1, 1, 1, 1, 1, 1}, anywhere, 2), (std::vector<int>{0, 3}));
    EXPECT_EQ(columnBreaks({5, 1, 1, 1, 1, 1}, anywhere, 2), (std::vector<int>{0, 1}));
    EXPECT_EQ(columnBreaks({1, 1, 1, 1, 1, 1}, anywhere, 3), (std::vector<int>{0, 2, 4}));
    EXPECT_EQ(tallestColumn({5, 1, 1, 1}, {0, 0, 0, 0}, {0, 1}), 5);
    EXPECT_EQ(tallestColumn({5, 1, 1, 1}, {0, 4, 0, 0}, {0, 1}), 7) << "with the heading over its rest";
    EXPECT_EQ(columnBreaks({2, 2, 2, 2}, {0, 3, 3, 0}, 2), (std::vector<int>{0, 3}))
        << "a heading repeated costs more than a column that is a row longer";
}

TEST(ColumnBreaksTest, BeginsNoColumnWhereItMayNot)
{
    EXPECT_EQ(columnBreaks({1, 1, 1, 1, 1, 1}, {0, -1, 0, -1, -1, 0}, 2), (std::vector<int>{0, 2}));
    EXPECT_EQ(columnBreaks({1, 1}, {0, -1}, 2), (std::vector<int>{0}));
}

}  // namespace

}  // namespace step_list_test
