// Charts, companions and the laid hand, on the real window.
#include <gtest/gtest.h>

#include <QLabel>

#include "app/practice/why_panel.h"
#include "app/words/finding_words.h"
#include "app/words/grade_words.h"
#include "tests/support/page_steps.h"

namespace fb::test::practice_page_chart_test {

TEST(PracticePageChartTest, NotHereIsAnsweredByMouseAndConfirmed)
{
    WithCharts open(true);
    ASSERT_TRUE(open.isReady);
    EXPECT_TRUE(open.find<QLabel>("chartNote")->isVisible());
    click(open, "notHere");
    EXPECT_TRUE(open.find("refusalTitle")->isVisible());
    EXPECT_FALSE(open.find("confirmNotHere")->isEnabled()) << "a reason first";
    click(open, "backToPlate");
    EXPECT_FALSE(open.find("refusalTitle")->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), open.find("plate"));
    click(open, "notHere");
    const FindingCode chart = open.state().request->finding->code;
    const std::string reason = "reason." + std::string(wordOf(chart));
    QTest::mouseClick(open.find(reason.c_str()), Qt::LeftButton, {}, {8, 8});
    EXPECT_FALSE(open.state().graded.has_value()) << "nothing is refused before it is confirmed";
    click(open, "confirmNotHere");
    ASSERT_EQ(open.state().phase, Phase::Graded);
    EXPECT_EQ(open.find<QLabel>("verdict")->text(), QStringLiteral("Rightly refused"));
    EXPECT_FALSE(open.find("why")->isVisible()) << "there is no right place to explain";
    EXPECT_FALSE(open.find("along")->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), open.find("next"));
}

TEST(PracticePageChartTest, NotHereIsAnsweredByKeyboardAlone)
{
    WithCharts open(true);
    ASSERT_TRUE(open.isReady);
    ASSERT_TRUE(tabTo(open, "notHere"));
    QTest::keyClick(open.find("notHere"), Qt::Key_Return);
    ASSERT_EQ(QApplication::focusWidget(), open.find("reason.rash"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(open.find("refusalTitle")->isVisible());
    ASSERT_EQ(QApplication::focusWidget(), open.find("plate"));
    ASSERT_TRUE(tabTo(open, "notHere"));
    QTest::keyClick(open.find("notHere"), Qt::Key_Space);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    for (int i = 0; i < static_cast<int>(open.state().request->finding->code); ++i)
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    ASSERT_TRUE(tabTo(open, "confirmNotHere"));
    QTest::keyClick(open.find("confirmNotHere"), Qt::Key_Return);
    ASSERT_EQ(open.state().phase, Phase::Graded);
    EXPECT_EQ(open.state().graded->refusal->outcome, RefusalOutcome::RightReason);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(open.state().request->number, 1);
}

TEST(PracticePageChartTest, AMarkAgainstTheChartIsUnsafeAndSaysSo)
{
    WithCharts open(true);
    ASSERT_TRUE(open.isReady);
    auto* plate = open.find<PlateView>("plate");
    ASSERT_TRUE(QTest::qWaitFor([&] { return plate->isSharp(); }));
    QTest::mouseClick(plate, Qt::LeftButton, {}, idealOnScreen(open));
    click(open, "grade");
    ASSERT_EQ(open.state().phase, Phase::Graded);
    EXPECT_EQ(open.find<QLabel>("verdict")->text(), verdictName(Verdict::Unsafe));
    EXPECT_EQ(open.find<QLabel>("reason")->text(), missedFindingSentence(*open.state().request->finding));
}

TEST(PracticePageChartTest, WithoutChartsThereIsNoSuchButton)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    EXPECT_FALSE(open.find("notHere")->isVisible());
    EXPECT_FALSE(open.find("chartNote")->isVisible());
    EXPECT_TRUE(open.find("withdraw")->isVisible());
}

TEST(PracticePageChartTest, TheCompanionOfAHipOpensBesideItAndSaysWhyNotThere)
{
    WithCharts open(false);
    ASSERT_TRUE(open.isReady);
    open.practice().placeMark({open.state().target->ideal.x, open.state().target->ideal.y});
    open.practice().grade();
    click(open, "companion");
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.state().companion != nullptr; }, 20000));
    EXPECT_TRUE(open.find("companionPlate")->isVisible());
    EXPECT_TRUE(open.find("whyNot")->isVisible());
    EXPECT_EQ(open.state().companion->plate->view, View::HipBehind);
    click(open, "companion");
    EXPECT_FALSE(open.find("companionPlate")->isVisible());
}

TEST(PracticePageChartTest, TheLaidHandIsExplainedAndHiddenByKey)
{
    WithCharts open(false);
    ASSERT_TRUE(open.isReady);
    open.practice().placeMark({open.state().target->ideal.x, open.state().target->ideal.y});
    open.practice().grade();
    click(open, "why");
    ASSERT_TRUE(open.state().target->hand.has_value());
    EXPECT_EQ(open.find<QLabel>("whyHand")->text(), handText(*open.state().target->hand));
    ASSERT_TRUE(tabTo(open, "handShown"));
    QTest::keyClick(open.find("handShown"), Qt::Key_Space);
    EXPECT_FALSE(open.state().handShown);
}

}  // namespace fb::test::practice_page_chart_test
