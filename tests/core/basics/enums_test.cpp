#include "core/basics/enums.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

using namespace fb;

namespace {

template <class All, class From>
void expectRoundTrip(const All& all, From from)
{
    std::set<std::string> words;
    for (const auto value : all) {
        const std::string word(wordOf(value));
        EXPECT_FALSE(word.empty());
        EXPECT_TRUE(words.insert(word).second) << word << " stands twice";
        EXPECT_EQ(from(word), value) << word;
    }
    EXPECT_FALSE(from("no such word"));
    EXPECT_FALSE(from(""));
}

}  // namespace

TEST(EnumsTest, EveryWordLeadsBack)
{
    expectRoundTrip(kSexes, sexFrom);
    expectRoundTrip(kSides, sideFrom);
    expectRoundTrip(kSites, siteFrom);
    expectRoundTrip(kViews, viewFrom);
    expectRoundTrip(kConventions, conventionFrom);
    expectRoundTrip(kLayers, layerFrom);
}

TEST(EnumsTest, WordsAreCaseSensitive) { EXPECT_FALSE(sideFrom("Left")); }

TEST(EnumsTest, AConventionStartsWithItsSite)
{
    for (const Convention convention : kConventions)
        EXPECT_TRUE(wordOf(convention).starts_with(wordOf(siteOf(convention)))) << wordOf(convention);
}
