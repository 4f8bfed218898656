// The real program as a script meets it: exit codes, standard output, standard error.
#include "app/cli/cli.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <nlohmann/json.hpp>

namespace fb::cli_tests {

namespace cli_test {

struct CliRun {
    int code = -1;
    QByteArray out;
    QByteArray err;
};

// Without a display, a folder for the session's sockets, or our tests' platform.
QProcessEnvironment bareEnvironment()
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name :
         {"DISPLAY", "WAYLAND_DISPLAY", "XDG_RUNTIME_DIR", "QT_QPA_PLATFORM", "LANG", "LC_ALL"})
        environment.remove(QLatin1String(name));
    return environment;
}

CliRun cliRun(const QStringList& arguments, const QByteArray& input = {},
              const QString& folder = QDir::tempPath(), const QString& outFile = {})
{
    QProcess program;
    program.setProcessEnvironment(bareEnvironment());
    program.setWorkingDirectory(folder);
    if (!outFile.isEmpty())
        program.setStandardOutputFile(outFile);
    program.start(QStringLiteral(FINGERBREADTH_BINARY), arguments);
    program.write(input);
    program.closeWriteChannel();
    EXPECT_TRUE(program.waitForFinished(60000)) << program.errorString().toStdString();
    return {program.exitCode(), program.readAllStandardOutput(), program.readAllStandardError()};
}

const QStringList kCliPatient{
    QStringLiteral("--site"), QStringLiteral("deltoid"),  QStringLiteral("--side"),
    QStringLiteral("left"),   QStringLiteral("--age"),    QStringLiteral("34y"),
    QStringLiteral("--sex"),  QStringLiteral("female"),   QStringLiteral("--stature"),
    QStringLiteral("163"),    QStringLiteral("--weight"), QStringLiteral("71")};

QStringList cliWords(const char* line)
{
    return QString::fromUtf8(line).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

// The usual patient with one value replaced; an empty value leaves the option out.
QStringList patientWith(const QString& option, const QString& value)
{
    QStringList arguments = kCliPatient;
    const auto at = arguments.indexOf(QStringLiteral("--") + option);
    if (value.isEmpty())
        arguments.remove(at, 2);
    else
        arguments[at + 1] = value;
    return arguments;
}

// The promise for every bad argument.
void expectOneSentence(const CliRun& result, const QString& about)
{
    static const QRegularExpression kInnerEnd(QStringLiteral("[.!?] +[A-Z]"));
    EXPECT_EQ(result.code, 2) << about.toStdString();
    EXPECT_TRUE(result.out.isEmpty()) << about.toStdString();
    EXPECT_TRUE(result.err.endsWith(".\n")) << about.toStdString() << ": " << result.err.constData();
    EXPECT_EQ(result.err.count('\n'), 1) << about.toStdString() << ": " << result.err.constData();
    EXPECT_FALSE(QString::fromUtf8(result.err).contains(kInnerEnd)) << result.err.constData();
}

nlohmann::json cliJson(const QByteArray& text) { return nlohmann::json::parse(text.toStdString()); }

}  // namespace cli_test

using namespace cli_test;

TEST(CommandLineTest, LocateGradeAndDrawEachAnswerTheUsualPatient)
{
    const QTemporaryDir folder;
    const CliRun located = cliRun(cliWords("locate --json") + kCliPatient);
    EXPECT_EQ(located.code, 0);
    EXPECT_TRUE(located.err.isEmpty());
    EXPECT_EQ(cliJson(located.out)["site"], "deltoid");

    const CliRun graded = cliRun(cliWords("grade --json --at 0,-2") + kCliPatient);
    EXPECT_EQ(graded.code, 0);
    EXPECT_EQ(cliJson(graded.out)["verdict"], "unsafe");

    const CliRun drawn = cliRun(cliWords("draw --out plate.png --at 0,-2") + kCliPatient, {}, folder.path());
    EXPECT_EQ(drawn.code, 0);
    EXPECT_TRUE(drawn.err.isEmpty()) << drawn.err.constData();
    EXPECT_FALSE(QImage(folder.filePath(QStringLiteral("plate.png"))).isNull());
}

TEST(CommandLineTest, TheSameRequestGivesTheSameBytes)
{
    const QStringList request = cliWords("grade --json --at 0.4,-2.2") + kCliPatient;
    EXPECT_EQ(cliRun(request).out, cliRun(request).out);
}

TEST(CommandLineTest, HelpNamesEveryCommandAndOption)
{
    const CliRun help = cliRun(cliWords("--help"));
    EXPECT_EQ(help.code, 0);
    for (const char* word :
         {"locate",    "grade",    "draw",         "--site",       "--side",   "--age",   "--sex",
          "--stature", "--weight", "--individual", "--convention", "--view",   "--hand",  "--policy",
          "--at",      "--json",   "--lines",      "--out",        "--layers", "--width", "Training aid."})
        EXPECT_TRUE(help.out.contains(word)) << word;
    for (const QByteArray& line : help.out.split('\n'))
        EXPECT_LE(line.size(), 100) << line.constData();
}

TEST(CommandLineTest, VersionIsOneLine)
{
    const CliRun version = cliRun(cliWords("--version"));
    EXPECT_EQ(version.code, 0);
    EXPECT_TRUE(version.out.startsWith("fingerbreadth "));
    EXPECT_EQ(version.out.count('\n'), 1);
}

TEST(CommandLineTest, EveryBadPatientIsOneSentenceAndExitTwo)
{
    const std::vector<std::pair<const char*, const char*>> rows{
        {"site", "elbow"},   {"site", ""},       {"side", "middle"},  {"side", ""},       {"sex", "x"},
        {"sex", ""},         {"age", ""},        {"age", "-3y"},      {"age", "old"},     {"age", "200y"},
        {"age", "2mo"},      {"stature", ""},    {"stature", "-163"}, {"stature", "abc"}, {"stature", "20"},
        {"stature", "400"},  {"stature", "nan"}, {"weight", ""},      {"weight", "-5"},   {"weight", "0"},
        {"weight", "heavy"}, {"weight", "31"},   {"weight", "240"},
    };
    for (const auto& [option, value] : rows) {
        const QStringList patient = patientWith(QLatin1String(option), QLatin1String(value));
        expectOneSentence(cliRun(cliWords("locate --json") + patient), patient.join(QLatin1Char(' ')));
    }
}

TEST(CommandLineTest, EveryBadChoiceIsOneSentenceAndExitTwo)
{
    for (const char* line : {"measure",
                             "locate --convention deltoid.guess",
                             "locate --view knee",
                             "locate --colour red",
                             "locate --convention",
                             "locate --side left",
                             "locate --individual 9,9,9",
                             "grade",
                             "grade --at here",
                             "grade --at 1",
                             "grade --at 400,400",
                             "grade --at 0,-4 --view shoulder-three-quarter",
                             "locate --convention vg.hand",
                             "locate --view hip-side",
                             "locate --hand 12",
                             "locate --hand 25",
                             "locate --hand big",
                             "draw",
                             "draw --out plate.gif",
                             "draw --out a.png --layers fat",
                             "draw --out a.png --width 1",
                             "draw --out /absent/folder/a.png",
                             "draw --out a.png --at 400,400",
                             "locate --policy /absent/policy.json"})
        expectOneSentence(cliRun(cliWords(line) + kCliPatient), QLatin1String(line));
    expectOneSentence(cliRun({QStringLiteral("--colour")}), QStringLiteral("--colour"));
}

TEST(CommandLineTest, ABrokenPolicyIsOneSentenceAndExitTwo)
{
    const std::vector<std::pair<const char*, const char*>> rows{
        {"cut short", R"({"grading": {"acceptable_margin_cm": {"value": 0.5, "sou)"},
        {"empty", ""},
        {"a list", "[1, 2]"},
        {"a group that is a number", R"({"grading": 5})"},
        {"a bare number", R"({"grading": {"acceptable_margin_cm": 0.5}})"},
        {"text for a number",
         R"({"grading": {"acceptable_margin_cm": {"value": "half", "source": "lab's choice"}}})"},
        {"out of range", R"({"grading": {"acceptable_margin_cm": {"value": 50, "source": "lab's choice"}}})"},
        {"negative", R"({"grading": {"acceptable_margin_cm": {"value": -1, "source": "lab's choice"}}})"},
        {"turned inside out", R"({"deltoid": {"strip_top": {"value": 0.19, "source": "lab's choice"}}})"},
        {"no source", R"({"grading": {"acceptable_margin_cm": {"value": 0.5}}})"},
        {"no value", R"({"grading": {"acceptable_margin_cm": {"source": "lab's choice"}}})"},
        {"unknown key", R"({"grading": {"margin": {"value": 0.5, "source": "lab's choice"}}})"},
        {"unknown group", R"({"colours": {}})"},
        {"unknown member",
         R"({"grading": {"acceptable_margin_cm": {"value": 0.5, "source": "x", "note": "y"}}})"},
        {"unknown convention", R"({"conventions": {"deltoid": "deltoid.guess"}})"},
        {"unknown site", R"({"conventions": {"elbow": "deltoid.strip"}})"},
        {"convention of the wrong type", R"({"conventions": {"deltoid": 3}})"},
        {"name of the wrong type", R"({"name": 3})"},
        {"not UTF-8", "{\"name\": \"\xff\xfe\"}"},
    };
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("policy.json"));
    for (const auto& [about, text] : rows) {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        file.write(text);
        file.close();
        expectOneSentence(cliRun(cliWords("locate --policy") + QStringList{path} + kCliPatient),
                          QLatin1String(about));
    }
    expectOneSentence(cliRun(cliWords("locate --policy") + QStringList{folder.path()} + kCliPatient),
                      folder.path());
}

TEST(CommandLineTest, AFullDeviceForStandardOutputIsOneSentenceAndExitTwo)
{
    const QString full = QStringLiteral("/dev/full");
    expectOneSentence(cliRun(cliWords("locate --json") + kCliPatient, {}, QDir::tempPath(), full), full);
    expectOneSentence(cliRun(cliWords("--help"), {}, QDir::tempPath(), full), full);
    expectOneSentence(cliRun(cliWords("locate --lines") + kCliPatient, "{}\n", QDir::tempPath(), full), full);
}

TEST(CommandLineTest, LinesAreAnsweredOneByOneAndAFailureEndsWithExitTwo)
{
    const QByteArray good =
        R"({"site":"deltoid","side":"left","age":"34y","sex":"female","stature":163,"weight":71})";
    const CliRun all = cliRun(cliWords("locate --json -"), good + "\n" + good + "\n");
    EXPECT_EQ(all.code, 0);
    EXPECT_TRUE(all.err.isEmpty());
    EXPECT_EQ(all.out.count('\n'), 2);
    EXPECT_EQ(all.out.split('\n')[0] + '\n', cliRun(cliWords("locate --json") + kCliPatient).out);

    const CliRun some = cliRun(cliWords("locate --lines"), good + "\n{\"site\":\n" + good);
    EXPECT_EQ(some.code, 2);
    const auto lines = some.out.split('\n');
    ASSERT_EQ(lines.size(), 4);
    EXPECT_TRUE(cliJson(lines[1]).contains("error"));
    EXPECT_EQ(lines[0], lines[2]);
    EXPECT_EQ(some.err.count('\n'), 1);
}

TEST(CommandLineTest, WhoeverSendsOneLineGetsItsAnswerBeforeTheNext)
{
    QProcess program;
    program.setProcessEnvironment(bareEnvironment());
    program.start(QStringLiteral(FINGERBREADTH_BINARY), cliWords("locate --lines") + kCliPatient);
    for (const char* line : {"{\"stature\": 150}\n", "{\"stature\": 180}\n"}) {
        program.write(line);
        QByteArray answer;
        while (!answer.endsWith('\n')) {
            ASSERT_TRUE(program.waitForReadyRead(30000));
            answer += program.readAllStandardOutput();
        }
        EXPECT_TRUE(cliJson(answer).contains("target"));
    }
    program.closeWriteChannel();
    EXPECT_TRUE(program.waitForFinished(30000));
    EXPECT_EQ(program.exitCode(), 0);
}

TEST(CommandLineTest, WithoutADisplayOneWholeRequestIsDone)
{
    const QTemporaryDir folder;
    const CliRun result = cliRun({}, {}, folder.path());
    EXPECT_EQ(result.code, 0) << result.err.constData();
    EXPECT_TRUE(result.err.isEmpty()) << result.err.constData();
    EXPECT_TRUE(result.out.startsWith("There is no display"));
    for (const char* word : {"Patient", "Ideal point", "Mark", "Verdict", "Reason", "Training aid."})
        EXPECT_TRUE(result.out.contains(word)) << word;
    const QString path =
        QString::fromUtf8(result.out.trimmed().split('\n').last()).section(QLatin1Char(' '), -1);
    EXPECT_FALSE(QImage(path).isNull()) << path.toStdString();
    // The folder it was started from, often the source itself, stays as it was.
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

TEST(CommandLineTest, WithoutADisplayNoLinkInTheSharedFolderIsFollowed)
{
    const QTemporaryDir shared;
    const QTemporaryDir own;
    QFile precious(own.filePath(QStringLiteral("precious.txt")));
    ASSERT_TRUE(precious.open(QIODevice::WriteOnly));
    precious.write("precious");
    precious.close();
    ASSERT_TRUE(QFile::link(precious.fileName(), shared.filePath(QStringLiteral("fingerbreadth-plate.png"))));
    const QByteArray before = qgetenv("TMPDIR");
    qputenv("TMPDIR", QFile::encodeName(shared.path()));
    const CliRun result = cliRun({}, {}, own.path());
    before.isEmpty() ? qunsetenv("TMPDIR") : qputenv("TMPDIR", before);
    EXPECT_EQ(result.code, 0);
    EXPECT_TRUE(result.out.contains(QFile::encodeName(own.path())));
    EXPECT_EQ(precious.size(), 8);
}

}  // namespace fb::cli_tests
