#include "core/site/construction.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

using namespace fb;

namespace construction_test {

TEST(ConstructionTest, EveryCodeHasAWordOfItsOwn)
{
    std::set<std::string> words;
    for (int i = 0; i < kStepCodeCount; ++i) {
        const std::string word(wordOf(static_cast<StepCode>(i)));
        EXPECT_FALSE(word.empty());
        EXPECT_TRUE(words.insert(word).second) << word;
    }
    for (const FigureKind kind : {FigureKind::Point, FigureKind::Line, FigureKind::Closed})
        EXPECT_FALSE(wordOf(kind).empty());
}

}  // namespace construction_test
