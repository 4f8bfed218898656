#include "core/session/request.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/session/population.h"

using namespace fb;

namespace request_test {

TEST(RequestTest, TheSameSeedAsksTheSame)
{
    for (int i = 0; i < 20; ++i) {
        EXPECT_EQ(requestFrom(77, i).patient, requestFrom(77, i).patient);
        EXPECT_EQ(requestFrom(77, i).skinTone, requestFrom(77, i).skinTone);
        EXPECT_EQ(requestFrom(77, i).number, i);
    }
}

TEST(RequestTest, SeedsAndNumbersDiffer)
{
    std::set<double> weights;
    for (int i = 0; i < 20; ++i) {
        weights.insert(requestFrom(77, i).patient.individual().armLength);
        weights.insert(requestFrom(78, i).patient.individual().armLength);
    }
    EXPECT_EQ(weights.size(), 40U);
}

TEST(RequestTest, ManyRequestsMeetBothSidesBothSexesAndEveryTone)
{
    int left = 0;
    int women = 0;
    std::set<int> tones;
    for (int i = 0; i < 2000; ++i) {
        const Request request = requestFrom(5, i);
        left += request.patient.side() == Side::Left;
        women += request.patient.sex() == Sex::Female;
        tones.insert(request.skinTone);
        const double index = request.patient.bodyMassIndex();
        EXPECT_GT(index, kIndexLow - 1.0);
        EXPECT_LT(index, kIndexHigh + 1.0);
    }
    EXPECT_NEAR(left, 1000, 120);
    EXPECT_NEAR(women, 1000, 120);
    EXPECT_EQ(tones.size(), static_cast<std::size_t>(kSkinToneCount));
}

TEST(RequestTest, ASeedIsDecimalDigits)
{
    EXPECT_EQ(*seedFromText("0"), 0U);
    EXPECT_EQ(*seedFromText("9007199254740992"), kLargestSeed);
    for (const char* text :
         {"", " 1", "1 ", "-1", "1.5", "abc", "9007199254740993", "99999999999999999999999", "0x10"})
        EXPECT_EQ(seedFromText(text).error().problem, Problem::SeedNotANumber) << text;
}

TEST(RequestTest, TheMixChoosesTheSiteAndNeverTheBody)
{
    for (int i = 0; i < 50; ++i) {
        const Request alone = requestFrom(9, i);
        EXPECT_EQ(alone.site, Site::Deltoid);
        EXPECT_FALSE(alone.finding);
        for (const Site site : kSites) {
            const Request one = requestFrom(9, i, {SiteSet::only(site), true});
            EXPECT_EQ(one.site, site);
            EXPECT_EQ(siteOf(one.view), site);
            EXPECT_EQ(one.patient, alone.patient);
            EXPECT_EQ(one.skinTone, alone.skinTone);
        }
    }
}

TEST(RequestTest, AMixedRunMeetsEverySiteAndEveryAskedView)
{
    std::set<Site> sites;
    std::set<View> views;
    for (int i = 0; i < 200; ++i) {
        const Request request = requestFrom(3, i, {SiteSet::all(), false});
        sites.insert(request.site);
        views.insert(request.view);
        EXPECT_TRUE(std::ranges::count(askedViews(request.site), request.view) == 1);
    }
    EXPECT_EQ(sites.size(), kSites.size());
    EXPECT_EQ(views.size(), 4U);
}

TEST(RequestTest, SomeFindingsRuleTheSiteOutAndSomeOnlyLookLikeIt)
{
    int ruling = 0;
    int harmless = 0;
    std::set<FindingCode> codes;
    for (int i = 0; i < 2000; ++i) {
        const Request request = requestFrom(4, i, {SiteSet::all(), true});
        if (!request.finding)
            continue;
        codes.insert(request.finding->code);
        ++(rulesOut(*request.finding, request.site, request.patient.side()) ? ruling : harmless);
    }
    EXPECT_NEAR(ruling, 20 * kRulingPercent, 70);
    EXPECT_NEAR(harmless, 20 * (kFindingPercent - kRulingPercent), 70);
    EXPECT_EQ(codes.size(), static_cast<std::size_t>(kFindingCodeCount));
}

TEST(RequestTest, ASetOfSitesCountsAndHolds)
{
    EXPECT_EQ(SiteSet::all().count(), 3);
    EXPECT_EQ(SiteSet::only(Site::Ventrogluteal).count(), 1);
    EXPECT_TRUE(SiteSet::only(Site::Ventrogluteal).has(Site::Ventrogluteal));
    EXPECT_FALSE(SiteSet::only(Site::Ventrogluteal).has(Site::Deltoid));
    EXPECT_EQ(SiteSet{}, SiteSet::only(Site::Deltoid));
}

}  // namespace request_test
