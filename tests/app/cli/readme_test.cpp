// README promises: nothing the command line says or takes is left unexplained, and everything
// it points to is there.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <functional>
#include <nlohmann/json.hpp>

#include "app/cli/commands.h"
#include "tests/support/shipped.h"

namespace fb::readme_tests {

namespace readme_test {

std::string readmeText()
{
    QFile file(QStringLiteral(FINGERBREADTH_SOURCE_DIR "/README.md"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll().toStdString();
}

nlohmann::json gradedByCommand(std::string_view site, std::string_view at)
{
    const std::vector<std::string_view> words{"grade",    "--json", "--site", site,     "--side",    "left",
                                              "--age",    "34y",    "--sex",  "female", "--stature", "163",
                                              "--weight", "71",     "--at",   at};
    const auto answer = gradeAnswer(parseArguments(words).value(), shippedLibrary());
    return nlohmann::json::parse(answer.value());
}

}  // namespace readme_test

using namespace readme_test;

TEST(ReadmeTest, EveryKeyOfTheDocumentsIsExplained)
{
    const std::string readme = readmeText();
    const std::function<void(const nlohmann::json&)> check = [&](const nlohmann::json& part) {
        for (const auto& [key, value] : part.items()) {
            if (part.is_object()) {
                EXPECT_NE(readme.find("`" + key + "`"), std::string::npos) << key;
            }
            if (value.is_structured())
                check(value);
        }
    };
    check(gradedByCommand("deltoid", "0,-4"));
    check(gradedByCommand("vastus-lateralis", "-18,4"));
    check(gradedByCommand("ventrogluteal", "8,3"));
}

TEST(ReadmeTest, EveryNumberOfAPolicyIsExplainedWithItsRange)
{
    const std::string readme = readmeText();
    for (const PolicyField& field : policyFields()) {
        const std::string key = std::string(field.group).append(".").append(field.name);
        const std::size_t at = readme.find("| `" + key + "` |");
        ASSERT_NE(at, std::string::npos) << key;
        const std::string row = readme.substr(at, readme.find('\n', at) - at);
        const QString range = QStringLiteral("| %1 to %2 |").arg(field.low).arg(field.high);
        EXPECT_NE(row.find(range.toStdString()), std::string::npos) << row;
    }
}

TEST(ReadmeTest, EveryOptionAndWordIsExplained)
{
    const std::string readme = readmeText();
    for (std::size_t i = 0; i < kOptionCount; ++i) {
        const std::string option(wordOf(static_cast<Option>(i)));
        EXPECT_NE(readme.find("| `--" + option + "` |"), std::string::npos) << option;
    }
    const auto expectWord = [&](std::string_view word) {
        EXPECT_NE(readme.find(std::string("`").append(word).append("`")), std::string::npos) << word;
    };
    for (int i = 0; i < kHazardCodeCount; ++i)
        expectWord(wordOf(static_cast<HazardCode>(i)));
    for (int i = 0; i < kStepCodeCount; ++i)
        expectWord(wordOf(static_cast<StepCode>(i)));
    for (int i = 0; i < kTissueCount; ++i)
        expectWord(wordOf(static_cast<Tissue>(i)));
    for (int i = 0; i < kVerdictCount; ++i)
        expectWord(wordOf(static_cast<Verdict>(i)));
    for (const Convention convention : kConventions)
        expectWord(wordOf(convention));
    for (const View view : kViews)
        expectWord(wordOf(view));
    for (const Layer layer : kLayers)
        expectWord(wordOf(layer));
}

TEST(ReadmeTest, EveryFileAndPictureItPointsToIsThere)
{
    static const QRegularExpression kLink(QStringLiteral("\\]\\(([^)#]+)\\)"));
    const QDir root(QStringLiteral(FINGERBREADTH_SOURCE_DIR));
    int links = 0;
    for (auto it = kLink.globalMatch(QString::fromStdString(readmeText())); it.hasNext(); ++links) {
        const QString file = it.next().captured(1);
        EXPECT_TRUE(QFile::exists(root.filePath(file))) << file.toStdString();
    }
    EXPECT_GT(links, 8);
}

}  // namespace fb::readme_tests
