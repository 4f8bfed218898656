#include "app/practice/request_panel.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/words/site_words.h"
#include "tests/support/sample_run.h"

namespace fb::test {

TEST(RequestPanelTest, SaysWhatIsAskedAndOfWhom)
{
    SampleRun run;
    RequestPanel panel;
    panel.showState(run.state());
    const auto text = [&panel](const char* name) {
        return panel.findChild<QLabel*>(QLatin1String(name))->text();
    };
    const Patient& patient = run.state().request->patient;
    EXPECT_EQ(text("counter"), QStringLiteral("Request 1 of 3"));
    EXPECT_EQ(text("request"), requestText(Site::Deltoid, patient.side()));
    EXPECT_TRUE(text("age").startsWith(QString::number(static_cast<int>(patient.ageYears()))));
    EXPECT_EQ(text("sex"), sexName(patient.sex()));
    EXPECT_EQ(text("side"), sideName(patient.side()));
    EXPECT_TRUE(text("stature").endsWith(QLatin1String(" cm")));
    EXPECT_TRUE(text("weight").endsWith(QLatin1String(" kg")));
    EXPECT_EQ(text("posture"), postureText(View::ShoulderSide));
    EXPECT_EQ(text("convention"), conventionName(Convention::DeltoidStrip));
}

TEST(RequestPanelTest, TheCounterFollowsTheRunAndDetailsMakeRoomForTheGrade)
{
    SampleRun run;
    RequestPanel panel;
    run.gradeAt({});
    panel.showState(run.state());
    EXPECT_TRUE(panel.findChild<QLabel*>(QStringLiteral("posture"))->parentWidget()->isHidden());
    run.presenter.next();
    panel.showState(run.state());
    EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("counter"))->text(), QStringLiteral("Request 2 of 3"));
    EXPECT_FALSE(panel.findChild<QLabel*>(QStringLiteral("posture"))->parentWidget()->isHidden());
}

}  // namespace fb::test
