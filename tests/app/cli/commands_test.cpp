#include "app/cli/commands.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <nlohmann/json.hpp>
#include <sstream>

#include "tests/support/shipped.h"

namespace fb::commands_tests {

namespace commands_test {

Arguments askedUsual(Command command)
{
    Arguments arguments;
    arguments.command = command;
    arguments.value(Option::Site) = "deltoid";
    arguments.value(Option::Side) = "left";
    arguments.value(Option::Age) = "34y";
    arguments.value(Option::Sex) = "female";
    arguments.value(Option::Stature) = "163";
    arguments.value(Option::Weight) = "71";
    return arguments;
}

Arguments askedUsualJson(Command command)
{
    Arguments arguments = askedUsual(command);
    arguments.json = true;
    return arguments;
}

std::vector<nlohmann::json> answersTo(const Arguments& common, const std::string& lines, LineCount expected)
{
    std::istringstream in(lines);
    std::ostringstream out;
    const auto count = answerLines(common, shippedLibrary(), in, out);
    EXPECT_TRUE(count.has_value());
    EXPECT_EQ(count.value_or(LineCount{-1, -1}), expected);
    std::vector<nlohmann::json> answers;
    std::istringstream written(out.str());
    for (std::string line; std::getline(written, line);)
        answers.push_back(nlohmann::json::parse(line));
    return answers;
}

// A device that takes some bytes and then no more.
class ShortDevice : public std::streambuf {
public:
    explicit ShortDevice(std::streamsize room) : m_room(room) {}

private:
    std::streamsize xsputn(const char*, std::streamsize count) override
    {
        const std::streamsize taken = std::min(count, m_room);
        m_room -= taken;
        return taken;
    }
    std::streamsize m_room;
};

}  // namespace commands_test

using namespace commands_test;

TEST(CommandsTest, LocateAnswersInWordsOrInOneLineOfJson)
{
    const std::string words = locateAnswer(askedUsual(Command::Locate), shippedLibrary()).value();
    EXPECT_NE(words.find("deltoid.strip"), std::string::npos);
    const std::string line = locateAnswer(askedUsualJson(Command::Locate), shippedLibrary()).value();
    EXPECT_EQ(std::count(line.begin(), line.end(), '\n'), 1);
    EXPECT_EQ(nlohmann::json::parse(line)["site"], "deltoid");
}

TEST(CommandsTest, EveryConventionAndViewIsLocated)
{
    for (const View view : kViews) {
        for (const Convention convention : conventionsOf(siteOf(view))) {
            Arguments arguments = askedUsualJson(Command::Locate);
            arguments.value(Option::Site) = wordOf(siteOf(view));
            arguments.value(Option::Convention) = wordOf(convention);
            arguments.value(Option::View) = wordOf(view);
            const auto answer = locateAnswer(arguments, shippedLibrary());
            ASSERT_TRUE(answer.has_value()) << wordOf(convention) << " " << wordOf(view);
            EXPECT_EQ(nlohmann::json::parse(*answer)["convention"], std::string(wordOf(convention)));
            EXPECT_EQ(nlohmann::json::parse(*answer)["view"], std::string(wordOf(view)));
        }
    }
}

TEST(CommandsTest, GradeNeedsAMarkOnTheBodyInAViewThatCanBeMarked)
{
    Arguments arguments = askedUsualJson(Command::Grade);
    EXPECT_EQ(gradeAnswer(arguments, shippedLibrary()).error(),
              (Fault{Problem::ArgumentMissing, "--at", {}, 0.0, 0.0}));
    arguments.value(Option::At) = "500,500";
    EXPECT_EQ(gradeAnswer(arguments, shippedLibrary()).error().problem, Problem::MarkOutsideBody);
    arguments.value(Option::At) = "0,-4";
    EXPECT_TRUE(gradeAnswer(arguments, shippedLibrary()).has_value());
    arguments.value(Option::View) = "shoulder-three-quarter";
    EXPECT_EQ(gradeAnswer(arguments, shippedLibrary()).error().problem, Problem::ViewShowOnly);
    arguments.value(Option::Site) = "ventrogluteal";
    arguments.value(Option::View) = "hip-behind";
    EXPECT_EQ(gradeAnswer(arguments, shippedLibrary()).error(),
              (Fault{Problem::ViewShowOnly, {}, "hip-behind", 0.0, 0.0}));
}

TEST(CommandsTest, HipAndThighAreLocatedGradedAndDrawn)
{
    struct Row {
        View view;
        const char* at;  // on the body of the usual patient's left side
    };
    const QTemporaryDir folder;
    for (const Row& row :
         {Row{View::HipSide, "8,3.4"}, {View::ThighSide, "-19,5"}, {View::ThighFront, "-19,-3"}}) {
        const auto asked = [&](Arguments arguments) {
            arguments.value(Option::Site) = wordOf(siteOf(row.view));
            arguments.value(Option::View) = wordOf(row.view);
            return arguments;
        };
        EXPECT_TRUE(locateAnswer(asked(askedUsual(Command::Locate)), shippedLibrary())) << wordOf(row.view);
        Arguments grade = asked(askedUsualJson(Command::Grade));
        grade.value(Option::At) = row.at;
        const auto graded = gradeAnswer(grade, shippedLibrary());
        ASSERT_TRUE(graded) << wordOf(row.view);
        EXPECT_EQ(nlohmann::json::parse(*graded)["verdict"], "on_target") << *graded;
        Arguments draw = asked(askedUsual(Command::Draw));
        const QString file = folder.filePath(QStringLiteral("plate.png"));
        draw.value(Option::At) = row.at;
        draw.value(Option::Out) = QFile::encodeName(file).toStdString();
        EXPECT_TRUE(drawAnswer(draw, shippedLibrary())) << wordOf(row.view);
        EXPECT_FALSE(QImage(file).isNull());
    }
}

TEST(CommandsTest, ALabsPolicyIsGradedBy)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("policy.json")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(R"({"name": "Ward 7", "conventions": {"deltoid": "deltoid.halfway"}})");
    file.close();
    Arguments arguments = askedUsualJson(Command::Locate);
    arguments.value(Option::Policy) = QFile::encodeName(file.fileName()).toStdString();
    const nlohmann::json document = nlohmann::json::parse(locateAnswer(arguments, shippedLibrary()).value());
    EXPECT_EQ(document["policy"], "Ward 7");
    EXPECT_EQ(document["convention"], "deltoid.halfway");
}

TEST(CommandsTest, EveryLineIsAnsweredInItsOrder)
{
    const auto answers =
        answersTo(askedUsual(Command::Locate),
                  "{\"stature\": 150}\n\n  \r\n{\"stature\": 20}\nnonsense\n{\"stature\": 190}", {2, 2});
    ASSERT_EQ(answers.size(), 4U);
    EXPECT_EQ(answers[0]["patient"]["stature_cm"], 150);
    EXPECT_TRUE(answers[1].contains("error"));
    EXPECT_TRUE(answers[2].contains("error"));
    EXPECT_EQ(answers[3]["patient"]["stature_cm"], 190);
}

TEST(CommandsTest, ALineAnswersAsTheCommandLineDoes)
{
    const auto lines = answersTo(askedUsual(Command::Locate), "{}\n", {1, 0});
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0],
              nlohmann::json::parse(locateAnswer(askedUsualJson(Command::Locate), shippedLibrary()).value()));

    Arguments grade = askedUsualJson(Command::Grade);
    const auto grades = answersTo(grade, R"({"at": [0, -4.25]})", {1, 0});
    grade.value(Option::At) = "0,-4.25";
    ASSERT_EQ(grades.size(), 1U);
    EXPECT_EQ(grades[0], nlohmann::json::parse(gradeAnswer(grade, shippedLibrary()).value()));
}

TEST(CommandsTest, AMissingNameInALineIsToldWithoutDashes)
{
    Arguments common;
    common.command = Command::Locate;
    const auto answers = answersTo(common, "{\"site\": \"deltoid\"}\n", {0, 1});
    ASSERT_EQ(answers.size(), 1U);
    EXPECT_EQ(answers[0]["error"], "The option side is missing; add it with its value.");
}

TEST(CommandsTest, NoLinesAreNoAnswers)
{
    EXPECT_TRUE(answersTo(askedUsual(Command::Locate), "", {0, 0}).empty());
}

TEST(CommandsTest, AnOutputThatTakesNoMoreEndsTheLines)
{
    ShortDevice device(100);
    std::ostream out(&device);
    std::string lines;
    for (int i = 0; i < 100; ++i)
        lines += "{}\n";
    std::istringstream in(lines);
    const auto count = answerLines(askedUsual(Command::Locate), shippedLibrary(), in, out);
    ASSERT_FALSE(count.has_value());
    EXPECT_EQ(count.error().problem, Problem::OutputNotWritable);
}

TEST(CommandsTest, DrawChecksEveryNameBeforeItDraws)
{
    const QTemporaryDir folder;
    const std::string good = QFile::encodeName(folder.filePath(QStringLiteral("a.png"))).toStdString();
    struct Row {
        Option option;
        std::string value;
        Problem problem;
    };
    const std::vector<Row> rows{
        {Option::Out, "", Problem::ArgumentMissing},
        {Option::Out, "plate.gif", Problem::OutputKindUnknown},
        {Option::Out, "plate", Problem::OutputKindUnknown},
        {Option::Width, "wide", Problem::ArgumentBadValue},
        {Option::Width, "0", Problem::ArgumentBadValue},
        {Option::Width, "20001", Problem::ArgumentBadValue},
        {Option::Width, "800.5", Problem::ArgumentBadValue},
        {Option::Layers, "fat", Problem::LayerUnknown},
        {Option::At, "here", Problem::MarkNotAPoint},
        {Option::At, "500,500", Problem::MarkOutsideBody},
    };
    for (const Row& row : rows) {
        Arguments arguments = askedUsual(Command::Draw);
        arguments.value(Option::Out) = good;
        arguments.value(row.option) = row.value;
        const auto answer = drawAnswer(arguments, shippedLibrary());
        ASSERT_FALSE(answer.has_value()) << row.value;
        EXPECT_EQ(answer.error().problem, row.problem) << row.value;
        EXPECT_FALSE(QFile::exists(QString::fromStdString(good)));
    }
}

TEST(CommandsTest, DrawTellsWhereItWrote)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("plate.svg"));
    Arguments arguments = askedUsual(Command::Draw);
    arguments.value(Option::Out) = QFile::encodeName(file).toStdString();
    const auto answer = drawAnswer(arguments, shippedLibrary());
    ASSERT_TRUE(answer.has_value());
    EXPECT_NE(answer->find(file.toStdString()), std::string::npos);
    EXPECT_TRUE(QFile::exists(file));
}

TEST(CommandsTest, ASheetWithAMarkCarriesItsVerdict)
{
    const Query query = queryOf(askedUsual(Command::Draw), shippedLibrary().defaultPolicy()).value();
    const auto plain = sheetOf(query, shippedLibrary().defaultPolicy(), shippedLibrary(), std::nullopt);
    const auto marked = sheetOf(query, shippedLibrary().defaultPolicy(), shippedLibrary(), Point{0.0, -2.0});
    ASSERT_TRUE(plain.has_value());
    ASSERT_TRUE(marked.has_value());
    EXPECT_TRUE(plain->verdict.isEmpty());
    EXPECT_FALSE(plain->mark.has_value());
    EXPECT_FALSE(marked->verdict.isEmpty());
    EXPECT_EQ(marked->mark, QPointF(0.0, -2.0));
    EXPECT_GT(marked->scene.size(), 3);
}

}  // namespace fb::commands_tests
