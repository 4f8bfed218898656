// The house rules that a machine can keep: see "Rooms and arrows" in DEVELOPERS.md, whose
// table this test reads.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace arrows_test {

namespace {

const fs::path kRoot = FINGERBREADTH_SOURCE_DIR;

std::string textOf(const fs::path& path)
{
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::vector<fs::path> sources(const std::vector<std::string>& folders)
{
    std::vector<fs::path> found;
    for (const std::string& folder : folders) {
        for (const auto& entry : fs::recursive_directory_iterator(kRoot / folder)) {
            const std::string ending = entry.path().extension().string();
            if (ending == ".cpp" || ending == ".h")
                found.push_back(entry.path());
        }
    }
    std::ranges::sort(found);
    return found;
}

// "core/site/target.h" to "core/site"; "app/main.cpp" to "app".
std::string roomOf(const fs::path& relative) { return relative.parent_path().generic_string(); }

using Arrows = std::map<std::string, std::set<std::string>>;

// Rows of the table in DEVELOPERS.md: | `core/site` | `core/basics` `core/plate` |
Arrows allowedArrows()
{
    Arrows arrows;
    std::istringstream lines(textOf(kRoot / "DEVELOPERS.md"));
    const std::regex row(R"(^\| `((?:core|app)[a-z/]*)` \|(.*)\|\s*$)");
    const std::regex room(R"(`((?:core|app)[a-z/]*)`)");
    for (std::string line; std::getline(lines, line);) {
        std::smatch match;
        if (!std::regex_match(line, match, row))
            continue;
        const std::string rest = match[2];
        auto& to = arrows[match[1]];
        for (std::sregex_iterator it(rest.begin(), rest.end(), room), end; it != end; ++it)
            to.insert((*it)[1]);
    }
    return arrows;
}

Arrows drawnArrows()
{
    Arrows arrows;
    const std::regex include(R"re(#include "((?:core|app)/[^"]+)")re");
    for (const fs::path& path : sources({"core", "app"})) {
        const std::string room = roomOf(fs::relative(path, kRoot));
        const std::string text = textOf(path);
        auto& to = arrows[room];
        for (std::sregex_iterator it(text.begin(), text.end(), include), end; it != end; ++it) {
            const std::string target = roomOf(fs::path((*it)[1].str()));
            if (target != room)
                to.insert(target);
        }
    }
    return arrows;
}

std::string relativeName(const fs::path& path) { return fs::relative(path, kRoot).generic_string(); }

}  // namespace

TEST(ArchitectureTest, EveryArrowStandsInTheTable)
{
    const Arrows allowed = allowedArrows();
    ASSERT_GT(allowed.size(), 10U) << "the table of rooms in DEVELOPERS.md was not found";
    for (const auto& [room, targets] : drawnArrows()) {
        ASSERT_TRUE(allowed.contains(room)) << room << " is no room of the table";
        for (const std::string& target : targets)
            EXPECT_TRUE(allowed.at(room).contains(target)) << room << " must not include " << target;
    }
}

TEST(ArchitectureTest, TheTableHasNoArrowThatNobodyDraws)
{
    const Arrows drawn = drawnArrows();
    for (const auto& [room, targets] : allowedArrows()) {
        for (const std::string& target : targets)
            EXPECT_TRUE(drawn.contains(room) && drawn.at(room).contains(target))
                << "the table allows " << room << " -> " << target << ", which no file needs";
    }
}

TEST(ArchitectureTest, ArrowsMakeNoCycle)
{
    const Arrows arrows = drawnArrows();
    std::set<std::string> done;
    std::set<std::string> open;
    const std::function<bool(const std::string&)> isFree = [&](const std::string& room) {
        if (done.contains(room))
            return true;
        if (!open.insert(room).second)
            return false;
        const auto it = arrows.find(room);
        const bool ok = it == arrows.end() || std::ranges::all_of(it->second, isFree);
        open.erase(room);
        done.insert(room);
        return ok;
    };
    for (const auto& [room, targets] : arrows)
        EXPECT_TRUE(isFree(room)) << room << " lies on a cycle";
}

TEST(ArchitectureTest, CoreKnowsNoWindowAndNoTongue)
{
    const std::regex qt(R"(#include <Q[A-Za-z/]*>)");
    const std::regex words(R"(\btr\()");
    for (const fs::path& path : sources({"core"})) {
        const std::string text = textOf(path);
        EXPECT_FALSE(std::regex_search(text, qt)) << relativeName(path) << " includes Qt";
        EXPECT_FALSE(std::regex_search(text, words)) << relativeName(path) << " calls tr()";
    }
}

TEST(ArchitectureTest, AppComputesNoAnatomy)
{
    // What turns bodies into coordinates stays in core; app may hold the values.
    const std::regex maker(R"((LimbMap::make|BodyMap::make|patientLevels\(|deltoidBand\(|ellipseArc\())");
    for (const fs::path& path : sources({"app"}))
        EXPECT_FALSE(std::regex_search(textOf(path), maker)) << relativeName(path);
}

TEST(ArchitectureTest, NoFileIsLongerThanThreeHundredLines)
{
    for (const fs::path& path : sources({"core", "app", "tests"})) {
        const std::string text = textOf(path);
        EXPECT_LE(std::ranges::count(text, '\n'), 300) << relativeName(path);
    }
}

TEST(ArchitectureTest, EveryHeaderHasATestOfItsName)
{
    for (const fs::path& path : sources({"core", "app"})) {
        if (path.extension() != ".h")
            continue;
        const fs::path relative = fs::relative(path, kRoot);
        const fs::path test =
            kRoot / "tests" / relative.parent_path() / (relative.stem().string() + "_test.cpp");
        EXPECT_TRUE(fs::exists(test)) << relativeName(path) << " has no " << relativeName(test);
    }
}

TEST(ArchitectureTest, NoMacroThatCannotFailHere)
{
    // Split, so that this file does not find itself.
    const std::regex macro(std::string("\\bQ") + "(VERIFY|COMPARE|TRY_)[A-Z_]*\\(");
    for (const fs::path& path : sources({"tests"}))
        EXPECT_FALSE(std::regex_search(textOf(path), macro)) << relativeName(path);
}

TEST(ArchitectureTest, TopLevelHoldsOnlyWhatItShould)
{
    static const std::set<std::string> kAllowed{
        "CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE", "app",
        "core",           "resources",         "tests",     "translations"};
    for (const auto& entry : fs::directory_iterator(kRoot)) {
        const std::string name = entry.path().filename().string();
        EXPECT_TRUE(name.starts_with(".") || kAllowed.contains(name)) << name;
    }
}

}  // namespace arrows_test
