#include "core/basics/enums.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

using namespace fb;

namespace enums_test {

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

TEST(EnumsTest, AConventionStartsWithTheSignOfItsSite)
{
    constexpr std::array<std::string_view, kSites.size()> kSigns{"deltoid.", "vl.", "vg."};
    for (const Convention convention : kConventions)
        EXPECT_TRUE(wordOf(convention).starts_with(kSigns[static_cast<std::size_t>(siteOf(convention))]))
            << wordOf(convention);
}

TEST(EnumsTest, EveryConventionIsListedUnderItsSiteAlone)
{
    std::size_t listed = 0;
    for (const Site site : kSites) {
        for (const Convention convention : conventionsOf(site))
            EXPECT_EQ(siteOf(convention), site) << wordOf(convention);
        listed += conventionsOf(site).size();
    }
    EXPECT_EQ(listed, kConventions.size());
}

TEST(EnumsTest, ViewsBelongToOneSiteAndComeInPairs)
{
    for (const View view : kViews) {
        EXPECT_EQ(siteOf(companionOf(view)), siteOf(view)) << wordOf(view);
        EXPECT_EQ(companionOf(companionOf(view)), view) << wordOf(view);
        EXPECT_NE(companionOf(view), view) << wordOf(view);
    }
    for (const Site site : kSites) {
        ASSERT_FALSE(askedViews(site).empty());
        for (const View view : askedViews(site))
            EXPECT_EQ(siteOf(view), site);
    }
}

TEST(EnumsTest, TheOpenHandIsAPlateAndNoViewOfAPatient)
{
    EXPECT_FALSE(viewFrom("open-hand"));
    EXPECT_EQ(plateViewFrom("open-hand"), View::OpenHand);
    EXPECT_EQ(plateViewFrom("hip-side"), View::HipSide);
    EXPECT_FALSE(plateViewFrom("knee"));
}

TEST(EnumsTest, OppositeTwiceIsTheSameSide)
{
    for (const Side side : kSides) {
        EXPECT_NE(opposite(side), side);
        EXPECT_EQ(opposite(opposite(side)), side);
    }
}

TEST(EnumsTest, HandsAreNoViewsOfAPatientEither)
{
    EXPECT_FALSE(viewFrom("two-fingers"));
    EXPECT_EQ(plateViewFrom("two-fingers"), View::TwoFingers);
    EXPECT_EQ(plateViewFrom("three-fingers"), View::ThreeFingers);
    EXPECT_EQ(siteOf(View::ThreeFingers), Site::Deltoid);
}

}  // namespace enums_test
