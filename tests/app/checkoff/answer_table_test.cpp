#include "app/checkoff/answer_table.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/practice/parts.h"
#include "app/words/check_off_words.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"
#include "tests/support/manikin_run.h"

namespace answer_table_test {

namespace {

using namespace fb;
using namespace fb::test;

QStringList textsOf(const AnswerTable& table, const char* name)
{
    QStringList texts;
    for (const QLabel* cell : table.findChildren<QLabel*>(QLatin1String(name)))
        texts << cell->text();
    return texts;
}

TEST(AnswerTableTest, SaysOfEachItemWhatWasAskedTheVerdictAndHowFarItLies)
{
    Course course(plainSheet(2));
    course.begin();
    course.answer(Verdict::OnTarget);
    course.answer(Verdict::Unsafe, 0.0);
    const auto& answers = course.off.answers();
    AnswerTable table;
    table.setScheme(dressed());
    table.showAnswers(answers);
    ASSERT_EQ(textsOf(table, "answerNumber"), (QStringList{"1", "2"}));
    EXPECT_TRUE(textsOf(table, "answerAsked")[0].startsWith(parts::alone(siteName(Site::Deltoid))));
    EXPECT_TRUE(textsOf(table, "answerAsked")[0].endsWith(sideName(Side::Left)));
    for (int i = 0; i < 2; ++i) {
        const Answer& answer = answers[static_cast<std::size_t>(i)];
        EXPECT_EQ(textsOf(table, "answerVerdict")[i].toLower(), verdictName(answer.verdict).toLower());
        EXPECT_EQ(textsOf(table, "answerFinding")[i], answerFinding(answer));
    }
}

TEST(AnswerTableTest, ShowsTheLatestAnswersAndNoneWhereThereAreNone)
{
    Course course(plainSheet(2));
    course.begin();
    course.answer();
    AnswerTable table;
    table.showAnswers(course.off.answers());
    course.answer();
    table.showAnswers(course.off.answers());
    EXPECT_EQ(textsOf(table, "answerNumber").size(), 2);
    EXPECT_FALSE(table.isHidden());
    table.showAnswers({});
    EXPECT_TRUE(textsOf(table, "answerNumber").isEmpty());
    EXPECT_TRUE(table.isHidden());
}

}  // namespace

}  // namespace answer_table_test
