#include "app/checkoff/step_panel.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/checkoff/seen_button.h"
#include "app/checkoff/step_row.h"
#include "app/words/check_off_words.h"
#include "tests/support/manikin_sample.h"

namespace step_panel_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(StepPanelTest, NamesTheStepAndShowsWhatIsKeptOfIt)
{
    StepPanel panel;
    StepRow row({ProcedureStep::Identify, true});
    row.showSeen(Observation{ProcedureStep::Identify, Seen::Prompted, 1.0, {}});
    panel.showStep(&row);
    EXPECT_TRUE(panel.findChild<QLabel*>("nowStep")->text().startsWith(stepName(ProcedureStep::Identify)));
    EXPECT_TRUE(panel.findChild<QLabel*>("nowStep")->text().contains(QLatin1String("critical")));
    EXPECT_TRUE(panel.findChild<SeenButton*>("now2")->isChecked());
    EXPECT_FALSE(panel.findChild<SeenButton*>("now1")->isChecked());
}

TEST(StepPanelTest, EachAnswerIsOnePressAndSaysItsKey)
{
    StepPanel panel;
    panel.setScheme(dressed());
    StepRow row({ProcedureStep::Identify, true});
    panel.showStep(&row);
    panel.show();
    QSignalSpy pressed(&panel, &StepPanel::seenPressed);
    for (int i = 0; i < kSeenCount; ++i) {
        auto* button = panel.findChild<SeenButton*>(QStringLiteral("now%1").arg(i + 1));
        QTest::mouseClick(button, Qt::LeftButton);
        ASSERT_EQ(pressed.size(), i + 1);
        EXPECT_EQ(pressed[i][0].value<Seen>(), static_cast<Seen>(i));
        EXPECT_FALSE(button->isChecked()) << "what is not kept is not shown";
        EXPECT_TRUE(button->text().contains(QString::number(i + 1)));
    }
    QSignalSpy remark(&panel, &StepPanel::remarkPressed);
    QTest::mouseClick(panel.findChild<QPushButton*>("nowRemark"), Qt::LeftButton);
    EXPECT_EQ(remark.size(), 1);
}

TEST(StepPanelTest, LongWordsStandOneBelowTheOther)
{
    StepPanel panel;
    panel.setScheme(dressed());
    panel.show();
    const auto* first = panel.findChild<SeenButton*>("now1");
    const auto* second = panel.findChild<SeenButton*>("now2");
    panel.fit(2 * second->sizeHint().width() + 40);
    QTest::qWait(20);
    EXPECT_EQ(first->y(), second->y());
    panel.fit(2 * second->sizeHint().width() - 40);
    QTest::qWait(20);
    EXPECT_EQ(first->x(), second->x());
    EXPECT_LT(first->y(), second->y());
}

TEST(StepPanelTest, WithoutStepsNothingCanBePressed)
{
    StepPanel panel;
    panel.showStep(nullptr);
    EXPECT_FALSE(panel.isEnabled());
}

}  // namespace

}  // namespace step_panel_test
