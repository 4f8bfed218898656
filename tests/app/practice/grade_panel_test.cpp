#include "app/practice/grade_panel.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QLabel>
#include <set>

#include "app/words/grade_words.h"
#include "tests/support/sample_run.h"

namespace fb::test {

TEST(GradePanelTest, SaysVerdictReasonOffsetsAndPoints)
{
    SampleRun run;
    run.gradeAt({0.0, 2.5});
    GradePanel panel;
    panel.setScheme(schemeOf(PaletteKind::Light));
    panel.showAttempt(*run.state().graded);
    const auto text = [&panel](const char* name) {
        return panel.findChild<QLabel*>(QLatin1String(name))->text();
    };
    const Grade& grade = run.state().graded->grade;
    EXPECT_EQ(text("verdict"), verdictName(Verdict::Unsafe));
    EXPECT_EQ(text("reason"), reasonSentence(grade));
    EXPECT_EQ(text("along"), alongText(grade.offDistal));
    EXPECT_TRUE(text("along").contains(QLatin1String("too high")));
    EXPECT_EQ(text("border"), borderText(grade.distanceToBorder));
    EXPECT_EQ(text("points"), QStringLiteral("0"));
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
        panel.showAttempt(attempt);
        const QImage shape = panel.findChild<QLabel*>(QStringLiteral("verdictIcon"))
                                 ->pixmap(Qt::ReturnByValue)
                                 .toImage()
                                 .convertToFormat(QImage::Format_Alpha8);
        shapes.insert(QByteArray(reinterpret_cast<const char*>(shape.constBits()),
                                 static_cast<qsizetype>(shape.sizeInBytes())));
    }
    EXPECT_EQ(shapes.size(), static_cast<std::size_t>(kVerdictCount));
}

}  // namespace fb::test
