#include "app/checkoff/manikin_page.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/checkoff/step_list.h"
#include "app/checkoff/step_row.h"
#include "tests/support/layout_audit.h"
#include "tests/support/manikin_run.h"
#include "tests/support/window_walk.h"

namespace manikin_page_test {

namespace {

using namespace fb;
using namespace fb::test;

class ManikinPageTest : public ::testing::Test {
protected:
    ManikinPageTest()
    {
        page.setScheme(dressed());
        page.resize(1280, 725);  // a window of 1280 x 800 without its head and foot
        page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    }
    // To whatever has the focus, as a keyboard does.
    static void key(Qt::Key which) { QTest::keyClick(QApplication::focusWidget(), which); }
    void calmKey(Qt::Key which)
    {
        QTest::qWait(StepList::kBounceMs + 10);
        key(which);
    }
    [[nodiscard]] ProcedureStep current() const
    {
        return page.findChild<StepList*>("steps")->current()->step().step;
    }
    [[nodiscard]] ProcedureStep step(std::size_t number) const
    {
        return run.state().open->sheet.sheet.steps[number].step;
    }
    [[nodiscard]] QPushButton* button(const char* name) const
    {
        return page.findChild<QPushButton*>(QLatin1String(name));
    }

    ManikinRun run;
    ManikinPage page{run.presenter};
};

TEST_F(ManikinPageTest, OneKeyAStepByKeyboardAloneUpToTheResult)
{
    ASSERT_EQ(run.state().stage, CheckOffStage::OnManikin);
    const int steps = static_cast<int>(run.state().open->sheet.sheet.steps.size());
    ASSERT_GE(steps, 30);
    const int before = run.records.keeps;
    const std::array<Qt::Key, 3> keys{Qt::Key_1, Qt::Key_2, Qt::Key_3};
    for (int i = 0; i < steps; ++i) {
        run.records.clock.now += Ms{900};
        key(keys[static_cast<std::size_t>(i) % keys.size()]);
    }
    EXPECT_EQ(run.records.keeps - before, steps) << "every step on disk, none twice";
    ASSERT_EQ(static_cast<int>(run.state().observations.size()), steps);
    EXPECT_EQ(run.seen(step(0))->seen, Seen::Done);
    EXPECT_EQ(run.seen(step(1))->seen, Seen::Prompted);
    EXPECT_EQ(run.seen(step(2))->seen, Seen::NotDone);
    int tabs = 0;
    while (!button("finish")->hasFocus() && ++tabs < 20)
        key(Qt::Key_Tab);
    ASSERT_TRUE(button("finish")->hasFocus());
    key(Qt::Key_Return);
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
}

TEST_F(ManikinPageTest, TheSpaceBarAlwaysRunsTheStopwatch)
{
    key(Qt::Key_Space);
    EXPECT_TRUE(run.state().holding.has_value());
    button("finish")->setFocus();
    QSignalSpy finished(button("finish"), &QPushButton::clicked);
    key(Qt::Key_Space);
    EXPECT_FALSE(run.state().holding.has_value());
    EXPECT_TRUE(run.state().held.has_value());
    EXPECT_TRUE(finished.isEmpty()) << "the bar presses no button here";
    // But in a remark it is a space.
    page.findChild<StepList*>("steps")->focusCurrent();
    key(Qt::Key_R);
    auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, QStringLiteral("asks 1 name"));
    EXPECT_EQ(field->text(), QStringLiteral("asks 1 name"));
    EXPECT_FALSE(run.state().holding.has_value());
    EXPECT_TRUE(run.state().observations.empty()) << "a digit in a remark answers no step";
}

TEST_F(ManikinPageTest, KeysWorkWhereverTheFocusIs)
{
    button("pauseManikin")->setFocus();
    key(Qt::Key_1);
    EXPECT_NE(run.seen(step(0)), nullptr);
    button("finish")->setFocus();
    key(Qt::Key_Down);
    EXPECT_EQ(current(), step(2));
    key(Qt::Key_End);
    EXPECT_EQ(current(), run.state().open->sheet.sheet.steps.back().step);
    key(Qt::Key_Home);
    EXPECT_EQ(current(), step(0));
}

TEST_F(ManikinPageTest, AKeyHeldDownIsOneAnswer)
{
    key(Qt::Key_1);
    for (int i = 0; i < 2; ++i) {
        QTest::qWait(StepList::kBounceMs + 10);
        QTest::simulateEvent(QApplication::focusWidget(), true, Qt::Key_1, Qt::NoModifier,
                             QStringLiteral("1"), true);
    }
    EXPECT_EQ(run.state().observations.size(), 1U);
}

TEST_F(ManikinPageTest, AStepSaidTwiceTakesTheLaterWordWithItsTimeAndTheSameWordTakesItBack)
{
    key(Qt::Key_1);
    key(Qt::Key_Up);
    run.records.clock.now += Ms{1000};
    key(Qt::Key_2);
    EXPECT_EQ(run.seen(step(0))->seen, Seen::Prompted);
    EXPECT_EQ(run.state().observations.size(), 1U);
    key(Qt::Key_Up);
    calmKey(Qt::Key_2);
    EXPECT_EQ(run.seen(step(0)), nullptr);
    EXPECT_EQ(current(), step(0));
}

TEST_F(ManikinPageTest, AQuickHandLosesNothingWhileTheDiskIsSlow)
{
    run.records.waits = true;
    key(Qt::Key_1);
    key(Qt::Key_2);
    key(Qt::Key_3);
    EXPECT_TRUE(run.state().observations.empty()) << "nothing is shown that is not on disk";
    run.records.answerAll();
    EXPECT_EQ(run.seen(step(0))->seen, Seen::Done);
    EXPECT_EQ(run.seen(step(1))->seen, Seen::Prompted);
    EXPECT_EQ(run.seen(step(2))->seen, Seen::NotDone);
    EXPECT_EQ(current(), step(3));
}

TEST_F(ManikinPageTest, WhatCannotBeKeptIsOpenAgain)
{
    run.records.trouble = Fault{Problem::StoreFull, "records.db", {}, 0.0, 0.0};
    key(Qt::Key_1);
    EXPECT_TRUE(run.state().observations.empty());
    ASSERT_TRUE(run.state().notice.has_value());
    run.records.trouble.reset();
    key(Qt::Key_Home);
    calmKey(Qt::Key_1);
    EXPECT_NE(run.seen(step(0)), nullptr);
    EXPECT_FALSE(run.state().notice.has_value());
}

TEST_F(ManikinPageTest, FinishTellsHowManyStepsAreWithoutAWordAndGoesToTheFirst)
{
    key(Qt::Key_1);
    key(Qt::Key_Down);
    calmKey(Qt::Key_1);
    QTest::mouseClick(button("finish"), Qt::LeftButton);
    EXPECT_EQ(run.state().stage, CheckOffStage::OnManikin);
    ASSERT_TRUE(run.state().notice.has_value());
    EXPECT_EQ(run.state().notice->problem, Problem::StepsNotRated);
    EXPECT_EQ(run.state().notice->what, std::to_string(run.state().open->sheet.sheet.steps.size() - 2));
    EXPECT_EQ(current(), step(1));
    QTest::mouseClick(button("restNotDone"), Qt::LeftButton);
    QTest::mouseClick(button("finish"), Qt::LeftButton);
    EXPECT_EQ(run.state().stage, CheckOffStage::Closing);
}

TEST_F(ManikinPageTest, ARecappedNeedleIsKeptShownAsUnsafeAndCanBeTakenBack)
{
    run.presenter.observe(ProcedureStep::Insert, Seen::Done);
    run.records.clock.now += Ms{1000};
    const auto unsafe = [this] {
        const auto lines = page.findChildren<QLabel*>("breach");
        return std::ranges::count_if(
            lines, [](const QLabel* line) { return line->text().startsWith(QLatin1String("Unsafe")); });
    };
    const auto before = unsafe();
    QTest::mouseClick(button("recapped"), Qt::LeftButton);
    ASSERT_NE(run.seen(ProcedureStep::Recap), nullptr);
    EXPECT_EQ(unsafe(), before + 1);
    QTest::mouseClick(button("recapped"), Qt::LeftButton);
    EXPECT_EQ(run.seen(ProcedureStep::Recap), nullptr);
    EXPECT_EQ(unsafe(), before);
}

TEST_F(ManikinPageTest, PausedItTakesNoKeysAndAfterwardsGoesOnWhereItWas)
{
    key(Qt::Key_1);
    run.presenter.pause(QStringLiteral("Fire alarm"));
    ASSERT_TRUE(run.state().paused);
    EXPECT_FALSE(page.isEnabled());
    QTest::keyClick(&page, Qt::Key_1);
    EXPECT_EQ(run.state().observations.size(), 1U);
    run.presenter.resume();
    EXPECT_TRUE(page.isEnabled());
    EXPECT_TRUE(page.isAncestorOf(QApplication::focusWidget()));
    calmKey(Qt::Key_1);
    EXPECT_NE(run.seen(step(1)), nullptr);
}

}  // namespace

}  // namespace manikin_page_test
