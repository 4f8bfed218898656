#include "app/practice/grade_panel.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QLabel>
#include <set>

#include "app/words/finding_words.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"
#include "tests/support/sample_run.h"

namespace fb::test::grade_panel_test {

TEST(GradePanelTest, SaysVerdictReasonOffsetsAndPoints)
{
    SampleRun run;
    run.gradeAt({0.0, 2.5});
    GradePanel panel;
    panel.setScheme(schemeOf(PaletteKind::Light));
    panel.showAttempt(*run.state().graded, *run.state().target);
    const auto text = [&panel](const char* name) {
        return panel.findChild<QLabel*>(QLatin1String(name))->text();
    };
    const Grade& grade = run.state().graded->grade;
    EXPECT_EQ(text("verdict"), verdictName(Verdict::Unsafe));
    EXPECT_EQ(text("reason"), reasonSentence(Site::Deltoid, grade));
    EXPECT_EQ(text("along"), alongText(grade.offDistal));
    EXPECT_TRUE(text("along").contains(QLatin1String("too high")));
    EXPECT_EQ(text("border"), borderText(grade.distanceToBorder));
    EXPECT_EQ(text("points"), QStringLiteral("0"));
}

TEST(GradePanelTest, SaysInWhichCentimetresAMarkWasGraded)
{
    std::set<QString> notes;
    for (const Site site : kSites) {
        SampleRun run(setupOf(site));
        run.gradeAt({0.3, 0.3});
        GradePanel panel;
        panel.showAttempt(*run.state().graded, *run.state().target);
        auto* note = panel.findChild<QLabel*>(QStringLiteral("measure"));
        EXPECT_EQ(note->text(), measureNote(*run.state().target));
        EXPECT_FALSE(note->isHidden());
        EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("alongName"))->text(), alongName(site));
        notes.insert(note->text());
    }
    EXPECT_EQ(notes.size(), 2U) << "skin on arm and thigh, the plane on the hip";
}

TEST(GradePanelTest, ARefusalIsAnsweredByItsReasonAndShowsNoOffsets)
{
    const auto shown = [](const PracticeSetup& setup, bool right) {
        SampleRun run(setup);
        const FindingCode chart = run.state().request->finding->code;
        run.refuse(right ? chart : findingAt((static_cast<int>(chart) + 1) % kFindingCodeCount));
        GradePanel panel;
        panel.showAttempt(*run.state().graded, *run.state().target);
        EXPECT_TRUE(panel.findChild<QLabel*>(QStringLiteral("along"))->isHidden());
        EXPECT_TRUE(panel.findChild<QLabel*>(QStringLiteral("measure"))->isHidden());
        EXPECT_FALSE(panel.findChild<QLabel*>(QStringLiteral("points"))->isHidden());
        const Attempt& attempt = *run.state().graded;
        EXPECT_EQ(
            panel.findChild<QLabel*>(QStringLiteral("reason"))->text(),
            refusalSentence(attempt.refusal->outcome, attempt.request.finding, attempt.refusal->reason));
        return panel.findChild<QLabel*>(QStringLiteral("verdict"))->text();
    };
    const PracticeSetup ruledOut = setupWithFinding(Site::VastusLateralis, true);
    const PracticeSetup harmless = setupWithFinding(Site::VastusLateralis, false);
    EXPECT_EQ(shown(ruledOut, true), QStringLiteral("Rightly refused"));
    EXPECT_EQ(shown(ruledOut, false), QStringLiteral("Refused for another reason"));
    EXPECT_EQ(shown(harmless, true), QStringLiteral("Refused without need"));
}

TEST(GradePanelTest, AMarkWhereTheChartRulesTheSiteOutIsUnsafeAndNamesTheFinding)
{
    SampleRun run(setupWithFinding(Site::Ventrogluteal, true));
    run.gradeAt({});
    GradePanel panel;
    panel.showAttempt(*run.state().graded, *run.state().target);
    EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("verdict"))->text(), verdictName(Verdict::Unsafe));
    EXPECT_EQ(panel.findChild<QLabel*>(QStringLiteral("reason"))->text(),
              missedFindingSentence(*run.state().request->finding));
    EXPECT_FALSE(panel.findChild<QLabel*>(QStringLiteral("along"))->isHidden());
}

TEST(GradePanelTest, EachVerdictHasAShapeOfItsOwnWithoutColour)
{
    SampleRun run;
    run.gradeAt({});
    Attempt attempt = *run.state().graded;
    GradePanel panel;
    panel.setScheme(schemeOf(PaletteKind::Projector));
    std::set<QByteArray> shapes;
    for (int verdict = 0; verdict < kVerdictCount; ++verdict) {
        attempt.grade.verdict = static_cast<Verdict>(verdict);
        panel.showAttempt(attempt, *run.state().target);
        const QImage shape = panel.findChild<QLabel*>(QStringLiteral("verdictIcon"))
                                 ->pixmap(Qt::ReturnByValue)
                                 .toImage()
                                 .convertToFormat(QImage::Format_Alpha8);
        shapes.insert(QByteArray(reinterpret_cast<const char*>(shape.constBits()),
                                 static_cast<qsizetype>(shape.sizeInBytes())));
    }
    EXPECT_EQ(shapes.size(), static_cast<std::size_t>(kVerdictCount));
}

}  // namespace fb::test::grade_panel_test
