#include "app/checkoff/closing_page.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTest>

#include "app/records/pin_field.h"
#include "app/words/fault_words.h"
#include "tests/support/closing_run.h"

namespace closing_page_test {

namespace {

using namespace fb;
using namespace fb::test;

// What the assessor has to do after Finish: one key for the rating, the PIN, Enter.
TEST(ClosingPageTest, RatingPinAndEnterAreAllAnAssessorDoes)
{
    Closing closing;
    ASSERT_TRUE(closing.isOpen);
    closing.key(Qt::Key_4);
    closing.type(QLatin1String(ManikinRun::kPin));
    closing.key(Qt::Key_Return);
    ASSERT_TRUE(closing.state().signedOff.has_value());
    EXPECT_EQ(closing.presses, 2 + 6);
    EXPECT_EQ(closing.state().rating, 4);
    EXPECT_EQ(closing.state().signedOff->result.decision.outcome, Outcome::Pass);
    // And the next student is one press more.
    ASSERT_TRUE(closing.find<QPushButton>("nextStudent")->hasFocus());
    closing.key(Qt::Key_Return);
    EXPECT_EQ(closing.state().stage, CheckOffStage::Identity);
    EXPECT_EQ(closing.state().open->student.id, QStringLiteral("S-1043"));
}

TEST(ClosingPageTest, TheSameWithTheMouse)
{
    Closing closing;
    ASSERT_TRUE(closing.isOpen);
    QTest::mouseClick(closing.find<QRadioButton>("rating3"), Qt::LeftButton, {}, {8, 8});
    ASSERT_TRUE(QTest::qWaitFor([&] { return closing.find<QLineEdit>("firstPin")->hasFocus(); }));
    closing.type(QLatin1String(ManikinRun::kPin));
    QTest::mouseClick(closing.find<QPushButton>("sign"), Qt::LeftButton);
    ASSERT_TRUE(closing.state().signedOff.has_value());
    EXPECT_EQ(closing.state().rating, 3);
}

TEST(ClosingPageTest, SaysWhatItCameToAndWhy)
{
    ManikinRun::Plan plan = oneAssessor();
    plan.verdicts = {Verdict::OnTarget, Verdict::Unsafe, Verdict::OffTarget};
    Closing closing(plan,
                    {{ProcedureStep::Identify, Seen::Prompted}, {ProcedureStep::Sharps, Seen::NotDone}});
    ASSERT_TRUE(closing.isOpen);
    ASSERT_EQ(closing.state().result.decision.outcome, Outcome::FailCritical);
    EXPECT_TRUE(closing.text("outcome").startsWith(QLatin1String("Not passed")));
    EXPECT_FALSE(closing.text("reasons").isEmpty());
    EXPECT_EQ(closing.page.findChildren<QLabel*>("answerVerdict").size(), 3);
    EXPECT_EQ(closing.page.findChildren<QLabel*>("missedStep").size(), 2);
    EXPECT_TRUE(closing.text("reasons").contains(QStringLiteral("sharps container: ")));
    for (const QLabel* order : closing.page.findChildren<QLabel*>("breach"))
        EXPECT_FALSE(order->text().contains(QStringLiteral("sharps")))
            << "what was left out is named among the steps and not a second time as an order";
}

TEST(ClosingPageTest, AResultThatIsTooLongIsTurnedByKeys)
{
    ManikinRun::Plan plan = oneAssessor();
    plan.verdicts = std::vector<Verdict>(20, Verdict::OffTarget);
    Closing closing(plan,
                    {{ProcedureStep::Identify, Seen::Prompted}, {ProcedureStep::Sharps, Seen::NotDone}});
    ASSERT_TRUE(closing.isOpen);
    settle();
    auto* bar = closing.find<QScrollArea>("resultScroll")->verticalScrollBar();
    ASSERT_GT(bar->maximum(), 0);
    closing.key(Qt::Key_PageDown);
    EXPECT_GT(bar->value(), 0);
    closing.key(Qt::Key_PageUp);
    EXPECT_EQ(bar->value(), 0);
}

TEST(ClosingPageTest, SigningWithoutARatingIsToldAndGoesToTheRating)
{
    Closing closing;
    ASSERT_TRUE(closing.isOpen);
    closing.find<QLineEdit>("firstPin")->setText(QLatin1String(ManikinRun::kPin));
    QTest::mouseClick(closing.find<QPushButton>("sign"), Qt::LeftButton);
    EXPECT_FALSE(closing.state().signedOff.has_value());
    EXPECT_EQ(closing.text("signFault"), sentenceOf({Problem::RatingMissing, {}, {}, 0.0, 0.0}));
    EXPECT_TRUE(closing.find<QRadioButton>("rating1")->hasFocus());
}

TEST(ClosingPageTest, AWrongPinIsSaidBesideItThenHeldAndTheRightOneSigns)
{
    Closing closing;
    ASSERT_TRUE(closing.isOpen);
    closing.key(Qt::Key_5);
    for (const Problem problem : {Problem::PinWrong, Problem::PinWrong, Problem::PinHeld}) {
        closing.type(QStringLiteral("000111"));
        closing.key(Qt::Key_Return);
        EXPECT_FALSE(closing.state().signedOff.has_value());
        EXPECT_EQ(closing.text("signFault"), sentenceOf(*closing.state().notice));
        EXPECT_EQ(closing.state().notice->problem, problem);
        EXPECT_TRUE(closing.find<QLineEdit>("firstPin")->text().isEmpty());
    }
    closing.type(QLatin1String(ManikinRun::kPin));
    closing.key(Qt::Key_Return);
    EXPECT_TRUE(closing.state().signedOff.has_value());
}

TEST(ClosingPageTest, TheRemarkIsKeptWithTheRatingWheneverItWasWritten)
{
    Closing closing;
    ASSERT_TRUE(closing.isOpen);
    auto* remark = closing.find<QPlainTextEdit>("remark");
    remark->setFocus();
    QTest::keyClicks(remark, QStringLiteral("Steady hand, 3 fingers."));
    EXPECT_EQ(closing.state().rating, std::nullopt) << "a digit in the remark rates nothing";
    QTest::keyClick(remark, Qt::Key_Tab);
    QTest::mouseClick(closing.find<QRadioButton>("rating4"), Qt::LeftButton, {}, {8, 8});
    EXPECT_EQ(closing.state().remark, QStringLiteral("Steady hand, 3 fingers."));
    remark->setFocus();
    QTest::keyClicks(remark, QStringLiteral(" Good."));
    closing.find<QLineEdit>("firstPin")->setText(QLatin1String(ManikinRun::kPin));
    QTest::mouseClick(closing.find<QPushButton>("sign"), Qt::LeftButton);
    ASSERT_TRUE(closing.state().signedOff.has_value());
    EXPECT_TRUE(closing.state().remark.endsWith(QLatin1String("Good.")));
}

TEST(ClosingPageTest, ARemarkIsHeldToItsLength)
{
    Closing closing;
    auto* remark = closing.find<QPlainTextEdit>("remark");
    remark->setPlainText(QString(2 * ClosingPage::kLongestRemark, QLatin1Char('a')));
    EXPECT_EQ(remark->toPlainText().size(), ClosingPage::kLongestRemark);
}

TEST(ClosingPageTest, WhereNobodyIsEnrolledTheFirstAssessorIsAndSigns)
{
    ManikinRun::Plan plan;
    plan.people.clear();
    Closing closing(plan);
    ASSERT_TRUE(closing.isOpen);
    closing.key(Qt::Key_4);
    for (const char* typed : {"Vera Holm", "482913", "482913"}) {
        closing.type(QLatin1String(typed));
        closing.key(Qt::Key_Return);
    }
    closing.key(Qt::Key_Return);
    ASSERT_TRUE(closing.state().signedOff.has_value());
    EXPECT_EQ(closing.state().signedOff->assessors.front().name, QStringLiteral("Vera Holm"));
}

TEST(ClosingPageTest, AVoidNeedsNoRating)
{
    ManikinRun run(oneAssessor());
    AnsweringDialogs dialogs;
    ClosingPage page(run.presenter, dialogs);
    run.presenter.voidTechnical(QStringLiteral("Power cut"));
    ASSERT_EQ(run.state().stage, CheckOffStage::Closing);
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    EXPECT_FALSE(page.findChild<QRadioButton*>("rating1")->isVisible());
    QTest::keyClicks(QApplication::focusWidget(), QLatin1String(ManikinRun::kPin));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(run.state().signedOff.has_value());
}

TEST(ClosingPageTest, WithoutAPrinterASentenceSaysWhatToDo)
{
    Closing closing;
    closing.key(Qt::Key_4);
    closing.type(QLatin1String(ManikinRun::kPin));
    closing.key(Qt::Key_Return);
    QTest::mouseClick(closing.find<QPushButton>("printSheet"), Qt::LeftButton);
    EXPECT_EQ(closing.text("savedTold"), sentenceOf({Problem::PrinterMissing, {}, {}, 0.0, 0.0}));
}

TEST(ClosingPageTest, TheSheetIsSavedWhereTheAssessorSays)
{
    QTemporaryDir folder;
    Closing closing;
    closing.key(Qt::Key_4);
    closing.type(QLatin1String(ManikinRun::kPin));
    closing.key(Qt::Key_Return);
    QTest::mouseClick(closing.find<QPushButton>("savePdf"), Qt::LeftButton);
    EXPECT_TRUE(closing.text("savedTold").isEmpty()) << "they thought better of it";
    closing.dialogs.answer = folder.filePath(QStringLiteral("sheet.pdf"));
    QTest::mouseClick(closing.find<QPushButton>("savePdf"), Qt::LeftButton);
    EXPECT_FALSE(closing.find<QPushButton>("savePdf")->isEnabled());
    constexpr int kLongest = 30000;
    ASSERT_TRUE(QTest::qWaitFor([&] { return closing.find<QPushButton>("savePdf")->isEnabled(); }, kLongest));
    EXPECT_TRUE(closing.text("savedTold").contains(QLatin1String("sheet.pdf")));
    EXPECT_TRUE(QFile::exists(closing.dialogs.answer));
}

TEST(ClosingPageTest, TheNextCheckOffFindsNothingOfTheOneBefore)
{
    Closing closing;
    closing.key(Qt::Key_4);
    closing.find<QPlainTextEdit>("remark")->setPlainText(QStringLiteral("for the first alone"));
    closing.find<QLineEdit>("firstPin")->setFocus();
    closing.type(QLatin1String(ManikinRun::kPin));
    closing.key(Qt::Key_Return);
    closing.run.presenter.nextStudent();
    closing.run.presenter.confirmIdentity();
    closing.run.presenter.voidTechnical(QStringLiteral("Wrong student chosen"));
    ASSERT_EQ(closing.state().stage, CheckOffStage::Closing);
    EXPECT_TRUE(closing.find<QPlainTextEdit>("remark")->toPlainText().isEmpty());
    EXPECT_FALSE(closing.find<QRadioButton>("rating4")->isChecked());
    EXPECT_TRUE(closing.find<QLineEdit>("firstPin")->text().isEmpty());
    EXPECT_TRUE(closing.find<QPushButton>("nextStudent")->isHidden() ||
                !closing.find<QPushButton>("nextStudent")->isVisible());
}

}  // namespace

}  // namespace closing_page_test
