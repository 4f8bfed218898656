#include "core/site/hazard.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

using namespace fb;

namespace hazard_test {

TEST(HazardTest, EveryCodeHasAWordOfItsOwn)
{
    std::set<std::string> words;
    for (int i = 0; i < kHazardCodeCount; ++i) {
        const std::string word(wordOf(static_cast<HazardCode>(i)));
        EXPECT_FALSE(word.empty());
        EXPECT_TRUE(words.insert(word).second) << word;
    }
    for (const HazardKind kind : {HazardKind::Bone, HazardKind::Strike, HazardKind::Near})
        EXPECT_FALSE(wordOf(kind).empty());
}

}  // namespace hazard_test
