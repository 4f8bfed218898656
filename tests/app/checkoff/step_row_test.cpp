#include "app/checkoff/step_row.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include "app/checkoff/seen_button.h"
#include "app/words/check_off_words.h"
#include "tests/support/manikin_sample.h"

namespace step_row_test {

namespace {

using namespace fb;
using namespace fb::test;

constexpr SheetStep kIdentify{ProcedureStep::Identify, true};

QString textIn(const StepRow& row, const char* name)
{
    return row.findChild<QLabel*>(QLatin1String(name))->text();
}

TEST(StepRowTest, SaysItsNameAndThatItIsCriticalInWordsAndWithASign)
{
    StepRow critical(kIdentify);
    critical.setScheme(dressed());
    EXPECT_EQ(textIn(critical, "stepName"),
              stepName(ProcedureStep::Identify) + QStringLiteral(" (critical)"));
    EXPECT_FALSE(critical.findChild<QLabel*>(QString(), Qt::FindDirectChildrenOnly)->pixmap().isNull());
    StepRow usual({ProcedureStep::Identify, false});
    usual.setScheme(dressed());
    EXPECT_EQ(textIn(usual, "stepName"), stepName(ProcedureStep::Identify));
    EXPECT_TRUE(usual.findChild<QLabel*>(QString(), Qt::FindDirectChildrenOnly)->pixmap().isNull());
}

TEST(StepRowTest, ShowsWhatWasSeenAndWhenAndTellsItToAScreenReader)
{
    StepRow row(kIdentify);
    row.showSeen(Observation{ProcedureStep::Identify, Seen::Prompted, 247.4, {}});
    EXPECT_EQ(textIn(row, "stepTime"), QStringLiteral("4:07"));
    EXPECT_TRUE(row.findChild<SeenButton*>("seen.prompted")->isChecked());
    EXPECT_FALSE(row.findChild<SeenButton*>("seen.done")->isChecked());
    EXPECT_TRUE(row.accessibleName().contains(seenName(Seen::Prompted)));
    EXPECT_TRUE(row.accessibleName().contains(QStringLiteral("4:07")));
    row.showSeen(Observation{ProcedureStep::Identify, Seen::NotDone, 250.0, {}});
    EXPECT_TRUE(textIn(row, "stepTime").isEmpty()) << "what was not done has no time";
    EXPECT_TRUE(row.accessibleName().contains(seenName(Seen::NotDone)));
    row.showSeen({});
    EXPECT_FALSE(row.findChild<SeenButton*>("seen.not_done")->isChecked());
}

TEST(StepRowTest, APressAsksAndShowsNothingBeforeItIsKept)
{
    StepRow row(kIdentify);
    row.show();
    QSignalSpy pressed(&row, &StepRow::seenPressed);
    auto* done = row.findChild<SeenButton*>("seen.done");
    QTest::mouseClick(done, Qt::LeftButton);
    ASSERT_EQ(pressed.size(), 1);
    EXPECT_EQ(pressed[0][0].value<Seen>(), Seen::Done);
    EXPECT_FALSE(done->isChecked());
}

TEST(StepRowTest, ARemarkIsTakenByEnterAndByLeavingTheFieldAndGivenUpByEscape)
{
    StepRow row(kIdentify);
    row.show();
    row.showSeen(Observation{ProcedureStep::Identify, Seen::Done, 1.0, {}});
    QSignalSpy given(&row, &StepRow::remarkGiven);
    auto* field = row.findChild<QLineEdit*>("stepRemarkField");
    row.editRemark();
    EXPECT_TRUE(row.editsRemark());
    QTest::keyClicks(field, QStringLiteral("only one name asked"));
    QTest::keyClick(field, Qt::Key_Return);
    ASSERT_EQ(given.size(), 1);
    EXPECT_EQ(given[0][0].toString(), QStringLiteral("only one name asked"));
    EXPECT_FALSE(row.editsRemark());
    row.showSeen(Observation{ProcedureStep::Identify, Seen::Done, 1.0, "only one name asked"});
    EXPECT_EQ(textIn(row, "stepRemark"), QStringLiteral("only one name asked"));

    row.editRemark();
    QTest::keyClicks(field, QStringLiteral(" twice"));
    QTest::keyClick(field, Qt::Key_Escape);
    EXPECT_EQ(given.size(), 1) << "Escape gives nothing";
    EXPECT_EQ(row.remark(), QStringLiteral("only one name asked"));

    row.editRemark();
    QTest::keyClicks(field, QStringLiteral(", then two"));
    QFocusEvent left(QEvent::FocusOut);
    QCoreApplication::sendEvent(field, &left);
    ASSERT_EQ(given.size(), 2);
    EXPECT_EQ(given[1][0].toString(), QStringLiteral("only one name asked, then two"));
}

TEST(StepRowTest, ARemarkWrittenBeforeTheStepIsSeenWaitsForIt)
{
    StepRow row(kIdentify);
    row.show();
    QSignalSpy given(&row, &StepRow::remarkGiven);
    row.editRemark();
    auto* field = row.findChild<QLineEdit*>("stepRemarkField");
    QTest::keyClicks(field, QStringLiteral("hesitates"));
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(given.size(), 0);
    EXPECT_EQ(row.remark(), QStringLiteral("hesitates"));
    EXPECT_FALSE(row.findChild<QLabel*>("stepRemark")->isHidden());
}

TEST(StepRowTest, OnlyTheCurrentRowIsReachedByTab)
{
    StepRow row(kIdentify);
    EXPECT_FALSE(row.focusPolicy() & Qt::TabFocus);
    row.setCurrent(true);
    EXPECT_TRUE(row.focusPolicy() & Qt::TabFocus);
}

}  // namespace

}  // namespace step_row_test
