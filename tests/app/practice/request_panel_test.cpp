#include "app/practice/request_panel.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/words/finding_words.h"
#include "app/words/site_words.h"
#include "tests/support/sample_run.h"

namespace fb::test::request_panel_test {

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

TEST(RequestPanelTest, TheNoteOfTheChartStandsThereHarmlessOrNot)
{
    for (const bool ruledOut : {true, false}) {
        SampleRun run(setupWithFinding(Site::Ventrogluteal, ruledOut));
        RequestPanel panel;
        panel.showState(run.state());
        auto* chart = panel.findChild<QLabel*>(QStringLiteral("chartNote"));
        EXPECT_FALSE(chart->isHidden());
        EXPECT_EQ(chart->text(), findingText(*run.state().request->finding));
        run.refuse(FindingCode::Rash);
        panel.showState(run.state());
        EXPECT_FALSE(chart->isHidden()) << "feedback is read beside what the chart said";
    }
}

TEST(RequestPanelTest, WithoutChartsNothingIsSaidOfThemAndWithThemAnEmptyOneIsSaid)
{
    SampleRun plain;
    RequestPanel panel;
    panel.showState(plain.state());
    EXPECT_TRUE(panel.findChild<QLabel*>(QStringLiteral("chartNote"))->isHidden());
    PracticeSetup setup = setupWithFinding(Site::Deltoid, true);
    while (requestFrom(setup.seed, 0, setup.mix).finding)
        ++setup.seed;
    SampleRun empty(setup);
    panel.showState(empty.state());
    EXPECT_FALSE(panel.findChild<QLabel*>(QStringLiteral("chartNote"))->isHidden());
    EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("chartNote"))->text(),
              QStringLiteral("Chart: nothing of note."));
}

TEST(RequestPanelTest, SaysThePostureAndConventionOfTheSiteAtHand)
{
    for (const Site site : kSites) {
        SampleRun run(setupOf(site));
        RequestPanel panel;
        panel.showState(run.state());
        EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("posture"))->text(),
                  postureText(run.state().request->view));
        EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("convention"))->text(),
                  conventionName(run.state().policy->convention(site)));
    }
}

}  // namespace fb::test::request_panel_test
