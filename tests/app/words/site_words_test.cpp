#include "app/words/site_words.h"

#include <gtest/gtest.h>

#include <QLocale>
#include <QSet>

#include "core/site/vastus.h"
#include "core/site/ventrogluteal.h"
#include "tests/support/core_atlas.h"

namespace fb::test::site_words_tests {

namespace site_words_test {

template <class Words, class Codes>
void expectDistinctWords(const Codes& codes, const Words& words)
{
    QSet<QString> seen;
    for (const auto code : codes) {
        const QString text = words(code);
        EXPECT_FALSE(text.isEmpty()) << "code " << static_cast<int>(code);
        EXPECT_FALSE(seen.contains(text)) << text.toStdString();
        seen.insert(text);
    }
}

template <class Code>
std::vector<Code> firstCodes(int count)
{
    std::vector<Code> codes;
    for (int i = 0; i < count; ++i)
        codes.push_back(static_cast<Code>(i));
    return codes;
}

Target targetOf(Convention convention, double stature, const Policy& policy = defaultPolicy())
{
    const View view = askedViews(siteOf(convention)).front();
    const auto target =
        locate(atlas(), policy, adult(Sex::Male, stature, weightOf(24.0, stature)), convention, view);
    EXPECT_TRUE(target.has_value());
    return *target;
}

}  // namespace site_words_test

using namespace site_words_test;

TEST(SiteWordsTest, EveryCodeHasWordsOfItsOwn)
{
    expectDistinctWords(kSites, siteName);
    expectDistinctWords(kSexes, sexName);
    expectDistinctWords(kSides, sideName);
    expectDistinctWords(kViews, viewName);
    expectDistinctWords(kLayers, layerName);
    expectDistinctWords(kConventions, conventionName);
    expectDistinctWords(firstCodes<HelpLevel>(kHelpLevelCount), helpLevelName);
    expectDistinctWords(firstCodes<HazardCode>(kHazardCodeCount), hazardName);
    expectDistinctWords(firstCodes<StepCode>(kStepCodeCount), [](StepCode code) { return stepName(code); });
    for (const View view : kViews)
        EXPECT_FALSE(postureText(view).isEmpty());
}

TEST(SiteWordsTest, RequestNamesSiteAndSide)
{
    EXPECT_EQ(requestText(Site::Deltoid, Side::Left), QStringLiteral("Mark the deltoid site, left arm"));
    EXPECT_EQ(requestText(Site::VastusLateralis, Side::Right),
              QStringLiteral("Mark the vastus lateralis site, right thigh"));
    EXPECT_EQ(requestText(Site::Ventrogluteal, Side::Left),
              QStringLiteral("Mark the ventrogluteal site, left hip"));
    for (const Site site : kSites)
        for (const Side side : kSides) {
            EXPECT_TRUE(requestText(site, side).contains(siteName(site)));
            EXPECT_TRUE(requestText(site, side).contains(sideName(side)));
            EXPECT_TRUE(findingRequestText(site, side).contains(siteName(site)));
            EXPECT_TRUE(findingRequestText(site, side).contains(sideName(side)));
            EXPECT_NE(findingRequestText(site, side), requestText(site, side));
        }
}

TEST(SiteWordsTest, EveryLandmarkOfATargetHasANameInEveryView)
{
    for (const View view : kViews) {
        const auto target = locate(atlas(), defaultPolicy(), adult(Sex::Female, 165.0, 65.0),
                                   defaultPolicy().convention(siteOf(view)), view);
        ASSERT_TRUE(target.has_value());
        ASSERT_FALSE(target->landmarks.empty());
        for (const auto& [key, point] : target->landmarks)
            EXPECT_FALSE(landmarkName(key).isEmpty()) << key;
    }
    EXPECT_TRUE(landmarkName("elbow_of_the_moon").isEmpty());
}

TEST(SiteWordsTest, TheScreenSaysWhetherSkinOrPictureIsMeasured)
{
    EXPECT_EQ(measureNote(targetOf(Convention::DeltoidStrip, 170.0)),
              QStringLiteral("Measured along the skin"));
    EXPECT_EQ(measureNote(targetOf(Convention::VastusThirds, 170.0)),
              QStringLiteral("Measured along the skin"));
    EXPECT_EQ(measureNote(targetOf(Convention::VentroglutealHand, 170.0)),
              QStringLiteral("Measured straight across the picture"));
}

TEST(SiteWordsTest, RulesAreWholeSentencesWithTheNumbersOfThisBody)
{
    for (const Convention convention : kConventions) {
        const QString rule = conventionRule(convention, defaultPolicy(), targetOf(convention, 155.0));
        EXPECT_TRUE(rule.endsWith(QLatin1Char('.'))) << rule.toStdString();
        EXPECT_FALSE(rule.contains(QLatin1Char('%'))) << rule.toStdString();
        EXPECT_TRUE(rule.contains(QLatin1String(" cm"))) << rule.toStdString();
        EXPECT_FALSE(conventionSource(convention, defaultPolicy()).isEmpty());
        // A finger is as wide on any arm; every other rule grows with the body.
        EXPECT_EQ(rule == conventionRule(convention, defaultPolicy(), targetOf(convention, 190.0)),
                  convention == Convention::DeltoidFingers);
    }
}

TEST(SiteWordsTest, StripRuleSaysTheTargetsOwnNumbers)
{
    const Target target = targetOf(Convention::DeltoidStrip, 172.0);
    const QString rule = conventionRule(Convention::DeltoidStrip, defaultPolicy(), target);
    const double arm = target.armLength.value();
    for (const PolicyKey key : {PolicyKey::DeltoidStripTop, PolicyKey::DeltoidStripBottom}) {
        const double share = defaultPolicy().value(key);
        EXPECT_TRUE(rule.contains(cmText(share * arm))) << rule.toStdString();
        EXPECT_TRUE(rule.contains(QLocale().toString(share, 'f', 3))) << rule.toStdString();
    }
}

TEST(SiteWordsTest, ThighRulesSayWhereTheirBandLiesOnThisThigh)
{
    for (const Convention convention : {Convention::VastusThirds, Convention::VastusHandbreadths}) {
        const Target target = targetOf(convention, 172.0);
        const double thigh = target.thighLength.value();
        const VastusBand band = vastusBand(convention, defaultPolicy(), thigh);
        const QString rule = conventionRule(convention, defaultPolicy(), target);
        for (const double cm : {band.top * thigh, band.bottom * thigh, thigh})
            EXPECT_TRUE(rule.contains(cmText(cm))) << cm << ": " << rule.toStdString();
    }
}

TEST(SiteWordsTest, TheHandsRuleSaysItsOpeningAndHowFarSpineAndTrochanterLieApart)
{
    const Target target = targetOf(Convention::VentroglutealHand, 160.0);
    ASSERT_TRUE(target.hand.has_value());
    const QString rule = conventionRule(Convention::VentroglutealHand, defaultPolicy(), target);
    EXPECT_TRUE(rule.contains(cmText(target.asisToTrochanter.value()))) << rule.toStdString();
    EXPECT_TRUE(rule.contains(cmText(target.hand->length.value()))) << rule.toStdString();
    EXPECT_TRUE(
        rule.contains(QLocale().toString(target.hand->opening.value(), 'f', 0) + QStringLiteral(" degrees")))
        << rule.toStdString();
}

TEST(SiteWordsTest, AHandTooSmallForTheHipIsSaidToFallShort)
{
    const Policy small = defaultPolicy().with(PolicyKey::HandLength, 13.0);
    const Target target = targetOf(Convention::VentroglutealHand, 200.0, small);
    ASSERT_TRUE(target.hand.has_value());
    ASSERT_EQ(target.hand->pin, Pin::Palm);
    const QString rule = conventionRule(Convention::VentroglutealHand, small, target);
    EXPECT_TRUE(rule.contains(QStringLiteral("more than this hand reaches"))) << rule.toStdString();
    EXPECT_FALSE(rule.contains(QLatin1Char('%'))) << rule.toStdString();
}

TEST(SiteWordsTest, SourcesAreThoseOfThePolicyOnceEach)
{
    const Policy& policy = defaultPolicy();
    const QString source = conventionSource(Convention::DeltoidFingers, policy);
    EXPECT_EQ(source.count(QString::fromStdString(policy.source(PolicyKey::DeltoidFingersLow))), 1);
    EXPECT_TRUE(source.contains(QString::fromStdString(policy.source(PolicyKey::DeltoidFingerWidth))));
    EXPECT_TRUE(conventionSource(Convention::VentroglutealHand, policy)
                    .contains(QString::fromStdString(policy.source(PolicyKey::HandLength))));
}

TEST(SiteWordsTest, CentimetresHaveOneDecimalOfTheLocaleAndNoNegativeZero)
{
    EXPECT_EQ(cmText(1.25), QStringLiteral("1.3 cm"));
    EXPECT_EQ(cmText(-0.04), QStringLiteral("0.0 cm"));
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    EXPECT_EQ(cmText(1.8), QStringLiteral("1,8 cm"));
    QLocale::setDefault(before);
}

}  // namespace fb::test::site_words_tests
